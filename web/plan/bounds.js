// Limits of the tape-measure half, line by line: blank ones, common practice, and core's word on
// one that was typed.

import { boundEntry, catalogue } from './model.js';

/** @typedef {import('../app.js').Context} Context */
/** @typedef {import('../types.js').BoundLine} BoundLine */

/** A limit that has not been entered. @param {string} id @returns {BoundLine} */
export const blankBound = (id) => ({
  id,
  low: null,
  high: null,
  basis: 'manual',
  source: '',
  vehicles: '',
  reason: '',
});

/** What the trade does and what laws say of it. @param {string} id */
export const knownOf = (id) => ({
  usage: catalogue.usage.find((k) => k.id === id) ?? null,
  law: catalogue.law.find((k) => k.id === id) ?? null,
});

/** What core finds wrong with a line: its field, its problem, and the numbers that belong to it.
 * @param {Context} ctx @param {BoundLine} line
 * @returns {{ field: string, problem: string, low: number, high: number } | null} */
export function boundTrouble(ctx, line) {
  const at = catalogue.bounds.findIndex((b) => b.id === line.id);
  const basis = ctx.engine.catalogue.bases.indexOf(line.basis);
  const letters = [line.source, line.vehicles, line.reason].map((text) => text.trim().length);
  const code = ctx.engine.call((_, border) =>
    border.boundProblem(at, line.low ?? NaN, line.high ?? NaN, basis, Uint32Array.from(letters)),
  );
  if (!code) return null;
  const [field, problem] = catalogue.bound_errors[code - 1];
  const { low, high } = boundEntry(line.id);
  const most = problem === 'too_long' ? catalogue.longest_text : high;
  return { field, problem, low, high: most };
}
