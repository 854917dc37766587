// Words of the supply's sheets, by core's names.

import { t } from '../language.js';

const AREAS = ['0.75', '1', '1.5', '2.5', '4', '6', '10', '16'].map((mm2) => `${mm2} mm²`);
const GAUGES = ['18', '16', '14', '12', '10', '8', '6'].map((gauge) => `AWG ${gauge}`);
const conductor = [...AREAS, ...GAUGES];

const SHARE = t`A share, from 0.1 to 1: 0.85 is 85 %.`;

/** @param {string} by */
const lose = (by) => t`Lose ${by} less: a thicker conductor, a shorter way, better joints.`;

/** @param {string} by */
const atStart = (by) =>
  t`${by} more at the heater: a thicker conductor, a shorter way, better joints, a fuller battery.`;

/** @param {string} by @param {boolean} more */
const supplied = (by, more) =>
  more
    ? t`${by} more at the heater: a fuller battery, less lost on the way. Or it is not the voltage that this heater is for.`
    : t`${by} less: not the voltage that this heater is for.`;

const WRONG_POSTS = t`The take-off does not see the whole bank; about half is a centre tap. Read both again with nothing switched on, then move the cable to the ends of the bank.`;
const FIT_MANUALS = t`Fit the fuse that the manual names. Where the conductor does not carry it, a thicker conductor first.`;

