// Words of the first start: steps, stop, timers, baseline.

import { t } from '../language.js';

/** @param {number} minutes */
const span = (minutes) => {
  const hours = minutes / 60;
  return minutes < 60 ? `${minutes} min` : `${hours} h`;
};

const ONE_AT_A_TIME = t`Starts in a row: no more than the manual allows, then its pause.`;

export const words = {
  title: t`First start`,
  cautions: [
    t`The heater’s manual comes first. It may ask for more than this list.`,
    t`Carbon monoxide has no smell. Headache, dizziness or sickness: out at once, call for help.`,
    t`Extinguisher for burning liquids at hand. Fuel: no flame, no sparks, wipe up what drips.`,
    t`Exhaust and outlet burn. No hand and no phone on them, for a long while after they ran.`,
    t`Engine off and cold. Vehicle chocked. Never under it without stands.`,
  ],
  cautionsTitle: t`Cautions`,
  /** @param {number} n */
  beyondFirst: (n) => t`Beyond in this job: ${n}. The heater stays off until they are put right.`,
  watch: t`Headache, dizziness, smoke, smell, a leak: STOP.`,
  /** @param {number} n @param {number} of */
  step: (n, of) => t`Step ${n} of ${of}`,
  /** @param {number[]} n done, skipped, not proven, to do */
  summary: ([done, skipped, unproven, open]) =>
    [
      t`${done} done`,
      skipped && t`${skipped} skipped`,
      unproven && t`${unproven} not proven`,
      open && t`${open} to do`,
    ]
      .filter(Boolean)
      .join(', '),
  allTold: t`Every step was answered.`,
  notAll: t`Every step was answered, but not all of them are proven: what was skipped or is not proven stands below, to be done yet.`,
  list: t`All steps`,
  ticks: t`Notice and alarms once more, with a photo or in words`,
  /** With a photo or in words: what outlives the first start. @type {Record<string, string>} */
  tick: {
    filler_notice: t`The notice at the filler is in place: heater off before refuelling.`,
    co_alarms: t`Each space that people sleep in has its carbon monoxide alarm, tested, with its last day in the list.`,
  },
  worth: [t`to do`, t`done`, t`skipped`, t`not proven`],
  /** Why a step that was done is not proven. */
  unproven: t`Not proven: something it rests on was skipped or is open, it was done before a stop, or its time, its readings or its dates do not bear it out.`,
  again: t`Done before the stop: to be done again.`,
  who: t`Your name`,
  needsWho: t`Enter your name.`,
  note: t`What you saw, if it needs words`,
  done: t`Done`,
  skip: t`Skip`,
  /** @param {string} title @param {string} reason */
  skipped: (title, reason) => t`${title} (skipped: ${reason})`,
  /** @param {string} title */
  notProven: (title) => t`${title} (done, not proven)`,
  /** @param {string} title @param {string} what */
  isBeyond: (title, what) => t`${title}: beyond the limit (${what})`,
  /** @param {string} titles */
  skippedAre: (titles) => t`Skipped so far: ${titles}.`,
  lookAgain: t`What it lacks`,
  skipAsk: t`Why it is skipped`,
  needsReason: t`Say why: the step stands in the list as skipped, with these words.`,
  skipConfirm: t`Skip it`,
  skipBack: t`Back`,
  takeBack: t`Take it back`,
  next: t`Go on with the list`,
  /** @param {string} who @param {string} time @param {string} reason */
  by: (who, time, reason) => `${who}, ${time}${reason ? `: ${reason}` : ''}`,
  beforeStop: t`before the stop`,
  ways: {
    start_co: [t`CO test`, t`meter, space, readings`],
    start_values: [t`Measured values`, t`voltages, temperatures, times; baseline`],
    start_card: [t`Driver’s card`, t`to print and leave in the vehicle`],
    fuel_prime: [t`Filling the line`, t`how long the pump takes`],
  },
  stop: {
    now: t`STOP`,
    title: t`STOP`,
    /** @param {string} line when, and what it was */
    isOn: (line) => t`STOP is on. ${line}`,
    does: [
      t`Stop: heater off at its control.`,
      t`Out: everybody, now.`,
      t`Ventilate: all doors open, from outside.`,
      t`Find the cause, heater off and cold.`,
    ],
    more: [
      t`Leave its power on until it is still. But if it burns, leaks fuel, or a cable is hot: cut the power too.`,
      t`Stay out until the meter, held in the door, shows what it shows outdoors.`,
    ],
    fire: t`Fire, or anybody unwell: call the emergency number first.`,
    what: t`What it was`,
    reasons: {
      co: t`Carbon monoxide rose`,
      leak: t`A leak: fuel, exhaust, air`,
      flame: t`Flame, smoke or smell where none belongs`,
      starts: t`No flame, and the starts in a row are used up`,
      hot: t`Fuse blown, or a cable is hot`,
      other: t`Something else`,
    },
    /** @type {Record<string, string>} */
    auto: {
      co: t`The readings rose by more than the meter’s error.`,
      starts: t`More starts in a row than the limit.`,
    },
    goOn: t`To go on, in words. They stay in the record.`,
    why: t`Why it can go on`,
    found: t`What was found and mended, what the meter showed after airing`,
    needs: t`Tell what it was, who goes on, why, and what was found.`,
    resume: t`Go on after the stop`,
    anew: t`Steps done before the stop are to be done again.`,
    past: t`Stops`,
    /** @param {string} what @param {string} time */
    line: (what, time) => `${time}: ${what}`,
    /** @param {string} who @param {string} time @param {string} what */
    resumed: (who, time, what) => t`Went on: ${who}, ${time}. ${what}`,
    /** @param {string} why @param {string} found */
    wentOn: (why, found) => t`${why}. Found: ${found}`,
    /** @param {string} readings */
    readings: (readings) => t`Readings then: ${readings}`,
    /** @param {string} n */
    starts: (n) => t`starts: ${n}`,
  },
  timer: {
    names: {
      prime: t`Time to fill the line`,
      co: t`Time of the CO test`,
      after_run: t`After-run`,
    },
    /** @param {string} time */
    due: (time) => t`At least ${time}.`,
    start: {
      prime: t`Pump runs: start the time`,
      co: t`Flame burns: start the time`,
      after_run: t`Switched off: start the time`,
    },
    seen: {
      prime: t`Fuel is at the heater`,
      co: '',
      after_run: t`It stands still now`,
    },
    /** @param {string} time */
    left: (time) => t`${time} left`,
    /** @param {string} time */
    ran: (time) => t`${time} so far`,
    /** @param {string} time */
    ended: (time) => t`Over, after ${time}.`,
    clock: [
      '',
      t`The phone’s clock was set back meanwhile. This time counts as not proven: start it again, or read a watch.`,
      t`The phone’s clock jumped ahead meanwhile. This time counts as not proven: start it again, or read a watch.`,
    ],
    /** @param {string} time */
    alone: (time) =>
      t`${time} of it with the page closed or the phone asleep: that rests on the phone’s clock alone.`,
    again: t`Start it again`,
    keepOpen: t`The sound at the end comes only while this page is open.`,
    noPrime: t`No time yet: the fuel’s sheet has to tell how long filling takes.`,
    noCo: t`No time yet: the CO test has to know the least air change.`,
  },
  alarms: {
    space: t`Sleeping space`,
    expires: t`Alarm’s expiry date, from its back`,
    add: t`Add a sleeping space`,
    remove: t`Take away`,
    states: [
      t`no date, or none that can be: not done`,
      t`expired: not done`,
      t`in date, tomorrow too`,
    ],
    none: t`No sleeping space told yet.`,
  },
  co: {
    title: t`CO test`,
    lead: t`Before ignition: zero the meter in clean outdoor air and note what it shows there. Lay it inside where it can be read through a window. Outdoors, doors closed, nobody inside. Full power, then low. Read from outside.`,
    alarm: t`An alarm is made to wake people. It is no meter: it can show a rise, never that there is none.`,
    meter: t`Meter`,
    space: t`Space and air`,
    spaceWhy: t`How often the air changes is never known well: tell the least and the most that may be. The least makes the test long, the most hides a leak.`,
    run: t`Run`,
    urgent: t`How urgent`,
    /** @param {string} source @param {number} minutes */
    reaches: (source, minutes) => {
      const time = span(minutes);
      return minutes
        ? t`With its error on top the highest reading may reach: ${source}, mean over ${time}.`
        : t`With its error on top the highest reading may reach: ${source}, never to be passed.`;
    },
    reachesNone: t`Below every published value in the list.`,
    urgentWhy: t`This says how urgent it is, never that a reading is acceptable.`,
    toStop: t`When all are out: go on here`,
    outdoorsFirst: t`First: reading outdoors`,
    noOutdoors: t`No reading outdoors is noted: without it no rise can be told, and no STOP comes by itself.`,
  },
  values: {
    title: t`Measured values`,
    lead: t`Read each at the moment its step says. They are the baseline that a service compares with.`,
    glow: t`Glow pin on`,
    running: t`Running`,
    air: t`Air`,
    times: t`Start and after-run`,
    baseline: t`Baseline`,
    baselineWhy: t`Kept as it was measured: later typing changes nothing in it.`,
    keep: t`Keep as baseline`,
    nothing: t`Nothing measured yet.`,
    /** @param {string} who @param {string} time */
    kept: (who, time) => t`Kept by ${who}, ${time}`,
    none: t`None kept yet.`,
  },
};

