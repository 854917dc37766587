// Words of the flue: the screen with its ways, cautions, what was seen.

export const words = {
  title: 'Exhaust and combustion air',
  cautions: [
    'Engine and heater off and cold, vehicle chocked. Never under a cab or an air-sprung body without stands.',
    'An exhaust that has run burns skin and sets things alight: wait until it is cold. Never lay a phone on a pipe that has run.',
    'Exhaust gas kills without a smell. Every joint, drain and end belongs where none of it can come inside.',
    'The heater’s manual and local law come first.',
  ],
  where: 'Where it is',
  whereWhy: 'A boat has no drain in its pipe, and an outlet of its own.',
  /** @type {Record<string, [string, string]>} */
  sheets: {
    exhaust: ['Exhaust', 'leg by leg: fall, low points, length, bends'],
    air_pipe: ['Combustion air', 'leg by leg: fall, low points, length, bends'],
    pipe_ends: ['Ends', 'openings, lines, what can burn'],
    boat_outlet: ['Boat’s outlet', 'above the water as she heels'],
  },
  ticks: 'Seen with your own eyes',
  boatTicks: 'On a boat, seen with your own eyes',
  /** By the sheet that they stand for. @type {Record<string, Record<string, string>>} */
  tick: {
    exhaust: {
      flue_fixed: 'Both pipes are fixed along their way, and every joint is clamped and gas-tight.',
      flue_guarded: 'Nobody can touch the hot pipe: guarded or out of reach.',
      flue_air_outside:
        'Combustion air comes from outside, never from where people are, and clear of exhaust gas.',
    },
    pipe_ends: {
      flue_sheltered: 'Both ends are sheltered from the wind of travel and from thrown dirt.',
      flue_openings: 'Every opening near the exhaust’s end is in the list of the ends.',
      flue_apart:
        'Exhaust, combustion air and the intake of heated air lie apart: none draws what another lets out.',
    },
    boat_outlet: {
      boat_lagged: 'The exhaust is lagged all along, from the heater to the outlet.',
      boat_loop: 'A rising loop keeps the sea out, with its top near the outlet.',
      boat_no_drain: 'No drain, no open joint and no hole in the pipe anywhere inside the boat.',
      boat_closure:
        'The closure or seacock of the outlet can be reached, and is open while the heater runs.',
    },
  },
  pipe: {
    cautions: {
      exhaust:
        'On a cold pipe only. What runs back to the heater, or stands, freezes and closes the pipe.',
      air_pipe: 'Cold heater. Water that stands in the air pipe starves the flame.',
    },
    lead: 'From the heater outwards, a leg for each straight length. A leg that sags between its clamps is two.',
    vehicle: 'Vehicle',
    afloat: 'Afloat',
    afloatWhy:
      'A boat that rolls is read ashore, or as the mean of at least ten roll periods. What is left of the motion counts in the ±.',
    manual: 'A drain',
    manualWhy:
      'Only where the manual allows one, outside in free air, away from openings and hands. Never in a cab, locker, bilge or closed skirt, and never in a boat.',
    levelled:
      'Typed angles are those of the vehicle as it stands. On a slope, read its level first: captures then come in the vehicle.',
    addAll: (/** @type {number} */ n) =>
      n === 1 ? 'Take the capture' : `Take all ${n} captures, oldest first`,
    byPhone: 'Its angle by the phone',
    go: 'Read a leg with the phone',
    none: 'No capture of a pipe leg is left.',
    /** @param {string} time @param {string} angle @param {string} how */
    take: (time, angle, how) => `Take capture ${time}: ${angle} ${how}`,
    view: { vehicle: 'in the vehicle', parked: 'as parked' },
    /** @param {string} time @param {string} how @param {string} u */
    taken: (time, how, u) => `Captured ${time}, ${how}, ± ${u}. Typing over it makes it your own.`,
    moved: 'as parked: the vehicle has moved since its level was read',
    low: 'Where it starts, drain, order',
    earlier: 'Move it nearer to the heater',
    /** @param {string} [angle] @param {string} [length] @param {string} [unit] @param {string} [bend] */
    short: (angle, length, unit, bend) =>
      `${(angle || '?').replace('-', '−')}°, ${length || '?'} ${unit}, bend ${bend || '?'}°`,
    /** By core's remedies. */
    remedies: [
      '',
      'Where it starts is a low point and no drain may be set: lay the pipe another way.',
      'Where it starts is a low point: a drain of the manual’s bore may be set there, or lay the pipe another way.',
    ],
    wet: 'falls, but into the low point after it',
    /** By verdict. @type {Record<string, string>} */
    state: {
      within: 'drains',
      beyond: 'holds water',
      not_proven: 'not proven',
      none: 'not told',
    },
  },
  picture: {
    /** @param {string} name */
    label: (name) => `${name} from the heater, heights to scale; the hatched band is ±`,
    heater: 'heater',
    drain: 'drain',
    water: (/** @type {string} */ depth) => `${depth} of water`,
    /** @param {number} times */
    scale: (times) =>
      times === 1
        ? 'Heights and lengths to one scale.'
        : `Heights drawn ${times} times as large as lengths.`,
    /** Solid, broken, dashed. */
    lines: 'Solid drains, broken holds water, dotted is not proven.',
    boat: 'The hull from astern, heeled; water line, outlet and loop to scale',
    outlet: 'outlet',
    loop: 'loop',
  },
  ends: {
    caution: 'Cold exhaust. Measure round corners as gas or heat would go: the shortest way.',
    air: 'Ends',
    bare: 'Bare or lagged',
    things: 'What is near',
    thingsWhy:
      'Openings: to the exhaust’s end. All else: to the nearest of the pipe. Doors and windows count open.',
    addOpening: 'Add an opening',
    addLine: 'Add a line, cable or tyre',
    addCombustible: 'Add what can burn',
  },
  boat: {
    caution:
      'A sea that comes in by the outlet sinks the boat. What the outlet’s maker asks comes first.',
    lead: 'As she lies still, then heeled to the side that the outlet is on.',
    ignores:
      'Taken: flat water, and a boat that turns about her middle at the water line. Not in it: waves, spray, and a hull that rises or settles as she heels. What load, trim and the stern wave take goes into the last number.',
    at_rest: 'At rest',
    sailing: 'Under way',
  },
};
