// A pipe's height profile as a technical drawing: heater left, legs to scale, the band of ± hatched,
// each leg's line by its verdict, water and words at the low points.

import { h, s } from '../dom.js';
import { words } from '../words/flue.js';
import { hatch } from './hatch.js';
import { liquid } from './liquid.js';
import { withUnit } from './units.js';

/** @typedef {import('./model.js').Result} Result */
/** @typedef {import('./model.js').Answer} Answer */
/** @typedef {import('./model.js').Worked} Worked */
/** @typedef {import('./sheet.js').SheetForm} SheetForm */
/** A joint as it is drawn, and the ends of its band.
 * @typedef {{ x: number, y: number, up: number, down: number }} Joint */

const t = words.picture;
/** Where the port is, and the room for lengths and heights. */
const [LEFT, TOP, WIDE, HIGH] = [46, 44, 272, 150];
/** Heights are not drawn larger than this. */
const MOST = 10;

/** Joints in the drawing's units, and how many times larger heights are than lengths.
 * @param {Result[]} along @param {Result[]} heights @param {Result[]} depths */
function laid(along, heights, depths) {
  const levels = depths.map(({ value }, i) => (heights[i - 1]?.value ?? 0) + (value || 0));
  const ends = heights.flatMap(({ value, u }) => [value - u, value + u]);
  const [low, high] = [Math.min(0, ...ends), Math.max(0, ...ends, ...levels)];
  const tall = Math.max(high - low, 1);
  const scale = Math.min(WIDE / Math.max(1, ...along.map((r) => r.value)), HIGH / tall);
  const times = Math.max(1, Math.min(MOST, Math.floor(HIGH / (tall * scale))));
  const y = (/** @type {number} */ mm) => TOP + (high - mm) * scale * times;
  const joints = heights.map(({ value, u }, i) => ({
    x: LEFT + along[i].value * scale,
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

/** What is said of the joints: water, a drain. @param {SheetForm} form @param {Result[]} depths
 * @param {Result[]} drains @param {Answer[]} answers @returns {[number, string][]} */
function notes(form, depths, drains, answers) {
  const { system } = form.ctx.settings;
  return depths.flatMap(({ value, row }, i) => {
    if (!Number.isNaN(drains[i].value)) return [[i, t.drain]];
    if (Number.isNaN(value)) return [];
    const verdict = answers.find(
      (a) => a.result.name === 'depth_mm' && a.result.row === row,
    )?.verdict;
    const proven = verdict === 'beyond' ? t.water(withUnit(value, 'mm', system)) : '';
    return [[i, proven || words.pipe.state.not_proven]];
  });
}

/** @param {SheetForm} form @param {Worked | null} worked @param {string} title */
export function pipePicture(form, worked, title) {
  const { results = [], answers = [] } = worked && !worked.refused ? worked : {};
  /** @param {string} name */
  const of = (name) => results.filter((r) => r.name === name);
  const [heights, depths] = [of('height_mm'), of('depth_mm')];
  if (!heights.length) return [];
  const { joints, each, times, bottom } = laid(of('along_mm'), heights, depths);
  const verdicts = answers.filter((a) => a.result.name === 'standing_mm');
  const { pattern, fill } = hatch(6);
  const wet = `${form.name}-water`;
  const band = [
    ...joints.map((j) => `${j.x} ${j.up}`),
    ...joints.toReversed().map((j) => `${j.x} ${j.down}`),
  ];
  const [port, end] = [joints[0], joints[joints.length - 1]];
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
    ...depths.flatMap(({ value }, i) =>
      Number.isNaN(value) ? [] : pool(joints, i, joints[i].y - value * each, `url(#${wet})`),
    ),
    s('path', { d: `M4 ${port.y - 16}H${LEFT}V${port.y + 16}H4z`, class: 'outline' }),
    s('text', { x: 4, y: port.y - 22, class: 'small' }, t.heater),
    ...notes(form, depths, of('drain_bore_mm'), answers).flatMap(([i, label], n) =>
      note(joints[i], bottom + 24 + 18 * (n % 2), label),
    ),
    ...joints.slice(1).flatMap((to, i) => leg(joints[i], to, i, verdicts[i]?.verdict ?? 'none')),
    s('circle', { cx: end.x, cy: end.y, r: 5, class: 'pipe-end' }),
  );
  return [
    picture,
    key(form, verdicts),
    h('p', { class: 'source' }, `${t.scale(times)} ${t.lines}`),
  ];
}

/** Each leg in words, as the drawing has them in lines. @param {SheetForm} form
 * @param {Answer[]} verdicts */
function key(form, verdicts) {
  const { system } = form.ctx.settings;
  const { rows } = form.kept.record;
  const line = (/** @type {Answer} */ { result, verdict }) => {
    const angle = (rows[result.row ?? 0]?.typed.elevation_deg ?? '').replace('-', '−');
    const told = `${angle}°, ${withUnit(result.value, 'mm', system)}: `;
    return h('li', { 'data-verdict': verdict }, told, h('b', {}, words.pipe.state[verdict]));
  };
  return h('ol', { class: 'flue-key' }, ...verdicts.map(line));
}
