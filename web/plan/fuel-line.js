// The line from the lowest fuel to the pump and on to the heater, heights to scale.

import { s } from '../dom.js';
import { words } from '../words/fuel.js';
import { liquid, upright } from './liquid.js';
import { withUnit } from './units.js';

const FUEL_Y = 150;
/** Drawn as long as nothing is told, mm. */
const USUAL_MM = 300;
/** Room for the two heights, in the drawing's units. */
const [ROOM, TOP] = [110, 24];

/** @param {import('../context.js').Context} ctx @param {import('./sheet.js').SheetForm} form */
export function linePicture(ctx, form) {
  const { system } = ctx.settings;
  /** @param {string} name */
  const told = (name) => form.x[form.entry.inputs.findIndex((i) => i.name === name)] ?? NaN;
  /** @param {string} name @param {string} unit */
  const said = (name, unit) => (Number.isNaN(told(name)) ? '' : withUnit(told(name), unit, system));
  const usual = (/** @type {number} */ mm) => (Number.isNaN(mm) ? USUAL_MM : mm);
  const lifts = [usual(told('suction_lift_mm')), usual(told('pressure_lift_mm'))];
  const heights = [0, lifts[0], lifts[0] + lifts[1]];
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  const [fuel, pump, heater] = heights.map(
    (mm) => TOP + ROOM * (1 - (mm - low) / Math.max(high - low, 1)),
  );
  /** @param {string} side */
  const leg = (side) => [
    said(`${side}_length_m`, 'm'),
    Number.isNaN(told(`${side}_bore_mm`)) ? '' : `⌀ ${said(`${side}_bore_mm`, 'mm')}`,
  ];
  /** @param {number} x @param {string[]} lines */
  const under = (x, lines) =>
    lines.map((line, i) =>
      s('text', { x, y: FUEL_Y + 26 + 18 * i, class: 'small', 'text-anchor': 'middle' }, line),
    );
  return s(
    'svg',
    {
      viewBox: '0 -8 340 208',
      class: 'plan-picture',
      role: 'img',
      'aria-label': words.picture.line,
    },
    liquid('line-fuel'),
    s('path', { d: `M8 ${fuel - 14}V${FUEL_Y + 8}H66V${fuel - 14}`, class: 'outline' }),
    s('path', { d: `M8 ${fuel}H66V${FUEL_Y + 8}H8z`, fill: 'url(#line-fuel)' }),
    s('path', { d: `M50 ${fuel + 8}V${pump}H140M176 ${pump}H262V${heater}H280`, class: 'flow' }),
    s('path', { d: `M140 ${pump - 9}H176V${pump + 9}H140z`, class: 'outline' }),
    s('path', { d: `M280 ${heater - 12}H332V${heater + 12}H280z`, class: 'outline' }),
    s('text', { x: 158, y: pump - 14, class: 'small', 'text-anchor': 'middle' }, words.pump),
    s('text', { x: 306, y: heater - 16, class: 'small', 'text-anchor': 'middle' }, words.heater),
    s('path', { d: `M66 ${fuel}H104`, class: 'centre' }),
    s('path', { d: `M176 ${pump}H236`, class: 'centre' }),
    s('path', { d: `M220 ${heater}H262`, class: 'centre' }),
    ...upright(96, fuel, pump, said('suction_lift_mm', 'mm')),
    ...upright(228, pump, heater, said('pressure_lift_mm', 'mm'), -1),
    ...under(96, leg('suction')),
    ...under(228, leg('pressure')),
  );
}
