// Where the heater goes: free space on its six sides, people and exhausts near its ends; the ways to
// fit and cut plan.

import { h } from '../dom.js';
import { frame } from '../screens/frame.js';
import { words } from '../words/place.js';
import { placePicture } from './place-picture.js';
import { SheetForm } from './sheet.js';
import { tick } from './ticks.js';
import { way } from './way.js';

/** @typedef {import('../context.js').Context} Context */

/** The screens beside this one, by their sheets. @type {Record<string, string>} */
const SCREENS = { fit: 'fit', cut_plan: 'cut' };

/** @param {Context} ctx */
export function place(ctx) {
  const form = new SheetForm(ctx, 'clearances', words.clearances);
  const names = form.entry.inputs.map((i) => i.name);
  const picture = h('div', {});
  const ways = Object.entries(SCREENS).map(([sheet, screen]) =>
    way(ctx, 'place', sheet, words.sheets[sheet], screen),
  );
  form.onWorked = (worked) => picture.replaceChildren(placePicture(ctx, worked));
  const el = frame(
    ctx,
    'place',
    words.title,
    [
      h('p', { class: 'caution' }, words.caution),
      h('h2', {}, words.ways),
      h('ul', { class: 'rows' }, ...ways),
      picture,
      form.group(words.sides, names.slice(0, 6), words.sidesWhy),
      form.group(words.ends, names.slice(6), words.endsWhy),
      ...form.outcome(),
      h('h2', {}, words.ticks),
      ...Object.entries(words.tick).map(([id, statement]) => tick(ctx, form.kept, id, statement)),
    ],
    [],
  );
  form.start();
  return el;
}
