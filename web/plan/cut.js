// The cut plan: what is cut, where from the pilot hole, what is near on both faces, what was looked
// for; drawn to scale, for the screen and for paper.

import { button, h, say } from '../dom.js';
import { frame } from '../screens/frame.js';
import { words } from '../words/cut.js';
import { savedLine } from './answers.js';
import { cutPicture } from './cut-picture.js';
import { cutPrint } from './cut-print.js';
import { SheetForm } from './sheet.js';
import { tick } from './ticks.js';
import { withUnit } from './units.js';

/** @typedef {import('../context.js').Context} Context */

const HOLE = ['diameter_mm', 'right_mm', 'up_mm'];
/** Where most cuts have nothing to tell; each can be typed over.
 * @type {Record<string, string>} */
const NOTHING = {
  lean_right: '0',
  lean_up: '0',
  wander_mm: '0',
  middle_right_mm: '0',
  middle_up_mm: '0',
  turn_deg: '0',
};
/** What goes to the middle once its size is typed. @type {Record<string, string[]>} */
const IN_THE_MIDDLE = {
  a_diameter_mm: ['a_right_mm', 'a_up_mm'],
  plate_width_mm: ['plate_right_mm', 'plate_up_mm'],
};

/** A sheet that nobody has touched starts on the pilot hole, upright, on the line.
 * @param {SheetForm} form */
function begin(form) {
  const { typed } = form.kept.record;
  for (const [name, zero] of Object.entries(NOTHING)) {
    if (name in typed) continue;
    typed[name] = zero;
    form.field(name).input.value = zero;
  }
  for (const [size, places] of Object.entries(IN_THE_MIDDLE))
    form.field(size).input.addEventListener('input', () => {
      for (const name of places.filter((place) => !typed[place])) {
        typed[name] = '0';
        form.field(name).input.value = '0';
      }
      form.refresh();
    });
}

/** A thing's fields: right and up first, distance and direction a tap deeper.
 * @param {import('./fields.js').SheetField[]} fields */
function thing(fields) {
  /** @param {string[]} names */
  const some = (names) =>
    names.flatMap((name) => fields.filter((f) => f.entry.name === name).map((f) => f.el));
  const polar = ['distance_mm', 'direction_deg'];
  const isTold = fields.some((f) => polar.includes(f.entry.name) && f.input.value !== '');
  const deeper = h(
    'details',
    { open: isTold },
    h('summary', {}, words.byDistance),
    h('p', { class: 'source' }, words.byDistanceWhy),
    ...some(polar),
  );
  return [...some(['face', 'right_mm', 'right_to_mm', 'up_mm', 'up_to_mm']), deeper];
}

/** @param {string} title @param {...Node} body */
const deeper = (title, ...body) => h('details', {}, h('summary', {}, title), ...body);

/** @param {SheetForm} form */
function things(form) {
  return h(
    'section',
    {},
    h('h2', {}, words.things),
    h('p', { class: 'source' }, words.thingsWhy),
    form.rowsEl,
    button(words.addNear, 'add-near', () => form.addRow({ face: '0' }), 'row'),
    button(words.addFar, 'add-far', () => form.addRow({ face: '1' }), 'row'),
  );
}

/** @param {Context} ctx */
export function cut(ctx) {
  const form = new SheetForm(ctx, 'cut_plan', words.cut);
  form.rowBody = thing;
  begin(form);
  const picture = h('div', {});
  const paper = h('div', { class: 'paper' });
  const look = h('p', { class: 'lead', role: 'status' });
  form.onWorked = (worked) => {
    picture.replaceChildren(...cutPicture(form, worked));
    paper.replaceChildren(...cutPrint(form, worked));
    const reach = worked && !worked.refused ? worked.results[0].value : NaN;
    const far = Number.isNaN(reach) ? '' : words.look(withUnit(reach, 'mm', ctx.settings.system));
    say(look, far && !form.kept.record.rows.length ? `${far} ${words.noThings}` : far);
  };
  const holes = ['b', 'c', 'd'].map((letter) =>
    form.group(
      words.hole,
      HOLE.map((name) => `${letter}_${name}`),
    ),
  );
  const el = frame(
    ctx,
    'cut',
    words.title,
    [
      h('ul', { class: 'cautions' }, ...words.cautions.map((c) => h('li', {}, c))),
      h('p', {}, words.frameWhy),
      picture,
      look,
      h('p', { class: 'source' }, words.shapesWhy),
      form.group(
        words.hole,
        HOLE.map((name) => `a_${name}`),
      ),
      form.group(words.rectangle, ['width_mm', 'height_mm', 'corner_mm']),
      deeper(words.holes, ...holes),
      form.group(words.where, ['middle_right_mm', 'middle_up_mm', 'turn_deg']),
      form.group(words.panel, ['panel_mm', 'wander_mm'], words.panelWhy),
      deeper(words.lean, form.group('', ['lean_right', 'lean_up'])),
      deeper(
        words.plate,
        form.group(
          '',
          form.entry.inputs.map((i) => i.name).filter((n) => /^(plate|seal)_/.test(n)),
        ),
      ),
      things(form),
      form.halfList(),
      form.state,
      form.answers.el,
      h('h2', {}, words.ticks),
      h('p', { class: 'source' }, words.ticksWhy),
      ...Object.entries(words.tick).map(([id, statement]) => tick(ctx, form.kept, id, statement)),
      form.working.el,
      savedLine(form),
      paper,
    ],
    [button(words.print, 'print', () => print())],
  );
  form.start();
  return el;
}
