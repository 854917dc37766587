// The loss, the temperatures and the heater's heat go from sheet to sheet: offered by a tap, and once
// taken they follow, until somebody types another number.

import { button } from '../dom.js';
import { words } from '../words/demand.js';
import { asTyped, fill, resultOf } from './copy.js';
import { keptNumber, workedOf } from './fields.js';
import { sheetEntry } from './model.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('./copy.js').Typed} Typed */

/** What each sheet takes beside the loss: field, and the sheet whose input it is.
 * @type {Record<string, [string, string][]>} */
const TAKES = {
  heater_size: [['altitude_m', 'heat_loss']],
  warm_up: [
    ['inside_celsius', 'heat_loss'],
    ['outside_celsius', 'heat_loss'],
  ],
  night: [],
};

/** What a loss stands for, in core's order: everything, or at least so much. */
const STANDS_FOR = ['loss_w', 'at_least_w'];
const AT_LEAST = STANDS_FOR.indexOf('at_least_w');

/** The loss of the space as typed, and what it stands for. @param {Context} ctx
 * @returns {Record<string, Typed>} */
function keptLoss(ctx) {
  const worked = workedOf(ctx, 'heat_loss', ctx.plan.keptOf('heat_loss').record);
  const all = STANDS_FOR.map((name) => resultOf(worked, name));
  const is = all.findIndex(Boolean);
  const loss = all[is];
  if (!loss) return {};
  return {
    loss_w: asTyped(loss, ctx.settings.system),
    loss_is: { value: String(is), half: '' },
  };
}

/** What a sheet can take, by its fields. @param {Context} ctx @param {string} sheet
 * @param {Record<string, Typed>} loss @returns {Record<string, Typed>} */
function offers(ctx, sheet, loss) {
  const { system } = ctx.settings;
  const { inputs } = sheetEntry(sheet).entry;
  const found = { ...loss };
  for (const [name, from] of TAKES[sheet]) {
    const { x, half } = keptNumber(ctx, from, ctx.plan.keptOf(from).record, name);
    const unit = inputs.find((i) => i.name === name)?.unit ?? '';
    if (!Number.isNaN(x)) found[name] = asTyped({ value: x, u: half, unit }, system);
  }
  const heater = ctx.plan.keptOf('heater_size').record;
  const power =
    sheet === 'warm_up' && resultOf(workedOf(ctx, 'heater_size', heater), 'available_w');
  if (power) found.power_w = asTyped(power, system);
  const own = Object.entries(found).filter(([name]) => inputs.some((i) => i.name === name));
  return Object.fromEntries(own);
}

/** A button that takes all of it; away while there is nothing to take, or nothing new.
 * @param {import('./sheet.js').SheetForm} form */
export function takeButton(form) {
  const { ctx, name: sheet } = form;
  const all = Object.entries(offers(ctx, sheet, keptLoss(ctx)));
  const { typed } = form.kept.record;
  const take = () => {
    for (const [name, offer] of all) fill(form.field(name), offer);
    form.kept.changed(true);
    form.refresh();
  };
  const el = button(words.take, 'take', take, 'row');
  const tell = () => {
    el.hidden = all.every(([name, { value }]) => typed[name] === value);
  };
  return { el, tell };
}

/** How a sheet's loss stands to the one of the space: the same while that is a lower end, or another
 * one. @param {Context} ctx @param {string} sheet @param {Record<string, Typed>} [loss] */
export function lossIn(ctx, sheet, loss = keptLoss(ctx)) {
  const { typed } = ctx.plan.keptOf(sheet).record;
  const same = typed.loss_w === loss.loss_w?.value;
  return {
    isLeast: same && loss.loss_is?.value === String(AT_LEAST),
    isAnother: Boolean(loss.loss_w && typed.loss_w && !same),
  };
}

/** After a change: what was taken follows, field by field, and stays what somebody typed over. What
 * a loss stands for goes with the loss alone.
 * @param {Context} ctx */
export function follower(ctx) {
  const all = (/** @type {Record<string, Typed>} */ loss) =>
    Object.keys(TAKES).map((sheet) => ({ sheet, offered: offers(ctx, sheet, loss) }));
  const last = all(keptLoss(ctx));
  return () => {
    const now = all(keptLoss(ctx));
    for (const [i, { sheet, offered }] of now.entries()) {
      const kept = ctx.plan.keptOf(sheet);
      const { typed, half } = kept.record;
      const before = last[i].offered;
      const taken = (/** @type {string} */ name) =>
        Boolean(before[name]) && typed[name] === before[name].value;
      const follows = Object.keys(offered).filter(
        (name) => taken(name) && (name !== 'loss_is' || taken('loss_w')),
      );
      for (const name of follows) {
        if (typed[name] === offered[name].value) continue;
        typed[name] = offered[name].value;
        half[name] = offered[name].half;
        kept.changed();
      }
      // What is refused for now is taken up again from where it was.
      last[i].offered = { ...before, ...offered };
    }
  };
}
