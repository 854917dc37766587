// The whole job at a glance, in the order of the work: what each section and part has come to, what
// is open, what to do next. Never one answer for all of it.

import { filing } from '../carrier.js';
import { button, h, say } from '../dom.js';
import { ORDER } from '../order.js';
import { asRead } from '../own-words.js';
import { frame, pick, verdictFrame } from './frame.js';
import { levelState } from './level.js';
import { count, standing, worstOf } from './standing.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../plan/state.js').Item} Item */

/** The short path: what the phone reads, and what it needs for that. */
const ANGLES = ['limits', 'level', 'heater', 'pump', 'filter', 'pipe'];

/** @param {Context} ctx @param {string} name */
const isPart = (ctx, name) => ctx.engine.catalogue.parts.some(({ id }) => id === name);

/** @param {Context} ctx @param {string} name name and what it is about @returns {[string, string]} */
function wordsOf(ctx, name) {
  const t = ctx.text.parts;
  if (name === 'level') return [ctx.text.level.title, levelState(ctx)];
  if (name === 'limits') return [t.limits, asRead(ctx.limits.name)];
  const named = /** @type {Record<string, any>} */ (t);
  if (isPart(ctx, name)) return [named[name], named.sub[name]];
  return /** @type {any} */ (ctx.text.sections)[name];
}

/** @param {Context} ctx @param {string} name */
function goTo(ctx, name) {
  ctx.lastOf = name;
  if (isPart(ctx, name)) ctx.go('hold', { part: name });
  else ctx.go(name);
}

/** @param {Context} ctx @param {string} name */
function actionOf(ctx, name) {
  if (isPart(ctx, name)) return `part-${name}`;
  return name === 'level' || name === 'limits' ? name : `section-${name}`;
}

/** A row of the list, its answer to come. @param {Context} ctx @param {string} name */
function rowOf(ctx, name) {
  const [title, sub] = wordsOf(ctx, name);
  const small = h('small', {}, sub);
  const verdict = h(
    'span',
    {},
    ['level', 'limits'].includes(name) ? null : verdictFrame(null, '…'),
  );
  const el = h(
    'button',
    {
      type: 'button',
      class: 'row',
      'data-action': actionOf(ctx, name),
      click: () => goTo(ctx, name),
    },
    h('span', { class: 'words' }, h('b', {}, title), small),
    verdict,
  );
  return { el, small, verdict, sub };
}

/** @param {Context} ctx @param {{ note?: string }} params note: what is to be known of the job */
export function parts(ctx, { note: said } = {}) {
  const t = ctx.text.parts;
  const summary = h('p', { class: 'summary', role: 'status' });
  const stopped = h('p', { class: 'trouble', role: 'alert', hidden: true });
  const list = h('div', {});
  const note = h('p', { class: 'source' });
  const demo = { first: h('div', {}), last: h('div', {}) };
  if (ctx.tryout) import('../tryout/demo.js').then(({ offerDemo }) => offerDemo(ctx, demo));
  /** @type {string | undefined} */ let due;
  const next = button(t.next('…'), 'next', () => (due ? goTo(ctx, due) : ctx.go('record')));
  const unchecked = button(t.unchecked, 'unchecked', () => ctx.go('unchecked'), 'lesser');
  /** @type {Map<string, ReturnType<typeof rowOf>>} */ const rows = new Map();

  /** A title that the first row says again is only heard. @param {string} title @param {string[]} names */
  const heading = (title, [first]) =>
    h('h2', {}, wordsOf(ctx, first)[0] === title ? h('span', { class: 'sr' }, title) : title);

  const lay = () => {
    const short = ctx.settings.path === 'angles';
    note.textContent = short ? t.anglesOnly : '';
    rows.clear();
    const groups = Object.entries(ORDER).map(([group, names]) => {
      const shown = names.filter((name) => !short || ANGLES.includes(name));
      for (const name of shown) rows.set(name, rowOf(ctx, name));
      const lines = shown.map((name) => h('li', { 'data-part': name }, rows.get(name)?.el));
      return shown.length === 0
        ? null
        : h('section', {}, heading(t.groups[group], shown), h('ul', { class: 'rows' }, ...lines));
    });
    list.replaceChildren(...groups.filter((g) => g !== null));
    ctx.loadPlan().then((plan) => fill(plan.stateOf(ctx)));
  };

  /** @param {{ items: Item[], entered: number, of: number }} state */
  const fill = ({ items, entered, of }) => {
    const shown = items.filter((i) => rows.has(i.section));
    const n = count(shown);
    summary.textContent = t.summary(n);
    const stop = items.find((i) => i.group === 'start.stop');
    for (const [name, { small, verdict, sub }] of rows) {
      const own = shown.filter((i) => i.section === name);
      if (name === 'limits') small.textContent = t.entered(entered, of);
      if (!own.length) continue;
      const lost = own.some((i) => i.state === 'none') ? t.lost : sub;
      small.textContent = (stop?.section === name ? stop : worstOf(own))?.title ?? lost;
      verdict.replaceChildren(standing(ctx, own));
    }
    const names = [...rows.keys()];
    const has = (/** @type {string} */ name, /** @type {string[]} */ states) =>
      shown.some((i) => i.section === name && states.includes(i.state));
    const first = (/** @type {string[]} */ states, /** @type {number} */ from = 0) =>
      [...names.slice(from), ...names.slice(0, from)].find((name) => has(name, states));
    // What is left of a section that was worked on may have to wait for a later one.
    const from = has(ctx.lastOf, ['within', 'seen', 'not_found'])
      ? names.indexOf(ctx.lastOf) + 1
      : 0;
    stopped.hidden = !stop;
    say(stopped, stop?.title ?? '');
    due = stop?.section ?? first(['beyond']) ?? first(['not_proven', 'open', 'none'], from);
    // Before anything is measured: what it will be held against.
    const isBlank = !entered && !(n.beyond + n.not_proven + n.within);
    if (!stop && due !== 'job' && isBlank) due = 'limits';
    say(next, stop ? t.toStop : t.next(due ? wordsOf(ctx, due)[0] : t.record));
    unchecked.textContent = t.open(n.open);
  };

  const path = pick(t.pathLegend, 'path', Object.entries(t.path), ctx.settings.path, (value) => {
    ctx.keep({ path: /** @type {'whole' | 'angles'} */ (value) });
    lay();
  });
  lay();
  return frame(
    ctx,
    'parts',
    ctx.job.vehicle || t.title,
    [
      said ? h('p', { class: 'caution', role: 'status' }, said) : null,
      stopped,
      summary,
      filing(ctx),
      demo.first,
      ctx.job.vehicle || ctx.tryout
        ? null
        : button(t.name, 'name-job', () => ctx.go('job_card', { job: ctx.job }), 'row'),
      path,
      note,
      list,
      ctx.settings.persisted === false && !ctx.tryout
        ? h('p', { class: 'source', 'data-kept-by': 'chance' }, t.mayGo)
        : null,
      h(
        'nav',
        { class: 'row' },
        ctx.job.before && button(t.again, 'again', () => ctx.go('again'), 'lesser'),
        button(t.record, 'record', () => ctx.go('record'), 'lesser'),
        button(t.jobs, 'jobs', () => ctx.go('jobs'), 'lesser'),
        button(ctx.text.parts.phone, 'phone', () => ctx.go('phone'), 'lesser'),
        button(t.all, 'captures', () => ctx.go('captures'), 'lesser'),
        button(ctx.text.guides.minutes, 'minutes', () => ctx.go('minutes'), 'lesser'),
      ),
      demo.last,
    ],
    [unchecked, next],
  );
}
