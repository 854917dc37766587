// What is told of the vehicle: its lean on known level ground, the slope that it works on, how well
// the part's heading is known. Core names what can't be.

import { asTyped } from '../locale.js';
import { button, h, say } from '../dom.js';
import { FieldError, Fields } from '../fields.js';
import { frame } from './frame.js';
import { words as t } from '../words/vehicle.js';
import { SlopeReadout } from './level.js';
import { Watch } from './watch.js';

/** @typedef {import('../types.js').VehicleTerms} VehicleTerms */

/** @param {import('../context.js').Context} ctx */
export function vehicle(ctx) {
  const fields = new Fields(t.notANumber);
  const terms = ctx.settings.vehicle;
  const names = /** @type {(keyof VehicleTerms)[]} */ (Object.keys(terms));
  const state = h('p', { class: 'summary', role: 'status' });
  const slopes = new SlopeReadout(ctx);
  const watch = new Watch(ctx, t.readHere, 'read-here', () => readHere(), t.readHere);
  watch.take.className = 'row';

  /** @param {string} name @param {number} value */
  const put = (name, value) => {
    const input = fields.inputs.get(name);
    if (input) input.value = asTyped(value.toFixed(2));
  };
  const readHere = () => {
    const [[along, uAlong], [across, uAcross]] = [slopes.now(0), slopes.now(1)];
    if (Number.isNaN(along + across)) return say(state, ctx.text.levelRefusals.too_steep);
    put('lean_lengthwise_deg', along);
    put('lean_crosswise_deg', across);
    // U is about twice the standard uncertainty; finer than a tenth nothing is known of springs.
    put('rake_deg', Math.max(0.1, uAlong / 2, uAcross / 2));
    say(state, t.readDone);
  };
  const save = async () => {
    try {
      const told = Object.fromEntries(names.map((name) => [name, fields.needed(name)]));
      await ctx.useVehicle(/** @type {VehicleTerms} */ (told));
      fields.complain('', '');
      say(state, t.saved);
    } catch (error) {
      const { field, message } = /** @type {FieldError} */ (error);
      const wrong = /** @type {Record<string, string>} */ (t.wrong);
      const said = error instanceof FieldError ? [field, message] : [message, wrong[message]];
      if (fields.complain(said[0], said[1])) return say(state, t.wrongField);
      const stored = /** @type {Record<string, string>} */ (ctx.text.storeErrors);
      say(state, stored[/** @type {any} */ (error).code] ?? stored.failed);
    }
  };
  const rows = (
    /** @type {string} */ legend,
    /** @type {string} */ why,
    /** @type {typeof names} */ of,
  ) =>
    h(
      'fieldset',
      { class: 'card' },
      h('legend', {}, legend),
      h('p', { class: 'source' }, why),
      ...of.map((name) => fields.number(name, `${t.fields[name]} °`, terms[name])),
    );
  const lean = rows(t.lean, t.leanWhy, ['lean_lengthwise_deg', 'lean_crosswise_deg', 'rake_deg']);
  lean.append(slopes.el, watch.hint, watch.progress, watch.ask, watch.take);
  const el = frame(
    ctx,
    'vehicle',
    t.title,
    [
      rows(t.working, t.workingWhy, ['working_lengthwise_deg', 'working_crosswise_deg']),
      lean,
      rows(t.heading, t.headingWhy, ['heading_deg']),
      state,
    ],
    [button(t.save, 'save-vehicle', save)],
  );
  el.addEventListener('input', () => say(state, t.unsaved));
  ctx.engine.selectFace('back', ctx.levelSurface);
  return watch.follow(el, () => {
    const reason = watch.tick();
    el.dataset.reason = reason ?? '';
    slopes.show(reason === null);
  });
}
