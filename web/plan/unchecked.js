// Everything that is open, section by section: gone to, or said not to be needed, by whom and why.

import { button, h } from '../dom.js';
import { frame } from '../screens/frame.js';
import { words } from '../words/job.js';
import { itemsOf, noNeed } from './state.js';
import { tick } from './ticks.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('./state.js').Item} Item */

/** A section or a part: its name and the way to it. @param {Context} ctx @param {string} section
 * @returns {[string, () => void]} */
function place(ctx, section) {
  const part = ctx.engine.catalogue.parts.some(({ id }) => id === section);
  const named = /** @type {any} */ (part ? ctx.text.parts : ctx.text.sections)[section];
  return part
    ? [named, () => ctx.go('hold', { part: section })]
    : [named[0], () => ctx.go(section)];
}

/** What is open of one group; a tap deeper the mark that it is not needed.
 * @param {Context} ctx @param {string} group @param {Item[]} items */
function line(ctx, group, items) {
  const names = items.map((i) => i.title).join('; ');
  const done = items[0].state === 'not_needed';
  // What every job needs has no such mark; a step of the first start is skipped where it stands.
  if (['job', 'start_up'].includes(items[0].section)) return h('p', { class: 'open-line' }, names);
  const mark = tick(ctx, ctx.plan.keptOf('job'), noNeed(group), names, words.noNeed);
  return h(
    'details',
    { class: 'open-line', 'data-group': group },
    h('summary', {}, done ? words.marked(names) : names),
    mark,
  );
}

/** @template T @param {T[]} all @param {(one: T) => string} key @returns {[string, T[]][]} */
function grouped(all, key) {
  const groups = /** @type {Map<string, T[]>} */ (new Map());
  for (const one of all) groups.set(key(one), [...(groups.get(key(one)) ?? []), one]);
  return [...groups];
}

/** @param {Context} ctx */
export function unchecked(ctx) {
  const open = itemsOf(ctx).filter((i) => ['open', 'none', 'not_needed'].includes(i.state));
  const sections = grouped(open, (i) => i.section).map(([section, items]) => {
    const [name, go] = place(ctx, section);
    return h(
      'section',
      { 'data-open': section },
      h('h2', {}, name),
      ...grouped(items, (i) => i.group).map(([group, own]) => line(ctx, group, own)),
      button(words.go(name), `go-${section}`, go, 'row'),
    );
  });
  const body = sections.length
    ? [h('p', {}, words.uncheckedWhy), ...sections]
    : [h('p', {}, words.nothing)];
  return frame(ctx, 'unchecked', words.unchecked, body, []);
}
