// Limits of the try-out: an invented heater in an invented vehicle, the book cart of Lower Marsh.
// None of these numbers is anybody's.

import { text } from '../text.js';

/** @type {[string, Partial<import('../types.js').LimitLine>][]} */
const LINES = [
  ['heater_port', { high_deg: -25, preferred_high_deg: -70 }],
  ['heater_outlet', { high_deg: 4, at_limit_allowed: true }],
  ['pump_outlet', { low_deg: 21, preferred_low_deg: 24, preferred_high_deg: 40, length_mm: 140 }],
  ['pump_roll', { low_deg: -35, high_deg: 35 }],
  ['filter_upright', { high_deg: 55, preferred_high_deg: 20 }],
  ['pipe_fall', { high_deg: -3, length_mm: 600 }],
];

/** @param {import('../types.js').LimitSet} blank */
export function tryoutLimits(blank) {
  return {
    ...blank,
    name: text.tryout.limits,
    lines: blank.lines.map((line) => ({
      ...line,
      ...LINES.find(([check]) => check === line.check)?.[1],
      basis: /** @type {const} */ ('assumed'),
      source: text.tryout.source,
    })),
  };
}
