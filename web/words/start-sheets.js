// Words of the first start's sheets: the test for carbon monoxide, what was measured.

const ROOM = 'doors closed, nothing running';

/** @type {Record<string, import('../plan/sheet.js').SheetWords>} */
export const sheets = {
  co_check: {
    fields: {
      device: ['Read with', 'what its paper calls it'],
      meter_ppm: ['Its error, fixed part', 'from its paper'],
      meter_share: ['Part that grows with the reading', '0.1 for 10 %; 0 if its paper names none'],
      step_ppm: ['Smallest step it shows', 'as 1, or 0.1'],
      blank_ppm: ['It shows 0 up to', 'empty if its paper says nothing'],
      outdoor_ppm: ['Reading outdoors', 'clean air, after zeroing, before ignition'],
      volume_m3: ['Space the warm air goes through', 'length times width times height'],
      air_least_per_h: ['Least air changes an hour', ROOM],
      air_most_per_h: ['Most that may be', 'wind, vents, a fan left on'],
      powers: 'How the heater ran',
      meter_spread: 'the meter’s fixed error',
      share_spread: 'the meter’s error with the reading',
      outdoor_step_spread: 'the last digit outdoors',
      place: 'Where',
      minutes: ['Minutes since ignition', 'when the display stands still'],
      power: 'Power',
      ppm: 'It shows',
      step_spread: 'the last digit',
    },
    choices: {
      device: ['CO meter with zero and paper', 'CO alarm'],
      powers: ['at full, then at low power', 'not at both, or low first'],
      place: [
        'at the head of a bed',
        'at a seat',
        'before the warm-air outlet',
        'at the heater',
        'at the return-air opening',
        'elsewhere inside',
      ],
      power: ['full', 'low'],
    },
    results: {
      rise_ppm: 'Largest rise above outdoors',
      shown_rise_ppm: 'Rise that the meter shows',
      part_rise_ppm: 'Largest rise so far, test not whole',
      alarm_rise_ppm: 'Largest rise by an alarm, which is no meter',
      spare_test_min: 'Time beyond what the test takes',
      needed_min: 'The test takes at least',
      full_min: 'Tested at full power',
      low_min: 'Tested at low power',
      unseen_full_l_per_h: 'Leak of CO this could not see, full power',
      unseen_low_l_per_h: 'The same, low power',
      reading_rise_ppm: 'above outdoors',
    },
    how: {
      rise_ppm:
        'largest reading less the one outdoors. One meter read both: its growing part acts on the difference, its fixed part once in full, since it was zeroed in cold air and reads warm air',
      shown_rise_ppm: 'the same, where a reading inside is higher by more than its last digit',
      part_rise_ppm: 'the same, of a test that is not whole',
      alarm_rise_ppm: 'largest reading less the one outdoors',
      spare_test_min: 'last reading whose power is told, less 3/n hours at the least air change n',
      needed_min: '3/n hours at the least air change n',
      full_min: 'to the last reading at full power',
      low_min: 'from there to the last reading at low power',
      unseen_full_l_per_h:
        'c = G/(n·V)·(1 − e^(−n·t)) solved for G, at the most air change, c the meter’s own U: a smaller leak cannot be told from its error',
      unseen_low_l_per_h: 'the same, for the time at low power',
    },
    silent: ['rise_ppm', 'shown_rise_ppm', 'part_rise_ppm', 'alarm_rise_ppm'],
    change: {
      spare_test_min: (by) => `Go on with the test: a reading ${by} later would prove it.`,
    },
    advice: {
      'rise_ppm.beyond': 'STOP. Out, ventilate, find the cause.',
      'rise_ppm.not_proven':
        'No rise found by this meter, this time. More than that no test can say.',
      'shown_rise_ppm.beyond': 'STOP. Out, ventilate, find the cause.',
      'shown_rise_ppm.not_proven':
        'It shows more inside than outdoors. That is less than its own error, but nothing is cleared: out, ventilate, look for the cause, then read again with a finer meter.',
      'part_rise_ppm.beyond': 'STOP. Out, ventilate, find the cause.',
      'alarm_rise_ppm.beyond': 'STOP. Out, ventilate, find the cause.',
      'part_rise_ppm.not_proven':
        'Not a whole test yet: full, then low power, with readings at both, and the last one late enough.',
      'alarm_rise_ppm.not_proven':
        'An alarm is not a survey meter: its silence shows nothing. Read with a meter.',
    },
    row: (/** @type {number} */ n) => `Reading ${n}`,
    addRow: 'Add a reading',
  },
  started: {
    fields: {
      battery_glow_v: ['At the battery, glow pin on', 'at its posts'],
      heater_glow_v: ['At the heater’s plug, glow pin on', 'at the same moment'],
      glow_a: ['Current, glow pin on', 'clamp round the plus lead'],
      battery_run_v: ['At the battery, running', 'full power'],
      heater_run_v: ['At the heater’s plug, running', 'at the same moment'],
      run_a: ['Current, full power', 'clamp round the plus lead'],
      low_a: ['Current, low power', 'clamp round the plus lead'],
      intake_celsius: ['Air going in', 'full power, at the intake'],
      outlet_celsius: ['Air at the outlet', 'full power, after 10 minutes'],
      outlet_low_celsius: ['Air at the outlet, low power', 'when it stands still'],
      flame_min: ['From switching on to the flame', 'by a watch'],
      starts: 'Starts it took',
      after_run_min: ['After-run', 'from switching off until it is still'],
    },
    problems: {
      'heater_glow_v.contradiction':
        'More than at the battery: read both at the same moment, charger off.',
      'heater_run_v.contradiction':
        'More than at the battery: read both at the same moment, charger off.',
    },
    results: {
      heater_glow_v: 'At the heater, glow pin on',
      heater_run_v: 'At the heater, running',
      drop_glow_v: 'Lost in the cable, glow pin on',
      drop_run_v: 'Lost in the cable, running',
      cable_mohm: 'Cable, joints and fuse',
      outlet_celsius: 'Air at the outlet, full power',
      outlet_low_celsius: 'Air at the outlet, low power',
      rise_kelvin: 'Air gets warmer by',
      flame_min: 'Time to the flame',
      starts: 'Starts it took',
      after_run_min: 'After-run',
      battery_glow_v: 'At the battery, glow pin on',
      glow_a: 'Current, glow pin on',
      battery_run_v: 'At the battery, running',
      run_a: 'Current, full power',
      low_a: 'Current, low power',
      intake_celsius: 'Air going in',
    },
    how: {
      drop_glow_v: 'battery less heater, out and back',
      drop_run_v: 'battery less heater, out and back',
      cable_mohm: 'what is lost, by the current, glow pin on',
      rise_kelvin: 'outlet less intake, full power',
    },
  },
};
