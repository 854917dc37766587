// Words of the flue's sheets: fields, results, formulas.

import { t } from '../language.js';

const MOVE = t`Or show that the manual asks for less.`;
/** @param {string} by @param {boolean} more */
const apart = (by, more) =>
  more ? t`Move them ${by} farther apart, or shield as the manual says.` : t`${by} less.`;
/** @param {string} by @param {boolean} more */
const away = (by, more) =>
  more ? t`Bring the exhaust’s end ${by} farther away from it.` : t`${by} less.`;
/** @param {string} by @param {boolean} more */
const longer = (by, more) => (more ? t`Make it ${by} longer.` : t`Shorten it by ${by}.`);
/** @param {string} by @param {boolean} more */
const straighter = (by, more) => (more ? t`${by} more.` : t`Take out ${by} of bends.`);
/** @param {string} by @param {boolean} more */
const higher = (by, more) => (more ? t`Set it ${by} higher. ${MOVE}` : t`${by} lower.`);
/** @param {string} by */
const lower = (by) =>
  t`Lower its end by ${by}, with all that follows; or read it better, the phone turned end for end; or lay the pipe another way. Its start as a low point: only where a drain may be.`;

const BY = t`Readings by one phone share its zero, its scale and the vehicle’s level: counted as fully correlated, which is the most that a height’s ± can be (GUM 5.2.2)`;

/** @type {import('../plan/sheet.js').SheetWords} */
export const pipe = {
  fields: {
    boat: t`Road vehicle or boat`,
    afloat: t`While it was read`,
    roll_period_s: [t`Roll period`, t`from one side over and back`],
    averaged_s: [t`Each leg averaged over`, t`the shortest of them`],
    roll_deg: [t`Largest roll to either side`, t`of its middle`],
    drain_in_manual: t`The manual allows a drain`,
    zero_1_spread: t`zero of the phone, shared by its readings`,
    zero_2_spread: t`zero of the phone, second check`,
    zero_3_spread: t`zero of the phone, third check`,
    elevation_deg: [t`Angle`, t`minus where it falls away from the heater`],
    length_m: t`Length`,
    bend_deg: [t`Bend where it starts`, t`0 if it goes straight on`],
    place: t`It starts`,
    clear: [t`Away from openings and hands`, t`where it starts`],
    drain_bore_mm: [t`Drain set where it starts: its bore`, t`empty: no drain`],
    zero_of: t`zero shared by`,
    combined_u_deg: t`standard uncertainty of the capture`,
    zero_u_deg: t`of that, by the phone’s zero`,
    scale_u_deg: t`by its scale`,
    datum_u_deg: t`by the reading of the vehicle’s level`,
    heading_u_deg: t`by the leg’s heading in the vehicle`,
    rake_u_deg: t`by load and springs`,
    own_spread: t`angle as captured, what is not shared`,
    sway_spread: t`what rolling leaves in the mean`,
  },
  choices: {
    boat: [t`road vehicle`, t`boat`],
    afloat: [t`ashore`, t`afloat`],
    drain_in_manual: [t`no`, t`yes`],
    place: [
      t`outside, in free air`,
      t`in cab or living space`,
      t`in a locker`,
      t`in the bilge`,
      t`in a closed skirt or box`,
      t`in the engine bay`,
    ],
    clear: [t`no`, t`yes`],
    zero_of: [t`no other`, t`the first captures`, t`the second captures`, t`the third captures`],
  },
  problems: {
    'averaged_s.beyond_formula': t`Ashore only, or average each leg over at least ten roll periods: nothing can be told from less.`,
    'drain_bore_mm.contradiction': t`No drain is allowed here: exhaust gas leaves by it. Only where the manual allows one, outside in free air, away from openings and hands, never in a boat. Lay the pipe another way.`,
  },
  results: {
    length_m: t`Length`,
    bends_deg: t`Bends together`,
    end_height_mm: t`End above the heater’s port`,
    height_mm: t`ends above the port`,
    along_mm: t`ends from the port, along the level`,
    standing_mm: t`water it holds back (minus: it drains)`,
    depth_mm: t`water that can stand where it starts`,
    drain_bore_mm: t`drain`,
  },
  how: {
    length_m: t`sum of the legs`,
    bends_deg: t`sum of the bends`,
    end_height_mm: t`sum of length · sin(angle). ${BY}`,
    height_mm: t`sum of length · sin(angle) so far`,
    along_mm: t`sum of length · cos(angle) so far`,
    standing_mm: t`its rise against the way water leaves it: length · sin(angle) towards the end, or back to a drain. Below 0 it drains`,
    depth_mm: t`as far as the pipe rises on both sides, to its end or a drain; the heater is a closed end`,
    drain_bore_mm: t`as told`,
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
    'depth_mm.beyond': t`What may be done about it stands at the leg.`,
    'depth_mm.not_proven': t`Read its legs better, the phone turned end for end; give them more fall; or take it as a low point.`,
  },
  row: (/** @type {number} */ n) => t`Leg ${n}`,
  addRow: t`Add a leg`,
};

