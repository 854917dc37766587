// Beside the ducts: flow from a measured rise, openings for return air, the fan's curve.

import { button, h, say } from '../dom.js';
import { sheets, words } from '../words/ducts.js';
import { savedLine } from './answers.js';
import { asTyped, fill, resultOf } from './copy.js';
import { FAN } from './ducts-pieces.js';
import { SheetForm } from './sheet.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('./ducts-pieces.js').DuctForm} DuctForm */
/** @typedef {import('./model.js').Result} Result */

/** Power of the flow, density in kg/m³: see their hints. */
const USUAL = /** @type {const} */ ([
  ['power', '1.8'],
  ['curve_density_kg_per_m3', '1.2'],
]);

/** Puts a result into a field of the ducts. @param {DuctForm} ducts @param {string} name
 * @param {Result} result */
function take(ducts, name, result) {
  const field = ducts.field(name);
  fill(field, asTyped(result, ducts.ctx.settings.system));
  field.onChange(true);
  ducts.refresh();
  field.el.scrollIntoView({ block: 'center' });
}

/** Flow from a measured rise. @param {Context} ctx @param {DuctForm} ducts */
export function riseCard(ctx, ducts) {
  const form = new SheetForm(ctx, 'air_flow', sheets.air_flow);
  /** @type {Result | undefined} */ let flow;
  const use = button(
    words.take,
    'take-flow',
    () => flow && take(ducts, 'flow_m3_per_h', flow),
    'row',
  );
  form.onWorked = (worked) => {
    flow = resultOf(worked, 'flow_m3_per_h');
    use.hidden = !flow;
  };
  const el = h(
    'details',
    { 'data-part': 'rise' },
    h('summary', {}, words.rise),
    h('p', {}, words.riseWhy),
    form.group(
      '',
      form.entry.inputs.map((i) => i.name),
    ),
    form.halfList(),
    form.state,
    form.answers.el,
    use,
    form.working.el,
    savedLine(form),
  );
  form.start();
  return el;
}

/** Openings for the air that comes back. @param {Context} ctx @param {DuctForm} ducts */
export function openingsCard(ctx, ducts) {
  const form = new SheetForm(ctx, 'return_air', sheets.return_air);
  const copied = /** @type {const} */ ([
    ['flow_m3_per_h', 'flow_m3_per_h'],
    ['inlet_celsius', 'air_celsius'],
    ['altitude_m', 'altitude_m'],
  ]);
  const copy = () => {
    const from = ducts.kept.record;
    const to = form.kept.record;
    for (const [a, b] of copied) {
      to.typed[b] = from.typed[a] ?? '';
      to.half[b] = from.half[a] ?? '';
      const field = form.field(b);
      field.input.value = to.typed[b];
      if (field.half) field.half.value = to.half[b];
    }
    form.kept.changed(true);
    form.refresh();
  };
  const el = h(
    'details',
    { 'data-part': 'openings' },
    h('summary', {}, words.openings),
    h('p', {}, words.openingsWhy),
    button(words.takeAir, 'take-air', copy, 'row'),
    form.group(
      '',
      form.entry.inputs.map((i) => i.name).filter((name) => !name.endsWith('spread')),
    ),
    form.rowList(),
    ...form.outcome(),
  );
  form.start();
  return el;
}

/** The fan's curve: fields of the ducts' own sheet. @param {DuctForm} ducts */
export function fanCard(ducts) {
  const names = ducts.entry.inputs.map((i) => i.name).filter((name) => FAN.test(name));
  /** @type {Result | undefined} */ let flow;
  const none = h('p', { class: 'missing', role: 'status' });
  const use = button(
    words.takeFan,
    'take-fan',
    () => flow && take(ducts, 'flow_m3_per_h', flow),
    'row',
  );
  const el = h(
    'details',
    { 'data-part': 'fan' },
    h('summary', {}, words.fan),
    h('p', {}, words.fanWhy),
    ducts.group('', names),
    h('details', {}, h('summary', {}, ducts.ctx.plan.words.halves), ducts.fanHalves),
    none,
    use,
  );
  // Usual numbers, to be typed over.
  el.addEventListener('toggle', () => {
    for (const [name, usual] of USUAL) {
      const field = ducts.field(name);
      if (!el.open || field.row.typed[name]) continue;
      field.row.typed[name] = usual;
      field.input.value = usual;
      field.onChange(true);
    }
    if (el.open) ducts.refresh();
  });
  return {
    el,
    /** @param {import('./model.js').Worked | null} worked */
    tell: (worked) => {
      flow = resultOf(worked, 'fan_flow_a_m3_per_h');
      use.hidden = !flow;
      const lost = ducts.hasFan && !flow && resultOf(worked, 'loss_a_pa');
      say(none, lost ? words.beyondCurve : '');
    },
  };
}
