// A sheet on the page: its fields and rows, worked out by core at every change, its answers, its
// working. A section's screen makes one for each of its sheets:
//
//   const form = new SheetForm(ctx, 'clearances', words.place);   words: see words/place.js
//   form.group(words.sides, ['outlet_end_mm', …])                 a card of fields
//   form.rowList()                                                rows with "add" and "remove"
//   form.answers.el, form.working.el, form.state                  what came of it
//   form.onWorked = (worked) => …                                 for a drawing; null while refused
//   form.start()                                                  once everything is in place
//
// What is typed is kept in ctx.plan.kept and saved by itself. A field's complaint stands at it.

import { button, h, say } from '../dom.js';
import { Answers, savedLine } from './answers.js';
import { convertRow, isSpread, SheetField } from './fields.js';
import { copiedFrom, sheetEntry, work } from './model.js';
import { toShown, limitWithUnit } from './units.js';
import { Working } from './working.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('./model.js').FieldEntry} FieldEntry */
/** @typedef {import('./model.js').Worked} Worked */
/** @typedef {import('./record.js').Row} Row */

/**
 * Words of a section, by core's names.
 * @typedef {object} SheetWords
 * @property {Record<string, string | [string, string]>} fields label, or label and hint
 * @property {Record<string, string[]>} [choices] labels in core's order
 * @property {Record<string, string>} [problems] by field and problem, where core's refusal needs
 *   words of its own: `fuel_celsius.beyond_formula`
 * @property {Record<string, string>} results
 * @property {string} [named] before the titles of its checks in lists, where others are called alike
 * @property {Record<string, string>} [how] formula and source of a result, for the working
 * @property {Record<string, (by: string, more: boolean) => string>} [change] by limit: what to do
 * @property {string[]} [tabled] numbers and results of rows that a table of the screen shows in
 *   place of the working
 * @property {string[]} [silent] results that nobody misses where they have no number
 * @property {Record<string, string>} [advice] by result and verdict, where no change of a number is
 *   the way: `at_least_mm.beyond`
 * @property {(n: number, typed?: Record<string, string>) => string} [row] title of a row
 * @property {string} [addRow]
 */

/** Opens what is folded over a field: a complaint there must be seen. @param {Element} field */
function unfold(field) {
  const folded = field.closest('details:not([open])');
  if (!folded) return;
  folded.setAttribute('open', '');
  unfold(folded);
}

export class SheetForm {
  /** @type {(worked: Worked | null) => void} */ onWorked = () => {};
  /** @type {SheetField[][]} */ rowFields = [];
  /** The numbers last worked out. */ x = /** @type {number[]} */ ([]);
  half = /** @type {number[]} */ ([]);

  /** @param {Context} ctx @param {string} name @param {SheetWords} words */
  constructor(ctx, name, words) {
    this.ctx = ctx;
    this.name = name;
    this.words = words;
    this.entry = sheetEntry(name).entry;
    /** @type {import('./record.js').Kept} */ this.kept = ctx.plan.keptOf(name);
    this.#useSystem();
    const { record } = this.kept;
    this.fields = this.entry.inputs.map((entry) => this.#field(entry, record));
    this.rowsEl = h('ol', { class: 'sheet-rows' });
    this.halves = h('div', {});
    this.state = h('p', { class: 'summary', role: 'status', 'data-sheet-state': name });
    this.answers = new Answers(this);
    this.working = new Working(this);
    this.saved = this.kept.mark();
  }

  #useSystem() {
    const { record } = this.kept;
    const { system } = this.ctx.settings;
    if (record.system === system) return;
    convertRow(record, this.entry.inputs, record.system, system);
    for (const row of record.rows) convertRow(row, this.entry.row, record.system, system);
    record.system = system;
  }

