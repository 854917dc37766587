// A limit set as core understands it and as it was typed: every field there is, seven digits.

/** A line in which nothing was entered, but for its check. */
export const NO_LINE = /** @type {import('./types.js').LimitLine} */ ({
  check: '',
  low_deg: null,
  high_deg: null,
  preferred_low_deg: null,
  preferred_high_deg: null,
  at_limit_allowed: false,
  allowance_deg: null,
  basis: 'manual',
  source: '',
  vehicles: '',
  reason: '',
  holds_in_operation: false,
  length_mm: null,
});

/** A limit of the sheets in which nothing was entered, but for its id. */
export const NO_BOUND = { low: null, high: null, source: '', vehicles: '', reason: '' };

/** Core counts in 32 bits: 17.3 is 17.299999 there. Seven digits are what was typed.
 * @param {number} number */
const asTyped = (number) => Number(Math.fround(number).toPrecision(7));

/**
 * A line or a surface with every field that it can have, in their order, as typed.
 * @template {object} T @param {T} whole @param {object} given @returns {T}
 */
export function filled(whole, given) {
  const row = { ...whole, ...given };
  const cells = Object.keys(whole).map((key) => {
    const cell = /** @type {Record<string, unknown>} */ (row)[key] ?? null;
    return [key, typeof cell === 'number' ? asTyped(cell) : cell];
  });
  return Object.fromEntries(cells);
}
