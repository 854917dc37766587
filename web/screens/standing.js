// What several lines of the job have come to together.

import { verdictFrame } from './frame.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../plan/state.js').Item} Item */

const NONE = {
  beyond: 0,
  not_proven: 0,
  within: 0,
  usage: 0,
  not_found: 0,
  open: 0,
  seen: 0,
  stopped: 0,
  not_needed: 0,
};

/** @param {Item[]} items how many of each, and of those within how many stand on no manual's word */
export function count(items) {
  const n = { ...NONE };
  for (const { state, basis } of items) {
    n[state === 'none' ? 'open' : state] += 1;
    if (state === 'within' && ['trade_usage', 'assumed'].includes(basis)) n.usage += 1;
  }
  return n;
}

/** The line that needs most: the first beyond, else the first not proven. @param {Item[]} items */
export const worstOf = (items) =>
  items.find((i) => i.state === 'beyond') ?? items.find((i) => i.state === 'not_proven');

/** The worst of them in its frame; while anything is open the best of answers does not stand for
 * them, and the weakest word does for all. @param {Context} ctx @param {Item[]} items */
export function standing(ctx, items) {
  const t = ctx.text.parts;
  const n = count(items);
  const within = items.filter((i) => i.state === 'within');
  const weakest = within.find((i) => i.basis !== 'manual') ?? within[0];
  const lost = items.find((i) => i.state === 'none');
  // What can never be found within keeps the others' best from standing for all.
  const told = worstOf(items) ?? lost ?? (n.open || n.not_found ? undefined : weakest);
  if (told) {
    const verdict = /** @type {import('../types.js').Verdict} */ (told.state);
    return verdictFrame(verdict, ctx.text.verdicts[verdict], told.basis);
  }
  if (n.open) return verdictFrame(null, n.open === items.length ? t.unchecked : t.open(n.open));
  if (n.not_found) return verdictFrame(null, t.notFound);
  return verdictFrame(null, n.seen ? t.seen : t.notNeeded);
}
