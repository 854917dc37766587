// Where the heater goes: free space on its six sides, people and exhausts near its ends.

import { h } from '../dom.js';
import { frame } from '../screens/frame.js';
import { words } from '../words/place.js';
import { savedLine } from './answers.js';
import { SheetForm } from './sheet.js';

/** @param {import('../app.js').Context} ctx */
export function place(ctx) {
  const form = new SheetForm(ctx, 'clearances', words.clearances);
  const names = form.entry.inputs.map((i) => i.name);
  const el = frame(
    ctx,
    'place',
    words.title,
    [
      h('p', { class: 'caution' }, words.caution),
      form.group(words.sides, names.slice(0, 6), words.sidesWhy),
      form.group(words.ends, names.slice(6)),
      form.halfList(),
      form.state,
      form.answers.el,
      form.working.el,
      savedLine(form),
    ],
    [],
  );
  form.start();
  return el;
}
