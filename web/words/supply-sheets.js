// Words of the supply's sheets, by core's names.

const AREAS = ['0.75', '1', '1.5', '2.5', '4', '6', '10', '16'].map((mm2) => `${mm2} mm²`);
const GAUGES = ['18', '16', '14', '12', '10', '8', '6'].map((gauge) => `AWG ${gauge}`);
const conductor = [...AREAS, ...GAUGES];

/** @param {string} by */
const lose = (by) => `Lose ${by} less: a thicker conductor, a shorter way, better joints.`;

/** @param {string} by @param {boolean} more */
const supplied = (by, more) =>
  more
    ? `${by} more at the heater: a fuller battery, less lost on the way. Or it is not the voltage that this heater is for.`
    : `${by} less: not the voltage that this heater is for.`;

const WRONG_POSTS =
  'The take-off does not see the whole bank; about half is a centre tap. Read both again with nothing switched on, then move the cable to the ends of the bank.';
const FIT_MANUALS =
  'Fit the fuse that the manual names. Where the conductor does not carry it, a thicker conductor first.';

/** @type {Record<string, import('../plan/sheet.js').SheetWords>} */
export const sheets = {
  cable: {
    fields: {
      out_m: ['Battery’s plus to heater', 'fuse and switch on its way'],
      back_by: 'Back to the battery by',
      back_m: ['Heater back to battery’s minus', 'by the body: its two leads together'],
      body_mohm: ['The body between its two leads', 'volts lost there · 1000 ÷ amperes'],
      conductor: 'Size',
      paper_ohm_per_km: ['Resistance of a length', 'at 20 °C'],
      conductor_celsius: [
        'Conductor where it is warmest',
        'in an engine space: as warm as that gets',
      ],
      joints_mohm: ['Joints, fuse, switch together', 'volts lost across them · 1000 ÷ amperes'],
      start_supply_v: ['Battery during start', 'at its posts, while the start current flows'],
      start_a: ['Current during start', 'by a clamp; or the manual’s highest'],
      running_supply_v: ['Battery at full heat', 'at its posts'],
      running_a: ['Current at full heat', 'by a clamp, or the manual’s'],
      conductor_spread: 'what the name of the size stands for',
      size: 'Size',
    },
    choices: { back_by: ['a conductor', 'the body of the vehicle'], conductor, size: conductor },
    problems: {
      'body_mohm.contradiction':
        'Only where the body is the way back: leave it empty, or choose the body.',
    },
    results: {
      loop_mohm: 'Resistance, post to post',
      start_out_v: 'Lost on the way out, at start',
      start_joints_v: 'Lost in joints, fuse, switch, at start',
      start_back_v: 'Lost on the way back, at start',
      start_drop_v: 'Lost at start',
      start_drop_percent: 'Lost at start, of the battery’s voltage then',
      running_drop_v: 'Lost while it runs',
      running_drop_percent: 'Lost while it runs, of the battery’s voltage then',
      heater_start_v: 'At the heater during start',
      heater_running_v: 'At the heater while it runs',
    },
    how: {
      loop_mohm:
        '(out + back) · R′ + body + joints. R′ at 20 °C: the most that IEC 60228 class 5 permits, or ASTM B258; warm: · (1 + 0.00393 · (t − 20 °C)), IEC 60028',
      start_out_v: 'I · R′ · out',
      start_joints_v: 'I · R',
      start_back_v: 'I · (R′ · back + body)',
      start_drop_v: 'the three together',
      running_drop_v: 'I · R, post to post',
      heater_start_v: 'battery then, less what is lost',
      heater_running_v: 'battery then, less what is lost',
    },
    change: {
      cable_drop_v: lose,
      start_voltage_v: (by) =>
        `${by} more at the heater: a thicker conductor, a shorter way, better joints, a fuller battery.`,
      supply_voltage_v: supplied,
    },
    tabled: ['size', 'size_start_drop_v', 'size_running_drop_v', 'size_heater_start_v'],
    row: (n) => conductor[n - 1],
  },
  fuse: {
    fields: {
      fuse_a: ['Fuse', 'as printed on it'],
      fuse_to_battery_mm: ['Battery’s post to the fuse', 'along the conductor'],
      conductor: ['Size', 'only for the orientation below'],
      ampacity_a: ['It carries, in free air', 'its own paper, for its insulation'],
      engine_space: ['Left of it in an engine space', 'a share; 1 where it passes none'],
      bundle: ['Left of it in a bundle', 'a share; 1 where it lies alone'],
    },
    choices: { conductor },
    results: {
      fuse_a: 'Fuse',
      carries_a: 'The conductor carries, where it lies',
      spare_a: 'What it carries beyond its fuse',
      fuse_to_battery_mm: 'Battery to fuse',
      boat_law_a: 'For US petrol boats, insulation for 105 °C',
    },
    how: {
      fuse_a: 'as printed',
      carries_a: 'in free air · engine space · bundle',
      spare_a: 'what it carries − fuse; below zero the conductor burns first',
      fuse_to_battery_mm: 'as told by the tape',
      boat_law_a: '33 CFR 183.425 table 5, before engine space and bundle; used nowhere here',
    },
    change: {
      spare_current_a: (by) =>
        `A fuse ${by} smaller, if the manual permits it, or a conductor that carries ${by} more.`,
      fuse_to_battery_mm: (by) => `${by} nearer to the battery.`,
    },
    advice: { 'fuse_a.beyond': FIT_MANUALS },
  },
  bank: {
    fields: {
      nominal: 'The heater is for',
      bank_v: ['Across the whole bank', 'first plus to last minus'],
      take_off_v: ['At the take-off', 'the two posts its cable leaves from'],
    },
    choices: { nominal: ['12 V', '24 V'] },
    results: {
      bank_v: 'Across the whole bank',
      take_off_v: 'At the take-off',
      missed_v: 'Bank less take-off',
      of_bank_percent: 'Take-off, of the whole bank',
      of_nominal_percent: 'Take-off, of what the heater is for',
    },
    how: {
      bank_v: 'as read',
      take_off_v: 'as read',
      missed_v: 'nothing, where no current flows and both are the same posts',
      of_bank_percent: 'a centre tap of two has about half',
    },
    change: { supply_voltage_v: supplied },
    advice: {
      'missed_v.beyond': WRONG_POSTS,
      'missed_v.not_proven':
        'Not found apart. Readings that agree prove nothing: follow both cables to the posts, then tick it below.',
    },
  },
  battery: {
    fields: {
      capacity_ah: ['It holds', 'its label, less what age has taken'],
      rated_h: ['In so many hours', 'that the label’s capacity is for'],
      usable: ['Share that may be used', 'its own paper; 0 to 1'],
      cold: ['Share left in the cold', 'its own paper; 1 when warm'],
      average_a: ['Heater, on average', 'through the night, not at its highest'],
      standby_a: ['All else on it', 'controller, alarm, fridge; 0 for none'],
      starts: ['Starts', 'from full to empty'],
      start_a: 'Current during start',
      start_min: 'A start takes',
      after_a: 'Current in the after-run',
      after_min: 'An after-run takes',
      peukert: 'Exponent',
      wanted_h: ['Hours wanted', 'empty: only told how long'],
    },
    results: {
      usable_ah: 'May be used, in the cold',
      starts_ah: 'Taken by starts',
      after_ah: 'Taken by after-runs',
      rated_a: 'Current that the label is for',
      lasts_h: 'It lasts',
      lasts_at_most_h: 'It lasts, at most',
      spare_h: 'Hours to spare',
      spare_at_most_h: 'Hours to spare, at most',
    },
    how: {
      usable_ah: 'holds · share used · share in the cold',
      starts_ah: 'starts · current · time',
      after_ah: 'starts · current · time',
      rated_a: 'holds ÷ hours of the label',
      lasts_h:
        '(usable − starts − after-runs) · hours to empty at heater and all else. To empty at I: C ÷ I; above the label’s current H · (C ÷ (I · H))^k, Peukert',
      lasts_at_most_h:
        'the same, without what large currents take besides: more flows than the label is for, and no exponent is told',
      spare_h: 'it lasts − wanted',
      spare_at_most_h: 'it lasts at most − wanted',
    },
    silent: ['spare_at_most_h'],
    change: {
      spare_time_h: (by) => `${by} less wanted, or a battery that lasts ${by} longer.`,
    },
    advice: {
      'spare_at_most_h.not_proven':
        'More current than the label is for: enter Peukert’s exponent from the battery’s paper.',
    },
  },
};
