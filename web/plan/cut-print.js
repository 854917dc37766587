// The cut plan on paper: the drawing in its true size or a round share of it, what is cut and from
// where, and what is near with its gap. Hidden on the screen.

import { h } from '../dom.js';
import { clock } from '../units.js';
import { words } from '../words/cut.js';
import { cutDrawing, numbersOf, offset, thingsOf } from './cut-picture.js';
import { limitWithUnit, valueAndU } from './units.js';

/** @typedef {import('./sheet.js').SheetForm} SheetForm */

const t = words.picture;
/** What A4 and Letter both have between their margins, for the drawing; mm. */
const PAPER = { width: 180, height: 170 };
const SHARES = [1, 2, 5, 10, 20, 50];

/** What is cut, in words. @param {SheetForm} form */
function cutWords(form) {
  const { system } = form.ctx.settings;
  const x = numbersOf(form);
  /** @param {number} mm */
  const length = (mm) => limitWithUnit(mm, 'mm', system);
  const holes = ['a', 'b', 'c', 'd'].filter((i) => x[`${i}_diameter_mm`] > 0);
  const rectangle =
    x.width_mm > 0
      ? [t.rectangle(length(x.width_mm), length(x.height_mm), length(x.corner_mm || 0))]
      : [];
  /** @param {string} i */
  const at = (i) =>
    `${offset(x[`${i}_right_mm`], t.right, system)}, ${offset(x[`${i}_up_mm`], t.up, system)}`;
  const all = [
    ...rectangle,
    ...holes.map((i) => `${t.hole(length(x[`${i}_diameter_mm`]))}, ${at(i)}`),
  ];
  const turn = x.turn_deg ? t.turn(limitWithUnit(x.turn_deg, 'deg', system)) : '';
  const where = t.offset(
    offset(x.middle_right_mm, t.right, system),
    offset(x.middle_up_mm, t.up, system),
    turn,
  );
  return [where, ...all];
}

/** @param {SheetForm} form @param {import('./model.js').Worked} worked */
function table(form, worked) {
  const { ctx } = form;
  const { system } = ctx.settings;
  const line = (/** @type {import('./cut-picture.js').Thing} */ o, /** @type {number} */ i) => {
    const gap = valueAndU(o.gap_mm, o.u, 'mm', system);
    const verdict = ctx.text.verdicts[o.verdict];
    const why = /** @type {Record<string, string>} */ (ctx.text.whys)[o.why ?? ''];
    const usage = /** @type {Record<string, string>} */ (ctx.text.againstUsage)[
      o.limit?.basis ?? ''
    ];
    return h(
      'tr',
      {},
      h('th', { scope: 'row' }, `${i + 1}, ${o.told_face === 1 ? t.far : t.near}`),
      h('td', {}, `${gap.value} ${gap.u}`),
      h('td', {}, [verdict, why ?? (o.verdict === 'within' && usage)].filter(Boolean).join(': ')),
    );
  };
  const things = /** @type {import('./cut-picture.js').Thing[]} */ (thingsOf(form, worked));
  return h('table', {}, ...things.map(line));
}

/** What was looked for, and what not yet. @param {SheetForm} form @param {string} id
 * @param {string} what */
function seen(form, id, what) {
  const words = form.ctx.plan.words.tick;
  const done = form.kept.record.ticks[id];
  const how = done ? words.by(done.who, clock(done.at), done.reason) : words.open;
  return h('tr', {}, h('th', { scope: 'row' }, what), h('td', {}, how));
}

/** @param {SheetForm} form @param {import('./model.js').Worked | null} worked @returns {Node[]} */
export function cutPrint(form, worked) {
  const drawing = cutDrawing(form, worked);
  if (!drawing || !worked || worked.refused) return [];
  const share = SHARES.find(
    (n) => drawing.across / n <= PAPER.width && drawing.high / n <= PAPER.height,
  );
  const per = share ?? SHARES[SHARES.length - 1];
  drawing.el.style.setProperty('--on-paper', `${(drawing.across / per).toFixed(3)}mm`);
  return [
    h('h2', {}, words.title),
    h('p', {}, `${t.scale(per)}. ${t.bar(drawing.bar)}. ${t.seen}`),
    drawing.el,
    ...cutWords(form).map((line) => h('p', {}, line)),
    form.kept.record.rows.length ? table(form, worked) : h('p', {}, words.noThings),
    h('ul', {}, ...words.cautions.map((c) => h('li', {}, c))),
    h('table', {}, ...Object.entries(words.tick).map(([id, what]) => seen(form, id, what))),
  ];
}
