// Units of the sheets as people read and type them, metric or US. Display only. US factors are
// exact by definition (NIST SP 811, Appendix B): foot 0.3048 m, inch 25.4 mm, US gallon
// 3.785411784 L, pound 0.45359237 kg, conventional inch of water 249.08891 Pa.

import { asPrinted } from '../locale.js';

/** @typedef {import('../units.js').System} System */
/** @typedef {{ label: string, per?: number, from?: number }} Shown */

const CFM = 60 * 0.3048 ** 3;

/** By core's unit: label, how many of core's unit one of it is, where its zero lies.
 * @type {Record<string, { metric: Shown, us?: Shown }>} */
const UNITS = {
  choice: { metric: { label: '' } },
  count: { metric: { label: '' } },
  ratio: { metric: { label: '' } },
  mm: { metric: { label: 'mm' }, us: { label: 'in', per: 25.4 } },
  m: { metric: { label: 'm' }, us: { label: 'ft', per: 0.3048 } },
  cm2: { metric: { label: 'cm²' }, us: { label: 'in²', per: 2.54 ** 2 } },
  m2: { metric: { label: 'm²' }, us: { label: 'ft²', per: 0.3048 ** 2 } },
  m3: { metric: { label: 'm³' }, us: { label: 'ft³', per: 0.3048 ** 3 } },
  // Conductors are named by mm² or by gauge everywhere.
  mm2: { metric: { label: 'mm²' } },
  ml: { metric: { label: 'mL' } },
  l: { metric: { label: 'L' }, us: { label: 'US gal', per: 3.785411784 } },
  deg: { metric: { label: '°' } },
  celsius: { metric: { label: '°C' }, us: { label: '°F', per: 5 / 9, from: 32 } },
  kelvin: { metric: { label: 'K' }, us: { label: '°F', per: 5 / 9 } },
  pa: { metric: { label: 'Pa' }, us: { label: 'inH₂O', per: 249.08891 } },
  w: { metric: { label: 'W' } },
  w_per_m_k: { metric: { label: 'W/(m·K)' } },
  w_per_m2_k: { metric: { label: 'W/(m²·K)' } },
  m2_k_per_w: { metric: { label: 'm²·K/W' } },
  kj_per_k: { metric: { label: 'kJ/K' } },
  kwh_per_l: { metric: { label: 'kWh/L' } },
  l_per_h: { metric: { label: 'L/h' }, us: { label: 'US gal/h', per: 3.785411784 } },
  m3_per_h: { metric: { label: 'm³/h' }, us: { label: 'cfm', per: CFM } },
  kg_per_h: { metric: { label: 'kg/h' }, us: { label: 'lb/h', per: 0.45359237 } },
  m_per_s: { metric: { label: 'm/s' }, us: { label: 'ft/s', per: 0.3048 } },
  mm2_per_s: { metric: { label: 'mm²/s' } },
  kg_per_m3: { metric: { label: 'kg/m³' } },
  hz: { metric: { label: 'Hz' } },
  ms: { metric: { label: 'ms' } },
  s: { metric: { label: 's' } },
  min: { metric: { label: 'min' } },
  h: { metric: { label: 'h' } },
  v: { metric: { label: 'V' } },
  a: { metric: { label: 'A' } },
  ah: { metric: { label: 'Ah' } },
  mohm: { metric: { label: 'mΩ' } },
  per_h: { metric: { label: '/h' } },
  ppm: { metric: { label: 'ppm' } },
  ohm_per_km: { metric: { label: 'Ω/km' }, us: { label: 'Ω/1000 ft', per: 1 / 0.3048 } },
  percent: { metric: { label: '%' } },
};

export const UNIT_NAMES = Object.keys(UNITS);

/** @param {string} unit @param {System} system @returns {Shown} */
const shown = (unit, system) => (system === 'us' && UNITS[unit].us) || UNITS[unit].metric;

/** @param {string} unit @param {System} system */
export const unitLabel = (unit, system) => shown(unit, system).label;

