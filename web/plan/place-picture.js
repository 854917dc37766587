// The heater as a box with its six free spaces as dimensions: the line of each carries its verdict,
// as everywhere. Its warm-air end is right, its fuel port down.

import { s } from '../dom.js';
import { polygon, project } from '../drawings/solid.js';
import { words } from '../words/place.js';
import { along, heater } from './fit-tile.js';
import { withUnit } from './units.js';

/** @typedef {import('../drawings/solid.js').Point} Point */

const t = words.picture;
const HALF = /** @type {Point} */ ([58, 34, 28]);
const AXES = /** @type {Point[]} */ ([
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
]);

/** From which face which way, how far on paper, and where its words stand.
 * @type {Record<string, { way: Point, long: number, text: [number, number, string] }>} */
const SPACES = {
  outlet_end_mm: { way: [1, 0, 0], long: 72, text: [2, 36, 'end'] },
  intake_end_mm: { way: [-1, 0, 0], long: 72, text: [-2, -16, 'start'] },
  top_mm: { way: [0, 0, 1], long: 54, text: [-18, 8, 'end'] },
  bottom_mm: { way: [0, 0, -1], long: 54, text: [18, 4, 'start'] },
  left_mm: { way: [0, 1, 0], long: 150, text: [8, 6, 'start'] },
  right_mm: { way: [0, -1, 0], long: 96, text: [-8, 4, 'end'] },
};

/** A dimension's line from a face to what is near, with a bar across its end.
 * @param {Point} way @param {number} long */
function dimension(way, long) {
  const reach = way.reduce((sum, v, i) => sum + Math.abs(v) * HALF[i], 0);
  const from = along([0, 0, 0], way, reach);
  const to = along([0, 0, 0], way, reach + long);
  const across = /** @type {Point} */ (way[2] ? [1, 0, 0] : [0, 0, 1]);
  const bar = `M${polygon([along(to, across, -12), along(to, across, 12)])}`;
  return { line: `M${polygon([from, to])}`, bar, end: project(to) };
}

/** @param {import('../context.js').Context} ctx @param {import('./model.js').Worked | null} worked */
export function placePicture(ctx, worked) {
  const answers = worked && !worked.refused ? worked.answers : [];
  /** @param {string} name */
  const of = (name) => answers.find((a) => a.result.name === name);
  /** @param {string} name */
  const told = (name) => of(name) !== undefined && !Number.isNaN(of(name)?.result.value);
  /** @param {string} name */
  const space = (name) => {
    const { way, long } = SPACES[name];
    const { line, bar } = dimension(way, long);
    const verdict = told(name) ? of(name)?.verdict : 'unchecked';
    return [
      s('path', { d: line, class: 'dimension', 'data-verdict': verdict }),
      s('path', { d: bar, class: 'wall' }),
    ];
  };
  /** @param {string} name */
  const label = (name) => {
    const { way, long, text } = SPACES[name];
    const { end } = dimension(way, long);
    const value = of(name)?.result.value ?? NaN;
    const at = { x: end[0] + text[0], 'text-anchor': text[2], 'data-space': name };
    const length = told(name) ? withUnit(value, 'mm', ctx.settings.system) : '?';
    return [
      s('text', { ...at, y: end[1] + text[1] - 19, class: 'small halo' }, t.spaces[name]),
      s('text', { ...at, y: end[1] + text[1], class: 'halo' }, length),
    ];
  };
  const flow = 'M146 158H190m-9 -6l9 6l-9 6';
  const behind = ['left_mm', 'top_mm', 'outlet_end_mm'];
  const before = ['intake_end_mm', 'bottom_mm', 'right_mm'];
  return s(
    'svg',
    {
      viewBox: '0 26 340 244',
      class: 'plan-picture place-picture',
      role: 'img',
      'aria-label': t.label,
    },
    ...behind.flatMap(space),
    ...heater([0, 0, 0], HALF, AXES, 0),
    s('path', { d: flow, class: 'flow' }),
    ...before.flatMap(space),
    ...[...behind, ...before].flatMap(label),
  );
}
