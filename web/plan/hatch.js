// Hatching at 45°, as on a drawing.

import { s } from '../dom.js';

let made = 0;

/** A pattern for a drawing's `defs`, and what to fill with. @param {number} [gap] */
export function hatch(gap = 7) {
  made += 1;
  const id = `hatching${made}`;
  const pattern = s(
    'pattern',
    {
      id,
      width: gap,
      height: gap,
      patternUnits: 'userSpaceOnUse',
      patternTransform: 'rotate(45)',
    },
    s('path', { d: `M0 0V${gap}`, class: 'hatching' }),
  );
  return { pattern, fill: `url(#${id})` };
}
