// Words of the ducts: runs of pieces, loss, flow from a rise, return openings, fan.

import { t } from '../language.js';

const FEWER = t`fewer or wider bends, a shorter way.`;

/** @param {string} by @param {boolean} more */
const less = (by, more) => (more ? t`${by} more.` : t`${by} less: ${FEWER}`);
/** @param {string} by @param {boolean} more */
const flow = (by, more) =>
  more ? t`${by} more air: shorter, wider, fewer bends, a freer return.` : t`${by} less air.`;
/** @param {string} by @param {boolean} more */
const cooler = (by, more) =>
  more
    ? t`${by} warmer.`
    : t`${by} cooler: more air, or a freer way for it. Too hot: shut off, let run down.`;

/** @type {Record<string, string | [string, string]>} */
const air = {
  flow_m3_per_h: [t`Air the heater draws in`, t`manual, or measured below`],
  power_w: [t`Heat into the air`, t`manual, at full power`],
  inlet_celsius: t`Air at the intake`,
  altitude_m: [t`Height above the sea`, t`± takes in the weather`],
};

const METHODS = t`Half-widths from how far Rennels, Miller, Crane and Ito lie apart`;

/** @type {Record<string, import('../plan/sheet.js').SheetWords>} */
export const sheets = {
  ducts: {
    fields: {
      ...air,
      other_loss_pa: [t`What else the air must pass`, t`a grille in a wall, a filter`],
      fittings_spread: t`how well fittings are known`,
      flexible_spread: t`how well slack duct is known`,
      power: [t`Loss goes with this power of the flow`, t`1.8; pipes 1.75, bends 2`],
      curve_density_kg_per_m3: [t`Air density of the curve`, t`1.2 unless it says otherwise`],
      flow_1_m3_per_h: t`Point 1, flow`,
      pressure_1_pa: t`Point 1, pressure`,
      flow_2_m3_per_h: t`Point 2, flow`,
      pressure_2_pa: t`Point 2, pressure`,
      flow_3_m3_per_h: t`Point 3, flow`,
      pressure_3_pa: t`Point 3, pressure`,
      flow_4_m3_per_h: t`Point 4, flow`,
      pressure_4_pa: t`Point 4, pressure`,
      flow_5_m3_per_h: t`Point 5, flow`,
      pressure_5_pa: t`Point 5, pressure`,
      layout: t`In layout`,
      run: t`Run`,
      kind: t`Kind`,
      bore_mm: t`Inside diameter`,
      length_m: [t`Length as it lies`, t`along its middle`],
      angle_deg: t`Angle`,
      radius_ratio: [t`Radius in diameters`, t`of the middle line; tight 1, wide 2`],
      second_bore_mm: t`Inside diameter after it`,
      roughness_mm: [t`Roughness of the wall`, t`empty: usual for the kind`],
      share: t`Share`,
      spread: t`how well this piece is known`,
    },
    choices: {
      layout: [t`both`, t`A alone`, t`B alone`],
      run: [t`return`, t`warm`],
      kind: [t`straight`, t`bend`, t`mitre`, t`flexible`, t`open end`, t`reducer`, t`branch`],
    },
    problems: {
      'bore_mm.contradiction': t`The piece before ends with another diameter: put a reducer between, or measure again.`,
      'second_bore_mm.contradiction': t`Both ends alike: that is no reducer.`,
      'angle_deg.contradiction': t`A bend turns the air: enter its angle.`,
      'angle_deg.beyond_formula': t`More than the formula is for: enter it as several bends.`,
      'share.contradiction': t`That little open is closed. Enter 0.02 to 1.`,
      'share.beyond_formula': t`Slack beyond what was ever measured: stretch it, or cut it.`,
      'flow_m3_per_h.beyond_formula': t`So little air would leave hotter than 250 °C: look at flow and heat.`,
    },
    results: {
      bends_a_deg: t`Bends, both runs`,
      length_a_m: t`Length, both runs`,
      loss_a_pa: t`Pressure the ducts cost`,
      dearest_a: t`Piece that costs most`,
      fan_flow_a_m3_per_h: t`Air with this fan`,
      fan_outlet_a_celsius: t`Warm air with this fan`,
      bends_b_deg: t`B: bends, both runs`,
      length_b_m: t`B: length, both runs`,
      loss_b_pa: t`B: pressure the ducts cost`,
      dearest_b: t`B: piece that costs most`,
      fan_flow_b_m3_per_h: t`B: air with this fan`,
      fan_outlet_b_celsius: t`B: warm air with this fan`,
      loss_difference_pa: t`B costs more than A by`,
      fan_flow_difference_m3_per_h: t`B gives more air than A by`,
      outlet_air_celsius: t`Warm air at the outlet`,
      rise_k: t`Rise through the heater`,
      mass_flow_kg_per_h: t`Air by mass, the same in both runs`,
      return_density_kg_per_m3: t`Density in the return run`,
      warm_density_kg_per_m3: t`Density in the warm run`,
      piece_a_pa: t`costs`,
      piece_b_pa: t`costs in B`,
      speed_m_per_s: t`speed of the air`,
      coefficient: t`loss over dynamic pressure`,
    },
    how: {
      loss_a_pa: t`Darcy and Weisbach, (f·L/D + K)·ρv²/2 of each piece; f by Colebrook. ${METHODS}.`,
      loss_b_pa: t`the same`,
      rise_k: t`heat over mass flow and heat capacity, solved for the temperature`,
      mass_flow_kg_per_h: t`flow times density at the intake`,
      return_density_kg_per_m3: t`dry air, ideal gas; pressure by ISO 2533`,
      coefficient: t`bends and mitres: Rennels and Hudson; cones and branches: Crane; ends and grilles: Idelchik; slack duct: Abushakra, Walker and Sherman, measured on 150 to 250 mm, so spread wider below`,
      fan_flow_a_m3_per_h: t`where the curve, straight between its points, meets the loss`,
    },
    change: {
      duct_bends_deg: (by, more) => (more ? t`${by} more.` : t`Take ${by} of bends away.`),
      duct_length_m: (by, more) => (more ? t`${by} longer.` : t`${by} shorter.`),
      duct_loss_pa: less,
      air_flow_m3_per_h: flow,
      outlet_air_celsius: cooler,
    },
    row: (n) => t`Piece ${n}`,
  },
  air_flow: {
    named: t`Measured`,
    fields: {
      power_w: air.power_w,
      inlet_celsius: air.inlet_celsius,
      outlet_celsius: [
        t`Air at the warm outlet`,
        t`middle of the stream, out of sight of hot metal`,
      ],
      altitude_m: air.altitude_m,
    },
    problems: { 'outlet_celsius.contradiction': t`No warmer than the intake: nothing is heated.` },
    results: {
      rise_k: t`Rise`,
      mass_flow_kg_per_h: t`Air by mass`,
      flow_m3_per_h: t`Air the heater draws in`,
      outlet_flow_m3_per_h: t`The same air, warm`,
      outlet_air_celsius: t`Warm air at the outlet`,
    },
    how: { flow_m3_per_h: t`heat over heat capacity and rise, by the density at the intake` },
    change: { air_flow_m3_per_h: flow, outlet_air_celsius: cooler },
  },
  return_air: {
    fields: {
      flow_m3_per_h: air.flow_m3_per_h,
      air_celsius: t`The room’s air`,
      altitude_m: air.altitude_m,
      allowed_pa: [t`What the openings may cost`, t`empty if not asked`],
      discharge_spread: t`how well openings are known`,
      width_mm: [t`Width`, t`or diameter of a round one`],
      height_mm: [t`Height`, t`empty for a round one`],
      free_share: [t`Free share`, t`1 where nothing covers it`],
      count: t`How many`,
    },
    results: {
      free_area_cm2: t`Free area for return air`,
      speed_m_per_s: t`Speed in it`,
      loss_pa: t`Pressure it costs`,
      needed_cm2: t`Free area that costs what it may`,
    },
    how: {
      loss_pa: t`ρ/2·(flow/(0.6·area))²; sharp-edged openings, 0.5 to 0.7`,
      free_area_cm2: t`side by side in one wall`,
    },
    change: {
      return_area_cm2: (by, more) => (more ? t`${by} more free area.` : t`${by} less.`),
    },
    row: (n) => t`Opening ${n}`,
    addRow: t`Add an opening`,
  },
};

