// One screen for each of the fuel's sheets: what it asks, its drawing, what came of it.

import { h } from '../dom.js';
import { frame } from '../screens/frame.js';
import { words } from '../words/fuel.js';
import { sheets } from '../words/fuel-sheets.js';
import { linePicture } from './fuel-line.js';
import { push } from './shared-numbers.js';
import { tankPicture } from './fuel-tank.js';
import { SheetForm } from './sheet.js';
import { toldLines } from './told.js';

/** @typedef {import('../context.js').Context} Context */

/** Cards of fields by sheet: legend and fields. @type {Record<string, [string, string[]][]>} */
const CARDS = {
  tank: [
    [words.groups.tank, ['shape', 'depth_mm', 'length_mm', 'width_mm', 'level_mm']],
    [words.groups.pipes, ['standpipe_mm', 'cut_mm', 'second_mm']],
  ],
  fuel_run: [
    [words.groups.suction, ['suction_bore_mm', 'suction_length_m', 'suction_lift_mm']],
    [words.groups.pump, ['pump_air_celsius', 'fuel_to_hot_mm']],
    [words.groups.pressure, ['pressure_bore_mm', 'pressure_length_m', 'pressure_lift_mm']],
  ],
  fuel_pressure: [
    [words.groups.fuel, ['fuel', 'fuel_celsius', 'cloud_point_celsius']],
    [words.groups.stroke, ['stroke_ml', 'stroke_ms']],
    [words.groups.suction, ['suction_bore_mm', 'suction_length_m', 'suction_lift_mm', 'filter_pa']],
    [words.groups.pressure, ['pressure_bore_mm', 'pressure_length_m', 'pressure_lift_mm']],
  ],
  prime: [
    [words.groups.suction, ['suction_bore_mm', 'suction_length_m', 'filter_ml']],
    [words.groups.pressure, ['pressure_bore_mm', 'pressure_length_m']],
    [words.groups.stroke, ['stroke_ml', 'stroke_hz']],
    [words.groups.start, ['start_s', 'starts_made']],
  ],
  burn: [[words.groups.burn, ['fuel', 'output_w', 'efficiency', 'reach_l']]],
};

/** What a sheet draws. @type {Record<string, (ctx: Context, form: SheetForm, worked: import('./model.js').Worked | null) => SVGElement>} */
const PICTURES = { tank: tankPicture, fuel_run: linePicture };

/** Results without a limit. @type {Record<string, string[]>} */
const TOLD = {
  tank: ['in_tank_l', 'heater_l'],
  prime: ['prime_s'],
  burn: ['burn_l_per_h', 'lasts_h'],
};

/** The fuel's own paper, a tap deeper. @param {SheetForm} form */
function paper(form) {
  const names = [
    'viscosity_40_mm2_per_s',
    'other_viscosity_mm2_per_s',
    'other_celsius',
    'density_15_kg_per_m3',
  ];
  return h(
    'details',
    {},
    h('summary', {}, words.why.paper),
    form.group('', names, words.why.paperWhy),
  );
}

/** @param {string} name */
export const fuelSheet = (name) => (/** @type {Context} */ ctx) => {
  const form = new SheetForm(ctx, name, sheets[name]);
  const [title] = /** @type {Record<string, string[]>} */ (words.sheets)[name];
  const picture = h('div', {});
  const draw = name in PICTURES ? PICTURES[name] : null;
  const told = toldLines(form, TOLD[name] ?? []);
  form.onWorked = (worked) => {
    push(ctx, form);
    told.show(worked);
    if (draw) picture.replaceChildren(draw(ctx, form, worked));
  };
  const el = frame(
    ctx,
    `fuel_${name}`,
    title,
    [
      h('p', { class: 'caution' }, words.cautions[0]),
      h('p', {}, /** @type {Record<string, string>} */ (words.why)[name]),
      draw ? picture : null,
      ...CARDS[name].map(([legend, names]) => form.group(legend, names)),
      name === 'fuel_pressure' ? paper(form) : null,
      told.el,
      ...form.outcome(),
    ],
    [],
  );
  form.start();
  return el;
};
