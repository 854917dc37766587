// Words of the first start: steps, stop, timers, baseline.

const ONE_AT_A_TIME = 'Starts in a row: no more than the manual allows, then its pause.';

export const words = {
  title: 'First start',
  cautions: [
    'The heater’s manual comes first. It may ask for more than this list.',
    'Carbon monoxide has no smell. Headache, dizziness or sickness: out at once, call for help.',
    'Extinguisher for burning liquids at hand. Fuel: no flame, no sparks, wipe up what drips.',
    'Exhaust and outlet burn. No hand and no phone on them, for a long while after they ran.',
    'Engine off and cold. Vehicle chocked. Never under it without stands.',
  ],
  cautionsTitle: 'Cautions',
  watch: 'Headache, dizziness, smoke, smell, a leak: STOP.',
  /** @param {number} n @param {number} of */
  step: (n, of) => `Step ${n} of ${of}`,
  /** @param {number[]} n done, skipped, not proven, to do */
  summary: ([done, skipped, unproven, open]) =>
    [
      `${done} done`,
      skipped && `${skipped} skipped`,
      unproven && `${unproven} not proven`,
      open && `${open} to do`,
    ]
      .filter(Boolean)
      .join(', '),
  allTold: 'Nothing left to do in this list. What was skipped or is not proven stands in it.',
  list: 'All steps',
  ticks: 'Seen with your own eyes',
  /** With a photo or in words: what outlives the first start. @type {Record<string, string>} */
  tick: {
    filler_notice: 'The notice at the filler is in place: heater off before refuelling.',
    co_alarms:
      'Each space that people sleep in has its carbon monoxide alarm, tested, with its last day in the list.',
  },
  worth: ['to do', 'done', 'skipped', 'not proven'],
  /** Why a step that was done is not proven. */
  unproven:
    'Not proven: something it rests on was skipped or is open, it was done before a stop, or its time, its readings or its dates do not bear it out.',
  again: 'Done before the stop: to be done again.',
  who: 'Your name',
  needsWho: 'Enter your name.',
  note: 'What you saw, if it needs words',
  done: 'Done',
  skip: 'Skip',
  /** @param {string} title @param {string} reason */
  skipped: (title, reason) => `${title} (skipped: ${reason})`,
  /** @param {string} title */
  notProven: (title) => `${title} (done, not proven)`,
  skipAsk: 'Why it is left out',
  needsReason: 'Say why: the step stands in the list as skipped, with these words.',
  skipConfirm: 'Leave it out',
  skipBack: 'Back',
  takeBack: 'Take it back',
  next: 'Go on with the list',
  /** @param {string} who @param {string} time @param {string} reason */
  by: (who, time, reason) => `${who}, ${time}${reason ? `: ${reason}` : ''}`,
  beforeStop: 'before the stop',
  ways: {
    start_co: ['CO test', 'meter, space, readings'],
    start_values: ['Measured values', 'voltages, temperatures, times; baseline'],
    start_card: ['Driver’s card', 'to print and leave in the vehicle'],
    fuel_prime: ['Filling the line', 'how long the pump takes'],
  },
  stop: {
    now: 'STOP',
    title: 'STOP',
    on: 'STOP is on',
    does: [
      'Stop: heater off at its control.',
      'Out: everybody, now.',
      'Ventilate: all doors open, from outside.',
      'Find the cause, heater off and cold.',
    ],
    more: [
      'Leave its power on until it is still. But if it burns, leaks fuel, or a cable is hot: cut the power too.',
      'Stay out until the meter, held in the door, shows what it shows outdoors.',
    ],
    fire: 'Fire, or anybody unwell: call the emergency number first.',
    what: 'What it was',
    reasons: {
      co: 'Carbon monoxide rose',
      leak: 'A leak: fuel, exhaust, air',
      flame: 'Flame, smoke or smell where none belongs',
      starts: 'No flame, and the starts in a row are used up',
      hot: 'Fuse blown, or a cable is hot',
      other: 'Something else',
    },
    /** @type {Record<string, string>} */
    auto: {
      co: 'The readings rose by more than the meter’s error.',
      starts: 'More starts in a row than the limit.',
    },
    goOn: 'To go on, in words. They stay in the record.',
    why: 'Why it can go on',
    found: 'What was found and mended',
    needs: 'Tell what it was, who goes on, why, and what was found.',
    resume: 'Go on after the stop',
    anew: 'Steps done before the stop are to be done again.',
    past: 'Stops',
    /** @param {string} what @param {string} time */
    line: (what, time) => `${time}: ${what}`,
    /** @param {string} who @param {string} time @param {string} what */
    resumed: (who, time, what) => `Went on: ${who}, ${time}. ${what}`,
    /** @param {string} why @param {string} found */
    wentOn: (why, found) => `${why}. Found: ${found}`,
    /** @param {string} readings */
    readings: (readings) => `Readings then: ${readings}`,
  },
  timer: {
    names: {
      prime: 'Time to fill the line',
      co: 'Time of the CO test',
      after_run: 'After-run',
    },
    /** @param {string} time */
    due: (time) => `At least ${time}.`,
    start: {
      prime: 'Pump runs: start the time',
      co: 'Flame burns: start the time',
      after_run: 'Switched off: start the time',
    },
    seen: {
      prime: 'Fuel is at the heater',
      co: '',
      after_run: 'It is still now',
    },
    /** @param {string} time */
    left: (time) => `${time} left`,
    /** @param {string} time */
    ran: (time) => `${time} so far`,
    /** @param {string} time */
    ended: (time) => `Over, after ${time}.`,
    clock: [
      '',
      'The phone’s clock was set back meanwhile. This time counts as not proven: start it again, or read a watch.',
      'The phone’s clock jumped ahead meanwhile. This time counts as not proven: start it again, or read a watch.',
    ],
    /** @param {string} time */
    alone: (time) =>
      `${time} of it with the page closed or the phone asleep: that rests on the phone’s clock alone.`,
    again: 'Start it again',
    keepOpen: 'The sound at the end comes only while this page is open.',
    noPrime: 'No time yet: the fuel’s sheet has to tell how long filling takes.',
    noCo: 'No time yet: the CO test has to know the least air change.',
  },
  alarms: {
    space: 'Sleeping space',
    expires: 'Alarm’s expiry date, from its back',
    add: 'Add a sleeping space',
    remove: 'Take away',
    states: ['no date, or none that can be: not done', 'expired: not done', 'in date'],
    none: 'No sleeping space told yet.',
  },
  co: {
    title: 'CO test',
    lead: 'Before ignition: zero the meter in clean outdoor air and note what it shows there. Lay it inside where it can be read through a window. Outdoors, doors closed, nobody inside. Full power, then low. Read from outside.',
    alarm: 'An alarm is made to wake people. It is no meter: what it shows can only be a rise.',
    meter: 'Meter',
    space: 'Space and air',
    spaceWhy:
      'How often the air changes is never known well: tell the least and the most that may be. The least makes the test long, the most hides a leak.',
    run: 'Run',
    urgent: 'How urgent',
    /** @param {string} source @param {number} minutes */
    reaches: (source, minutes) =>
      `With its error on top the highest reading may reach: ${source}, ${minutes ? `mean over ${minutes < 60 ? `${minutes} min` : `${minutes / 60} h`}` : 'never to be passed'}.`,
    reachesNone: 'Below every published value in the list.',
    urgentWhy: 'This says how urgent it is, never that a reading is acceptable.',
    toStop: 'When all are out: go on here',
  },
  values: {
    title: 'Measured values',
    lead: 'Read each at the moment its step says. They are the baseline that a service compares with.',
    glow: 'Glow pin on',
    running: 'Running',
    air: 'Air',
    times: 'Start and after-run',
    baseline: 'Baseline',
    baselineWhy: 'Kept as it was measured: later typing changes nothing in it.',
    keep: 'Keep as baseline',
    nothing: 'Nothing measured yet.',
    /** @param {string} who @param {string} time */
    kept: (who, time) => `Kept by ${who}, ${time}`,
    none: 'None kept yet.',
  },
};

