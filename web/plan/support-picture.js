// The seal line from above with its two diagonals: lines read are solid, lines still open dashed,
// the widest gap is named.

import { s } from '../dom.js';
import { words } from '../words/support.js';
import { withUnit } from './units.js';

/** Ends of the lines, in core's order. */
const LINES = [
  [40, 24, 300, 24],
  [40, 176, 300, 176],
  [40, 24, 40, 176],
  [300, 24, 300, 176],
  [40, 24, 300, 176],
  [40, 176, 300, 24],
];

/**
 * @param {import('../context.js').Context} ctx
 * @param {import('./sheet.js').SheetForm} form
 * @param {import('./model.js').Worked | null} worked
 */
export function supportPicture(ctx, form, worked) {
  const results = worked && !worked.refused ? worked.results : [];
  const gaps = results.filter((r) => r.name === 'gap_mm' && !Number.isNaN(r.value));
  /** @type {(row: number | null) => number} */
  const lineOf = (row) => Number(form.kept.record.rows[row ?? -1]?.typed.line);
  const read = new Set(gaps.map((gap) => lineOf(gap.row)));
  const widest = gaps.reduce(
    (most, gap) => (most && most.value >= gap.value ? most : gap),
    /** @type {import('./model.js').Result | undefined} */ (undefined),
  );
  const at = widest && LINES[lineOf(widest.row)];
  const label =
    widest && `${words.widest} ${withUnit(widest.value, widest.unit, ctx.settings.system)}`;
  return s(
    'svg',
    {
      viewBox: '0 0 340 204',
      class: 'plan-picture',
      role: 'img',
      'aria-label': words.picture,
    },
    s('path', { d: 'M110 62H230V138H110z', class: 'outline thin' }),
    ...LINES.map(([x1, y1, x2, y2], i) =>
      s('path', {
        d: `M${x1} ${y1}L${x2} ${y2}`,
        class: `seal-line${read.has(i) ? ' read' : ''}${at === LINES[i] ? ' widest' : ''}`,
        'data-line': i,
      }),
    ),
    s('text', { x: 170, y: 104, class: 'small halo', 'text-anchor': 'middle' }, label ?? ''),
  );
}
