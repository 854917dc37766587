// How much of the open job is in no file yet, and the way into one. A job is compared with what its
// last record held, mark by mark: a clock that was set back hides nothing.

import { button, h } from '../dom.js';
import { handOver } from '../record/hand-over.js';
import { clock } from '../units.js';
import { words as t } from '../words/file.js';
import { isForgetting } from './forgetting.js';
import { forgetsLine } from './opening.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../types.js').Capture} Capture */

/** What tells one state of each thing from the next. A record and the open job alike.
 * @param {{ changed_at: string }} job @param {Capture[]} captures
 * @param {{ key: string, changed_at: string }[]} entries @returns {Record<string, string>} */
function marksOf(job, captures, entries) {
  const told = entries.filter((e) => e.changed_at);
  return {
    job: job.changed_at,
    ...Object.fromEntries(told.map((e) => [`entry ${e.key}`, e.changed_at])),
    ...Object.fromEntries(
      captures.map((c, i) => [
        `capture ${i + 1}`,
        `${c.taken_at} ${c.overruled?.at ?? ''} ${c.photos?.length ?? 0}`,
      ]),
    ),
  };
}

/** How many things differ from what the last record held. @param {Context} ctx */
function changes({ job, captures, plan }) {
  const held = job.filed?.marks ?? { job: job.created_at };
  const now = marksOf(
    job,
    captures,
    plan.kept.map((/** @type {any} */ { record }) => record),
  );
  return Object.keys({ ...held, ...now }).filter((name) => held[name] !== now[name]).length;
}

/** The open job is in a file. @param {Context} ctx
 * @param {import('../types.js').Job} job as it was when the record was made of it
 * @param {any} record what the file holds */
export async function filed(ctx, job, record) {
  const marks = marksOf(job, record.captures, record.entries);
  const at = new Date().toISOString();
  // Being in a file is no change of the job.
  await ctx.keepJob({ changed_at: ctx.job.changed_at, filed: { at, marks } });
}

/** @param {Context} ctx */
function said(ctx) {
  const n = changes(ctx);
  const time = ctx.job.filed ? clock(ctx.job.filed.at) : '';
  if (n > 0) return { n, words: time ? t.since(time, n) : t.inNoFile(n) };
  return { n, words: time && t.unchanged(time) };
}

/** Changes of each job, when its list was last looked at. @type {Map<number, number>} */
const unfiled = new Map();

/** Asks before a page closes that keeps nothing. @param {Context} ctx */
function askBeforeClosing(ctx) {
  window.onbeforeunload = (event) => {
    if (ctx.plan && !ctx.tryout) unfiled.set(ctx.job.id, changes(ctx));
    if ([...unfiled.values()].some((n) => n > 0)) event.preventDefault();
  };
}

/** @param {Context} ctx */
export function filing(ctx) {
  // The try-out's job is nobody's.
  if (ctx.tryout) return null;
  const el = h('div', { role: 'status', 'data-name': 'filing' });
  const show = () => {
    const { n, words } = said(ctx);
    unfiled.set(ctx.job.id, n);
    el.replaceChildren(n ? offer(words) : h('p', { class: 'source' }, words));
    el.hidden = words === '';
  };
  const act = () => handOver(ctx).then(show, complain);
  /** @param {string} words */
  const offer = (words) => {
    const row = button('', 'file-job', act, 'row');
    row.append(h('span', { class: 'words' }, h('b', {}, t.handOver), h('small', {}, words)));
    return row;
  };
  /** @param {any} error */
  const complain = (error) => {
    el.prepend(h('p', { class: 'trouble', role: 'alert' }, ctx.storeWords(error)));
  };
  ctx.loadPlan().then(show);
  if (isForgetting()) askBeforeClosing(ctx);
  return h('div', {}, forgetsLine(), el);
}