/** @typedef {{ title: string, does: string }} Step */

/** By core's names, in the order of the work. @type {Record<string, Step>} */
export const steps = {
  extinguisher: {
    title: t`Extinguisher, chocks`,
    does: t`A fire extinguisher for burning liquids stands at hand, its gauge in the green. Engine off and cold, vehicle chocked.`,
  },
  outdoors: {
    title: t`Vehicle outdoors`,
    does: t`The vehicle stands in the open, not under a roof or beside an open window or door. Nothing that can burn lies before the exhaust, and its end is free.`,
  },
  meter: {
    title: t`CO meter on`,
    does: t`A CO meter is zeroed in clean outdoor air and shows there what is noted in the CO test. It is on before ignition, lies inside, and can be read from outside.`,
  },
  closed: {
    title: t`Doors closed, nobody inside`,
    does: t`Doors and windows are closed. Nobody is inside, and nobody sleeps nearby. The heater can be switched off without going in.`,
  },
  leaks_cold: {
    title: t`Leaks, cold`,
    does: t`Every fuel joint is dry under a clean cloth. Every joint of exhaust and combustion-air pipe is clamped and cannot be turned by hand.`,
  },
  prime: {
    title: t`Fill the line`,
    does: t`Fill the line the manual’s way. The time is the least it takes. ${ONE_AT_A_TIME}`,
  },
  ignition: {
    title: t`Ignition`,
    does: t`Switch on. Count starts and minutes until the flame burns. ${ONE_AT_A_TIME} Smoke that does not clear: STOP.`,
  },
  voltage: {
    title: t`Voltages`,
    does: t`While the glow pin draws its current, and again while it runs at full power: battery and heater’s plug at the same moment. Do not open a plug under load.`,
  },
  outlet: {
    title: t`Outlet, full power`,
    does: t`At full power, when the temperature stands still: air going in and air at the outlet. Hold the probe in the stream, not on metal. Read the CO meter too, and note it in the CO test.`,
  },
  low: {
    title: t`Low power`,
    does: t`Turn down to low power and let it settle. Current, and air at the outlet.`,
  },
  co_test: {
    title: t`CO: full, then low`,
    does: t`Readings at full and then at low power, until the time is over. Read from outside. A rise by more than the meter’s error: STOP.`,
  },
  leaks_hot: {
    title: t`Leaks, hot`,
    does: t`Look, smell and listen along fuel line, exhaust and air pipe while it runs: dry, no soot, no hiss. Do not touch: burns.`,
  },
  after_run: {
    title: t`After-run, then power off`,
    does: t`Switch the heater off at its control. It runs on to cool itself. Only when it is still may its power be cut.`,
  },
  torques: {
    title: t`Clamps and torques`,
    does: t`After this first heat cycle, cold again: every clamp and every screw with a torque in the manual was tightened anew.`,
  },
  driver: {
    title: t`Driver told`,
    does: t`The driver was shown how to switch on and off, to wait for the after-run, what never to do, and what an alarm means. The driver’s card is handed over.`,
  },
  filler: {
    title: t`Notice at the filler`,
    does: t`At the fuel filler stands a notice that lasts: heater off before refuelling.`,
  },
  alarms: {
    title: t`CO alarms`,
    does: t`In each sleeping space hangs a CO alarm that was tested with its button and is in date. Write down each space and each expiry date.`,
  },
};
