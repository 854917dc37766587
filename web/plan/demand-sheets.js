// One screen for each sheet that takes the loss: what it asks, what came of it.

import { h } from '../dom.js';
import { frame } from '../screens/frame.js';
import { words } from '../words/demand.js';
import { sheets } from '../words/demand-sheets.js';
import { follower, lossIn, takeButton } from './demand-take.js';
import { SheetForm } from './sheet.js';
import { withU } from './units.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('./model.js').Worked} Worked */

const { groups } = words;

/** Cards of fields by sheet: legend and fields. @type {Record<string, [string, string[]][]>} */
const CARDS = {
  heater_size: [
    [groups.loss, ['loss_w', 'loss_is']],
    [groups.heater, ['full_w', 'lowest_w']],
    [groups.height, ['altitude_m', 'altitude_share']],
  ],
  warm_up: [
    [groups.heat, ['power_w', 'loss_w']],
    [groups.cold, ['inside_celsius', 'outside_celsius', 'start_celsius']],
    [groups.inside, ['heat_kj_per_k']],
  ],
  night: [
    [groups.night, ['hours_h', 'loss_w']],
    [groups.fuel, ['fuel', 'efficiency', 'energy_kwh_per_l']],
    [groups.current, ['electrical_w', 'battery_v']],
    [groups.idle, ['idle_l_per_h']],
  ],
};

/** Results without a limit that stand above the working. @type {Record<string, string[]>} */
const TOLD = {
  heater_size: ['available_w', 'lowest_ratio'],
  warm_up: ['warm_min', 'beyond_wanted_k'],
  night: ['night_l', 'charge_ah', 'idle_l', 'saved_l'],
};

/** What came of it in a line each; a time that has no bound is none.
 * @param {SheetForm} form @param {Worked | null} worked */
function lines(form, worked) {
  const results = worked && !worked.refused ? worked.results : [];
  const { system } = form.ctx.settings;
  const told = TOLD[form.name].flatMap((name) => {
    const r = results.find((result) => result.name === name);
    if (!r) return [];
    if (name === 'warm_min' && Number.isNaN(r.value)) return words.never;
    if (name === 'warm_min' && r.u === Infinity) return words.nearly;
    return Number.isNaN(r.value) ? [] : `${form.words.results[name]}: ${withU(r, system)}`;
  });
  return told.length && lossIn(form.ctx, form.name).isLeast
    ? [...told, words.least[form.name]]
    : told;
}

/** @param {string} name */
export const demandSheet = (name) => (/** @type {Context} */ ctx) => {
  const form = new SheetForm(ctx, name, sheets[name]);
  const take = takeButton(form);
  const follow = follower(ctx);
  const told = h('div', { class: 'sums', role: 'status' });
  form.onWorked = (worked) => {
    take.tell();
    follow();
    const all = lines(form, worked).join('\n');
    if (told.dataset.said === all) return;
    told.dataset.said = all;
    told.replaceChildren(...all.split('\n').map((line) => h('p', { class: 'summary' }, line)));
  };
  const el = frame(
    ctx,
    `demand_${name}`,
    words.sheets[name][0],
    [
      h('p', { class: 'caution' }, words.cautions[0]),
      h('p', {}, /** @type {Record<string, string>} */ (words.why)[name]),
      take.el,
      h('p', { class: 'source' }, words.taken),
      ...CARDS[name].map(([legend, names]) => form.group(legend, names)),
      told,
      ...form.outcome(),
    ],
    [],
  );
  form.start();
  return el;
};
