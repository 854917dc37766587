// How to hold the phone, drawn from the rotation that core uses.

import { s } from '../dom.js';
import {
  box,
  line,
  PHONE,
  phoneAt,
  plus,
  polygon,
  project,
  reachOf,
  toBody,
  turnArrow,
  turnedBy,
} from './solid.js';

/** @typedef {import('./solid.js').Point} Point */

/** Half sizes of the drawn part along body x, y, z. */
const BODY = /** @type {Point} */ ([92, 24, 24]);
const BAR = /** @type {Point} */ ([80, 6, 4]);
const PLATE = /** @type {Point} */ ([30, 26, 3]);

/** @param {string} surface height of the surface above the part's axis */
function surfaceHeight(surface) {
  if (surface === 'bar') return BODY[2] + 2 * BAR[2];
  if (surface === 'bracket') return BODY[2] + 2 * PLATE[2] + 10;
  return BODY[2];
}

/** @param {number[]} rotation @param {string} surface @returns {Point} the phone's middle, body frame */
function phoneCentre(rotation, surface) {
  return [0, 0, surfaceHeight(surface) + reachOf(rotation)[2]];
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

/**
 * The picture of a placement.
 * @param {string} part
 * @param {import('../types.js').Placement} placement
 * @param {{ topEdge: string, head: string }} words
 * @param {number} [quarters] how far the phone is turned from the placement
 */
export function holdPicture(part, placement, words, quarters = 0) {
  const { surface } = placement;
  const rotation = turnedBy(placement.rotation, quarters);
  const origin = /** @type {Point} */ ([0, 0, 0]);
  const centre = phoneCentre(rotation, surface);
  const round = surface === 'round_body' || (part !== 'heater' && surface !== 'metal_face');
  const under = [];
  under.push(...(round ? cylinder() : box(origin, BODY, 'solid')));
  if (part === 'heater') under.push(...box([104, 0, 0], [12, 14, 14], 'solid'));
  if (surface === 'bar') under.push(...box([0, 0, BODY[2] + BAR[2]], BAR, 'solid'));
  if (surface === 'bracket') under.push(...box([0, 0, BODY[2] + 10 + PLATE[2]], PLATE, 'solid'));
  const [hx, hy] = project([BODY[0] + (part === 'heater' ? 30 : 14), 0, 0]);
  return s(
    'svg',
    {
      // A phone that stands on its short edge is tall.
      viewBox: placement.hold === 'short_edge' ? '40 -30 310 260' : '40 30 310 200',
      class: 'hold-picture',
      role: 'img',
      'aria-label': `${words.topEdge}, ${words.head}`,
    },
    line([-BODY[0] - 16, 0, 0], [BODY[0] + 50, 0, 0], 'centre'),
    ...under,
    s('path', { d: `M${hx} ${hy}h34m-9 -7l9 7l-9 7`, class: 'flow' }),
    ...phoneAt(rotation, centre, words.topEdge),
    quarters ? turnArrow(centre, quarters) : null,
    s('text', { x: 346, y: 222, class: 'small', 'text-anchor': 'end' }, `→ ${words.head}`),
  );
}
