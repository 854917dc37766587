// The fit: compartment, heater, what is in the way; every way round with the room that it leaves;
// the chosen one at its best place.

import { button, h } from '../dom.js';
import { frame, verdictFrame } from '../screens/frame.js';
import { words } from '../words/fit.js';
import { savedLine } from './answers.js';
import { fitPicture } from './fit-picture.js';
import { fitTile } from './fit-tile.js';
import { catalogue, copiedFrom, limitOf } from './model.js';
import { SheetForm } from './sheet.js';
import { asRead } from '../own-words.js';
import { limitWithUnit, valueAndU, withUnit } from './units.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('./model.js').Worked} Worked */
/** @typedef {import('./model.js').Answer} Answer */

const INNER = ['inner_x_mm', 'inner_y_mm', 'inner_z_mm'];
const OUTER = ['length_mm', 'width_mm', 'height_mm'];

/** The free spaces with whose word they are. @param {Context} ctx @param {SheetForm} form */
function clearances(ctx, form) {
  const rows = form.entry.inputs.flatMap(({ name }) => {
    const bound = copiedFrom('fit', name);
    if (!bound) return [];
    const limit = limitOf(ctx, bound);
    const told = limit?.low == null ? null : limitWithUnit(limit.low, 'mm', ctx.settings.system);
    const whose = told && limit ? ctx.text.basisLine[limit.basis](asRead(limit.source)) : '';
    return h(
      'tr',
      { 'data-clear': name },
      h('th', { scope: 'row' }, form.field(name).words.label, whose && h('small', {}, whose)),
      h('td', {}, told ?? words.notEntered),
    );
  });
  return h(
    'section',
    { class: 'card clearances' },
    h('h2', {}, words.clear),
    h('p', { class: 'source' }, words.clearWhy),
    h('table', {}, ...rows),
    button(words.toLimits, 'guide', () => ctx.go('guide', { at: 0 }), 'row'),
  );
}

/** @param {number[]} way */
function towards(way) {
  const axis = way.findIndex((v) => v !== 0);
  return words.towards[`${axis}${way[axis] > 0 ? '+' : '-'}`];
}

/** One way round, to be tapped. @param {SheetForm} form @param {number} place @param {boolean} best
 * @param {(place: number) => void} choose */
function tile(form, place, best, choose) {
  const { axes, allowed } = catalogue.orientations[place];
  const [outlet, , up] = axes;
  const name = words.way(towards(outlet), towards(up.map((v) => -v)));
  const no = outlet[2] > 0 ? words.outletUp : words.portUp;
  const note = allowed ? best && words.best : no;
  const chosen = form.kept.record.typed.orientation === String(place);
  return h(
    'button',
    {
      type: 'button',
      class: 'way-round',
      'data-action': `way-${place}`,
      'data-allowed': String(allowed),
      'aria-pressed': String(chosen),
      click: () => choose(place),
    },
    fitTile(form, axes),
    h('span', {}, name),
    note && h('small', {}, note),
  );
}

/** The ways round that need the same room. @param {SheetForm} form @param {Answer} answer
 * @param {number} lay @param {number} best @param {(place: number) => void} choose */
function group(form, answer, lay, best, choose) {
  const { ctx } = form;
  const { result, verdict, limit } = answer;
  const shown = valueAndU(result.value, result.u, result.unit, ctx.settings.system, [0]);
  const places = catalogue.orientations.flatMap((o, place) => (o.lay === lay ? place : []));
  const usage = /** @type {Record<string, string>} */ (ctx.text.againstUsage)[limit?.basis ?? ''];
  return h(
    'section',
    { class: 'card lay', 'data-lay': lay, 'data-verdict': verdict },
    h('h2', {}, words.lays[result.name]),
    h(
      'p',
      {},
      h('span', { class: 'value' }, shown.value),
      ` ${shown.u} `,
      verdictFrame(verdict, ctx.text.verdicts[verdict], limit?.basis ?? ''),
      verdict === 'within' && usage && h('span', { class: 'note' }, usage),
    ),
    h(
      'div',
      { class: 'ways-round' },
      ...places.map((place) => tile(form, place, place === best, choose)),
    ),
  );
}

