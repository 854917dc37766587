// Boxes and the phone in oblique projection: body x to the right, z up, y into the paper.

import { s } from '../dom.js';

/** @typedef {[number, number, number]} Point */

/** Half sizes of the drawn phone along its x, y and z. */
export const PHONE = /** @type {Point} */ ([26, 54, 4]);

/** @param {Point} p @returns {[number, number]} on the paper */
export function project([x, y, z]) {
  return [170 + x + 0.42 * y, 150 - z - 0.34 * y];
}

/** Towards the eye: the direction that the projection does not see. @type {Point} */
const EYE = [0.42, -1, 0.34];

/** @param {number[]} rotation row-major, body = R · device @param {Point} v @returns {Point} */
export function toBody(rotation, [x, y, z]) {
  /** @param {number} row */
  const row = (row) =>
    rotation[3 * row] * x + rotation[3 * row + 1] * y + rotation[3 * row + 2] * z;
  return [row(0), row(1), row(2)];
}

/** @param {Point} a @param {Point} b @returns {Point} */
export const plus = (a, b) => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
/** @param {Point} a @param {Point} b */
const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** @param {Point[]} points */
export function polygon(points) {
  return points
    .map((p) =>
      project(p)
        .map((v) => v.toFixed(1))
        .join(' '),
    )
    .join('L');
}

/** The faces of a box that the eye sees, as paths.
 * @param {Point} centre @param {Point} half @param {(v: Point) => Point} turn */
export function boxFaces(centre, half, turn) {
  const faces = [];
  for (const axis of [0, 1, 2])
    for (const side of [-1, 1]) {
      const normal = /** @type {Point} */ ([0, 0, 0]);
      normal[axis] = side;
      if (dot(turn(normal), EYE) <= 0) continue;
      const [a, b] = [0, 1, 2].filter((i) => i !== axis);
      const corners = [
        [-1, -1],
        [1, -1],
        [1, 1],
        [-1, 1],
      ].map(([p, q]) => {
        const corner = /** @type {Point} */ ([0, 0, 0]);
        corner[axis] = side * half[axis];
        corner[a] = p * half[a];
        corner[b] = q * half[b];
        return plus(centre, turn(corner));
      });
      faces.push({ axis, side, d: `M${polygon(corners)}Z` });
    }
  return faces;
}

/** @param {Point} centre @param {Point} half @param {string} cls */
export function box(centre, half, cls) {
  return boxFaces(centre, half, (v) => v).map((f) => s('path', { d: f.d, class: cls }));
}

/** @param {Point} from @param {Point} to @param {string} cls */
export function line(from, to, cls) {
  return s('path', { d: `M${polygon([from, to])}`, class: cls });
}

/** Rotation of the phone turned by quarters about the surface's normal, anticlockwise from above.
 * @param {number[]} rotation row-major, body = R · device @param {number} quarters */
export function turnedBy(rotation, quarters) {
  let [x, y] = [rotation.slice(0, 3), rotation.slice(3, 6)];
  for (let i = 0; i < quarters; i += 1) [x, y] = [y.map((v) => -v), x];
  return [...x, ...y, ...rotation.slice(6)];
}

/** Half sizes of the phone along body x, y, z. @param {number[]} rotation @returns {Point} */
export function reachOf(rotation) {
  /** @param {number} row */
  const reach = (row) =>
    PHONE.reduce((sum, half, i) => sum + Math.abs(rotation[3 * row + i]) * half, 0);
  return [reach(0), reach(1), reach(2)];
}

/** The phone, its top edge marked and named.
 * @param {number[]} rotation @param {Point} centre @param {string} topEdge */
export function phoneAt(rotation, centre, topEdge) {
  const turn = (/** @type {Point} */ v) => toBody(rotation, v);
  const faces = boxFaces(centre, PHONE, turn).map((f) =>
    s('path', { d: f.d, class: f.axis === 2 && f.side === 1 ? 'phone glass' : 'phone' }),
  );
  const topLeft = plus(centre, turn([-PHONE[0], PHONE[1], PHONE[2]]));
  const topRight = plus(centre, turn([PHONE[0], PHONE[1], PHONE[2]]));
  const [tx, ty] = project(plus(centre, turn([0, PHONE[1], 0])));
  const right = tx > 190;
  const left = tx < 130;
  return [
    ...faces,
    line(topLeft, topRight, 'top-edge'),
    s(
      'text',
      {
        x: right ? tx + 14 : left ? tx - 8 : tx,
        y: right || left ? ty - 22 : ty - 14,
        class: 'small',
        'text-anchor': right ? 'start' : left ? 'end' : 'middle',
      },
      topEdge,
    ),
  ];
}

/** An arrow about the vertical, in front of `centre`: the way that the phone is turned.
 * @param {Point} centre @param {number} quarters */
export function turnArrow(centre, quarters) {
  const at = (/** @type {number} */ deg) => {
    const t = (deg * Math.PI) / 180;
    return project(plus(centre, [96 * Math.cos(t), 74 * Math.sin(t), 0]));
  };
  const end = quarters === 2 ? 20 : -60;
  const points = Array.from({ length: 25 }, (_, i) => at(-160 + ((end + 160) * i) / 24));
  const [x, y] = points[24];
  const [px, py] = points[22];
  const t = Math.atan2(y - py, x - px);
  const barb = (/** @type {number} */ by) =>
    `${(x - 13 * Math.cos(t + by)).toFixed(1)} ${(y - 13 * Math.sin(t + by)).toFixed(1)}`;
  const path = points.map((p) => p.map((v) => v.toFixed(1)).join(' ')).join('L');
  return s('path', {
    d: `M${path}M${barb(0.5)}L${x.toFixed(1)} ${y.toFixed(1)}L${barb(-0.5)}`,
    class: 'turn-arrow',
  });
}
