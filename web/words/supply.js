// Words of the supply: its screens, their drawings, what is seen by eye. The sheets' own words stand
// in supply-sheets.js.

export const words = {
  title: 'Supply',
  cautions: [
    'Before any work on cables take the battery’s minus off; put it back last.',
    'No rings and no loose tools at the posts: a short burns skin and starts fires. No flame, no sparks: what a battery gives off explodes. Charger off, space aired.',
    'Never a fuse larger than its conductor carries. Never a conductor without one.',
    'The heater’s manual, local rules and a licensed electrician where one is required come first.',
  ],
  /** Which of them stand on a sheet's own screen. @type {Record<string, number[]>} */
  cautionsOf: { bank: [1], cable: [0], fuse: [0, 2], battery: [1] },
  /** @type {Record<string, [string, string]>} */
  sheets: {
    bank: ['Bank', 'voltage, across the whole of it'],
    cable: ['Cable', 'lost out and back, sizes, harness'],
    fuse: ['Fuse', 'the manual’s, below its conductor'],
    battery: ['Hours', 'how long it lasts, after-run'],
  },
  /** @type {Record<string, string>} */
  why: {
    bank: 'Heater, engine and charger off. Read both, one after the other, with the same meter.',
    cable:
      'Along the cable’s own way, out and back each by itself. Read the battery’s voltage while the current flows, not at rest.',
    fuse: 'What a conductor carries is on its own paper, for free air. Engine spaces and bundles leave less of it: the same paper says how much.',
    battery:
      'Charge is counted for running, standby, starts and after-runs. The after-run needs its charge too: a battery that drops out cuts it short.',
  },
  ticks: 'Seen with your own eyes',
  /** @type {Record<string, Record<string, string>>} */
  tick: {
    bank: {
      across:
        'Both cables followed to the posts: they leave from the first plus and the last minus of the whole bank, never from between two batteries.',
    },
    cable: {
      harness:
        'The harness goes through every edge in a grommet, is fixed along its way, and keeps off sharp, moving and hot parts.',
      earth:
        'Minus goes to bare metal, protected again afterwards, or straight to the bank’s minus.',
      controller:
        'The controller can be reached, and its sensor feels the room: no sun, no draught, no warm air from a vent or a person.',
      behind: 'Behind the controller nothing lies where its screws go: no cable, no pipe, no tank.',
    },
    fuse: {
      at_battery: 'The fuse sits at the battery, in its holder, with the rating printed on it.',
    },
    battery: {
      stays_on:
        'Supply stays on through the after-run: no switch, no timer, no isolator cuts it before the heater stands still.',
      vented: 'The space that the battery stands in is vented to the outside.',
    },
  },
  groups: {
    way: 'The way',
    conductor: 'The conductor',
    start: 'During start',
    running: 'While it runs',
    fuse: 'Fuse',
    carries: 'What the conductor carries',
    bank: 'Two readings',
    battery: 'Battery',
    draw: 'What flows',
    starts: 'Starts and after-runs',
    wanted: 'Wanted',
  },
  paper: 'From the cable’s own paper, where you have it',
  paperWhy:
    'Empty: anything that the name of its size can stand for, so the ± is wide. For the conductor that is there; the list of sizes does not use it.',
  peukert: 'Large currents take more than their charge',
  peukertWhy:
    'Peukert’s exponent, from the battery’s paper. It counts above the current that the label is for. Empty: not counted, and above that current nothing is proven.',
  /** @param {string} value @param {string} u */
  lasts_h: (value, u) => `It lasts ${value} ${u}, starts and after-runs counted.`,
  /** @param {string} value @param {string} u */
  lasts_at_most_h: (value, u) =>
    `It lasts at most ${value} ${u}: this is more current than its label is for.`,
  /** @param {string} amperes */
  boatLaw: (amperes) =>
    `For US petrol boats 33 CFR 183.425 lets this size carry ${amperes} with insulation for 105 °C, before engine space and bundle. An orientation: it is used nowhere here.`,
  noBoatLaw: 'No orientation for this size: the table that is kept here has AWG 18 to 8.',
  fuseLaw:
    'US petrol boats, 33 CFR 183.455: within 7 in of the battery along the conductor, within 40 in where that is sheathed.',
  sizes: {
    title: 'Which size would hold',
    why: 'The same way with each size of both lists in its place. It must carry its fuse as well: see there.',
    area: 'mm², IEC 60228 class 5',
    gauge: 'AWG',
    head: ['Size', 'Lost at start', 'Heater at start', 'Answer'],
    /** @param {string} size */
    first: (size) => `Smallest that holds: ${size}.`,
    none: 'None of them is proven to hold.',
    /** @param {string} names */
    uncounted: (names) => `Not counted, for its limit is not entered: ${names}.`,
  },
  picture: {
    circuit: 'From the battery through fuse and joints to the heater and back, with what is lost',
    bank: 'The bank with the two posts that the heater’s cable leaves from',
    joints: 'joints',
    out: 'out',
    back: 'back',
    body: 'back by the body',
    battery: 'battery',
    heater: 'heater',
    lost: 'lost',
    whole: 'whole bank',
    takeOff: 'take-off',
    never: 'never here',
  },
};