/** A value of core's as shown. @param {number} value @param {string} unit @param {System} system */
export function toShown(value, unit, system) {
  const { per = 1, from = 0 } = shown(unit, system);
  return value / per + from;
}

/** A shown value as core's. @param {number} value @param {string} unit @param {System} system */
export function fromShown(value, unit, system) {
  const { per = 1, from = 0 } = shown(unit, system);
  return (value - from) * per;
}

/** A difference or half-width of core's as shown. @param {number} width @param {string} unit @param {System} system */
export const widthToShown = (width, unit, system) => width / (shown(unit, system).per ?? 1);

/** @param {number} width @param {string} unit @param {System} system */
export const widthFromShown = (width, unit, system) => width * (shown(unit, system).per ?? 1);

/** As many digits as say something: three, and no fewer than the whole number has.
 * @param {number} v @param {number} [digits] */
export function digits(v, digits = 3) {
  if (v === 0) return '0';
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(v))));
  return asPrinted(v.toFixed(Math.min(decimals, 6)));
}

/** A value with its unit. @param {number} value @param {string} unit @param {System} system */
export function withUnit(value, unit, system) {
  const { label } = shown(unit, system);
  return `${digits(toShown(value, unit, system))}${label && (label === '°' ? label : ` ${label}`)}`;
}

/** A limit with its unit: as it was told, nothing rounded off that counts.
 * @param {number} value @param {string} unit @param {System} system */
export function limitWithUnit(value, unit, system) {
  const { label } = shown(unit, system);
  const told = asPrinted(Number(toShown(value, unit, system).toPrecision(6)));
  return `${told}${label && (label === '°' ? label : ` ${label}`)}`;
}

/** A difference with its unit, without its sign. @param {number} width @param {string} unit @param {System} system */
export function widthWithUnit(width, unit, system) {
  const { label } = shown(unit, system);
  const size = digits(Math.abs(widthToShown(width, unit, system)), 2);
  return `${size}${label && (label === '°' ? label : ` ${label}`)}`;
}

/** Decimals of U, rounded up to two digits, and of the value beside it; more where rounding would
 * carry the value across a limit.
 * @param {number} value @param {number} u @param {string} unit @param {System} system
 * @param {number[]} [limits] */
export function valueAndU(value, u, unit, system, limits = []) {
  const { label } = shown(unit, system);
  const [v, w] = [toShown(value, unit, system), widthToShown(u, unit, system)];
  const bounds = limits.filter(Number.isFinite).map((l) => toShown(l, unit, system));
  // Outside of what the formulas hold for, U is anything.
  if (w === Infinity) return { value: digits(v), u: `± ∞${label && ` ${label}`}` };
  // Tens and hundreds too: no digit that U makes idle.
  const exact = unit === 'count' ? 0 : 2;
  let decimals = w > 0 ? Math.min(4, 1 - Math.floor(Math.log10(w))) : exact;
  const rounded = (/** @type {number} */ d) => Math.round(v * 10 ** d) / 10 ** d;
  const keeps = (/** @type {number} */ d) =>
    bounds.every((l) => Math.sign(rounded(d) - l) === Math.sign(v - l));
  while (decimals < 6 && !keeps(decimals)) decimals += 1;
  const up = Math.ceil(w * 10 ** decimals - 1e-6) / 10 ** decimals;
  const after = Math.max(0, decimals);
  const space = label === '°' ? '' : ' ';
  return {
    value: asPrinted(rounded(decimals).toFixed(after)),
    u: `± ${asPrinted(up.toFixed(after))}${label && space + label}`,
  };
}

/** A value and its U. @param {import('./model.js').Result} r @param {'metric' | 'us'} system */
export function withU({ value, u, unit }, system) {
  const shown = valueAndU(value, u, unit, system);
  return `${shown.value} ${shown.u}`;
}

/** A value alone, as exact as its U lets it be. @param {import('./model.js').Result} r
 * @param {'metric' | 'us'} system */
export const rounded = ({ value, u, unit }, system) =>
  `${valueAndU(value, u, unit, system).value} ${unitLabel(unit, system)}`;
