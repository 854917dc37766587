// What is promised of the page, and how a figure is held against it.

/**
 * @typedef {object} Row
 * @property {string} what
 * @property {number} value
 * @property {string} unit
 * @property {number} [target] at most; without one the row is reported only
 * @property {number} [ceiling] of a target known to be missed: more than this is worse than that
 * @property {string} [also] what else is to be known of it
 */

/** How a row stands; only "missed" fails. @param {Row} row */
export function standing({ value, unit, target, ceiling }) {
  if (target === undefined) return 'reported';
  if (value <= target) return 'met';
  if (ceiling === undefined) return 'missed';
  return value <= ceiling ? `known to be missed; fails above ${ceiling} ${unit}` : 'missed';
}

const shown = (value) => (Math.abs(value) >= 100 ? value.toFixed(0) : value.toFixed(1));

/** The table, as it stands in the README. @param {Row[]} rows */
export function table(rows) {
  const lines = rows.map((row) => {
    const target = row.target === undefined ? '–' : `≤ ${row.target} ${row.unit}`;
    const value = `${shown(row.value)} ${row.unit}${row.also ? `; ${row.also}` : ''}`;
    return `| ${row.what} | ${target} | ${value} | ${standing(row)} |`;
  });
  return ['| on the page | target | measured | |', '| --- | --- | --- | --- |', ...lines].join('\n');
}
