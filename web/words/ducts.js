// Words of the ducts: runs of pieces, loss, flow from a rise, return openings, fan.

const FEWER = 'Fewer or wider bends, a shorter way.';

/** @param {string} by @param {boolean} more */
const less = (by, more) => (more ? `${by} more.` : `${by} less: ${FEWER}`);
/** @param {string} by @param {boolean} more */
const flow = (by, more) =>
  more ? `${by} more air: shorter, wider, fewer bends, a freer return.` : `${by} less air.`;
/** @param {string} by @param {boolean} more */
const cooler = (by, more) =>
  more
    ? `${by} warmer.`
    : `${by} cooler: more air, or a freer way for it. Too hot: shut off, let run down.`;

/** @type {Record<string, string | [string, string]>} */
const air = {
  flow_m3_per_h: ['Air the heater draws in', 'manual, or measured below'],
  power_w: ['Heat into the air', 'manual, at full power'],
  inlet_celsius: 'Air at the intake',
  altitude_m: ['Height above the sea', '± takes in the weather'],
};

const METHODS = 'Half-widths from how far Rennels, Miller, Crane and Ito lie apart';

/** @type {Record<string, import('../plan/sheet.js').SheetWords>} */
export const sheets = {
  ducts: {
    fields: {
      ...air,
      other_loss_pa: ['What else the air must pass', 'a grille in a wall, a filter'],
      fittings_spread: 'how well fittings are known',
      flexible_spread: 'how well slack duct is known',
      power: ['Loss goes with this power of the flow', '1.8; pipes 1.75, bends 2'],
      curve_density_kg_per_m3: ['Air density of the curve', '1.2 unless it says otherwise'],
      flow_1_m3_per_h: 'Point 1, flow',
      pressure_1_pa: 'Point 1, pressure',
      flow_2_m3_per_h: 'Point 2, flow',
      pressure_2_pa: 'Point 2, pressure',
      flow_3_m3_per_h: 'Point 3, flow',
      pressure_3_pa: 'Point 3, pressure',
      flow_4_m3_per_h: 'Point 4, flow',
      pressure_4_pa: 'Point 4, pressure',
      flow_5_m3_per_h: 'Point 5, flow',
      pressure_5_pa: 'Point 5, pressure',
      layout: 'In layout',
      run: 'Run',
      kind: 'Kind',
      bore_mm: 'Inside diameter',
      length_m: ['Length as it lies', 'along its middle'],
      angle_deg: 'Angle',
      radius_ratio: ['Radius in diameters', 'of the middle line; tight 1, wide 2'],
      second_bore_mm: 'Inside diameter after it',
      roughness_mm: ['Roughness of the wall', 'empty: usual for the kind'],
      share: 'Share',
      spread: 'how well this piece is known',
    },
    choices: {
      layout: ['both', 'A alone', 'B alone'],
      run: ['return', 'warm'],
      kind: ['straight', 'bend', 'mitre', 'flexible', 'open end', 'reducer', 'branch'],
    },
    problems: {
      'bore_mm.contradiction':
        'The piece before ends with another diameter: put a reducer between, or measure again.',
      'second_bore_mm.contradiction': 'Both ends alike: that is no reducer.',
      'angle_deg.contradiction': 'A bend turns the air: enter its angle.',
      'angle_deg.beyond_formula': 'More than the formula is for: enter it as several bends.',
      'share.contradiction': 'That little open is closed. Enter 0.02 to 1.',
      'share.beyond_formula': 'Slack beyond what was ever measured: stretch it, or cut it.',
      'flow_m3_per_h.beyond_formula':
        'So little air would leave hotter than 250 °C: look at flow and heat.',
    },
    results: {
      bends_a_deg: 'Bends, both runs',
      length_a_m: 'Length, both runs',
      loss_a_pa: 'Pressure the ducts cost',
      dearest_a: 'Dearest piece',
      fan_flow_a_m3_per_h: 'Air with this fan',
      fan_outlet_a_celsius: 'Warm air with this fan',
      bends_b_deg: 'B: bends, both runs',
      length_b_m: 'B: length, both runs',
      loss_b_pa: 'B: pressure the ducts cost',
      dearest_b: 'B: dearest piece',
      fan_flow_b_m3_per_h: 'B: air with this fan',
      fan_outlet_b_celsius: 'B: warm air with this fan',
      loss_difference_pa: 'B costs more than A by',
      fan_flow_difference_m3_per_h: 'B gives more air than A by',
      outlet_air_celsius: 'Warm air at the outlet',
      rise_k: 'Rise through the heater',
      mass_flow_kg_per_h: 'Air by mass, the same in both runs',
      return_density_kg_per_m3: 'Density in the return run',
      warm_density_kg_per_m3: 'Density in the warm run',
      piece_a_pa: 'costs',
      piece_b_pa: 'costs in B',
      speed_m_per_s: 'speed of the air',
      coefficient: 'loss over dynamic pressure',
    },
    how: {
      loss_a_pa: `Darcy and Weisbach, (f·L/D + K)·ρv²/2 of each piece; f by Colebrook. ${METHODS}.`,
      loss_b_pa: 'the same',
      rise_k: 'heat over mass flow and heat capacity, solved for the temperature',
      mass_flow_kg_per_h: 'flow times density at the intake',
      return_density_kg_per_m3: 'dry air, ideal gas; pressure by ISO 2533',
      coefficient:
        'bends and mitres: Rennels and Hudson; cones and branches: Crane; ends and grilles: Idelchik; slack duct: Abushakra, Walker and Sherman, measured on 150 to 250 mm, so spread wider below',
      fan_flow_a_m3_per_h: 'where the curve, straight between its points, meets the loss',
    },
    change: {
      duct_bends_deg: (by, more) => (more ? `${by} more.` : `Take ${by} of bends away.`),
      duct_length_m: (by, more) => (more ? `${by} longer.` : `${by} shorter.`),
      duct_loss_pa: less,
      air_flow_m3_per_h: flow,
      outlet_air_celsius: cooler,
    },
    row: (n) => `Piece ${n}`,
  },
  air_flow: {
    named: 'Measured',
    fields: {
      power_w: air.power_w,
      inlet_celsius: air.inlet_celsius,
      outlet_celsius: ['Air at the warm outlet', 'middle of the stream, out of sight of hot metal'],
      altitude_m: air.altitude_m,
    },
    problems: { 'outlet_celsius.contradiction': 'No warmer than the intake: nothing is heated.' },
    results: {
      rise_k: 'Rise',
      mass_flow_kg_per_h: 'Air by mass',
      flow_m3_per_h: 'Air the heater draws in',
      outlet_flow_m3_per_h: 'The same air, warm',
      outlet_air_celsius: 'Warm air at the outlet',
    },
    how: { flow_m3_per_h: 'heat over heat capacity and rise, by the density at the intake' },
    change: { air_flow_m3_per_h: flow, outlet_air_celsius: cooler },
  },
  return_air: {
    fields: {
      flow_m3_per_h: air.flow_m3_per_h,
      air_celsius: 'The room’s air',
      altitude_m: air.altitude_m,
      allowed_pa: ['What the openings may cost', 'empty if not asked'],
      discharge_spread: 'how well openings are known',
      width_mm: ['Width', 'or diameter of a round one'],
      height_mm: ['Height', 'empty for a round one'],
      free_share: ['Free share', '1 where nothing covers it'],
      count: 'How many',
    },
    results: {
      free_area_cm2: 'Free area for return air',
      speed_m_per_s: 'Speed in it',
      loss_pa: 'Pressure it costs',
      needed_cm2: 'Free area that costs what it may',
    },
    how: {
      loss_pa: 'ρ/2·(flow/(0.6·area))²; sharp-edged openings, 0.5 to 0.7',
      free_area_cm2: 'side by side in one wall',
    },
    change: {
      return_area_cm2: (by, more) => (more ? `${by} more free area.` : `${by} less.`),
    },
    row: (n) => `Opening ${n}`,
    addRow: 'Add an opening',
  },
};

