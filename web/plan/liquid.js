// How the drawings show a liquid, and a length between two arrows.

import { s } from '../dom.js';

/** Level lines, as on a drawing of a tank. @param {string} id */
export const liquid = (id) =>
  s(
    'defs',
    {},
    s(
      'pattern',
      { id, width: 14, height: 7, patternUnits: 'userSpaceOnUse' },
      s('path', { d: 'M0 2H9M5 5.5H14', class: 'hatch' }),
    ),
  );

/** An upright length with its words to the right. @param {number} x @param {number} from
 * @param {number} to @param {string} label @param {number} [side] of the words: 1 right, −1 left */
export function upright(x, from, to, label, side = 1) {
  const [top, bottom] = [Math.min(from, to), Math.max(from, to)];
  const d =
    bottom - top < 14
      ? `M${x} ${top - 12}V${top}m-4 -6l4 6l4 -6M${x} ${bottom + 12}V${bottom}m-4 6l4 -6l4 6`
      : `M${x} ${top}V${bottom}m-4 -6l4 6l4 -6M${x - 4} ${top + 6}l4 -6l4 6`;
  return [
    s('path', { d, class: 'dimension' }),
    s(
      'text',
      {
        x: x + side * 8,
        y: (top + bottom) / 2 + 5,
        class: 'small',
        'text-anchor': side < 0 ? 'end' : 'start',
      },
      label,
    ),
  ];
}
