// The space from the side with an arrow for each loss, as wide as the loss is large: through the roof
// up, the floor down, walls to the right, air to the left. Broken where more can be lost.

import { s } from '../dom.js';
import { words } from '../words/demand.js';

/** @typedef {import('./model.js').Result} Result */

/** The room, in the drawing's units, and how far an arrow reaches out of it. */
const [LEFT, TOP, WIDTH, HEIGHT] = [92, 78, 156, 104];
const [SHAFT, HEAD, GAP] = [26, 14, 12];
/** Thinnest arrow that is still seen. */
const THIN = 1.5;

/** A loss to draw. @typedef {{ label: string, w: number, open: boolean }} Loss */

/** An arrow outwards along x from the origin, `wide` across. @param {number} wide */
const arrow = (wide) => {
  const [half, tip] = [wide / 2, Math.max(wide / 2 + 5, 7)];
  return `M0 ${-half}H${SHAFT}V${-tip}L${SHAFT + HEAD} 0L${SHAFT} ${tip}V${half}H0z`;
};

/** One side's arrows in a row. @param {Loss[]} losses @param {number} scale
 * @param {[number, number]} middle of the side @param {number} turn its outward direction, degrees */
function side(losses, scale, [x, y], turn) {
  const wide = losses.map(({ w }) => Math.max(THIN, scale * w));
  const total = wide.reduce((a, b) => a + b, 0) + GAP * (losses.length - 1);
  let along = -total / 2;
  const upright = turn % 180 !== 0;
  return losses.flatMap(({ label, open }, i) => {
    const at = along + wide[i] / 2;
    along += wide[i] + GAP;
    const [ax, ay] = upright ? [x + at, y] : [x, y + at];
    const reach = SHAFT + HEAD + 12;
    const [dx, dy] = { 0: [reach, 5], 180: [-reach, 5], 90: [0, reach + 4], 270: [0, -reach + 8] }[
      turn
    ] ?? [0, 0];
    return [
      s('path', {
        d: arrow(wide[i]),
        class: open ? 'thing far' : 'thing',
        transform: `translate(${ax} ${ay}) rotate(${turn})`,
        'data-loss': label,
      }),
      s('text', { x: ax + dx, y: ay + dy, class: 'small', 'text-anchor': 'middle' }, label),
    ];
  });
}

/** The space, its arrows, and its loss where one is told.
 * @param {import('./sheet.js').SheetForm} form @param {Result[]} results @param {string} loss */
export function demandPicture(form, results, loss) {
  /** @param {string} name @param {number | null} row */
  const of = (name, row) => results.find((r) => r.name === name && r.row === row)?.value ?? NaN;
  const surfaces = form.kept.record.rows.map(({ typed }, i) => ({
    flow: Number(typed.flow),
    label: String(i + 1),
    w: of('through_w', i),
    open: of('open', i) > 0,
  }));
  const seen = surfaces.filter(({ w }) => w > 0);
  const ways = [0, 1, 2].map((flow) => seen.filter((loss) => loss.flow === flow));
  const air = of('air_w', null);
  const left = air > 0 ? [{ label: words.air, w: air, open: false }] : [];
  /** @type {[Loss[], number][]} */
  const sides = [
    [ways[0], HEIGHT],
    [ways[1], WIDTH],
    [ways[2], WIDTH],
    [left, HEIGHT],
  ];
  // One scale for all, so that the fullest side just holds its arrows.
  const scales = sides
    .filter(([losses]) => losses.length)
    .map(([losses, room]) => {
      const total = losses.reduce((sum, { w }) => sum + w, 0);
      return (room - 12 - GAP * (losses.length - 1)) / total;
    });
  const scale = Math.max(0, Math.min(...scales));
  const [midX, midY] = [LEFT + WIDTH / 2, TOP + HEIGHT / 2];
  return s(
    'svg',
    { viewBox: '0 0 340 262', class: 'plan-picture', role: 'img', 'aria-label': words.picture },
    s('path', { d: `M${LEFT} ${TOP}h${WIDTH}v${HEIGHT}h${-WIDTH}z`, class: 'outline' }),
    s('text', { x: midX, y: midY + 5, class: 'small', 'text-anchor': 'middle' }, loss),
    ...side(ways[0], scale, [LEFT + WIDTH, midY], 0),
    ...side(ways[1], scale, [midX, TOP], 270),
    ...side(ways[2], scale, [midX, TOP + HEIGHT], 90),
    ...side(left, scale, [LEFT, midY], 180),
  );
}
