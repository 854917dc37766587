// What one sheet gives and another takes: a result as it would be typed, its U as half-width, which
// is no narrower than it is.

import { asTyped as typed } from '../locale.js';
import { toShown, widthToShown } from './units.js';

/** @typedef {import('./model.js').Result} Result */
/** @typedef {{ value: string, half: string }} Typed */

/** @param {number} number */
const digits = (number) => (Number.isFinite(number) ? typed(Number(number.toPrecision(4))) : '');

/** @param {Pick<Result, 'value' | 'u' | 'unit'>} result @param {'metric' | 'us'} system
 * @returns {Typed} */
export const asTyped = ({ value, u, unit }, system) => ({
  value: digits(toShown(value, unit, system)),
  half: digits(widthToShown(u, unit, system)),
});

/** Types it into a field. @param {import('./fields.js').SheetField} field @param {Typed} typed */
export function fill(field, { value, half }) {
  const { name } = field.entry;
  field.row.typed[name] = value;
  field.row.half[name] = half;
  field.input.value = value;
  if (field.half) field.half.value = half;
}

/** A result that is there. @param {import('./model.js').Worked | null} worked @param {string} name */
export function resultOf(worked, name) {
  const results = worked && !worked.refused ? worked.results : [];
  return results.find((r) => r.name === name && r.row === null && !Number.isNaN(r.value));
}
