// How to hold the phone, drawn from the rotation that core uses. Oblique projection: body x to
// the right, z up, y into the paper.

import { s } from '../dom.js';

/** @typedef {[number, number, number]} Point */

/** Half sizes of the drawn phone along its x, y and z. */
const PHONE = /** @type {Point} */ ([26, 54, 4]);
/** Half sizes of the drawn part along body x, y, z. */
const BODY = /** @type {Point} */ ([92, 24, 24]);
const BAR = /** @type {Point} */ ([80, 6, 4]);
const PLATE = /** @type {Point} */ ([30, 26, 3]);

/** @param {Point} p @returns {[number, number]} on the paper */
function project([x, y, z]) {
  return [170 + x + 0.42 * y, 150 - z - 0.34 * y];
}

/** Towards the eye: the direction that the projection does not see. @type {Point} */
const EYE = [0.42, -1, 0.34];

/** @param {number[]} rotation row-major, body = R · device @param {Point} v @returns {Point} */
function toBody(rotation, [x, y, z]) {
  /** @param {number} row */
  const row = (row) =>
    rotation[3 * row] * x + rotation[3 * row + 1] * y + rotation[3 * row + 2] * z;
  return [row(0), row(1), row(2)];
}

/** @param {Point} a @param {Point} b @returns {Point} */
const plus = (a, b) => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
/** @param {Point} a @param {Point} b */
const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** @param {string} surface height of the surface above the part's axis */
function surfaceHeight(surface) {
  if (surface === 'bar') return BODY[2] + 2 * BAR[2];
  if (surface === 'bracket') return BODY[2] + 2 * PLATE[2] + 10;
  return BODY[2];
}

/** @param {number[]} rotation @param {string} surface @returns {Point} the phone's middle, body frame */
function phoneCentre(rotation, surface) {
  const reach =
    Math.abs(rotation[6]) * PHONE[0] +
    Math.abs(rotation[7]) * PHONE[1] +
    Math.abs(rotation[8]) * PHONE[2];
  return [0, 0, surfaceHeight(surface) + reach];
}

/**
 * The phone's eight corners on the paper, in the order of the signs of device x, y, z.
 * @param {number[]} rotation @param {string} surface @returns {[number, number][]}
 */
export function phoneCorners(rotation, surface) {
  const centre = phoneCentre(rotation, surface);
  return [0, 1, 2, 3, 4, 5, 6, 7].map((i) => {
    /** @param {number} bit */
    const sign = (bit) => (i & bit ? 1 : -1);
    const corner = /** @type {Point} */ ([
      sign(4) * PHONE[0],
      sign(2) * PHONE[1],
      sign(1) * PHONE[2],
    ]);
    return project(plus(centre, toBody(rotation, corner)));
  });
}

/** @param {Point[]} points */
function polygon(points) {
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
function boxFaces(centre, half, turn) {
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
function box(centre, half, cls) {
  return boxFaces(centre, half, (v) => v).map((f) => s('path', { d: f.d, class: cls }));
}

/** A round body along x: silhouette and head end. */
function cylinder() {
  const ring = (/** @type {number} */ x) =>
    Array.from({ length: 24 }, (_, i) => {
      const t = (i / 24) * 2 * Math.PI;
      return /** @type {Point} */ ([x, BODY[1] * Math.cos(t), BODY[2] * Math.sin(t)]);
    });
  const head = ring(BODY[0]);
  const tail = ring(-BODY[0]);
  const hull = outlineOf([...head, ...tail].map(project));
  return [
    s('path', {
      d: `M${hull.map((p) => p.map((v) => v.toFixed(1)).join(' ')).join('L')}Z`,
      class: 'solid',
    }),
    s('path', { d: `M${polygon(head)}Z`, class: 'solid' }),
  ];
}

/** Convex hull by Andrew's monotone chain.
 * @param {[number, number][]} points */
function outlineOf(points) {
  const sorted = [...points].sort((p, q) => p[0] - q[0] || p[1] - q[1]);
  /** @param {[number, number][]} list */
  const half = (list) => {
    /** @type {[number, number][]} */
    const chain = [];
    for (const p of list) {
      while (chain.length > 1) {
        const [a, b] = chain.slice(-2);
        if ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]) > 0) break;
        chain.pop();
      }
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

/** @param {Point} from @param {Point} to @param {string} cls */
function line(from, to, cls) {
  return s('path', { d: `M${polygon([from, to])}`, class: cls });
}

/**
 * The picture of a placement.
 * @param {string} part
 * @param {import('../types.js').Placement} placement
 * @param {{ topEdge: string, screen: string, head: string }} words
 */
export function holdPicture(part, placement, words) {
  const { rotation, surface } = placement;
  const origin = /** @type {Point} */ ([0, 0, 0]);
  const turn = (/** @type {Point} */ v) => toBody(rotation, v);
  const centre = phoneCentre(rotation, surface);
  const round = surface === 'round_body' || (part !== 'heater' && surface !== 'metal_face');
  const under = [];
  under.push(...(round ? cylinder() : box(origin, BODY, 'solid')));
  if (part === 'heater') under.push(...box([104, 0, 0], [12, 14, 14], 'solid'));
  if (surface === 'bar') under.push(...box([0, 0, BODY[2] + BAR[2]], BAR, 'solid'));
  if (surface === 'bracket') under.push(...box([0, 0, BODY[2] + 10 + PLATE[2]], PLATE, 'solid'));
  const phone = boxFaces(centre, PHONE, turn).map((f) =>
    s('path', { d: f.d, class: f.axis === 2 && f.side === 1 ? 'phone glass' : 'phone' }),
  );
  const topLeft = plus(centre, turn([-PHONE[0], PHONE[1], PHONE[2]]));
  const topRight = plus(centre, turn([PHONE[0], PHONE[1], PHONE[2]]));
  const top = plus(centre, turn([0, PHONE[1], 0]));
  const [tx, ty] = project(top);
  const [hx, hy] = project([BODY[0] + (part === 'heater' ? 30 : 14), 0, 0]);
  const right = tx > 190;
  return s(
    'svg',
    {
      viewBox: '40 30 310 200',
      class: 'hold-picture',
      role: 'img',
      'aria-label': `${words.topEdge}, ${words.head}`,
    },
    line([-BODY[0] - 16, 0, 0], [BODY[0] + 50, 0, 0], 'centre'),
    ...under,
    s('path', { d: `M${hx} ${hy}h34m-9 -7l9 7l-9 7`, class: 'flow' }),
    ...phone,
    line(topLeft, topRight, 'top-edge'),
    s(
      'text',
      {
        x: right ? tx + 14 : tx,
        y: right ? ty - 22 : ty - 14,
        class: 'small',
        'text-anchor': right ? 'start' : 'middle',
      },
      words.topEdge,
    ),
    s('text', { x: 346, y: 222, class: 'small', 'text-anchor': 'end' }, `→ ${words.head}`),
  );
}