/** @typedef {{ title: string, does: string }} Step */

/** By core's names, in the order of the work. @type {Record<string, Step>} */
export const steps = {
  extinguisher: {
    title: 'Extinguisher, chocks',
    does: 'A fire extinguisher for burning liquids stands at hand, its gauge in the green. Engine off and cold, vehicle chocked.',
  },
  outdoors: {
    title: 'Vehicle outdoors',
    does: 'The vehicle stands in the open, not under a roof or beside an open window or door. Nothing that can burn lies before the exhaust, and its end is free.',
  },
  meter: {
    title: 'CO meter on',
    does: 'A CO meter is zeroed in clean outdoor air and shows there what is noted in the CO test. It is on before ignition, lies inside, and can be read from outside.',
  },
  closed: {
    title: 'Doors closed, nobody inside',
    does: 'Doors and windows are closed. Nobody is inside, and nobody sleeps nearby. The heater can be switched off without going in.',
  },
  leaks_cold: {
    title: 'Leaks, cold',
    does: 'Every fuel joint is dry under a clean cloth. Every joint of exhaust and combustion-air pipe is clamped and cannot be turned by hand.',
  },
  prime: {
    title: 'Fill the line',
    does: `Fill the line the manual’s way. The time is the least it takes. ${ONE_AT_A_TIME}`,
  },
  ignition: {
    title: 'Ignition',
    does: `Switch on. Count starts and minutes until the flame burns. ${ONE_AT_A_TIME} Smoke that does not clear: STOP.`,
  },
  voltage: {
    title: 'Voltages',
    does: 'While the glow pin draws its current, and again while it runs at full power: battery and heater’s plug at the same moment. Do not open a plug under load.',
  },
  outlet: {
    title: 'Outlet, full power',
    does: 'At full power, when the temperature stands still: air going in and air at the outlet. Hold the probe in the stream, not on metal.',
  },
  low: {
    title: 'Low power',
    does: 'Turn down to low power and let it settle. Current, and air at the outlet.',
  },
  co_test: {
    title: 'CO: full, then low',
    does: 'Readings at full and then at low power, until the time is over. Read from outside. A rise by more than the meter’s error: STOP.',
  },
  leaks_hot: {
    title: 'Leaks, hot',
    does: 'Look, smell and listen along fuel line, exhaust and air pipe while it runs: dry, no soot, no hiss. Do not touch: burns.',
  },
  after_run: {
    title: 'After-run, then power off',
    does: 'Switch the heater off at its control. It runs on to cool itself. Only when it is still may its power be cut.',
  },
  torques: {
    title: 'Clamps and torques',
    does: 'After this first heat cycle, cold again: every clamp and every screw with a torque in the manual was tightened anew.',
  },
  driver: {
    title: 'Driver told',
    does: 'The driver was shown how to switch on and off, to wait for the after-run, what never to do, and what an alarm means. The driver’s card is handed over.',
  },
  filler: {
    title: 'Notice at the filler',
    does: 'At the fuel filler stands a notice that lasts: heater off before refuelling.',
  },
  alarms: {
    title: 'CO alarms',
    does: 'In each sleeping space hangs a CO alarm that was tested with its button and is in date. Write down each space and each expiry date.',
  },
};
