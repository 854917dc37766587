// Exhaust and combustion air: the ways to both pipes and their ends, on a boat to her outlet; what
// was seen.

import { h } from '../dom.js';
import { frame } from '../screens/frame.js';
import { words } from '../words/flue.js';
import { sheets } from '../words/flue-sheets.js';
import { share } from './flue-pipe.js';
import { isBoat } from './sections.js';
import { SheetForm } from './sheet.js';
import { tick } from './ticks.js';
import { way } from './way.js';

/** @typedef {import('../context.js').Context} Context */

/** @param {Context} ctx @param {string} sheet */
const ticks = (ctx, sheet) =>
  Object.entries(words.tick[sheet]).map(([id, statement]) =>
    tick(ctx, ctx.plan.keptOf(sheet), id, statement),
  );

/** @param {Context} ctx */
export function flue(ctx) {
  /** @param {string} sheet */
  const to = (sheet) => way(ctx, 'flue', sheet, words.sheets[sheet], `flue_${sheet}`, true);
  const form = new SheetForm(ctx, 'exhaust', sheets.exhaust);
  const boat = h(
    'section',
    {},
    h('ul', { class: 'rows' }, to('boat_outlet')),
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
      h('ul', { class: 'rows' }, ...['exhaust', 'air_pipe', 'pipe_ends'].map(to)),
      boat,
      h('h2', {}, words.ticks),
      ...['exhaust', 'pipe_ends'].flatMap((name) => ticks(ctx, name)),
    ],
    [],
  );
  form.start();
  return el;
}
