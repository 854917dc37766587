// A pipe's height profile as a technical drawing: heater left, legs to scale, the band of ± hatched,
// each leg's line by its verdict, water and words at the low points.

import { h, s } from '../dom.js';
import { angleWords } from './flue-captures.js';
import { words } from '../words/flue.js';
import { hatch } from './hatch.js';
import { liquid } from './liquid.js';
import { withUnit } from './units.js';

/** @typedef {import('./flue-legs.js').LegTold} LegTold */
/** @typedef {import('./sheet.js').SheetForm} SheetForm */
/** A joint as it is drawn, and the ends of its band.
 * @typedef {{ x: number, y: number, up: number, down: number }} Joint */

const t = words.picture;
/** Where the port is, and the room for lengths and heights. */
const [LEFT, TOP, WIDE, HIGH] = [46, 44, 272, 150];
/** Heights are not drawn larger than this. */
const MOST = 10;

/** Joints in the drawing's units, and how many times larger heights are than lengths.
 * @param {LegTold[]} legs */
function laid(legs) {
  const levels = legs.map(({ depth }, i) => (legs[i - 1]?.height.value ?? 0) + (depth || 0));
  const ends = legs.flatMap(({ height: { value, u } }) => [value - u, value + u]);
  const [low, high] = [Math.min(0, ...ends), Math.max(0, ...ends, ...levels)];
  const tall = Math.max(high - low, 1);
  const scale = Math.min(WIDE / Math.max(1, ...legs.map((leg) => leg.along)), HIGH / tall);
  const times = Math.max(1, Math.min(MOST, Math.floor(HIGH / (tall * scale))));
  const y = (/** @type {number} */ mm) => TOP + (high - mm) * scale * times;
  const joints = legs.map(({ along, height: { value, u } }) => ({
    x: LEFT + along * scale,
    y: y(value),
    up: y(value + u),
    down: y(value - u),
  }));
  const port = { x: LEFT, y: y(0), up: y(0), down: y(0) };
  return { joints: [port, ...joints], each: scale * times, times, bottom: y(low) };
}

/** A leg's line and number. @param {Joint} from @param {Joint} to @param {number} i
 * @param {string} verdict */
function leg(from, to, i, verdict) {
  const [x, y] = [(from.x + to.x) / 2 + 4, (from.y + to.y) / 2 - 15];
  return [
    s('path', {
      d: `M${from.x} ${from.y}L${to.x} ${to.y}`,
      class: 'dimension pipe',
      'data-verdict': verdict,
      'data-leg': i,
    }),
    s('circle', { cx: x, cy: y, r: 9, class: 'outline thin' }),
    s('text', { x, y: y + 5, class: 'small', 'text-anchor': 'middle' }, String(i + 1)),
  ];
}

/** Where the pipe meets a level on one side of a joint; the heater is a closed end.
 * @param {Joint[]} joints @param {number} from @param {1 | -1} step @param {number} level */
function shore(joints, from, step, level) {
  const points = [];
  for (let i = from; joints[i + step]; i += step) {
    const [a, b] = [joints[i], joints[i + step]];
    if (b.y <= level) {
      const share = (a.y - level) / (a.y - b.y);
      return [...points, `${a.x + share * (b.x - a.x)} ${level}`];
    }
    points.push(`${b.x} ${b.y}`);
  }
  return [...points, `${joints[0].x} ${level}`];
}

/** Water that fills a low point: its surface with the mark that drawings have for one.
 * @param {Joint[]} joints @param {number} i @param {number} level @param {string} fill */
function pool(joints, i, level, fill) {
  const [left, right] = [shore(joints, i, -1, level), shore(joints, i, 1, level)];
  const points = [...left.toReversed(), `${joints[i].x} ${joints[i].y}`, ...right];
  const { x } = joints[i];
  return [
    s('polygon', { points: points.join(','), fill, class: 'water' }),
    s('path', { d: `M${x - 6} ${level - 9}h12l-6 9z`, class: 'outline thin' }),
  ];
}

/** Words below the drawing with a line down to them. @param {Joint} at @param {number} y
 * @param {string} label */
function note(at, y, label) {
  const right = at.x > LEFT + WIDE / 2;
  return [
    s('path', { d: `M${at.x} ${at.y + 3}V${y - 12}`, class: 'leader' }),
    s(
      'text',
      {
        x: at.x + (right ? 8 : -8),
        y,
        class: 'small halo',
        'text-anchor': right ? 'end' : 'start',
      },
      label,
    ),
  ];
}

/** What is said of the joints: water, a drain.
 * @param {SheetForm} form @param {LegTold[]} legs @returns {[number, string][]} */
function notes(form, legs) {
  const { system } = form.ctx.settings;
  return legs.flatMap(({ depth, drained, low, holds }, i) => {
    if (drained) return [[i, t.drain]];
    const water = holds ? t.water(withUnit(depth, 'mm', system)) : words.pipe.state.not_proven;
    return low ? [[i, water]] : [];
  });
}

/** @param {SheetForm} form @param {LegTold[]} legs @param {string} title */
export function pipePicture(form, legs, title) {
  if (!legs.length) return [];
  const { joints, each, times, bottom } = laid(legs);
  const { pattern, fill } = hatch(6);
  const wet = `${form.name}-water`;
  const band = [
    ...joints.map((j) => `${j.x} ${j.up}`),
    ...joints.toReversed().map((j) => `${j.x} ${j.down}`),
  ];
  const [port, end] = [joints[0], joints[joints.length - 1]];
  const pools = legs.flatMap(({ depth, low }, i) =>
    low ? pool(joints, i, joints[i].y - depth * each, `url(#${wet})`) : [],
  );
  const picture = s(
    'svg',
    {
      viewBox: `0 0 340 ${Math.round(bottom + 52)}`,
      class: 'plan-picture flue-picture',
      role: 'img',
      'aria-label': t.label(title),
    },
    s('defs', {}, pattern),
    liquid(wet),
    s('path', { d: `M${LEFT} ${port.y}H334`, class: 'centre' }),
    s('polygon', { points: band.join(','), fill }),
    ...pools,
    s('path', { d: `M4 ${port.y - 16}H${LEFT}V${port.y + 16}H4z`, class: 'outline' }),
    s('text', { x: 4, y: port.y - 22, class: 'small' }, t.heater),
    ...notes(form, legs).flatMap(([i, label], n) =>
      note(joints[i], bottom + 24 + 18 * (n % 2), label),
    ),
    ...legs.flatMap(({ verdict }, i) => leg(joints[i], joints[i + 1], i, verdict)),
    s('circle', { cx: end.x, cy: end.y, r: 5, class: 'pipe-end' }),
  );
  return [picture, key(form, legs), h('p', { class: 'source' }, `${t.scale(times)} ${t.lines}`)];
}

/** Each leg in words, as the drawing has them in lines. @param {SheetForm} form
 * @param {LegTold[]} legs */
function key(form, legs) {
  const { system } = form.ctx.settings;
  const line = (/** @type {LegTold} */ { standing, verdict, word }, /** @type {number} */ i) => {
    const told = `${angleWords(form.kept.record.rows[i].typed)}°, ${withUnit(standing.value, 'mm', system)}: `;
    return h('li', { 'data-verdict': verdict }, told, h('b', {}, word));
  };
  return h('ol', { class: 'flue-key' }, ...legs.map(line));
}
