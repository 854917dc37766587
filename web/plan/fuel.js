// Fuel: which one, the sheets of line, tank and pump, why the line is narrow, what was seen.

import { h } from '../dom.js';
import { frame, verdictFrame } from '../screens/frame.js';
import { worstFirst } from '../sentences.js';
import { words } from '../words/fuel.js';
import { sheets } from '../words/fuel-sheets.js';
import { answersOf } from './fields.js';
import { bubblePicture } from './fuel-bubble.js';
import { push } from './fuel-shared.js';
import { SheetForm } from './sheet.js';
import { tick } from './ticks.js';

/** @typedef {import('../app.js').Context} Context */

/** The way to one sheet, with its worst answer. @param {Context} ctx @param {string} name */
function way(ctx, name) {
  const [title, sub] = /** @type {Record<string, string[]>} */ (words.sheets)[name];
  const all = answersOf(ctx, name, ctx.plan.keptOf(name).record);
  const worst = worstFirst(all.filter((a) => !Number.isNaN(a.result.value)))[0];
  const verdict = worst
    ? verdictFrame(worst.verdict, ctx.text.verdicts[worst.verdict], worst.limit?.basis ?? '')
    : verdictFrame(null, ctx.text.parts.unchecked);
  return h(
    'li',
    {},
    h(
      'button',
      {
        type: 'button',
        class: 'row',
        'data-action': `sheet-${name}`,
        click: () => ctx.go(`fuel_${name}`),
      },
      h('span', { class: 'words' }, h('b', {}, title), h('small', {}, sub)),
      // Consumption is held against no limit.
      name === 'burn' ? null : verdict,
    ),
  );
}

/** Why the line is narrow: explains, and passes nothing. @param {SheetForm} form */
function bubble(form) {
  return h(
    'details',
    {},
    h('summary', {}, words.whyNarrow),
    bubblePicture(),
    h('p', {}, words.bubbleWords),
    form.field('bore_mm').el,
    form.state,
    form.working.el,
    h('p', { class: 'source' }, words.bubbleSource),
  );
}

/** @param {Context} ctx */
export function fuel(ctx) {
  const form = new SheetForm(ctx, 'bubble', sheets.bubble);
  form.onWorked = () => push(ctx, form);
  const kept = ctx.plan.keptOf('fuel_run');
  const el = frame(
    ctx,
    'fuel',
    words.title,
    [
      h('ul', { class: 'cautions' }, ...words.cautions.map((c) => h('li', {}, c))),
      form.group(words.fuelFirst, ['fuel']),
      h('ul', { class: 'rows' }, ...Object.keys(words.sheets).map((name) => way(ctx, name))),
      h('p', { class: 'source' }, words.lead),
      bubble(form),
      h('h2', {}, words.ticks),
      ...Object.entries(words.tick).map(([id, statement]) => tick(ctx, kept, id, statement)),
    ],
    [],
  );
  form.start();
  return el;
}
