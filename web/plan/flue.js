// Exhaust and combustion air: the ways to both pipes and their ends, on a boat to her outlet; what
// was seen.

import { h } from '../dom.js';
import { frame, verdictFrame } from '../screens/frame.js';
import { words } from '../words/flue.js';
import { sheets } from '../words/flue-sheets.js';
import { isBoat, share } from './flue-pipe.js';
import { SheetForm } from './sheet.js';
import { tick } from './ticks.js';

/** @typedef {import('../app.js').Context} Context */

/** The worst answer of a sheet in its frame; what is within stands for it only with nothing open.
 * @param {Context} ctx @param {string} sheet */
function state(ctx, sheet) {
  /** @type {{ worst: import('./model.js').Answer | null, open: number }} */
  const { worst, open } = ctx.plan.stateOf(ctx, sheet);
  if (!worst) return verdictFrame(null, ctx.text.parts.unchecked);
  if (open && worst.verdict === 'within') return verdictFrame(null, ctx.text.parts.open(open));
  return verdictFrame(worst.verdict, ctx.text.verdicts[worst.verdict], worst.limit?.basis ?? '');
}

/** @param {Context} ctx @param {string} sheet */
function way(ctx, sheet) {
  const [title, sub] = words.sheets[sheet];
  return h(
    'li',
    {},
    h(
      'button',
      {
        type: 'button',
        class: 'row',
        'data-action': `sheet-${sheet}`,
        click: () => ctx.go(`flue_${sheet}`),
      },
      h('span', { class: 'words' }, h('b', {}, title), h('small', {}, sub)),
      state(ctx, sheet),
    ),
  );
}

/** @param {Context} ctx @param {string} sheet */
const ticks = (ctx, sheet) =>
  Object.entries(words.tick[sheet]).map(([id, statement]) =>
    tick(ctx, ctx.plan.keptOf(sheet), id, statement),
  );

/** @param {Context} ctx */
export function flue(ctx) {
  const form = new SheetForm(ctx, 'exhaust', sheets.exhaust);
  const boat = h(
    'section',
    {},
    h('ul', { class: 'rows' }, way(ctx, 'boat_outlet')),
    h('h2', {}, words.boatTicks),
    ...ticks(ctx, 'boat_outlet'),
  );
  form.onWorked = () => {
    share(ctx, form);
    boat.hidden = !isBoat(ctx);
  };
  const el = frame(
    ctx,
    'flue',
    words.title,
    [
      h('ul', { class: 'cautions' }, ...words.cautions.map((c) => h('li', {}, c))),
      form.group(words.where, ['boat'], words.whereWhy),
      h(
        'ul',
        { class: 'rows' },
        ...['exhaust', 'air_pipe', 'pipe_ends'].map((name) => way(ctx, name)),
      ),
      boat,
      h('h2', {}, words.ticks),
      ...['exhaust', 'pipe_ends'].flatMap((name) => ticks(ctx, name)),
    ],
    [],
  );
  form.start();
  return el;
}