const THINGS = [
  t`window`,
  t`door or hatch`,
  t`vent`,
  t`intake of heated air`,
  t`engine’s air intake`,
  t`tyre`,
  t`brake or air line`,
  t`fuel line or tank`,
  t`cable`,
  t`wood, cloth, plastic: what can burn`,
];

/** @type {Record<string, import('../plan/sheet.js').SheetWords>} */
export const sheets = {
  exhaust: { ...pipe, named: t`Exhaust` },
  air_pipe: { ...pipe, named: t`Combustion air` },
  pipe_ends: {
    fields: {
      air_to_exhaust_mm: t`Combustion-air end to exhaust end`,
      past_body_mm: [t`Exhaust’s end past the body`, t`minus if it ends inside the outline`],
      lagged: [t`The exhaust, where it passes what can burn`, t`the limit is for a bare one`],
      what: t`What`,
      distance_mm: [t`Distance`, t`opening: to the exhaust’s end; else to the pipe`],
    },
    choices: {
      lagged: [t`bare`, t`lagged`],
      what: THINGS,
    },
    results: {
      air_to_exhaust_mm: t`Combustion-air end to exhaust end`,
      past_body_mm: t`Exhaust’s end past the body`,
      opening_mm: t`exhaust’s end to the opening`,
      line_mm: t`exhaust to it`,
      combustible_mm: t`bare exhaust to what can burn`,
    },
    how: Object.fromEntries(
      ['air_to_exhaust_mm', 'past_body_mm', 'opening_mm', 'line_mm', 'combustible_mm'].map(
        (name) => [name, t`as told by the tape`],
      ),
    ),
    silent: ['opening_mm', 'line_mm', 'combustible_mm'],
    change: {
      air_to_exhaust_mm: apart,
      exhaust_past_body_mm: (by, more) =>
        more ? t`Bring the end ${by} farther out.` : t`${by} less.`,
      exhaust_to_opening_mm: away,
      exhaust_to_line_mm: apart,
      exhaust_to_combustible_mm: apart,
    },
    row: (n, typed) => (typed?.what ? `${n} ${THINGS[Number(typed.what)]}` : t`Thing ${n}`),
    addRow: t`Add a thing`,
  },
  boat_outlet: {
    fields: {
      outlet_height_mm: [t`Outlet above the water`, t`its lower edge`],
      outlet_across_mm: [t`Outlet from the centreline`, t`across the hull`],
      loop_height_mm: [t`Top of the loop above the water`, t`the lower edge inside it`],
      loop_across_mm: [t`Loop from the centreline`, t`across the hull`],
      heel_deg: [t`Heel`, t`the most she may heel with the outlet open`],
      sinkage_mm: [t`Lower by load, trim, stern wave`, t`0 if none; its ± stays`],
    },
    results: {
      outlet_mm: t`Outlet above the water, heeled`,
      loop_mm: t`Top of the loop above the water, heeled`,
    },
    how: {
      outlet_mm: t`height · cos(heel) − distance · sin(heel) − sinkage`,
      loop_mm: t`the same, of the loop’s top`,
    },
    change: { outlet_above_water_mm: higher, loop_above_water_mm: higher },
  },
};
