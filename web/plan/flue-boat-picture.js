// A hull from astern, heeled, with the water as it stays; outlet and loop where core puts them.

import { s } from '../dom.js';
import { words } from '../words/flue.js';
import { upright } from './liquid.js';
import { withUnit } from './units.js';

const t = words.picture;
const [MIDDLE, WATER] = [96, 130];
/** Room to the side of the middle, in the drawing's units. */
const ROOM = 88;
/** Where each height stands, and on which side of it its words. @type {[number, number][]} */
const LANES = [
  [214, 1],
  [326, -1],
];

/** @param {import('./sheet.js').SheetForm} form @param {import('./model.js').Worked | null} worked */
export function boatPicture(form, worked) {
  const results = worked && !worked.refused ? worked.results : [];
  /** @param {string} name */
  const told = (name) => form.x[form.entry.inputs.findIndex((i) => i.name === name)];
  const above = results.filter((r) => !Number.isNaN(r.value));
  if (!above.length) return [];
  const far = Math.max(
    ...['outlet', 'loop']
      .flatMap((at) => [told(`${at}_across_mm`), told(`${at}_height_mm`)])
      .filter((mm) => mm > 0),
    500,
  );
  const scale = ROOM / far;
  const heel = told('heel_deg');
  const half = told('outlet_across_mm') * scale;
  const { system } = form.ctx.settings;
  const points = above.flatMap((r) => {
    const name = r.name === 'outlet_mm' ? 'outlet' : 'loop';
    const across = told(`${name}_across_mm`) * scale;
    const high = told(`${name}_height_mm`) * scale;
    const at = { x: across + 9, y: -high - 6, transform: `rotate(${-heel} ${across} ${-high})` };
    return [
      s('circle', { cx: across, cy: -high, r: 5, class: 'pipe-end' }),
      s('text', { ...at, class: 'small halo' }, t[name]),
    ];
  });
  const hull = `M${-half} -70V0Q${-half} 56 0 66Q${half} 56 ${half} 0V-70`;
  const heights = above.flatMap((r, i) => {
    const [x, side] = LANES[i];
    const label = withUnit(r.value, 'mm', system);
    return upright(x, WATER, WATER - r.value * scale, label, side);
  });
  return [
    s(
      'svg',
      { viewBox: '0 0 340 220', class: 'plan-picture', role: 'img', 'aria-label': t.boat },
      s(
        'g',
        { transform: `translate(${MIDDLE} ${WATER}) rotate(${heel})` },
        s('path', { d: hull, class: 'outline' }),
        s('path', { d: 'M0 -80V70', class: 'centre' }),
        ...points,
      ),
      s('path', { d: `M4 ${WATER}H336`, class: 'wall' }),
      ...heights,
    ),
  ];
}
