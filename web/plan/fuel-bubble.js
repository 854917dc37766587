// Two upright tubes with fuel: in the narrow one the bubble sticks, in the wide one it rises.

import { s } from '../dom.js';
import { words } from '../words/fuel.js';
import { liquid } from './liquid.js';

/** A tube with a bubble in it. @param {number} x middle @param {number} half half of its bore
 * @param {number} gap between bubble and wall @param {string} name @param {string} does */
function tube(x, half, gap, name, does) {
  const r = half - gap;
  const [top, bottom] = [44 + r, 92 - r / 2];
  const bubble = `M${x - r} ${bottom}V${top}a${r} ${r} 0 0 1 ${2 * r} 0V${bottom}q${-r} ${r / 2} ${-2 * r} 0z`;
  return [
    s('path', { d: `M${x - half} 8H${x + half}V132H${x - half}z`, fill: 'url(#tube-fuel)' }),
    s('path', { d: bubble, class: 'bubble' }),
    s('path', { d: `M${x - half} 8V132M${x + half} 8V132`, class: 'outline' }),
    s('text', { x: x + half + 10, y: 66 }, does),
    s('text', { x: x + half + 10, y: 86, class: 'small' }, name),
  ];
}

export function bubblePicture() {
  return s(
    'svg',
    {
      viewBox: '0 0 300 140',
      class: 'plan-picture',
      role: 'img',
      'aria-label': words.picture.bubble,
    },
    liquid('tube-fuel'),
    ...tube(50, 8, 1, words.narrow, words.still),
    ...tube(190, 22, 8, words.wide, words.rising),
    s('path', { d: 'M190 82V58m-7 9l7 -9l7 9', class: 'flow' }),
  );
}
