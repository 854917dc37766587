// Angles, lengths and times as people write them. Display only: no verdict comes from here.

import { asPrinted, point } from './locale.js';

const RAD = Math.PI / 180;
/** Steeper than this, percent and mm/m say nothing any more. */
const STEEP_DEG = 60;

/** @typedef {'deg' | 'percent' | 'mm_m'} AngleUnit */
/** @typedef {'metric' | 'us'} System */

/** @param {number} deg @param {AngleUnit} unit */
function inUnit(deg, unit) {
  if (unit === 'percent') return 100 * Math.tan(deg * RAD);
  if (unit === 'mm_m') return 1000 * Math.tan(deg * RAD);
  return deg;
}

/** @param {number} v @param {number} decimals */
export function fixed(v, decimals) {
  const text = v.toFixed(decimals);
  return asPrinted(Number(text) === 0 ? (0).toFixed(decimals) : text);
}

const SIGNS = { deg: '°', percent: ' %', mm_m: ' mm/m' };

/**
 * Decimals that keep `deg` on its own side of every limit: 3.04 beside 3.0 is not "3.0".
 * @param {number} value
 * @param {number[]} limits
 * @param {number} decimals
 */
function decimalsThatKeepSides(value, limits, decimals) {
  for (let d = decimals; d < 4; d += 1) {
    const shown = Number(value.toFixed(d));
    if (limits.every((l) => Math.sign(shown - l) === Math.sign(value - l))) return d;
  }
  return 4;
}

/** The unit in which an angle can be shown: degrees where the wanted one says nothing.
 * @param {number} deg @param {AngleUnit} unit @returns {AngleUnit} */
export function usableUnit(deg, unit) {
  return Math.abs(deg) > STEEP_DEG ? 'deg' : unit;
}

/**
 * @param {number} deg
 * @param {AngleUnit} [unit]
 * @param {number[]} [limits_deg] limits that rounding must not carry the value across
 */
export function formatAngle(deg, unit = 'deg', limits_deg = []) {
  const usable = usableUnit(deg, unit);
  const value = inUnit(deg, usable);
  const limits = limits_deg.map((l) => inUnit(l, usable));
  const decimals = decimalsThatKeepSides(value, limits, usable === 'mm_m' ? 0 : 1);
  return fixed(value, decimals) + SIGNS[usable];
}

/**
 * U beside a value: the wider half of the interval in the unit, rounded up.
 * @param {number} deg @param {number} u_deg @param {AngleUnit} [unit]
 */
export function formatU(deg, u_deg, unit = 'deg') {
  const usable = usableUnit(Math.abs(deg) + u_deg, usableUnit(deg, unit));
  const shown = usable === usableUnit(deg, unit) ? usable : 'deg';
  const value = inUnit(deg, shown);
  const half = Math.max(inUnit(deg + u_deg, shown) - value, value - inUnit(deg - u_deg, shown));
  const step = shown === 'mm_m' ? 1 : 0.1;
  // A thousandth is forgiven, so that 1.1 stays 1.1 and not 1.2.
  return fixed(Math.ceil(half / step - 0.001) * step, shown === 'mm_m' ? 0 : 1) + SIGNS[shown];
}

/** @param {number} a @param {number} b @returns {number} */
function gcd(a, b) {
  return b ? gcd(b, a % b) : a;
}

/** @param {number} mm @param {System} system */
export function formatLength(mm, system) {
  if (system === 'metric') return `${fixed(mm, mm < 10 ? 1 : 0)} mm`;
  const sixteenths = Math.round((mm / 25.4) * 16);
  const whole = Math.floor(sixteenths / 16);
  const rest = sixteenths % 16;
  const d = gcd(rest, 16);
  const fraction = rest ? `${rest / d}/${16 / d}` : '';
  return `${[whole || !fraction ? String(whole) : '', fraction].filter(Boolean).join(' ')} in`;
}

/** @param {number} mm @param {System} system how a length field shows what is kept */
export function lengthToField(mm, system) {
  return system === 'us' ? Number((mm / 25.4).toFixed(3)) : mm;
}

/** @param {number} value @param {System} system */
export function lengthFromField(value, system) {
  return system === 'us' ? value * 25.4 : value;
}

/** Whether a sign that is no decimal point here parts three digits: whole thousands to who typed it,
 * a thousandth of them to who reads a decimal. @param {string} plain @param {string} text */
const isGrouped = (plain, text) =>
  /^[-+]?[1-9]\d{0,2}\.\d{3}$/.test(plain) && !text.includes(point);

/**
 * A number as typed: comma or point, minus or dash. `null` for an empty field; an `Error` whose
 * message is a key of the catalogue for anything else.
 * @param {string} text
 * @returns {number | null}
 */
export function parseNumber(text) {
  const plain = text.trim().replace('−', '-').replace(',', '.');
  if (plain === '') return null;
  if (isGrouped(plain, text) || !/^[-+]?(\d+\.?\d*|\.\d+)$/.test(plain))
    throw new Error('not_a_number');
  return Number(plain);
}

const two = (/** @type {number} */ n) => String(n).padStart(2, '0');

/** A day as ISO 8601 has it. @param {string | number} when */
export function day(when) {
  const at = new Date(when);
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}

/** Time of day, with the date where it is not today's. @param {string | number} when ISO 8601 or ms */
export function clock(when) {
  const at = new Date(when);
  if (at.toDateString() !== new Date().toDateString()) return stamp(when);
  return `${two(at.getHours())}:${two(at.getMinutes())}`;
}

/** When something found or read at `ms` stops counting, for people: core keeps the hour itself.
 * @param {number} ms */
export const until = (ms) => clock(ms + 3_600_000);

/** A day and a time, as paper needs them. @param {string | number} when */
export function stamp(when) {
  const at = new Date(when);
  return `${day(when)} ${two(at.getHours())}:${two(at.getMinutes())}`;
}