/** @type {Record<string, import('../plan/sheet.js').SheetWords>} */
export const sheets = {
  cable: {
    fields: {
      out_m: [t`Battery’s plus to heater`, t`fuse and switch on its way`],
      back_by: t`Back to the battery by`,
      back_m: [t`Heater back to battery’s minus`, t`by the body: its two leads together`],
      body_mohm: [t`The body between its two leads`, t`volts lost there · 1000 ÷ amperes`],
      conductor: t`Size`,
      paper_ohm_per_km: [t`Resistance of a length`, t`at 20 °C`],
      conductor_celsius: [
        t`Conductor where it is warmest`,
        t`in an engine space: as warm as that gets`,
      ],
      joints_mohm: [t`Joints, fuse, switch together`, t`volts lost across them · 1000 ÷ amperes`],
      start_supply_v: [t`Battery during start`, t`at its posts, while the start current flows`],
      start_a: [t`Current during start`, t`by a clamp; or the manual’s highest`],
      running_supply_v: [t`Battery at full power`, t`at its posts`],
      running_a: [t`Current at full power`, t`by a clamp, or the manual’s`],
      conductor_spread: t`what the name of the size stands for`,
      size: t`Size`,
    },
    choices: { back_by: [t`a conductor`, t`the body of the vehicle`], conductor, size: conductor },
    problems: {
      'body_mohm.contradiction': t`Only where the body is the way back: leave it empty, or choose the body.`,
    },
    results: {
      loop_mohm: t`Resistance, post to post`,
      start_out_v: t`Lost on the way out, at start`,
      start_joints_v: t`Lost in joints, fuse, switch, at start`,
      start_back_v: t`Lost on the way back, at start`,
      start_drop_v: t`Lost at start`,
      start_drop_percent: t`Lost at start, of the battery’s voltage then`,
      running_drop_v: t`Lost while it runs`,
      running_drop_percent: t`Lost while it runs, of the battery’s voltage then`,
      heater_start_v: t`At the heater during start`,
      heater_running_v: t`At the heater while it runs`,
    },
    how: {
      loop_mohm: t`(out + back) · R′ + body + joints. R′ at 20 °C: the most that IEC 60228 class 5 permits, or ASTM B258; warm: · (1 + 0.00393 · (t − 20 °C)), IEC 60028`,
      start_out_v: t`I · R′ · out`,
      start_joints_v: t`I · R`,
      start_back_v: t`I · (R′ · back + body)`,
      start_drop_v: t`the three together`,
      running_drop_v: t`I · R, post to post`,
      heater_start_v: t`battery then, less what is lost`,
      heater_running_v: t`battery then, less what is lost`,
    },
    change: {
      cable_drop_v: lose,
      start_voltage_v: atStart,
      supply_voltage_v: supplied,
    },
    tabled: ['size', 'size_start_drop_v', 'size_running_drop_v', 'size_heater_start_v'],
    row: (n) => conductor[n - 1],
  },
  fuse: {
    fields: {
      fuse_a: [t`Fuse`, t`as printed on it`],
      fuse_to_battery_mm: [t`Battery’s post to the fuse`, t`along the conductor`],
      conductor: [t`Size`, t`only for the orientation below`],
      ampacity_a: [t`It carries, in free air`, t`its own paper, for its insulation`],
      engine_space: [t`Left of it in an engine space`, t`a share; 1 where it passes none`],
      bundle: [t`Left of it in a bundle`, t`a share; 1 where it lies alone`],
    },
    choices: { conductor },
    results: {
      fuse_a: t`Fuse`,
      carries_a: t`The conductor carries, where it lies`,
      spare_a: t`What the conductor carries, less its fuse`,
      fuse_to_battery_mm: t`Battery to fuse`,
      boat_law_a: t`For US petrol boats, insulation for 105 °C`,
    },
    how: {
      fuse_a: t`as printed`,
      carries_a: t`in free air · engine space · bundle`,
      spare_a: t`what it carries − fuse; below zero the conductor burns first`,
      fuse_to_battery_mm: t`as told by the tape`,
      boat_law_a: t`33 CFR 183.425 table 5, before engine space and bundle; used nowhere here`,
    },
    change: {
      spare_current_a: (by) =>
        t`A fuse ${by} smaller, if the manual permits it, or a conductor that carries ${by} more.`,
      fuse_to_battery_mm: (by) => t`${by} nearer to the battery.`,
    },
    problems: { 'engine_space.out_of_range': SHARE, 'bundle.out_of_range': SHARE },
    advice: { 'fuse_a.beyond': FIT_MANUALS },
  },
  bank: {
    fields: {
      nominal: t`The heater is for`,
      bank_v: [t`Across the whole bank`, t`first plus to last minus`],
      take_off_v: [t`At the take-off`, t`the two posts its cable leaves from`],
    },
    choices: { nominal: [t`12 V`, t`24 V`] },
    results: {
      bank_v: t`Across the whole bank`,
      take_off_v: t`At the take-off`,
      missed_v: t`Bank less take-off`,
      of_bank_percent: t`Take-off, of the whole bank`,
      of_nominal_percent: t`Take-off, of what the heater is for`,
    },
    how: {
      bank_v: t`as read`,
      take_off_v: t`as read`,
      missed_v: t`nothing, where no current flows and both are the same posts`,
      of_bank_percent: t`a centre tap of two has about half`,
    },
    change: { supply_voltage_v: supplied },
    advice: {
      'take_off_v.beyond': t`Not what this heater is for: follow its cable to the posts first, then look at the battery.`,
      'missed_v.beyond': WRONG_POSTS,
      'missed_v.not_proven': t`Not found apart. Readings that agree prove nothing, so this is never proven: follow both cables to the posts; the tick below stands for it.`,
    },
  },
  battery: {
    fields: {
      capacity_ah: [t`It holds`, t`its label, less what age has taken`],
      rated_h: [t`In so many hours`, t`that the label’s capacity is for`],
      usable: [t`Share that may be used`, t`its own paper; 0 to 1`],
      cold: [t`Share left in the cold`, t`its own paper; 1 when warm`],
      average_a: [t`Heater, on average`, t`through the night, not at its highest`],
      standby_a: [t`All else on it`, t`controller, alarm, fridge; 0 for none`],
      starts: [t`Starts`, t`from full to empty`],
      start_a: t`Current during start`,
      start_min: t`A start takes`,
      after_a: t`Current in the after-run`,
      after_min: t`An after-run takes`,
      peukert: t`Exponent`,
      wanted_h: [t`Hours wanted`, t`empty: only told how long`],
    },
    results: {
      usable_ah: t`May be used, in the cold`,
      starts_ah: t`Taken by starts`,
      after_ah: t`Taken by after-runs`,
      rated_a: t`Current that the label is for`,
      lasts_h: t`It lasts`,
      lasts_at_most_h: t`It lasts, at most`,
      spare_h: t`Hours to spare`,
      spare_at_most_h: t`Hours to spare, at most`,
    },
    how: {
      usable_ah: t`holds · share that may be used · share in the cold`,
      starts_ah: t`starts · current · time`,
      after_ah: t`starts · current · time`,
      rated_a: t`holds ÷ hours of the label`,
      lasts_h: t`(usable share − share that starts take − share that after-runs take) · hours to empty at heater and all else; each share of a full discharge at its own current. To empty at I: C ÷ I; above the label’s current H · (C ÷ (I · H))^k, Peukert`,
      lasts_at_most_h: t`the same, without what large currents take besides: more flows than the label is for, and no exponent is told`,
      spare_h: t`it lasts − wanted`,
      spare_at_most_h: t`it lasts at most − wanted`,
    },
    silent: ['spare_at_most_h'],
    change: {
      spare_time_h: (by) => t`${by} less wanted, or a battery that lasts ${by} longer.`,
    },
    advice: {
      'spare_at_most_h.not_proven': t`More current than the label is for: enter Peukert’s exponent from the battery’s paper.`,
    },
  },
};
