// Offers to fill the try-out's job with an invented one, by the ways that typing goes.

import { button, h } from '../dom.js';
import { asTyped } from '../locale.js';
import { words as t } from '../words/demo.js';
import { entries } from './demo-job.js';
import { demoLimits } from './demo-limits.js';

/** @typedef {import('../context.js').Context} Context */

/** Numbers as they are typed here; choices and words as they are. @param {Record<string, string>} typed */
const here = (typed) =>
  Object.fromEntries(
    Object.entries(typed).map(([name, v]) => [name, /^-?\d+\.\d+$/.test(v) ? asTyped(v) : v]),
  );

/** Puts everything into the open job, and shows it anew. @param {Context} ctx */
async function fillIn(ctx) {
  for (const [name, { typed, half = {}, rows = [] }] of Object.entries(entries)) {
    const kept = ctx.plan.keptOf(name);
    Object.assign(kept.record, {
      system: 'metric',
      typed: here(typed),
      half: here(half),
      rows: rows.map((row) => ({ typed: here(row), half: {} })),
    });
    kept.changed(true);
  }
  await ctx.useLimits(demoLimits(ctx.engine.blankLimits()));
  await ctx.keepJob({ ...t.header });
  ctx.go('parts', { note: t.invented });
}

/** Whether anybody has worked on the open job. @param {Context} ctx */
const isTouched = (ctx) =>
  ctx.plan.touched || ctx.captures.length > 0 || Boolean(ctx.job.limits || ctx.job.vehicle);

/** Puts the offer among what comes first while the job is untouched, else where it is out of the
 * way. @param {Context} ctx @param {{ first: HTMLElement, last: HTMLElement }} places */
export async function offerDemo(ctx, { first, last }) {
  await ctx.loadPlan();
  const touched = isTouched(ctx);
  const el = h('div', { class: 'demo' });
  const fill = async () => {
    try {
      await fillIn(ctx);
    } catch (error) {
      el.replaceChildren(h('p', { class: 'trouble', role: 'alert' }, ctx.storeWords(error)));
    }
  };
  const ask = () =>
    el.replaceChildren(
      h('p', { class: 'caution' }, t.ask),
      button(t.fill, 'do-demo', fill, 'row'),
      button(t.leave, 'leave-demo', offer, 'row'),
    );
  const offer = () => el.replaceChildren(button(t.offer, 'demo', touched ? ask : fill, 'row'));
  offer();
  (touched ? last : first).append(el);
}