export const words = {
  title: t`Ducts`,
  caution: t`Warm air and its pipe burn skin and set fire: heater off and cold before a duct comes off. A blocked outlet or return overheats the heater. No air from where exhaust or engine fumes are.`,
  air: t`Air`,
  pieces: t`Runs, piece by piece`,
  piecesWhy: t`One way of the air, in its order: from the room to the heater, from the heater to the room.`,
  runs: [t`Return: room to heater`, t`Warm: heater to room`],
  /** @param {string} run */
  emptyRun: (run) => t`${run}: no piece. Right only where the heater stands open there.`,
  heater: t`heater`,
  add: t`Add a piece to the run`,
  addIn: t`in layout`,
  compare: t`Compare with a second layout`,
  compareWhy: t`Layout A is the one that counts for this heater; B stands beside it.`,
  up: t`Move up`,
  down: t`Move down`,
  edit: t`More on this piece`,
  /** @param {string} layout @param {string} loss @param {string} piece @param {string} its */
  dearest: (layout, loss, piece, its) => t`${layout}${loss} in all. Costs most: ${piece}, ${its}.`,
  /** @param {string} name */
  layout: (name) => `${name}: `,
  /** Before a piece's name, by layout. */
  inLayout: ['', t`A `, t`B `],
  /** @param {string} by */
  apart: (by) => t`B less A: ${by}.`,
  noPieces: t`No piece yet: add them in the order of the air.`,
  ticks: t`Seen with your own eyes`,
  tick: {
    own_way: t`The warm air has a way of its own: no duct joins the vehicle’s own air system.`,
    return_free: t`Where lockers or cupboards lie in the way of the return air, they are open to it, full too.`,
    uncovered: t`No outlet and no return can be covered by bedding, luggage, a seat or a curtain.`,
  },
  rise: t`Flow from a measured rise`,
  riseWhy: t`Full power, ten minutes, everything open. Thermometers out of the sun and off hot metal. Then the flow goes into the air above.`,
  take: t`Use this flow for the ducts`,
  openings: t`Openings for return air`,
  openingsWhy: t`Free area is what is open, without bars and frames.`,
  takeAir: t`Take over the air data from above`,
  fan: t`Fan curve`,
  fanWhy: t`By rising flow and falling pressure, at the heater’s outlets. Nothing is told beyond its points. Put the flow that it gives into the air above, and repeat until it stays.`,
  takeFan: t`Use this flow for the ducts`,
  beyondCurve: t`The points do not reach to where the ducts meet them: no flow from here.`,
  /** What a share is, in short. @type {Record<string, string>} */
  shares: { flexible: t`slack`, open_end: t`free`, branch: t`of the air` },
  /** What a field is for a kind of piece. @type {Record<string, Record<string, [string, string]>>} */
  ofKind: {
    flexible: {
      share: [t`Shorter than pulled tight, as a share`, t`let go it sits 0.15 short`],
      angle_deg: [t`Bends in it together`, t`empty for none`],
    },
    open_end: { share: [t`Free share of its grille`, t`0.7 is 70 %; empty for no grille`] },
    reducer: { length_m: [t`Length of its cone`, t`0 or empty for a step`] },
    branch: {
      share: [t`Share of the air that takes this way`, t`0.5 for half`],
      angle_deg: [t`How far this way turns`, t`0 straight on`],
      second_bore_mm: [t`Inside diameter of the side`, t`empty: as the other`],
    },
  },
};
