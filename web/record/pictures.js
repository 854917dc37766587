// The drawings that go on paper with the record: where there is something to draw.

import { h } from '../dom.js';
import { cutDrawing } from '../plan/cut-picture.js';
import { legsOf } from '../plan/flue-legs.js';
import { pipePicture } from '../plan/flue-picture.js';
import { SheetForm } from '../plan/sheet.js';
import { words as cut } from '../words/cut.js';
import { words as flue } from '../words/flue.js';
import { sheets as flueSheets } from '../words/flue-sheets.js';

/** @typedef {import('../context.js').Context} Context */

/** A sheet's drawing under its title, of what is kept of it; nothing where it is untouched.
 * @param {Context} ctx @param {string} name @param {import('../plan/sheet.js').SheetWords} words
 * @param {string} title
 * @param {(form: SheetForm, worked: import('../plan/model.js').Worked | null) => Node[]} draw */
function drawn(ctx, name, words, title, draw) {
  if (!ctx.plan.keptOf(name).record.changed_at) return [];
  const form = new SheetForm(ctx, name, words);
  /** @type {Node[]} */ let picture = [];
  form.onWorked = (worked) => {
    picture = draw(form, worked);
  };
  form.start();
  return picture.length ? [h('figure', {}, ...picture, h('figcaption', {}, title))] : [];
}

/** @param {Context} ctx @param {'exhaust' | 'air_pipe'} name */
function pipe(ctx, name) {
  const title = flue.sheets[name][0];
  return drawn(ctx, name, flueSheets[name], title, (form, worked) =>
    pipePicture(form, legsOf(worked), title),
  );
}

/** @param {Context} ctx @returns {Node[]} */
export const pictures = (ctx) => [
  ...drawn(ctx, 'cut_plan', cut.cut, cut.title, (form, worked) => {
    const drawing = cutDrawing(form, worked);
    return drawing ? [drawing.el] : [];
  }),
  ...pipe(ctx, 'exhaust'),
  ...pipe(ctx, 'air_pipe'),
];