  /** @param {FieldEntry} entry @param {Row} row */
  #field(entry, row) {
    const told = this.words.fields[entry.name] ?? entry.name;
    const [label, hint] = Array.isArray(told) ? told : [told, undefined];
    const choices = this.words.choices?.[entry.name]?.map(
      (word, i) => /** @type {[string, string]} */ ([String(i), word]),
    );
    const copied = copiedFrom(this.name, entry.name);
    return new SheetField(this.ctx, entry, row, { label, hint, choices, copied }, (now) => {
      this.kept.changed(now);
      // Leaving a field changes nothing more; what was tapped must still be there for the tap.
      if (!now || choices) this.refresh();
    });
  }

  /** @param {string} name */
  field(name) {
    return /** @type {SheetField} */ (this.fields.find((f) => f.entry.name === name));
  }

  /** A card of fields. @param {string} legend @param {string[]} names @param {string} [why] */
  group(legend, names, why) {
    const lines = names.map((name) => this.field(name).el);
    return h(
      'fieldset',
      { class: 'card' },
      h('legend', {}, legend),
      why && h('p', { class: 'source' }, why),
      ...lines,
    );
  }

  /** How well each number is known, a tap deeper. */
  halfList() {
    const t = this.ctx.plan.words;
    return h(
      'details',
      {},
      h('summary', {}, t.halves),
      h('p', { class: 'source' }, t.halvesWhy),
      this.halves,
    );
  }

  /** What stands below the fields of a sheet: how well they are known, what came of them. */
  outcome() {
    return [this.halfList(), this.state, this.answers.el, this.working.el, savedLine(this)];
  }

  /** The rows, with a button for one more. */
  rowList() {
    const add = button(this.words.addRow ?? '', `add-${this.name}`, () => this.addRow(), 'row');
    return h('div', {}, this.rowsEl, add);
  }

  /** @param {Record<string, string>} [typed] numbers as shown, by field */
  addRow(typed = {}) {
    this.kept.record.rows.push({ typed, half: {} });
    this.#changedRows();
    this.rowsEl.lastElementChild
      ?.querySelector('input, select')
      ?.scrollIntoView({ block: 'center' });
  }

  /** @param {number} i */
  removeRow(i) {
    const { rows } = this.kept.record;
    const [gone] = rows.splice(i, 1);
    this.#changedRows();
    // A slip of a glove is undone where it happened.
    const undo = button(this.ctx.plan.words.undo, `undo-${this.name}`, () => {
      rows.splice(i, 0, gone);
      this.#changedRows();
    });
    const after = this.rowsEl.querySelector(`[data-row="${i}"]`);
    this.rowsEl.insertBefore(h('li', { class: 'undo' }, undo), after);
  }

  /** @param {number} i @param {number} by */
  moveRow(i, by) {
    const { rows } = this.kept.record;
    if (!rows[i + by]) return;
    rows.splice(i + by, 0, ...rows.splice(i, 1));
    this.#changedRows();
  }

  #changedRows() {
    this.kept.changed(true);
    this.showRows();
    this.refresh();
  }

  /** A row's own elements: a section may lay them out its own way.
   * @type {(fields: SheetField[], i: number) => HTMLElement[]} */
  rowBody = (fields) => fields.filter((f) => !isSpread(f.entry)).map((f) => f.el);

  showRows() {
    const { rows } = this.kept.record;
    const t = this.ctx.plan.words;
    this.rowFields = rows.map((row) => this.entry.row.map((entry) => this.#field(entry, row)));
    this.rowsEl.replaceChildren(
      ...this.rowFields.map((fields, i) =>
        h(
          'li',
          { class: 'card', 'data-row': i },
          h('h2', {}, this.words.row?.(i + 1) ?? String(i + 1)),
          ...this.rowBody(fields, i),
          button(t.remove, 'remove-row', () => this.removeRow(i), 'lesser'),
        ),
      ),
    );
    this.#showHalves();
  }

  #showHalves() {
    const all = [this.fields, ...this.rowFields].flat();
    this.halves.replaceChildren(...all.map((f) => f.halfRow()).filter((el) => el !== null));
  }

  /** Every field in the order of core's numbers. */
  get all() {
    return [...this.fields, ...this.rowFields.flat()];
  }

  start() {
    this.showRows();
    this.refresh();
  }

  refresh() {
    for (const field of this.all) field.complain('');
    const read = this.all.map((f) => f.read());
    if (read.includes(undefined)) {
      for (const [i, field] of this.all.entries()) if (read[i] === undefined) unfold(field.el);
      const marked = this.all[read.indexOf(undefined)];
      return this.#none(this.ctx.plan.words.seeField(marked.words.label));
    }
    const numbers = /** @type {{ x: number, half: number }[]} */ (read);
    this.x = numbers.map((n) => n.x);
    this.half = numbers.map((n) => n.half);
    const worked = work(this.ctx, this.name, this.x, this.half);
    if (!worked) return this.#none(this.ctx.text.live.trapped);
    if (worked.refused) return this.#none(this.#refusal(worked.refused));
    say(this.state, '');
    this.answers.show(worked.answers);
    this.working.show(worked.results);
    this.onWorked(worked);
    this.answers.describe();
  }

  /** @param {string} words */
  #none(words) {
    say(this.state, words);
    this.answers.show(null);
    this.working.show(null);
    this.onWorked(null);
    this.answers.describe();
  }

  /** @param {import('./model.js').Refused} refused what core refuses, in words; at the field unless
   * it is only missing */
  #refusal({ place, problem, slip }) {
    const t = this.ctx.plan.words;
    const fields = place.row === null ? this.fields : this.rowFields[place.row];
    const field = fields?.find((f) => f.entry.name === place.entry?.name);
    if (!field) return t.problems.too_many();
    if (problem === 'missing') {
      const row = place.row === null ? '' : `${this.words.row?.(place.row + 1)}: `;
      return t.missing(`${row}${field.words.label}`);
    }
    const { system } = this.ctx.settings;
    const [low, high] = [place.entry.low, place.entry.high].map((v) =>
      limitWithUnit(v, place.entry.unit, system),
    );
    // In inches and feet the likely slip is another one; the range says enough. Watts stay watts.
    const asked = system === 'metric' || slip === 'kilowatts';
    const told = problem === 'other_unit' && !asked ? 'out_of_range' : problem;
    const own = this.words.problems?.[`${place.entry.name}.${problem}`];
    field.complain(own ?? this.#problem(told, low, high, slip));
    unfold(field.el);
    return t.seeField(field.words.label);
  }

  /** @param {string} problem @param {string} low @param {string} high @param {string} slip */
  #problem(problem, low, high, slip) {
    const t = this.ctx.plan.words;
    return (t.problems[problem] ?? t.problems.contradiction)(low, high, t.slips[slip]);
  }

  /** A value as a field would show it. @param {number} value @param {string} unit */
  shown(value, unit) {
    return toShown(value, unit, this.ctx.settings.system);
  }
}
