// The drawings that go on paper with the record: where there is something to draw.

import { cutDrawing } from '../plan/cut-picture.js';
import { SheetForm } from '../plan/sheet.js';
import { words as cut } from '../words/cut.js';
import { h } from '../dom.js';

/** @typedef {import('../context.js').Context} Context */

/** A sheet's drawing under its title, of what is kept of it; nothing where it is untouched.
 * @param {Context} ctx @param {string} name @param {import('../plan/sheet.js').SheetWords} words
 * @param {string} title
 * @param {(form: SheetForm, worked: import('../plan/model.js').Worked | null) => Node | null} draw */
function drawn(ctx, name, words, title, draw) {
  if (!ctx.plan.keptOf(name).record.changed_at) return [];
  const form = new SheetForm(ctx, name, words);
  /** @type {Node | null} */ let picture = null;
  form.onWorked = (worked) => {
    picture = draw(form, worked);
  };
  form.start();
  return picture ? [h('figure', {}, picture, h('figcaption', {}, title))] : [];
}

/** @param {Context} ctx @returns {Node[]} */
export const pictures = (ctx) =>
  drawn(
    ctx,
    'cut_plan',
    cut.cut,
    cut.title,
    (form, worked) => cutDrawing(form, worked)?.el ?? null,
  );
