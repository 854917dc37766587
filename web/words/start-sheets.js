// Words of the first start's sheets: the test for carbon monoxide, what was measured.

import { t } from '../language.js';

const ROOM = t`doors closed, nothing running`;

/** @type {Record<string, import('../plan/sheet.js').SheetWords>} */
export const sheets = {
  co_check: {
    fields: {
      device: [t`Read with`, t`what its paper calls it`],
      meter_ppm: [t`Its error, fixed part`, t`from its paper`],
      meter_share: [
        t`Part that grows with the reading`,
        t`0.1 for 10 %; 0 if its paper names none`,
      ],
      step_ppm: [t`Smallest step it shows`, t`as 1, or 0.1`],
      blank_ppm: [t`It shows 0 up to`, t`empty if its paper says nothing`],
      outdoor_ppm: [t`Reading outdoors`, t`clean air, after zeroing, before ignition`],
      volume_m3: [t`Space the warm air goes through`, t`length times width times height`],
      air_least_per_h: [t`Least air changes an hour`, ROOM],
      air_most_per_h: [t`Most that may be`, t`wind, vents, a fan left on`],
      powers: t`How the heater ran`,
      meter_spread: t`the meter’s fixed error`,
      share_spread: t`the meter’s error with the reading`,
      outdoor_step_spread: t`the last digit outdoors`,
      place: t`Where`,
      minutes: [t`Minutes since ignition`, t`when the display stands still`],
      power: t`Power`,
      ppm: t`It shows`,
      step_spread: t`the last digit`,
    },
    choices: {
      device: [t`CO meter with zero and paper`, t`CO alarm`],
      powers: [t`at full, then at low power`, t`not at both, or low first`],
      place: [
        t`at the head of a bed`,
        t`at a seat`,
        t`before the warm-air outlet`,
        t`at the heater`,
        t`at the return-air opening`,
        t`elsewhere inside`,
      ],
      power: [t`full`, t`low`],
    },
    results: {
      rise_ppm: t`Largest rise above outdoors`,
      shown_rise_ppm: t`Rise that the meter shows`,
      part_rise_ppm: t`Largest rise so far, test not whole`,
      alarm_rise_ppm: t`Largest rise by an alarm, which is no meter`,
      spare_test_min: t`Test time more than the least`,
      needed_min: t`The test takes at least`,
      full_min: t`Tested at full power`,
      low_min: t`Tested at low power`,
      unseen_full_l_per_h: t`Leak of CO this could not see, full power`,
      unseen_low_l_per_h: t`The same, low power`,
      reading_rise_ppm: t`above outdoors`,
    },
    how: {
      rise_ppm: t`largest reading less the one outdoors. One meter read both: its growing part acts on the difference, its fixed part once in full, since it was zeroed in cold air and reads warm air`,
      shown_rise_ppm: t`the same, where a reading inside is higher by more than its last digit, and by more than 1 ppm`,
      part_rise_ppm: t`the same, of a test that is not whole`,
      alarm_rise_ppm: t`largest reading less the one outdoors`,
      spare_test_min: t`last reading whose power is told, less 3/n hours at the least air change n`,
      needed_min: t`3/n hours at the least air change n`,
      full_min: t`to the last reading at full power`,
      low_min: t`from there to the last reading at low power`,
      unseen_full_l_per_h: t`c = G/(n·V)·(1 − e^(−n·t)) solved for G, at the most air change, c the meter’s own U: a smaller leak cannot be told from its error`,
      unseen_low_l_per_h: t`the same, for the time at low power`,
    },
    silent: ['rise_ppm', 'shown_rise_ppm', 'part_rise_ppm', 'alarm_rise_ppm'],
    change: {
      spare_test_min: (by) =>
        t`Go on with the test: a reading ${by} later would make it long enough.`,
    },
    advice: {
      'rise_ppm.beyond': t`STOP. Out, ventilate, find the cause.`,
      'rise_ppm.not_proven': t`No rise found by this meter, this time. More than that no test can say.`,
      'shown_rise_ppm.beyond': t`STOP. Out, ventilate, find the cause.`,
      'shown_rise_ppm.not_proven': t`It shows more inside than outdoors. That is less than its own error, but nothing is cleared: out, ventilate, look for the cause, then read again with a finer meter.`,
      'part_rise_ppm.beyond': t`STOP. Out, ventilate, find the cause.`,
      'alarm_rise_ppm.beyond': t`STOP. Out, ventilate, find the cause.`,
      'part_rise_ppm.not_proven': t`Not a whole test yet: full, then low power, with readings at both, and the last one late enough.`,
      'alarm_rise_ppm.not_proven': t`An alarm is not a survey meter: its silence shows nothing. Read with a meter.`,
    },
    row: (/** @type {number} */ n) => t`Reading ${n}`,
    addRow: t`Add a reading`,
  },
  started: {
    fields: {
      battery_glow_v: [t`At the battery, glow pin on`, t`at its posts`],
      heater_glow_v: [t`At the heater’s plug, glow pin on`, t`at the same moment`],
      glow_a: [t`Current, glow pin on`, t`clamp round the plus lead`],
      battery_run_v: [t`At the battery, running`, t`full power`],
      heater_run_v: [t`At the heater’s plug, running`, t`at the same moment`],
      run_a: [t`Current, full power`, t`clamp round the plus lead`],
      low_a: [t`Current, low power`, t`clamp round the plus lead`],
      intake_celsius: [t`Air going in`, t`full power, at the intake`],
      outlet_celsius: [t`Air at the outlet`, t`full power, after 10 minutes`],
      outlet_low_celsius: [t`Air at the outlet, low power`, t`when it stands still`],
      flame_min: [t`From switching on to the flame`, t`by a watch`],
      starts: t`Starts it took`,
      after_run_min: [t`After-run`, t`from switching off until it is still`],
    },
    problems: {
      'heater_glow_v.contradiction': t`More than at the battery: read both at the same moment, charger off.`,
      'heater_run_v.contradiction': t`More than at the battery: read both at the same moment, charger off.`,
    },
    results: {
      heater_glow_v: t`At the heater, glow pin on`,
      heater_run_v: t`At the heater, running`,
      drop_glow_v: t`Lost in the cable, glow pin on`,
      drop_run_v: t`Lost in the cable, running`,
      cable_mohm: t`Cable, joints and fuse`,
      outlet_celsius: t`Air at the outlet, full power`,
      outlet_low_celsius: t`Air at the outlet, low power`,
      rise_kelvin: t`Air gets warmer by`,
      flame_min: t`Time to the flame`,
      starts: t`Starts it took`,
      after_run_min: t`After-run`,
      battery_glow_v: t`At the battery, glow pin on`,
      glow_a: t`Current, glow pin on`,
      battery_run_v: t`At the battery, running`,
      run_a: t`Current, full power`,
      low_a: t`Current, low power`,
      intake_celsius: t`Air going in`,
    },
    how: {
      drop_glow_v: t`battery less heater, out and back`,
      drop_run_v: t`battery less heater, out and back`,
      cable_mohm: t`what is lost, by the current, glow pin on`,
      rise_kelvin: t`outlet less intake, full power`,
    },
    change: {
      start_voltage_v: (by) =>
        t`${by} more at the heater: a thicker conductor, a shorter way, better joints, a fuller battery.`,
      supply_voltage_v: (by, more) =>
        more
          ? t`${by} more at the heater: a fuller battery, less lost on the way.`
          : t`${by} less: not the voltage that this heater is for.`,
      cable_drop_v: (by) => t`Lose ${by} less: a thicker conductor, a shorter way, better joints.`,
      outlet_air_celsius: (by, more) =>
        more
          ? t`${by} warmer.`
          : t`${by} cooler: more air, or a freer way for it. Too hot: shut off, let run down.`,
      after_run_min: (by, more) =>
        more
          ? t`${by} longer: its power must stay on until it is still. Look at switch, timer, battery, then time it again.`
          : t`${by} shorter: look in the manual what makes it run on, then time it again.`,
    },
    advice: { 'starts.beyond': t`No more starts: pause or unlock as the manual says.` },
  },
};
