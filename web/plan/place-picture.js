// The heater from its side and from its intake end, its six free spaces as dimensions: the line of a
// dimension carries the verdict, as everywhere.

import { s } from '../dom.js';
import { outline } from '../drawings/outlines.js';
import { words } from '../words/place.js';
import { hatch } from './hatch.js';
import { withUnit } from './units.js';

const t = words.picture;

/** From the heater to the wall, on paper, and where its number stands.
 * @type {Record<string, { line: [number, number, number, number], text: [number, number, string] }>} */
const SPACES = {
  intake_end_mm: { line: [78, 92, 22, 92], text: [50, 84, 'middle'] },
  outlet_end_mm: { line: [178, 92, 228, 92], text: [204, 84, 'middle'] },
  top_mm: { line: [122, 70, 122, 22], text: [128, 50, 'start'] },
  bottom_mm: { line: [122, 114, 122, 162], text: [128, 144, 'start'] },
  left_mm: { line: [272, 92, 248, 92], text: [258, 64, 'middle'] },
  right_mm: { line: [308, 92, 332, 92], text: [322, 126, 'middle'] },
};

/** A wall: a strip of hatching with its edge. @param {string} fill @param {number[]} box
 * @param {string} edge */
const wall = (fill, [x, y, width, height], edge) => [
  s('rect', { x, y, width, height, fill }),
  s('path', { d: edge, class: 'wall' }),
];

/** @param {number[]} line */
function ends([x1, y1, x2, y2]) {
  const [dx, dy] = [Math.sign(x2 - x1), Math.sign(y2 - y1)];
  /** @param {number} x @param {number} y @param {number} way */
  const head = (x, y, way) => {
    const [a, b] = [7 * way * dx, 7 * way * dy];
    const [c, d] = [3 * dy, 3 * dx];
    return `M${x + a + c} ${y + b + d}L${x} ${y}L${x + a - c} ${y + b - d}`;
  };
  return `${head(x1, y1, 1)}${head(x2, y2, -1)}`;
}

/** @param {import('../app.js').Context} ctx @param {import('./model.js').Worked | null} worked */
export function placePicture(ctx, worked) {
  const answers = worked && !worked.refused ? worked.answers : [];
  const { pattern, fill } = hatch();
  const spaces = Object.entries(SPACES).flatMap(([name, { line, text }]) => {
    const answer = answers.find((a) => a.result.name === name);
    const told = answer !== undefined && !Number.isNaN(answer.result.value);
    const verdict = told ? answer.verdict : 'unchecked';
    const label = told ? withUnit(answer.result.value, 'mm', ctx.settings.system) : '?';
    const [x1, y1, x2, y2] = line;
    const [x, y, anchor] = text;
    return [
      s('path', { d: `M${x1} ${y1}L${x2} ${y2}`, class: 'dimension', 'data-verdict': verdict }),
      s('path', { d: ends(line), class: 'dimension-end', 'data-verdict': verdict }),
      s('text', { x, y, class: 'small halo', 'text-anchor': anchor, 'data-space': name }, label),
    ];
  });
  const side = outline('heater_outlet');
  side.setAttribute('transform', 'translate(78 92)');
  return s(
    'svg',
    { viewBox: '0 0 340 204', class: 'plan-picture', role: 'img', 'aria-label': t.label },
    s('defs', {}, pattern),
    ...wall(fill, [10, 10, 12, 164], 'M22 22V162H228V22Z'),
    ...wall(fill, [228, 10, 20, 164], 'M248 22V162H332V22Z'),
    s('rect', { x: 332, y: 10, width: 8, height: 164, fill }),
    s('rect', { x: 22, y: 10, width: 310, height: 12, fill }),
    s('rect', { x: 22, y: 162, width: 310, height: 12, fill }),
    side,
    s('path', { d: 'M272 70H308V114H272ZM284 114V124H296V114', class: 'outline' }),
    ...spaces,
    s('text', { x: 122, y: 192, class: 'small', 'text-anchor': 'middle' }, t.side),
    s('text', { x: 290, y: 192, class: 'small', 'text-anchor': 'middle' }, t.end),
  );
}
