// The phone on a table, a rail or a floor, its long side along a straight edge; and which way a part
// points against it.

import { s } from '../dom.js';
import { box, phoneAt, reachOf, turnArrow, turnedBy } from './solid.js';

/** The straight edge: the table's own, a ruler, a rail's side. Along body x. */
const EDGE_Y = 40;

/**
 * @param {number[]} rotation of the hold, row-major, body = R · device
 * @param {{ topEdge: string, edge: string }} words
 * @param {number} [placed] how many placements are kept
 * @param {number} [step] quarters from one placement to the next
 */
export function tablePicture(rotation, words, placed = 0, step = 2) {
  const turned = turnedBy(rotation, placed * step);
  const [, y, z] = reachOf(turned);
  /** @type {import('./solid.js').Point} */
  const centre = [0, EDGE_Y - 5 - y, z];
  return s(
    'svg',
    { viewBox: '14 58 330 150', class: 'hold-picture', role: 'img', 'aria-label': words.edge },
    ...box([0, 0, -6], [116, 62, 6], 'solid'),
    ...box([0, EDGE_Y, 4], [112, 5, 4], 'solid'),
    ...phoneAt(turned, centre, words.topEdge),
    placed ? turnArrow([0, -10, 0], step) : null,
  );
}

/** Degrees anticlockwise, seen from above. */
const TURNS = { same: 0, left: 90, opposite: 180, right: -90 };

/** Seen from above: the phone on the rail points up the page, the part its own way.
 * @param {import('../types.js').Pointing} pointing */
export function pointingPicture(pointing) {
  return s(
    'svg',
    { viewBox: '0 0 88 56', class: 'pointing', 'aria-hidden': 'true' },
    s('path', { d: 'M10 6h20v44h-20z', class: 'phone' }),
    s('path', { d: 'M8 6h24', class: 'top-edge' }),
    s('path', {
      d: 'M-8 24V-8h16V24zM0 16V-22m-9 11l9 -11l9 11',
      class: 'outline',
      transform: `translate(60 28) rotate(${-TURNS[pointing]})`,
    }),
  );
}
