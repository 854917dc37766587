// The heater one way round, small: an arrow out of its warm-air end, a stub for its fuel port.

import { s } from '../dom.js';
import { boxFaces, polygon, project } from '../drawings/solid.js';

/** @typedef {import('../drawings/solid.js').Point} Point */

/** Half its longest side on paper. */
const SIZE = 46;
/** How far the fuel port stands out. */
const STUB = 12;
/** Drawn while nothing is told: length, width, height. */
const USUAL = [380, 150, 150];
/** From the paper's middle of projection to the tile's. */
const CENTRE = /** @type {Point} */ ([0, 0, 0]);
/** What the projection does not see: things this way are nearer the eye. */
const EYE = [0.42, -1, 0.34];

/** @param {Point[]} axes where the heater's x, y, z point @param {Point} v @returns {Point} */
export const turned = (axes, v) => {
  const part = (/** @type {number} */ i) =>
    axes[0][i] * v[0] + axes[1][i] * v[1] + axes[2][i] * v[2];
  return [part(0), part(1), part(2)];
};

/** @param {Point} from @param {Point} way @param {number} length @returns {Point} */
export const along = (from, way, length) => [
  from[0] + length * way[0],
  from[1] + length * way[1],
  from[2] + length * way[2],
];

/** An arrow on paper. @param {Point} from @param {Point} to */
function arrow(from, to) {
  const [[x1, y1], [x2, y2]] = [project(from), project(to)];
  const t = Math.atan2(y2 - y1, x2 - x1);
  const barb = (/** @type {number} */ by) =>
    `${(x2 - 9 * Math.cos(t + by)).toFixed(1)} ${(y2 - 9 * Math.sin(t + by)).toFixed(1)}`;
  return `M${polygon([from, to])}M${barb(0.5)}L${x2.toFixed(1)} ${y2.toFixed(1)}L${barb(-0.5)}`;
}

/** The heater with its arrow and stub; what points away from the eye is drawn first, behind it.
 * @param {Point} centre @param {Point} half along its own axes @param {Point[]} axes
 * @param {number} out how far the arrow goes */
export function heater(centre, half, axes, out) {
  /** @param {Point} way @param {number} reach @param {number} length */
  const tip = (way, reach, length) => [
    along(centre, way, reach),
    along(centre, way, reach + length),
  ];
  const port = /** @type {Point} */ (axes[2].map((v) => -v));
  const ends = [
    { way: axes[0], d: out === 0 ? '' : arrow(...pair(tip(axes[0], half[0], out))), class: 'warm' },
    { way: port, d: `M${polygon(tip(port, half[2], STUB))}`, class: 'port' },
  ];
  const toEye = (/** @type {Point} */ way) => way.reduce((sum, v, i) => sum + v * EYE[i], 0) > 0;
  const mark = (/** @type {{ d: string, class: string }} */ end) =>
    s('path', { d: end.d, class: end.class });
  const faces = boxFaces(centre, half, (v) => turned(axes, v));
  return [
    ...ends.filter((e) => !toEye(e.way)).map(mark),
    ...faces.map((f) => s('path', { d: f.d, class: 'solid' })),
    ...ends.filter((e) => toEye(e.way)).map(mark),
  ];
}

/** @param {Point[]} points @returns {[Point, Point]} */
const pair = (points) => [points[0], points[1]];

/** @param {import('./sheet.js').SheetForm} form @param {Point[]} axes */
export function fitTile(form, axes) {
  const told = ['length_mm', 'width_mm', 'height_mm'].map((name, i) => {
    const x = form.x[form.entry.inputs.findIndex((input) => input.name === name)];
    return x > 0 ? x : USUAL[i];
  });
  const k = SIZE / Math.max(...told);
  const half = /** @type {Point} */ (told.map((v) => k * v));
  const viewBox = axes[0][2] ? '84 60 172 180' : '84 96 172 108';
  return s(
    'svg',
    { viewBox, class: 'tile', 'aria-hidden': 'true' },
    ...heater(CENTRE, half, axes, 30),
  );
}