export const words = {
  title: 'Ducts',
  caution:
    'Warm air and its pipe burn skin and set fire: heater off and cold before a duct comes off. A blocked outlet or return overheats the heater. No air from where exhaust or engine fumes are.',
  air: 'Air',
  pieces: 'Runs, piece by piece',
  piecesWhy:
    'One way of the air, in its order: from the room to the heater, from the heater to the room.',
  runs: ['Return: room to heater', 'Warm: heater to room'],
  heater: 'heater',
  add: 'Add a piece to the run',
  addIn: 'in layout',
  compare: 'Compare with a second layout',
  compareWhy: 'Layout A is the one that counts for this heater; B stands beside it.',
  up: 'Earlier',
  down: 'Later',
  edit: 'More on this piece',
  /** @param {string} layout @param {string} loss @param {string} piece @param {string} its */
  dearest: (layout, loss, piece, its) => `${layout}${loss}. Dearest: ${piece}, ${its}.`,
  /** @param {string} name */
  layout: (name) => `${name}: `,
  /** Before a piece's name, by layout. */
  inLayout: ['', 'A ', 'B '],
  /** @param {string} by */
  apart: (by) => `B less A: ${by}.`,
  noPieces: 'No piece yet: add them in the order of the air.',
  ticks: 'Seen with your own eyes',
  tick: {
    own_way: 'The warm air has a way of its own: no duct joins the vehicle’s own air system.',
    return_free:
      'Where lockers or cupboards lie in the way of the return air, they are open to it, full too.',
    uncovered: 'No outlet and no return can be covered by bedding, luggage, a seat or a curtain.',
  },
  rise: 'Flow from a measured rise',
  riseWhy:
    'Full power, ten minutes, everything open. Thermometers out of the sun and off hot metal. Then the flow goes into the air above.',
  take: 'Use this flow for the ducts',
  openings: 'Openings for return air',
  openingsWhy: 'Free area is what is open, without bars and frames.',
  takeAir: 'Take the air from above',
  fan: 'Fan curve',
  fanWhy:
    'By rising flow and falling pressure, at the heater’s outlets. Nothing is told beyond its points. Use the flow found above again until it stays.',
  takeFan: 'Use this flow for the ducts',
  beyondCurve: 'The points do not reach to where the ducts meet them: no flow from here.',
  /** What a share is, in short. @type {Record<string, string>} */
  shares: { flexible: 'slack', open_end: 'free', branch: 'of the air' },
  /** What a field is for a kind of piece. @type {Record<string, Record<string, [string, string]>>} */
  ofKind: {
    flexible: {
      share: ['Shorter than pulled tight, as a share', 'let go it sits 0.15 short'],
      angle_deg: ['Bends in it together', 'empty for none'],
    },
    open_end: { share: ['Free share of its grille', 'empty for none'] },
    reducer: { length_m: ['Length of its cone', '0 or empty for a step'] },
    branch: {
      share: ['Share of the air that takes this way', '0.5 for half'],
      angle_deg: ['How far this way turns', '0 straight on'],
      second_bore_mm: ['Inside diameter of the side', 'empty: as the other'],
    },
  },
};
