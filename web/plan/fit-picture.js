// The compartment with what is in the way and the heater at its best place, to scale.

import { s } from '../dom.js';
import { boxFaces, polygon } from '../drawings/solid.js';
import { words } from '../words/fit.js';
import { heater } from './fit-tile.js';

/** @typedef {import('../drawings/solid.js').Point} Point */

/** The projection's paper: what the drawing may take. */
const PAPER = { width: 300, height: 230 };

/** A box by its low corner and size, mm. @typedef {{ low: Point, size: Point }} Box */

/** @param {Record<string, number>} of @param {string[]} names @returns {Point} */
const three = (of, names) => /** @type {Point} */ (names.map((name) => of[name]));

/** The back edges of the compartment, so that the inside is seen. @param {Point} low @param {Point} high */
function inside([x1, y1, z1], [x2, y2, z2]) {
  /** @type {Point[][]} */
  const loops = [
    [
      [x1, y2, z1],
      [x2, y2, z1],
      [x2, y2, z2],
      [x1, y2, z2],
    ],
    [
      [x1, y1, z1],
      [x2, y1, z1],
      [x2, y2, z1],
      [x1, y2, z1],
    ],
    [
      [x1, y1, z1],
      [x1, y2, z1],
      [x1, y2, z2],
      [x1, y1, z2],
    ],
  ];
  return loops.map((loop) => s('path', { d: `M${polygon(loop)}Z`, class: 'room' }));
}

/** The front edges, before everything. @param {Point} low @param {Point} high */
function opening([x1, y1, z1], [x2, , z2]) {
  /** @type {Point[]} */
  const loop = [
    [x1, y1, z1],
    [x2, y1, z1],
    [x2, y1, z2],
    [x1, y1, z2],
  ];
  return s('path', { d: `M${polygon(loop)}Z`, class: 'opening' });
}

/** Boxes from the form's rows. @param {import('./sheet.js').SheetForm} form @returns {Box[]} */
function inTheWay(form) {
  const [first, width] = [form.entry.inputs.length, form.entry.row.length];
  return form.kept.record.rows.map((_, row) => {
    const n = form.x.slice(first + row * width, first + (row + 1) * width);
    return { low: [n[0], n[1], n[2]], size: [n[3], n[4], n[5]] };
  });
}

/** @param {import('./sheet.js').SheetForm} form @param {Record<string, number>} of core's results
 * @param {Point[]} axes */
export function fitPicture(form, of, axes) {
  const own = Object.fromEntries(form.entry.inputs.map(({ name }, i) => [name, form.x[i]]));
  const inner = three(own, ['inner_x_mm', 'inner_y_mm', 'inner_z_mm']);
  const [x, y, z] = inner;
  const k = Math.min(PAPER.width / (x + 0.42 * y), PAPER.height / (z + 0.34 * y));
  const middle = inner.map((v) => v / 2);
  const place = (/** @type {Point} */ p) =>
    /** @type {Point} */ (p.map((v, i) => k * (v - middle[i])));
  const at = three(of, ['at_x_mm', 'at_y_mm', 'at_z_mm']);
  const extent = three(of, ['extent_x_mm', 'extent_y_mm', 'extent_z_mm']);
  const half = /** @type {Point} */ (
    three(own, ['length_mm', 'width_mm', 'height_mm']).map((v) => (k * v) / 2)
  );
  const centre = (/** @type {Box} */ { low, size }) =>
    place(/** @type {Point} */ (low.map((v, i) => v + size[i] / 2)));
  const solids = inTheWay(form).map((box) => ({
    y: box.low[1],
    draw: () =>
      boxFaces(centre(box), /** @type {Point} */ (box.size.map((v) => (k * v) / 2)), (v) => v).map(
        (f) => s('path', { d: f.d, class: 'in-the-way' }),
      ),
  }));
  const self = {
    y: at[1],
    draw: () => heater(centre({ low: at, size: extent }), half, axes, 26),
  };
  // Farther ones first.
  const drawn = [...solids, self].sort((a, b) => b.y - a.y).flatMap((solid) => solid.draw());
  const [low, high] = [place([0, 0, 0]), place(inner)];
  return s(
    'svg',
    {
      viewBox: '0 20 340 260',
      class: 'plan-picture fit-picture',
      role: 'img',
      'aria-label': words.picture.label,
    },
    ...inside(low, high),
    ...drawn,
    opening(low, high),
  );
}