/** Every way round, the roomiest first. @param {SheetForm} form @param {Worked | null} worked
 * @param {(place: number) => void} choose @returns {Node[]} */
function ways(form, worked, choose) {
  if (!worked || worked.refused) return [];
  const lays = worked.answers.filter((a) => a.alternative).map((answer, lay) => ({ answer, lay }));
  const best = worked.results.find((r) => r.name === 'best')?.value ?? 0;
  const first = catalogue.orientations[best].lay;
  const tie = (/** @type {number} */ lay) => (lay === first ? 0 : 1);
  lays.sort((a, b) => b.answer.result.value - a.answer.result.value || tie(a.lay) - tie(b.lay));
  return [
    h('h2', {}, words.ways),
    h('p', { class: 'source' }, words.waysWhy),
    ...lays.map(({ answer, lay }) => group(form, answer, lay, best, choose)),
  ];
}

/** The chosen way round at its best place. @param {SheetForm} form @param {Worked | null} worked
 * @returns {Node[]} */
function chosen(form, worked) {
  if (!worked || worked.refused) return [];
  const { system } = form.ctx.settings;
  const of = Object.fromEntries(worked.results.map((r) => [r.name, r.value]));
  if (Number.isNaN(of.room_mm)) return [h('p', { class: 'missing' }, words.choose)];
  /** @param {string[]} names */
  const lengths = (names) => names.map((name) => withUnit(of[name], 'mm', system));
  const { allowed, axes } = catalogue.orientations[Number(form.kept.record.typed.orientation)];
  const [x, y, z] = lengths(['at_x_mm', 'at_y_mm', 'at_z_mm']);
  const [across, inwards, upwards] = lengths(['spare_x_mm', 'spare_y_mm', 'spare_z_mm']);
  const answer = worked.answers.find((a) => a.result.name === 'room_mm');
  return [
    h('h2', {}, words.chosen),
    h('p', {}, words.way(towards(axes[0]), towards(axes[2].map((v) => -v)))),
    !allowed && h('p', { class: 'trouble' }, axes[0][2] > 0 ? words.outletUp : words.portUp),
    fitPicture(form, of, axes),
    h('p', { class: 'source' }, words.picture.note),
    h('p', {}, answer?.verdict === 'beyond' ? words.lacking : words.at(x, y, z)),
    answer?.verdict === 'within' && h('p', {}, words.spare(across, inwards, upwards)),
    h('p', { class: 'source' }, words.again),
  ].filter((el) => el instanceof Node);
}

/** @param {Context} ctx */
export function fit(ctx) {
  const form = new SheetForm(ctx, 'fit', words.fit);
  const list = h('div', {});
  const one = h('section', { class: 'chosen-way' });
  const choose = (/** @type {number} */ place) => {
    form.kept.record.typed.orientation = String(place);
    form.kept.changed(true);
    form.refresh();
    one.scrollIntoView({ block: 'start' });
  };
  form.onWorked = (worked) => {
    list.replaceChildren(...ways(form, worked, choose));
    one.replaceChildren(...chosen(form, worked));
  };
  const boxes = h(
    'details',
    { open: form.kept.record.rows.length > 0 },
    h('summary', {}, words.boxes),
    h('p', { class: 'source' }, words.boxesWhy),
    form.rowList(),
  );
  const el = frame(
    ctx,
    'fit',
    words.title,
    [
      h('p', {}, words.lead),
      form.group(words.inner, INNER, words.innerWhy),
      form.group(words.outer, OUTER),
      clearances(ctx, form),
      boxes,
      form.halfList(),
      form.state,
      one,
      form.answers.el,
      list,
      form.working.el,
      savedLine(form),
    ],
    [],
  );
  form.start();
  return el;
}
