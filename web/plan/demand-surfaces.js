// The surfaces of the space: a card for each with what it loses, its numbers a tap deeper.

import { button, h, say } from '../dom.js';
import { words } from '../words/demand.js';
import { catalogue } from './model.js';
import { unitLabel, withU } from './units.js';

/** @typedef {import('./sheet.js').SheetForm} SheetForm */
/** @typedef {import('./fields.js').SheetField} SheetField */
/** @typedef {import('./model.js').Result} Result */

/** Which way the heat goes, by what is added; with a U value opened instead of layers. */
const ADD = /** @type {const} */ ([
  ['wall', '0'],
  ['roof', '1'],
  ['floor', '2'],
  ['whole', '0'],
]);

/** @param {SheetField[]} fields */
const halvesOf = (fields) => fields.map((f) => f.halfRow()).filter((el) => el !== null);

/** A list of materials that fills a conductivity. @param {SheetField} field @param {SheetForm} form */
function materials(field, form) {
  const id = `${field.id}-list`;
  const { materials } = catalogue;
  const select = h(
    'select',
    {
      id,
      'data-list': field.entry.name,
      change: (/** @type {any} */ e) => {
        const { value } = e.target;
        if (!value) return;
        field.row.typed[field.entry.name] = value;
        field.input.value = value;
        field.onChange(true);
        form.refresh();
      },
    },
    h('option', { value: '' }, '–'),
    ...materials.map(([name, k]) => h('option', { value: k }, `${words.materials[name]}: ${k}`)),
  );
  return h(
    'div',
    { class: 'field' },
    h('label', { for: id }, h('small', {}, words.listed)),
    select,
  );
}

/** The fields of one surface. @param {SheetForm} form @param {SheetField[]} fields @param {boolean} whole */
function body(form, fields, whole) {
  const of = (/** @type {string} */ name) =>
    /** @type {SheetField} */ (fields.find((f) => f.entry.name === name));
  const isTold = (/** @type {string[]} */ names) => names.some((name) => of(name).input.value);
  /** @param {string} title @param {string} why @param {string[]} names @param {HTMLElement[]} els */
  const deeper = (title, why, names, els, open = false) =>
    h(
      'details',
      { open: open || isTold(names) },
      h('summary', {}, title),
      why && h('p', { class: 'source' }, why),
      ...els,
    );
  const layer = (/** @type {number} */ n) => {
    const k = of(`conductivity_${n}_w_per_m_k`);
    return [of(`thickness_${n}_mm`).el, k.el, materials(k, form)];
  };
  const els = (/** @type {string[]} */ names) => names.map((name) => of(name).el);
  const ribs = ['bridged_share', 'bridged_u_w_per_m2_k'];
  const more = ['thickness_2_mm', 'thickness_3_mm', 'conductivity_2_w_per_m_k'];
  return [
    ...els(['area_m2', 'flow']),
    ...(whole ? [] : layer(1)),
    whole ? null : deeper(words.layers, words.listWhy, more, [...layer(2), ...layer(3)]),
    deeper(words.whole, words.wholeWhy, ['u_w_per_m2_k'], els(['u_w_per_m2_k']), whole),
    whole ? deeper(words.layers, words.listWhy, [], [1, 2, 3].flatMap(layer)) : null,
    deeper(words.ribs, words.ribsWhy, ribs, els(ribs), !whole),
    deeper(words.behind, words.behindWhy, ['other_celsius'], els(['other_celsius'])),
  ];
}

export class Surfaces {
  /** What each card tells. @type {HTMLElement[]} */ #told = [];
  /** Rows whose numbers are shown. @type {WeakSet<object>} */ #open = new WeakSet();
  /** Rows with a U value in place of layers. @type {WeakSet<object>} */ #whole = new WeakSet();

  /** @param {SheetForm} form */
  constructor(form) {
    this.form = form;
    form.rowBody = (fields, i) => this.#card(fields, i);
    const show = form.showRows.bind(form);
    form.showRows = () => {
      show();
      this.#placeHalves();
    };
    this.el = h(
      'section',
      {},
      h('h2', {}, words.surfaces),
      h('p', { class: 'source' }, words.surfacesWhy),
      form.rowsEl,
      ...ADD.map(([what, flow]) =>
        button(words.add[what], `add-${what}`, () => this.#add(what, flow), 'row'),
      ),
    );
  }

  /** @param {string} what @param {string} flow */
  #add(what, flow) {
    const { form } = this;
    const row = { typed: { flow }, half: {} };
    this.#open = new WeakSet([row]);
    if (what === 'whole') this.#whole.add(row);
    form.kept.record.rows.push(row);
    form.kept.changed(true);
    form.showRows();
    form.refresh();
    form.rowsEl.lastElementChild?.scrollIntoView({ block: 'start' });
  }

  /** How well a surface's numbers are known stands with the surface. */
  #placeHalves() {
    const { fields, rowFields, rowsEl, halves } = this.form;
    halves.replaceChildren(...halvesOf(fields));
    for (const [i, own] of rowFields.entries())
      rowsEl.querySelector(`[data-row="${i}"] .own-halves`)?.replaceChildren(...halvesOf(own));
  }

  /** @param {SheetField[]} fields @param {number} i */
  #card(fields, i) {
    const row = this.form.kept.record.rows[i];
    if (row.typed.u_w_per_m2_k) this.#whole.add(row);
    // The list of cards is made anew from its first one.
    this.#told.length = i;
    const told = h('p', { class: 'summary' });
    this.#told.push(told);
    const details = h(
      'details',
      { class: 'surface', open: this.#open.has(row) },
      h('summary', {}, words.edit),
      ...body(this.form, fields, this.#whole.has(row)),
      h(
        'details',
        {},
        h('summary', {}, this.form.ctx.plan.words.halves),
        h('div', { class: 'own-halves' }),
      ),
    );
    details.addEventListener('toggle', () => {
      if (!details.isConnected) return;
      if (details.open) this.#open.add(row);
      else this.#open.delete(row);
    });
    return [told, details];
  }

  /** @param {Result[]} results */
  tell(results) {
    const { system } = this.form.ctx.settings;
    // The list of cards keeps those of rows that are gone until it begins anew.
    for (const [i, { typed }] of this.form.kept.record.rows.entries()) {
      const of = (/** @type {string} */ name) =>
        results.find((r) => r.row === i && r.name === name);
      const [through, u, open] = [of('through_w'), of('u_w_per_m2_k'), of('open')];
      const way = this.form.words.choices?.flow[Number(typed.flow)] ?? '';
      const area = typed.area_m2 ? `${typed.area_m2} ${unitLabel('m2', system)} ` : '';
      const says = open?.value ? words.throughLeast : words.through;
      const loses = through && u ? says(withU(through, system), withU(u, system)) : '';
      say(this.#told[i], `${area}${way}. ${loses}`);
    }
    // A complaint must be seen.
    for (const [i, fields] of this.form.rowFields.entries())
      for (const field of fields.filter((f) => !f.message.hidden)) {
        this.form.rowsEl.querySelector(`[data-row="${i}"] .surface`)?.setAttribute('open', '');
        field.el.closest('details')?.setAttribute('open', '');
      }
  }
}
