// All jobs: searched, opened, begun; put away and deleted ones a tap deeper.

import { filed } from '../carrier.js';
import { button, h } from '../dom.js';
import { frame } from '../screens/frame.js';
import { day, stamp } from '../units.js';
import { words } from '../words/jobs.js';
import { words as recordWords } from '../words/record.js';
import { readRecord, takeIn } from './take-in.js';
import { contentOf } from './whole-job.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../types.js').Job} Job */

/** What a job is called. @param {Pick<Job, 'vehicle' | 'created_at'>} job */
export const nameOf = (job) => job.vehicle || words.unnamed(day(job.created_at));

/** @param {Job} job @param {string} wanted */
function matches(job, wanted) {
  const text = [job.vehicle, job.heater, job.customer, job.installer, day(job.created_at)].join(
    ' ',
  );
  return wanted
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.toLowerCase().includes(word));
}

/** @param {Context} ctx @param {Job} job @param {Map<number, number>} sizes bytes, by job */
function row(ctx, job, sizes) {
  const bytes = sizes.get(job.id);
  const sub = [
    job.heater,
    job.customer,
    words.changed(stamp(job.changed_at)),
    bytes && words.about(bytes),
  ].filter(Boolean);
  return h(
    'li',
    { 'data-job': job.id },
    h(
      'button',
      {
        type: 'button',
        class: 'row',
        'data-action': 'job-card',
        click: () => ctx.go('job_card', { job }),
      },
      h('span', { class: 'words' }, h('b', {}, nameOf(job)), h('small', {}, sub.join(', '))),
      job.id === ctx.job.id ? h('span', { class: 'open-now' }, words.open) : null,
    ),
  );
}

/** A list under its title, a tap deeper.
 * @param {string} title @param {Job[]} jobs @param {(job: Job) => Node} line */
function away(title, jobs, line) {
  if (!jobs.length) return null;
  const list = h('ul', { class: 'rows' }, ...jobs.map(line));
  return h('details', {}, h('summary', {}, `${title} (${jobs.length})`), list);
}

/** @param {Context} ctx */
export function jobs(ctx) {
  const search = h('input', {
    type: 'search',
    id: 'f-search',
    'data-name': 'search',
    autocomplete: 'off',
    maxlength: 80,
  });
  const lists = h('div', {});
  const trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
  const room = h('p', { class: 'source' });
  /** @type {Job[]} */ let all = [ctx.job];
  /** @type {Map<number, number>} */ const sizes = new Map();
  const line = (/** @type {Job} */ job) => row(ctx, job, sizes);
  const show = () => {
    const found = all.filter((j) => matches(j, search.value)).reverse();
    const here = found.filter((j) => !j.archived_at && !j.deleted_at);
    lists.replaceChildren(
      ...[
        here.length
          ? h('ul', { class: 'rows' }, ...here.map(line))
          : h('p', { class: 'missing' }, words.none),
        away(
          words.archived,
          found.filter((j) => j.archived_at && !j.deleted_at),
          line,
        ),
        away(
          words.deleted,
          found.filter((j) => j.deleted_at),
          line,
        ),
      ].filter((el) => el !== null),
    );
  };
  search.addEventListener('input', show);
  const begin = async () => {
    try {
      await ctx.newJob({ installer: ctx.job.installer, limits: null });
      ctx.go('job_card', { job: ctx.job });
    } catch (error) {
      trouble.textContent = ctx.storeWords(error);
      trouble.hidden = false;
    }
  };
  const input = h('input', {
    type: 'file',
    accept: '.json,application/json',
    class: 'sr',
    // The button beside it opens it.
    tabindex: -1,
    'aria-label': recordWords.bringIn,
    change: async () => {
      const file = input.files?.[0];
      if (!file) return;
      trouble.hidden = true;
      try {
        await ctx.mayLeave();
        const { record, sound } = await readRecord(ctx, file);
        const id = await takeIn(ctx, record);
        await ctx.openJob(id);
        await filed(ctx, ctx.job, record);
        ctx.go('job_card', { job: ctx.job, note: sound ? recordWords.sound : recordWords.changed });
      } catch (error) {
        const { code, message } = /** @type {any} */ (error);
        trouble.textContent = code ? ctx.storeWords(error) : message;
        trouble.hidden = false;
      }
      input.value = '';
    },
  });
  show();
  const measure = async () => {
    const store = ctx.stored();
    all = await store.jobs();
    show();
    for (const { id } of all) sizes.set(id, (await contentOf(store, id)).bytes);
    show();
    const { usage } = (await navigator.storage?.estimate?.()) ?? {};
    if (usage) room.textContent = words.all(usage);
  };
  measure().catch((error) => {
    trouble.textContent = ctx.storeWords(error);
    trouble.hidden = false;
  });
  return frame(
    ctx,
    'jobs',
    words.title,
    [
      trouble,
      h('div', { class: 'field' }, h('label', { for: 'f-search' }, words.search), search),
      lists,
      room,
      input,
      button(recordWords.bringIn, 'bring-in', () => input.click(), 'row'),
    ],
    [button(words.begin, 'new-job', begin)],
  );
}
