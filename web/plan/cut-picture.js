// The cut to scale, seen from the near face: pilot hole, cut, plate, what is near on both faces, the
// gap to each with a line that carries its verdict, and a bar to check the scale with a tape.

import { asPrinted } from '../locale.js';
import { s } from '../dom.js';
import { words } from '../words/cut.js';
import { hatch } from './hatch.js';
import { toShown, withUnit } from './units.js';

/** @typedef {import('./sheet.js').SheetForm} SheetForm */
/** @typedef {import('./model.js').Worked} Worked */
/** @typedef {Record<string, number>} Numbers */

/** On the screen: paper units across. */
const WIDTH = 340;
/** Shown round the cut at least, of what it reaches. */
const AROUND = 1.35;
/** What lies farther off than this many times what the cut reaches is not drawn whole. */
const FAR = 3;
/** Lengths of the bar: mm, inches. */
const BARS = { metric: [10, 20, 50, 100, 200, 500], us: [0.5, 1, 2, 5, 10, 20] };
const t = words.picture;

/** The form's own numbers by name. @param {SheetForm} form @returns {Numbers} */
export const numbersOf = (form) =>
  Object.fromEntries(form.entry.inputs.map(({ name }, i) => [name, form.x[i]]));

/** What was told of a thing, by name. @param {SheetForm} form @param {number} row @returns {Numbers} */
function toldOf(form, row) {
  const first = form.entry.inputs.length + row * form.entry.row.length;
  return Object.fromEntries(
    form.entry.row.map(({ name }, i) => [`told_${name}`, form.x[first + i]]),
  );
}

/** Each row's results by name. @param {SheetForm} form @param {Worked | null} worked */
export function thingsOf(form, worked) {
  if (!worked || worked.refused) return [];
  return form.kept.record.rows.map((_, row) => {
    const own = worked.results.filter((r) => r.row === row);
    const answer = worked.answers.find((a) => a.result.row === row && a.result.name === 'gap_mm');
    return {
      .../** @type {Numbers} */ (toldOf(form, row)),
      verdict: answer?.verdict ?? 'none',
      limit: answer?.limit ?? null,
      why: answer?.why ?? null,
      u: answer?.result.u ?? NaN,
      .../** @type {Numbers} */ (Object.fromEntries(own.map((r) => [r.name, r.value]))),
    };
  });
}

/** @typedef {ReturnType<typeof thingsOf>[number] & Numbers} Thing */

/** What is drawn: a box about the pilot hole, mm. @param {number} reach @param {Thing[]} things */
function extent(reach, things) {
  const near = things.flatMap((o) => {
    const far = Math.hypot(o.to_right_mm, o.to_up_mm);
    return far <= FAR * reach ? [[o.to_right_mm, o.to_up_mm]] : [];
  });
  const least = AROUND * reach;
  const to = (/** @type {number} */ axis, /** @type {1 | -1} */ way) =>
    Math.max(least, ...near.map((p) => way * p[axis] + 0.25 * reach));
  return { left: to(0, -1), right: to(0, 1), up: to(1, 1), down: to(1, -1) };
}

/** Room that a gap and its number take. */
const LABEL = 96;

/** @param {string} d @param {string} cls @param {Record<string, any>} [more] */
const path = (d, cls, more = {}) => s('path', { d, class: cls, ...more });

/** @param {Numbers} x @param {number} k */
function rectangle(x, k) {
  const [w, hgt] = [k * x.width_mm, k * x.height_mm];
  const rx = k * (x.corner_mm || 0);
  return s('rect', { x: -w / 2, y: -hgt / 2, width: w, height: hgt, rx });
}

/** The cut's own shapes, in the frame of its middle. @param {Numbers} x @param {number} k
 * @param {string} fill */
function pieces(x, k, fill) {
  const circles = ['a', 'b', 'c', 'd'].filter((i) => x[`${i}_diameter_mm`] > 0);
  const round = circles.map((i) =>
    s('circle', {
      cx: k * x[`${i}_right_mm`],
      cy: -k * x[`${i}_up_mm`],
      r: (k * x[`${i}_diameter_mm`]) / 2,
    }),
  );
  const shapes = x.width_mm > 0 ? [rectangle(x, k), ...round] : round;
  return s('g', { class: 'cut-edge', fill }, ...shapes);
}

/** @param {Numbers} x @param {number} k */
function plate(x, k) {
  if (!(x.plate_width_mm > 0)) return null;
  const [w, hgt] = [k * x.plate_width_mm, k * x.plate_height_mm];
  return s('rect', {
    x: k * x.plate_right_mm - w / 2,
    y: -k * x.plate_up_mm - hgt / 2,
    width: w,
    height: hgt,
    class: 'plate-edge',
  });
}

/** A box, or a line where it has no width or height. @param {number} l @param {number} r
 * @param {number} b @param {number} up */
const outlineOf = (l, r, b, up) =>
  l === r || b === up ? `M${l} ${-b}L${r} ${-up}` : `M${l} ${-b}H${r}V${-up}H${l}Z`;

