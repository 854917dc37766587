// The limits of an invented heater's manual: unit Q-23 of nobody. None of these numbers is any
// heater's.

import { words } from '../words/demo.js';

/** @typedef {import('../types.js').BoundLine} BoundLine */

/** By page: limit, lowest, highest. @type {Record<number, [string, number | null, number | null][]>} */
const BOUNDS = {
  6: [['altitude_m', null, 1900]],
  8: [
    ['clear_outlet_end_mm', 140, null],
    ['clear_intake_end_mm', 125, null],
    ['clear_top_mm', 75, null],
    ['clear_bottom_mm', 70, null],
    ['clear_left_mm', 85, null],
    ['clear_right_mm', 60, null],
    ['outlet_to_person_mm', 420, null],
    ['intake_to_exhaust_mm', 1350, null],
    ['cut_to_obstacle_mm', 22, null],
  ],
  10: [['unevenness_mm', null, 0.7]],
  12: [
    ['duct_bends_deg', null, 240],
    ['duct_length_m', null, 6.5],
    ['duct_loss_pa', null, 160],
    ['air_flow_m3_per_h', 78, null],
    ['outlet_air_celsius', null, 128],
    ['return_area_cm2', 55, null],
  ],
  15: [
    ['fuel_bore_mm', 2.2, 2.2],
    ['fuel_bore_pressure_mm', 2.2, 2.2],
    ['suction_line_m', null, 1.8],
    ['pressure_line_m', null, 5.5],
    ['suction_lift_mm', -900, 450],
    ['pressure_lift_mm', -300, 1100],
    ['suction_pa', null, 22000],
    ['pump_pressure_pa', null, 65000],
  ],
  16: [
    ['pump_air_celsius', null, 38],
    ['fuel_to_hot_mm', 130, null],
    ['standpipe_gap_mm', 32, null],
    ['engine_reserve_l', 14, null],
    ['starts_in_a_row', null, 3],
  ],
  19: [
    ['exhaust_length_m', 0.4, 1.6],
    ['exhaust_bends_deg', null, 225],
    ['exhaust_to_combustible_mm', 480, null],
    ['exhaust_to_opening_mm', 650, null],
    ['exhaust_to_line_mm', 110, null],
    ['exhaust_past_body_mm', 15, null],
    ['outlet_above_water_mm', 380, null],
    ['loop_above_water_mm', 520, null],
    ['drain_bore_mm', 5, 5],
  ],
  20: [
    ['air_pipe_length_m', 0.25, 1.1],
    ['air_pipe_bends_deg', null, 250],
    ['air_to_exhaust_mm', 320, null],
  ],
  23: [
    ['supply_voltage_v', 10.7, 15.2],
    ['start_voltage_v', 10.9, null],
    ['cable_drop_v', null, 0.6],
    ['fuse_a', 14, 21],
    ['fuse_to_battery_mm', null, 170],
  ],
  27: [['after_run_min', 1.8, 4.5]],
};

/** Where this manual asks for something else than usage. @type {Record<string, string>} */
const REASONS = { drain_bore_mm: words.reason };

/** Angles, by page. @type {Record<number, [string, Partial<import('../types.js').LimitLine>][]>} */
const ANGLES = {
  9: [
    ['heater_port', { high_deg: -35, preferred_high_deg: -72 }],
    ['heater_outlet', { high_deg: -1, at_limit_allowed: true }],
  ],
  17: [
    ['pump_outlet', { low_deg: 23, preferred_low_deg: 27, preferred_high_deg: 45, length_mm: 150 }],
    ['pump_roll', { low_deg: -40, high_deg: 40 }],
    ['filter_upright', { high_deg: 50, preferred_high_deg: 18 }],
  ],
  19: [['pipe_fall', { high_deg: -2.5, length_mm: 550 }]],
};

/** @returns {BoundLine[]} */
const bounds = () =>
  Object.entries(BOUNDS).flatMap(([at, lines]) =>
    lines.map(([id, low, high]) => ({
      ...{ id, low, high, basis: /** @type {const} */ ('manual'), source: words.page(at) },
      ...{ vehicles: '', reason: REASONS[id] ?? '' },
    })),
  );

/** @param {import('../types.js').LimitSet} blank */
export function demoLimits(blank) {
  const angles = Object.entries(ANGLES).flatMap(([at, lines]) =>
    lines.map(([check, told]) => ({
      ...{ check, basis: /** @type {const} */ ('manual'), source: words.page(at) },
      ...told,
    })),
  );
  const lines = blank.lines.map((l) => ({ ...l, ...angles.find((a) => a.check === l.check) }));
  return { ...blank, name: words.manual, lines, bounds: bounds() };
}
