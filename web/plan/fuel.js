// Fuel: which one, the sheets of line, tank and pump, why the line is narrow, what was seen.

import { h } from '../dom.js';
import { frame } from '../screens/frame.js';
import { words } from '../words/fuel.js';
import { sheets } from '../words/fuel-sheets.js';
import { bubblePicture } from './fuel-bubble.js';
import { push } from './shared-numbers.js';
import { SheetForm } from './sheet.js';
import { tick } from './ticks.js';
import { way } from './way.js';

/** @typedef {import('../context.js').Context} Context */

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
  const ways = Object.entries(words.sheets).map(([sheet, told]) =>
    way(ctx, 'fuel', sheet, told, `fuel_${sheet}`, true),
  );
  const el = frame(
    ctx,
    'fuel',
    words.title,
    [
      h('ul', { class: 'cautions' }, ...words.cautions.map((c) => h('li', {}, c))),
      form.group(words.fuelFirst, ['fuel']),
      h('ul', { class: 'rows' }, ...ways),
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
