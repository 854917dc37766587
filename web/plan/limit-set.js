// A whole limit set as typed or brought in: its shape, its angles, its other limits, what stands
// beside them. Core judges; the words here only say what it found, "line.field: what to do".

import { shown } from '../border.js';
import { text } from '../text.js';
import { guide as t } from '../words/limits.js';
import { boundEntry, catalogue } from './model.js';
import { limitWithUnit } from './units.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../types.js').BoundLine} BoundLine */
/** @typedef {import('../types.js').LimitSet} LimitSet */
/** @typedef {{ field: string, problem: string }} Trouble */

const { faults } = text;

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

/** What core finds wrong with a line at a place of its lists. @param {Context} ctx
 * @param {number} at @param {BoundLine} line @returns {Trouble | null} */
function trouble(ctx, at, line) {
  const basis = ctx.engine.catalogue.bases.indexOf(line.basis);
  const [source, vehicles, reason] = [line.source, line.vehicles, line.reason].map(
    (text) => text.trim().length,
  );
  const [low, high] = [line.low ?? NaN, line.high ?? NaN];
  const code = ctx.plan.core.boundProblem(at, low, high, basis, source, vehicles, reason);
  if (!code) return null;
  const [field, problem] = catalogue.bound_errors[code - 1];
  return { field, problem };
}

/** @param {Context} ctx @param {BoundLine} line */
export const boundTrouble = (ctx, line) =>
  trouble(
    ctx,
    catalogue.bounds.findIndex((b) => b.id === line.id),
    line,
  );

/** What is wrong in words. @param {Context} ctx @param {string} id @param {Trouble} found */
export function troubleWords(ctx, id, { problem }) {
  const most = String(catalogue.longest_text);
  if (problem === 'too_long') return t.problems.too_long('', most);
  const entry = boundEntry(id);
  const { system } = ctx.settings;
  const [low, high] = entry
    ? [entry.low, entry.high].map((v) => limitWithUnit(v, entry.unit, system))
    : ['', ''];
  return t.problems[problem](low, high);
}

/** @param {string} where @param {string} words */
const wrong = (where, words) => new Error(`${where}: ${words}`);

/** @param {unknown} item @param {Set<string>} seen @returns {BoundLine} */
function shapedBound(item, seen) {
  if (typeof item !== 'object' || item === null || Array.isArray(item))
    throw wrong('bounds.object', faults.object);
  const line = { ...blankBound(''), ...item };
  if (!boundEntry(line.id)) throw wrong('bounds.id', faults.strange(shown(line.id)));
  for (const field of Object.keys(item))
    if (!Object.hasOwn(blankBound(''), field)) throw wrong(`${line.id}.${field}`, faults.notKnown);
  for (const end of /** @type {const} */ (['low', 'high']))
    if (line[end] !== null && !Number.isFinite(line[end]))
      throw wrong(`${line.id}.${end}`, faults.number);
  for (const field of /** @type {const} */ (['source', 'vehicles', 'reason']))
    if (typeof line[field] !== 'string') throw wrong(`${line.id}.${field}`, faults.text);
  if (seen.has(line.id)) throw wrong(`${line.id}.id`, faults.repeated);
  seen.add(line.id);
  return line;
}

/** @param {Context} ctx @param {unknown[]} bounds @returns {BoundLine[]} */
function checkedBounds(ctx, bounds) {
  const seen = /** @type {Set<string>} */ (new Set());
  return bounds.map((item) => {
    const line = shapedBound(item, seen);
    if (!ctx.engine.catalogue.bases.includes(line.basis))
      throw wrong(`${line.id}.basis`, faults.strange(shown(line.basis)));
    const found = boundTrouble(ctx, line);
    if (found) throw wrong(`${line.id}.${found.field}`, troubleWords(ctx, line.id, found));
    return line;
  });
}

/** The set with every field there is; an error's message starts with the line and field.
 * @param {Context} ctx @param {any} set @returns {LimitSet} */
export function checkSet(ctx, set) {
  const whole = ctx.engine.checkLimits(set);
  whole.lines.forEach((line) => {
    const id = line.check;
    const at = catalogue.bounds.length + ctx.engine.catalogue.checks.findIndex((c) => c.id === id);
    const { low_deg: low, high_deg: high, basis, source, vehicles = '', reason = '' } = line;
    const found = trouble(ctx, at, { id, low, high, basis, source, vehicles, reason });
    if (found) throw wrong(`${id}.${found.field}`, troubleWords(ctx, id, found));
  });
  return { ...whole, bounds: checkedBounds(ctx, set.bounds ?? []) };
}

/** How many limits are entered on the manual's word, and how many there are.
 * @param {Context} ctx */
export function entered(ctx) {
  const { bounds = [], lines } = ctx.limits;
  const angles = lines.map((l) => ({ basis: l.basis, low: l.low_deg, high: l.high_deg }));
  const told = [...bounds, ...angles].filter(
    ({ basis, low, high }) => basis === 'manual' && (low !== null || high !== null),
  );
  return { entered: told.length, of: catalogue.bounds.length + lines.length };
}
