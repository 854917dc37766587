// Where the heater goes: free space on its six sides, people and exhausts near its ends; the ways to
// fit and cut plan.

import { h } from '../dom.js';
import { frame, verdictFrame } from '../screens/frame.js';
import { words } from '../words/place.js';
import { placePicture } from './place-picture.js';
import { SheetForm } from './sheet.js';

/** @typedef {import('../app.js').Context} Context */

/** The screens beside this one, by their sheets. @type {Record<string, string>} */
const SCREENS = { fit: 'fit', cut_plan: 'cut' };

/** The worst answer of a sheet in its frame; what is within stands for it only with nothing open.
 * @param {Context} ctx @param {string} sheet */
function state(ctx, sheet) {
  /** @type {{ worst: import('./model.js').Answer | null, open: number }} */
  const { worst, open } = ctx.plan.stateOf(ctx, sheet);
  if (!worst) return verdictFrame(null, ctx.text.parts.unchecked);
  if (open && worst.verdict === 'within') return verdictFrame(null, ctx.text.parts.open(open));
  return verdictFrame(worst.verdict, ctx.text.verdicts[worst.verdict], worst.limit?.basis ?? '');
}

/** The way to another screen of the place. @param {Context} ctx @param {string} sheet */
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
        click: () => ctx.go(SCREENS[sheet]),
      },
      h('span', { class: 'words' }, h('b', {}, title), h('small', {}, sub)),
      state(ctx, sheet),
    ),
  );
}

/** @param {Context} ctx */
export function place(ctx) {
  const form = new SheetForm(ctx, 'clearances', words.clearances);
  const names = form.entry.inputs.map((i) => i.name);
  const picture = h('div', {});
  form.onWorked = (worked) => picture.replaceChildren(placePicture(ctx, worked));
  const el = frame(
    ctx,
    'place',
    words.title,
    [
      h('p', { class: 'caution' }, words.caution),
      h('h2', {}, words.ways),
      h('ul', { class: 'rows' }, ...Object.keys(words.sheets).map((name) => way(ctx, name))),
      picture,
      form.group(words.sides, names.slice(0, 6), words.sidesWhy),
      form.group(words.ends, names.slice(6), words.endsWhy),
      ...form.outcome(),
    ],
    [],
  );
  form.start();
  return el;
}
