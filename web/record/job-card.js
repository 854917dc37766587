// One job: what it is of and for whom; opened, begun again for the next vehicle, put away, deleted.

import { button, h } from '../dom.js';
import { frame } from '../screens/frame.js';
import { words } from '../words/jobs.js';
import { buildRecord } from './build.js';
import { nameOf } from './jobs.js';
import { isStop } from './rows.js';
import { contentOf, removeJob } from './whole-job.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../types.js').Job} Job */

const FIELDS = /** @type {const} */ (['vehicle', 'heater', 'customer', 'installer']);

/** What a check told, to be looked at beside the next one.
 * @param {import('./rows.js').CheckRow} check */
const told = ({ id, what, value, u, unit, at, verdict }) =>
  value === null || u === null ? [] : [{ id, what, value, u, unit, at, verdict }];

/** The stops of its first start. @param {import('./rows.js').FactRow[]} facts */
const stopsOf = (facts) => facts.filter(isStop).map((f) => `${f.statement}. ${f.reason}`);

/** Removes a job with everything of it. @param {Context} ctx @param {number} id
 * @returns {Promise<boolean>} false where another tab has it open */
async function removeForGood(ctx, id) {
  // What waits for a pause must not come after.
  await ctx.settle();
  const store = ctx.stored();
  const done = await ctx.hold.alone(ctx.lockOf(id), () => removeJob(store, id));
  if (done && ctx.job.id === id) await ctx.open(ctx.tryout);
  return done;
}

/** @param {Context} ctx @param {{ job: Job, note?: string }} params */
export function jobCard(ctx, { job, note }) {
  let now = job;
  const saved = h('p', { class: 'source' }, h('span', { class: 'saved', role: 'status' }));
  const state = /** @type {HTMLElement} */ (saved.firstChild);
  const acts = h('div', {});
  const tell = (/** @type {string} */ said, done = false) => {
    state.textContent = said;
    state.dataset.saved = done ? 'yes' : 'no';
  };
  /** @param {Partial<Job>} patch */
  const keep = async (patch) => {
    now = { ...now, ...patch };
    const mine = now;
    tell(ctx.text.captured.saving);
    try {
      await ctx.keepJob(patch, job.id);
      // What was typed since is not in the store yet.
      if (mine === now) tell(ctx.text.captured.saved, true);
    } catch (error) {
      tell(ctx.storeWords(error));
    }
    show();
  };
  /** @param {Promise<void>} done */
  const toJob = (done) =>
    done.then(() => ctx.go('parts')).catch((error) => tell(ctx.storeWords(error)));
  const next = () =>
    toJob(
      ctx.newJob({
        heater: now.heater,
        installer: now.installer,
        customer: now.customer,
        limits: now.limits,
      }),
    );
  const again = async () => {
    try {
      if (ctx.job.id !== job.id) await ctx.openJob(job.id);
      await ctx.loadPlan();
      const { sha256, checks, facts } = await buildRecord(ctx);
      const { vehicle, heater, customer, installer, limits } = now;
      await ctx.newJob({
        ...{ vehicle, heater, customer, installer, limits },
        before: { sha256, checks: checks.flatMap(told), stops: stopsOf(facts) },
      });
      ctx.go('again');
    } catch (error) {
      tell(ctx.storeWords(error));
    }
  };
  const ask = () => {
    acts.replaceChildren(
      h('p', { class: 'caution' }, words.askDelete),
      button(
        words.doDelete,
        'do-delete',
        () => keep({ deleted_at: new Date().toISOString() }),
        'row',
      ),
      button(words.keepIt, 'keep-it', show, 'row'),
    );
  };
  const remove = async () => {
    try {
      if (await removeForGood(ctx, job.id)) return ctx.go('jobs');
      tell(words.openElsewhere);
    } catch (error) {
      tell(ctx.storeWords(error));
    }
    show();
  };
  const askForGood = async () => {
    try {
      const content = await contentOf(ctx.stored(), job.id);
      acts.replaceChildren(
        h('p', { class: 'caution' }, words.askForGood(content)),
        button(words.doForGood, 'do-remove', remove, 'row'),
        button(words.keepIt, 'keep-it', show, 'row'),
      );
    } catch (error) {
      tell(ctx.storeWords(error));
    }
  };
  const show = () => {
    const away = now.deleted_at
      ? [
          h('p', { class: 'caution' }, words.isDeleted),
          button(words.putBack, 'put-back', () => keep({ deleted_at: null }), 'row'),
          button(words.forGood, 'remove', askForGood, 'row'),
        ]
      : [
          button(words.again, 'check-again', again, 'row'),
          button(words.next, 'next-vehicle', next, 'row'),
          now.archived_at
            ? button(words.takeOut, 'take-out', () => keep({ archived_at: null }), 'row')
            : button(
                words.archive,
                'archive',
                () => keep({ archived_at: new Date().toISOString() }),
                'row',
              ),
          button(words.remove, 'delete', ask, 'row'),
        ];
    acts.replaceChildren(...away);
    open.disabled = now.deleted_at !== null;
  };
  const open = button(job.id === ctx.job.id ? words.onWithIt : words.openIt, 'open-job', () =>
    toJob(ctx.openJob(job.id)),
  );
  const fields = FIELDS.map((name) => {
    const input = h('input', {
      type: 'text',
      id: `f-${name}`,
      'data-name': name,
      value: now[name],
      maxlength: 80,
      autocomplete: 'off',
      input: () => keep({ [name]: input.value.trim() }),
    });
    const [label, hint] = words.fields[name];
    return h(
      'div',
      { class: 'field' },
      h('label', { for: input.id }, label, h('small', {}, hint)),
      input,
    );
  });
  show();
  return frame(
    ctx,
    'job_card',
    nameOf(job),
    [note && h('p', { class: 'caution', role: 'status' }, note), ...fields, saved, acts],
    [open],
  );
}
