// Supply: the ways to bank, cable, fuse and hours, each a small screen with its drawing and with what
// is seen by eye.

import { h, say } from '../dom.js';
import { frame } from '../screens/frame.js';
import { words } from '../words/supply.js';
import { sheets } from '../words/supply-sheets.js';
import { push } from './shared-numbers.js';
import { SheetForm } from './sheet.js';
import { bankPicture, circuitPicture } from './supply-picture.js';
import { listSizes, sizesTable } from './supply-sizes.js';
import { tick } from './ticks.js';
import { valueAndU, withUnit } from './units.js';
import { way } from './way.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('./model.js').Worked} Worked */

/** The sheets, each with a screen of its own, in the order of the work. */
export const SUPPLY = Object.keys(words.sheets);

const { groups } = words;

/** @param {string} title @param {...Node} body */
const deeper = (title, ...body) => h('details', {}, h('summary', {}, title), ...body);

/** What a screen shows besides its sheet, anew at every change.
 * @typedef {{ el: HTMLElement, show: (worked: Worked | null) => void }} Part */

/** A line of a result. @param {string} name @param {(result: import('./model.js').Result | undefined) => string} sentence
 * @returns {Part} */
function told(name, sentence) {
  const el = h('p', { class: 'lead', role: 'status', 'data-told': name });
  /** @param {Worked | null} worked */
  const show = (worked) => {
    const results = worked && !worked.refused ? worked.results : [];
    const result = results.find((r) => r.name === name && !Number.isNaN(r.value));
    say(el, sentence(result));
  };
  return { el, show };
}

/** What one law lets the size carry, in the boats that it is for. @param {SheetForm} form */
const boatLaw = (form) =>
  told('boat_law_a', (result) => {
    if (result) return words.boatLaw(withUnit(result.value, result.unit, form.ctx.settings.system));
    return form.field('conductor').input.value === '' ? '' : words.noBoatLaw;
  });

/** How long it lasts, wanted or not. @param {SheetForm} form @param {'lasts_h' | 'lasts_at_most_h'} name */
const lasts = (form, name) =>
  told(name, (result) => {
    if (!result) return '';
    const { value, u } = valueAndU(result.value, result.u, result.unit, form.ctx.settings.system);
    return words[name](value, u);
  });

/** @type {Record<string, (form: SheetForm, worked: Worked | null) => Node>} */
const PICTURES = { bank: bankPicture, cable: circuitPicture };

/** @param {SheetForm} form @returns {Part} */
function picture(form) {
  const el = h('div', {});
  return { el, show: (worked) => el.replaceChildren(PICTURES[form.name](form, worked)) };
}

/** Cards of fields with what stands among them, by sheet; then what stands below the answers.
 * @type {Record<string, (form: SheetForm) => { above: (Node | Part)[], below?: Part[] }>} */
const BODIES = {
  bank: (form) => ({
    above: [picture(form), form.group(groups.bank, ['nominal', 'bank_v', 'take_off_v'])],
  }),
  cable: (form) => ({
    above: [
      picture(form),
      form.group(groups.way, ['out_m', 'back_by', 'back_m', 'body_mohm']),
      form.group(groups.conductor, ['conductor', 'conductor_celsius', 'joints_mohm']),
      deeper(words.paper, form.group('', ['paper_ohm_per_km'], words.paperWhy)),
      form.group(groups.start, ['start_supply_v', 'start_a']),
      form.group(groups.running, ['running_supply_v', 'running_a']),
    ],
    below: [sizesTable(form)],
  }),
  fuse: (form) => ({
    above: [
      form.group(groups.fuse, ['fuse_a', 'fuse_to_battery_mm'], words.fuseLaw),
      form.group(groups.carries, ['ampacity_a', 'engine_space', 'bundle', 'conductor']),
      boatLaw(form),
    ],
  }),
  battery: (form) => ({
    above: [
      form.group(groups.battery, ['capacity_ah', 'rated_h', 'usable', 'cold']),
      form.group(groups.draw, ['average_a', 'standby_a']),
      form.group(groups.starts, ['starts', 'start_a', 'start_min', 'after_a', 'after_min']),
      form.group(groups.wanted, ['wanted_h']),
      deeper(words.peukert, form.group('', ['peukert'], words.peukertWhy)),
      lasts(form, 'lasts_h'),
      lasts(form, 'lasts_at_most_h'),
    ],
  }),
};

/** The body's own field stands there where it is the way back, or where something is in it.
 * @param {SheetForm} form */
function showBody(form) {
  const { el, input } = form.field('body_mohm');
  el.hidden = form.field('back_by').input.value !== '1' && input.value === '';
}

/** @param {string} name */
export const supplySheet = (name) => (/** @type {Context} */ ctx) => {
  const form = new SheetForm(ctx, name, sheets[name]);
  if (name === 'cable') listSizes(form);
  const { above, below = [] } = BODIES[name](form);
  const parts = [...above, ...below].filter((part) => 'show' in part);
  form.onWorked = (worked) => {
    push(ctx, form);
    if (name === 'cable') showBody(form);
    for (const part of parts) part.show(worked);
  };
  const [title] = words.sheets[name];
  const el = frame(
    ctx,
    `supply_${name}`,
    title,
    [
      ...words.cautionsOf[name].map((i) => h('p', { class: 'caution' }, words.cautions[i])),
      h('p', {}, words.why[name]),
      ...above.map((part) => ('show' in part ? part.el : part)),
      ...form.outcome(),
      ...below.map((part) => part.el),
      h('h2', {}, words.ticks),
      ...Object.entries(words.tick[name]).map(([id, statement]) =>
        tick(ctx, form.kept, id, statement),
      ),
    ],
    [],
  );
  form.start();
  return el;
};

/** @param {Context} ctx */
export function supply(ctx) {
  const ways = SUPPLY.map((name) => way(ctx, 'supply', name, words.sheets[name], `supply_${name}`));
  return frame(
    ctx,
    'supply',
    words.title,
    [
      h('ul', { class: 'cautions' }, ...words.cautions.map((c) => h('li', {}, c))),
      h('ul', { class: 'rows' }, ...ways),
    ],
    [],
  );
}
