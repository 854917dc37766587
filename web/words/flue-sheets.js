// Words of the flue's sheets: fields, results, formulas.

const MOVE = 'Or show that the manual asks for less.';
/** @param {string} by @param {boolean} more */
const apart = (by, more) =>
  more ? `Move them ${by} apart, or shield as the manual says.` : `${by} less.`;
/** @param {string} by @param {boolean} more */
const longer = (by, more) => (more ? `${by} more pipe would prove it.` : `Shorten it by ${by}.`);
/** @param {string} by @param {boolean} more */
const straighter = (by, more) => (more ? `${by} more.` : `Take out ${by} of bends.`);
/** @param {string} by @param {boolean} more */
const higher = (by, more) => (more ? `Set it ${by} higher. ${MOVE}` : `${by} lower.`);
/** @param {string} by */
const lower = (by) =>
  `Lower its end by ${by}, with all that follows; or read it better, the phone turned end for end; or take its start as a low point.`;

const BY =
  'Readings by one phone share its zero, its scale and the vehicle’s level: counted as fully correlated, which bounds any height from above (GUM 5.2.2)';

/** @type {import('../plan/sheet.js').SheetWords} */
export const pipe = {
  fields: {
    boat: 'Road vehicle or boat',
    afloat: 'While it was read',
    roll_period_s: ['Roll period', 'from one side over and back'],
    averaged_s: ['Each leg averaged over', 'the shortest of them'],
    roll_deg: ['Largest roll to either side', 'of its middle'],
    drain_in_manual: 'The manual allows a drain',
    zero_1_spread: 'zero of the phone, shared by its readings',
    zero_2_spread: 'zero of the phone, second check',
    zero_3_spread: 'zero of the phone, third check',
    elevation_deg: ['Angle', 'minus where it falls away from the heater'],
    length_m: 'Length',
    bend_deg: ['Bend where it starts', '0 if it goes straight on'],
    place: 'It starts',
    clear: ['Away from openings and hands', 'where it starts'],
    drain_bore_mm: ['Drain set where it starts: its bore', 'empty: no drain'],
    zero_of: 'zero shared by',
    combined_u_deg: 'standard uncertainty of the capture',
    zero_u_deg: 'of that, by the phone’s zero',
    scale_u_deg: 'by its scale',
    datum_u_deg: 'by the reading of the vehicle’s level',
    heading_u_deg: 'by the leg’s heading in the vehicle',
    rake_u_deg: 'by load and springs',
    own_spread: 'angle as captured, what is not shared',
    sway_spread: 'what rolling leaves in the mean',
  },
  choices: {
    boat: ['road vehicle', 'boat'],
    afloat: ['ashore', 'afloat'],
    drain_in_manual: ['no', 'yes'],
    place: [
      'outside, in free air',
      'in cab or living space',
      'in a locker',
      'in the bilge',
      'in a closed skirt or box',
      'in the engine bay',
    ],
    clear: ['no', 'yes'],
    zero_of: ['no other', 'the first captures', 'the second captures', 'the third captures'],
  },
  problems: {
    'averaged_s.beyond_formula':
      'Ashore only, or average each leg over at least ten roll periods: nothing can be told from less.',
    'drain_bore_mm.contradiction':
      'No drain may be here: exhaust gas leaves by it. Only where the manual allows one, outside in free air, away from openings and hands, never in a boat. Lay the pipe another way.',
  },
  results: {
    length_m: 'Length',
    bends_deg: 'Bends together',
    end_height_mm: 'End above the heater’s port',
    height_mm: 'ends above the port',
    along_mm: 'ends from the port, along the level',
    standing_mm: 'water it holds back (minus: it drains)',
    depth_mm: 'water that can stand where it starts',
    drain_bore_mm: 'drain',
  },
  how: {
    length_m: 'sum of the legs',
    bends_deg: 'sum of the bends',
    end_height_mm: `sum of length · sin(angle). ${BY}`,
    height_mm: 'sum of length · sin(angle) so far',
    along_mm: 'sum of length · cos(angle) so far',
    standing_mm:
      'its rise against the way water leaves it: length · sin(angle) towards the end, or back to a drain. Below 0 it drains',
    depth_mm:
      'as far as the pipe rises on both sides, to its end or a drain; the heater is a closed end',
    drain_bore_mm: 'as told',
  },
  silent: ['standing_mm', 'depth_mm', 'drain_bore_mm'],
  change: {
    exhaust_length_m: longer,
    air_pipe_length_m: longer,
    exhaust_bends_deg: straighter,
    air_pipe_bends_deg: straighter,
    standing_water_mm: lower,
  },
  advice: {
    'depth_mm.beyond': 'What may be done about it stands at the leg.',
    'depth_mm.not_proven':
      'Read its legs better, the phone turned end for end; give them more fall; or take it as a low point.',
  },
  row: (/** @type {number} */ n) => `Leg ${n}`,
  addRow: 'Add a leg',
};

