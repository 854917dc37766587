// A piece of a duct as a fitter draws it: the flow goes down, the next piece goes on below. Wide and
// narrow are to scale, shapes are not.

import { s } from '../dom.js';

const HEIGHT = 64;
const MIDDLE = 36;

/** @param {string} d @param {string} [cls] */
const path = (d, cls = 'outline') => s('path', { d, class: cls });

/** Both walls. @param {number} w @param {string} along */
const walls = (w, along) => path(`M${MIDDLE - w} 0${along}M${MIDDLE + w} 0${along}`);

/** An end: walls for half the height, then bars. @param {number} w @param {boolean} warm */
function end(w, warm) {
  const [from, bars] = warm ? [0, [40, 47, 54]] : [30, [8, 15, 22]];
  const [l, r] = [MIDDLE - w, MIDDLE + w];
  return [
    path(`M${l} ${from}v34M${r} ${from}v34`),
    path(bars.map((y) => `M${l - 4} ${y}H${r + 4}`).join(''), 'outline thin'),
  ];
}

/** By core's kinds, in their order: half width before and after. @type {((w: number, w2: number, warm: boolean) => SVGElement[])[]} */
const SHAPES = [
  (w) => [walls(w, `v${HEIGHT}`)],
  (w) => [walls(w, 'c0 14 12 14 12 32s-12 18 -12 32')],
  (w) => [walls(w, 'l12 32l-12 32'), path(`M${MIDDLE - w + 12} 32h${2 * w}`, 'outline thin')],
  (w) => [walls(w, 'q5 4 0 8q-5 4 0 8q5 4 0 8q-5 4 0 8q5 4 0 8q-5 4 0 8q5 4 0 8q-5 4 0 8')],
  (w, _, warm) => end(w, warm),
  (w, w2) => [
    path(`M${MIDDLE - w} 0v16L${MIDDLE - w2} 48v16M${MIDDLE + w} 0v16L${MIDDLE + w2} 48v16`),
  ],
  (w) => [
    path(`M${MIDDLE - w} 0v20H4M4 44H${MIDDLE - w}v20M${MIDDLE + w} 0v${HEIGHT}`),
    path('M24 32H10m5 -4l-5 4l5 4', 'flow'),
  ],
];

/** @param {number} kind @param {number} w half width before it @param {number} w2 after it @param {boolean} warm */
export function piecePicture(kind, w, w2, warm) {
  return s(
    'svg',
    { viewBox: `0 0 72 ${HEIGHT}`, class: 'piece', 'aria-hidden': 'true' },
    ...(SHAPES[kind]?.(w, w2, warm) ?? []),
  );
}

/** The heater between its runs. @param {string} label @param {string} outlet what leaves it */
export function heaterPicture(label, outlet) {
  return s(
    'svg',
    {
      viewBox: '0 0 320 76',
      class: 'duct-heater',
      role: 'img',
      'aria-label': `${label} ${outlet}`,
    },
    path('M20 0V12H52V0M8 12H64V62H8ZM20 62V76M52 62V76'),
    path('M36 22v28m-6 -8l6 8l6 -8', 'flow'),
    s('text', { x: 84, y: 34, class: 'small' }, label),
    s('text', { x: 84, y: 56, class: 'small' }, outlet),
  );
}
