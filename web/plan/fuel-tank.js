// The tank in section with its pipes to scale in height: where the heater draws air, what is left.

import { s } from '../dom.js';
import { words } from '../words/fuel.js';
import { liquid, upright } from './liquid.js';
import { withUnit } from './units.js';

/** @typedef {import('./model.js').Worked} Worked */

const [TOP, FLOOR, MIDDLE] = [34, 164, 170];
/** Drawn as long as nothing is told. @type {Record<string, number>} */
const USUAL = { shape: 0, depth_mm: 400, standpipe_mm: 350, cut_mm: 0 };

/** Outlines by shape: box, the end of a lying cylinder, an upright one. */
const SHAPES = [
  `M50 ${TOP}H290V${FLOOR}H50z`,
  `M${MIDDLE} ${TOP}a65 65 0 1 0 0.01 0z`,
  `M100 ${TOP}H240V${FLOOR}a70 9 0 0 1 -140 0z`,
];

/** A pipe that hangs from the flange, its end cut over `cut`. @param {number} x @param {number} end
 * @param {number} cut @param {string} name @param {'start' | 'end'} side of its name */
const pipe = (x, end, cut, name, side) => [
  s('path', {
    d: `M${x - 4} ${TOP - 14}V${end - cut}L${x + 4} ${end}V${TOP - 14}`,
    class: 'pipe-end',
  }),
  s(
    'text',
    { x: x + (side === 'end' ? -8 : 8), y: TOP - 6, class: 'small', 'text-anchor': side },
    name,
  ),
];

/** @param {import('../context.js').Context} ctx @param {import('./sheet.js').SheetForm} form
 * @param {Worked | null} worked */
export function tankPicture(ctx, form, worked) {
  /** @param {string} name */
  const told = (name) => {
    const x = form.x[form.entry.inputs.findIndex((i) => i.name === name)];
    return x === undefined || Number.isNaN(x) ? USUAL[name] : x;
  };
  /** @param {string} name */
  const given = (name) => {
    const result = worked && !worked.refused && worked.results.find((r) => r.name === name);
    return result && !Number.isNaN(result.value)
      ? withUnit(result.value, result.unit, ctx.settings.system)
      : '';
  };
  const depth = told('depth_mm');
  /** From a distance below the flange. @param {number} mm */
  const y = (mm) => TOP + (Math.min(mm, depth) / depth) * (FLOOR - TOP);
  const outline = SHAPES[told('shape')];
  const level = told('level_mm') === undefined ? TOP : y(depth - told('level_mm'));
  const [end, second] = [y(told('standpipe_mm')), told('second_mm')];
  const cut = y(told('cut_mm') ?? 0) - TOP;
  const clip = s('clipPath', { id: 'tank-inside' }, s('path', { d: outline }));
  return s(
    'svg',
    {
      viewBox: '0 0 340 186',
      class: 'plan-picture',
      role: 'img',
      'aria-label': words.picture.tank,
    },
    liquid('tank-fuel'),
    clip,
    s('path', { d: outline, class: 'outline' }),
    s('path', {
      d: `M40 ${level}H300V${FLOOR + 12}H40z`,
      fill: 'url(#tank-fuel)',
      'clip-path': 'url(#tank-inside)',
    }),
    s('path', { d: `M44 ${end}H296`, class: 'centre', 'clip-path': 'url(#tank-inside)' }),
    ...pipe(MIDDLE - 20, end, cut, words.heaterPipe, 'end'),
    ...upright(MIDDLE - 36, end, FLOOR, given('gap_mm'), -1),
    ...(second === undefined
      ? []
      : [
          ...pipe(MIDDLE + 24, y(second), 0, words.secondPipe, 'start'),
          ...upright(MIDDLE + 38, y(second), FLOOR, given('second_gap_mm')),
        ]),
  );
}
