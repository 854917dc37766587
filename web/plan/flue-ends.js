// What the ends of exhaust and combustion air are near, and a boat's outlet as she heels.

import { button, h } from '../dom.js';
import { frame } from '../screens/frame.js';
import { words } from '../words/flue.js';
import { sheets } from '../words/flue-sheets.js';
import { boatPicture } from './flue-boat-picture.js';
import { SheetForm } from './sheet.js';

/** @typedef {import('../context.js').Context} Context */

/** What a new thing starts as: the first of its sort in core's list. */
const FIRST = { addOpening: '0', addLine: '5', addCombustible: '9' };

/** @param {Context} ctx */
export function pipeEnds(ctx) {
  const t = words.ends;
  const form = new SheetForm(ctx, 'pipe_ends', sheets.pipe_ends);
  const add = Object.entries(FIRST).map(([name, what]) =>
    button(
      /** @type {Record<string, string>} */ (t)[name],
      name,
      () => form.addRow({ what }),
      'row',
    ),
  );
  const el = frame(
    ctx,
    'flue_pipe_ends',
    words.sheets.pipe_ends[0],
    [
      h('p', { class: 'caution' }, t.caution),
      form.group(t.air, ['air_to_exhaust_mm', 'past_body_mm']),
      h('h2', {}, t.things),
      h('p', { class: 'source' }, t.thingsWhy),
      form.rowsEl,
      ...add,
      form.group(t.bare, ['lagged']),
      ...form.outcome(),
    ],
    [],
  );
  form.start();
  return el;
}

/** @param {Context} ctx */
export function boatOutlet(ctx) {
  const t = words.boat;
  const form = new SheetForm(ctx, 'boat_outlet', sheets.boat_outlet);
  const names = form.entry.inputs.map((i) => i.name);
  const picture = h('div', {});
  form.onWorked = (worked) => picture.replaceChildren(...boatPicture(form, worked));
  const el = frame(
    ctx,
    'flue_boat_outlet',
    words.sheets.boat_outlet[0],
    [
      h('p', { class: 'caution' }, t.caution),
      h('p', {}, t.lead),
      picture,
      form.group(t.at_rest, names.slice(0, 4)),
      form.group(t.sailing, names.slice(4)),
      h('p', { class: 'source' }, t.ignores),
      ...form.outcome(),
    ],
    [],
  );
  form.start();
  return el;
}