/** @type {Record<string, import('../plan/sheet.js').SheetWords>} */
export const sheets = {
  exhaust: { ...pipe, named: 'Exhaust' },
  air_pipe: { ...pipe, named: 'Combustion air' },
  pipe_ends: {
    fields: {
      air_to_exhaust_mm: 'Combustion-air end to exhaust end',
      past_body_mm: ['Exhaust’s end past the body', 'minus if it ends inside the outline'],
      lagged: ['The exhaust, where it passes what can burn', 'the limit is for a bare one'],
      what: 'What',
      distance_mm: ['Distance', 'opening: to the exhaust’s end; else to the pipe'],
    },
    choices: {
      lagged: ['bare', 'lagged'],
      what: [
        'window',
        'door or hatch',
        'vent',
        'intake of heated air',
        'engine’s air intake',
        'tyre',
        'brake or air line',
        'fuel line or tank',
        'cable',
        'wood, cloth, plastic: what can burn',
      ],
    },
    results: {
      air_to_exhaust_mm: 'Combustion-air end to exhaust end',
      past_body_mm: 'Exhaust’s end past the body',
      opening_mm: 'exhaust’s end to the opening',
      line_mm: 'exhaust to it',
      combustible_mm: 'bare exhaust to what can burn',
    },
    how: Object.fromEntries(
      ['air_to_exhaust_mm', 'past_body_mm', 'opening_mm', 'line_mm', 'combustible_mm'].map(
        (name) => [name, 'as told by the tape'],
      ),
    ),
    silent: ['opening_mm', 'line_mm', 'combustible_mm'],
    change: {
      air_to_exhaust_mm: apart,
      exhaust_past_body_mm: (by, more) =>
        more ? `Bring the end ${by} farther out.` : `${by} less.`,
      exhaust_to_opening_mm: apart,
      exhaust_to_line_mm: apart,
      exhaust_to_combustible_mm: apart,
    },
    row: (/** @type {number} */ n) => `Thing ${n}`,
    addRow: 'Add a thing',
  },
  boat_outlet: {
    fields: {
      outlet_height_mm: ['Outlet above the water', 'its lower edge'],
      outlet_across_mm: ['Outlet from the centreline', 'across the hull'],
      loop_height_mm: ['Top of the loop above the water', 'the lower edge inside it'],
      loop_across_mm: ['Loop from the centreline', 'across the hull'],
      heel_deg: ['Heel', 'the most she may heel with the outlet open'],
      sinkage_mm: ['Lower by load, trim, stern wave', '0 if none; its ± stays'],
    },
    results: {
      outlet_mm: 'Outlet above the water, heeled',
      loop_mm: 'Top of the loop above the water, heeled',
    },
    how: {
      outlet_mm: 'height · cos(heel) − distance · sin(heel) − sinkage',
      loop_mm: 'the same, of the loop’s top',
    },
    change: { outlet_above_water_mm: higher, loop_above_water_mm: higher },
  },
};