/** A thing and its gap. @param {Thing} o @param {number} i @param {number} k
 * @param {import('../units.js').System} system @param {number} right where the paper ends */
function thing(o, i, k, system, right) {
  const cls = `thing ${o.told_face === 1 ? 'far' : 'near'}`;
  const [l, r, b, up] = [o.left_mm, o.right_mm, o.bottom_mm, o.top_mm].map((v) => k * v);
  // Its direction not told: somewhere on this circle.
  const shape = Number.isNaN(l)
    ? s('circle', { r: k * o.told_distance_mm, class: `${cls} anywhere` })
    : path(outlineOf(l, r, b, up), cls);
  if (Number.isNaN(o.from_right_mm)) return [shape];
  const [x1, y1, x2, y2] = [o.from_right_mm, -o.from_up_mm, o.to_right_mm, -o.to_up_mm].map(
    (v) => k * v,
  );
  const label = `${i + 1}: ${withUnit(o.gap_mm, 'mm', system)}`;
  // Above the middle of the line, beside it where the line stands.
  const across = Math.abs(x2 - x1) > Math.abs(y2 - y1);
  // On the side where the paper has room for it.
  const turned = !across && (x1 + x2) / 2 + LABEL > right ? -1 : 1;
  const at = { x: (x1 + x2) / 2 + (across ? 0 : 8 * turned), y: (y1 + y2) / 2 - (across ? 9 : -5) };
  return [
    shape,
    s('circle', { cx: x2, cy: y2, r: 3, class: cls }),
    path(`M${x1} ${y1}L${x2} ${y2}`, 'dimension', { 'data-verdict': o.verdict, 'data-thing': i }),
    s(
      'text',
      {
        ...at,
        class: 'small halo',
        'text-anchor': across ? 'middle' : turned > 0 ? 'start' : 'end',
      },
      label,
    ),
  ];
}

/** A bar to hold a tape against. @param {number} k @param {number} room
 * @param {import('../units.js').System} system */
function bar(k, room, system) {
  const per = system === 'us' ? 25.4 : 1;
  const length = BARS[system].filter((b) => k * per * b <= room).pop() ?? BARS[system][0];
  const w = k * per * length;
  const label = withUnit(length * per, 'mm', system);
  const el = s(
    'g',
    { class: 'scale-bar' },
    path(`M0 -5V5M0 0H${w}M${w} -5V5`, 'bar'),
    s('text', { x: w + 8, y: 5, class: 'small halo' }, label),
  );
  return { el, label };
}

/**
 * The drawing, with how many mm its width is.
 * @param {SheetForm} form @param {Worked | null} worked
 */
export function cutDrawing(form, worked) {
  if (!worked || worked.refused) return null;
  const { system } = form.ctx.settings;
  const x = numbersOf(form);
  const things = /** @type {Thing[]} */ (thingsOf(form, worked));
  const shown = extent(worked.results[0].value, things);
  const [across, high] = [shown.left + shown.right, shown.up + shown.down];
  const k = WIDTH / across;
  const { pattern, fill } = hatch();
  const scale = bar(k, WIDTH - 90, system);
  scale.el.setAttribute('transform', `translate(8 ${k * high + 16})`);
  const middle = `translate(${k * x.middle_right_mm} ${-k * x.middle_up_mm}) rotate(${-x.turn_deg})`;
  const axes = path('M-14 0H14M0 -14V14', 'centre');
  const height = k * high + 30;
  const inside = s(
    'svg',
    { x: 0, y: 0, width: WIDTH, height: k * high, overflow: 'hidden' },
    s(
      'g',
      { transform: `translate(${k * shown.left} ${k * shown.up})` },
      s('g', { transform: middle }, plate(x, k), pieces(x, k, fill), axes),
      ...things.flatMap((o, i) => thing(o, i, k, system, k * shown.right)),
      s('circle', { r: 4, class: 'pilot' }),
      path('M-10 0H10M0 -10V10', 'pilot'),
    ),
  );
  const el = s(
    'svg',
    {
      viewBox: `0 0 ${WIDTH} ${height}`,
      class: 'plan-picture cut-picture',
      role: 'img',
      'aria-label': t.label,
    },
    s('defs', {}, pattern),
    s('rect', { x: 1, y: 1, width: WIDTH - 2, height: k * high - 2, class: 'sheet-edge' }),
    inside,
    scale.el,
  );
  return { el, across, high: height / k, bar: scale.label };
}

/** @param {SheetForm} form @param {Worked | null} worked @returns {Node[]} */
export function cutPicture(form, worked) {
  const drawing = cutDrawing(form, worked);
  if (!drawing) return [];
  const caption = document.createElement('p');
  caption.className = 'source';
  caption.textContent = t.seen;
  return [drawing.el, caption];
}

/** A length with its direction in words. @param {number} mm @param {(by: string, more: boolean) => string} say
 * @param {import('../units.js').System} system */
export const offset = (mm, say, system) =>
  say(
    `${asPrinted(Number(toShown(Math.abs(mm), 'mm', system).toFixed(2)))} ${system === 'us' ? 'in' : 'mm'}`,
    mm >= 0,
  );
