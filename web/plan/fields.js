// The fields of a sheet or of one of its rows: text as typed, turned into core's numbers; a place
// for a complaint at each; half-widths a tap deeper.

import { h } from '../dom.js';
import { asTyped } from '../locale.js';
import { parseNumber } from '../units.js';
import { copiedFrom, limitOf, sheetEntry, work } from './model.js';
import { digits, fromShown, toShown, unitLabel, widthFromShown, widthToShown } from './units.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('./model.js').FieldEntry} FieldEntry */
/** @typedef {import('./record.js').Row} Row */

let made = 0;

/** A number in the other system, as it would be typed; text that is no number stays.
 * @param {string} typed @param {(v: number) => number} convert */
function converted(typed, convert) {
  try {
    const value = parseNumber(typed);
    return value === null ? '' : asTyped(Number(convert(value).toPrecision(6)));
  } catch {
    return typed;
  }
}

/** The record's numbers in another system. @param {Row} row @param {FieldEntry[]} entries
 * @param {'metric' | 'us'} from @param {'metric' | 'us'} to */
export function convertRow(row, entries, from, to) {
  for (const { name, unit } of entries) {
    const value = (/** @type {number} */ v) => toShown(fromShown(v, unit, from), unit, to);
    const width = (/** @type {number} */ v) =>
      widthToShown(widthFromShown(v, unit, from), unit, to);
    if (row.typed[name]) row.typed[name] = converted(row.typed[name], value);
    if (row.half[name]) row.half[name] = converted(row.half[name], width);
  }
}

/** Whether a number is a place within a spread: its middle, never asked. @param {FieldEntry} entry */
export const isSpread = ({ name }) => name.endsWith('spread');

/** Core's number and half-width of a field as typed, or of the limit that it is copied from; NaN
 * where nothing is.
 * @param {Context} ctx @param {Row} row @param {FieldEntry} entry @param {'metric' | 'us'} system
 * @param {string | undefined} copied throws where it is no number */
function numbersOf(ctx, row, entry, system, copied) {
  const { name, unit } = entry;
  if (isSpread(entry)) return { x: 0, half: NaN };
  if (copied) return { x: limitOf(ctx, copied)?.low ?? NaN, half: NaN };
  const typed = parseNumber(row.typed[name] ?? '');
  const half = parseNumber(row.half[name] ?? '');
  return {
    x: typed === null ? NaN : fromShown(typed, unit, system),
    half: half === null ? NaN : widthFromShown(half, unit, system),
  };
}

/** A sheet worked out as it is kept, without showing it; nothing where it is refused.
 * @param {Context} ctx @param {string} name @param {import('./record.js').SheetRecord} record */
export function workedOf(ctx, name, record) {
  const { entry } = sheetEntry(name);
  try {
    /** @param {Row} row @param {FieldEntry[]} entries */
    const numbers = (row, entries) =>
      entries.map((e) => numbersOf(ctx, row, e, record.system, copiedFrom(name, e.name)));
    const rows = record.rows.flatMap((row) => numbers(row, entry.row));
    const all = [...numbers(record, entry.inputs), ...rows];
    const x = all.map((n) => n.x);
    const half = all.map((n) => n.half);
    const worked = work(ctx, name, x, half);
    return worked && !worked.refused ? { ...worked, x, half } : null;
  } catch {
    return null;
  }
}

/** The answers of a sheet as it is kept; none where it is refused.
 * @param {Context} ctx @param {string} name @param {import('./record.js').SheetRecord} record */
export const answersOf = (ctx, name, record) => workedOf(ctx, name, record)?.answers ?? [];

/** A number of a sheet as it is kept, and its half-width where one is told; NaN where none is.
 * @param {Context} ctx @param {string} name @param {import('./record.js').SheetRecord} record
 * @param {string} field */
export function keptNumber(ctx, name, record, field) {
  const entry = sheetEntry(name).entry.inputs.find((e) => e.name === field);
  try {
    if (entry) return numbersOf(ctx, record, entry, record.system, copiedFrom(name, field));
  } catch {
    // Text that is no number is none.
  }
  return { x: NaN, half: NaN };
}

/** One field of a sheet. */
export class SheetField {
  /**
   * @param {Context} ctx @param {FieldEntry} entry @param {Row} row where it is kept
   * @param {{ label: string, hint?: string, choices?: [string, string][], copied?: string }} words
   * @param {(now: boolean) => void} onChange
   */
  constructor(ctx, entry, row, words, onChange) {
    this.ctx = ctx;
    this.entry = entry;
    this.row = row;
    this.words = words;
    this.onChange = onChange;
    made += 1;
    this.id = `n${made}-${entry.name}`;
    this.message = h('p', { class: 'trouble', id: `${this.id}-m`, hidden: true });
    this.input = words.choices ? this.#select(words.choices) : this.#number('typed', this.id);
    this.half =
      entry.half_width || entry.half_share ? this.#number('half', `${this.id}-half`) : null;
    const unit = unitLabel(entry.unit, ctx.settings.system);
    const label = [
      h('b', {}, words.label),
      unit && ` ${unit}`,
      words.hint && h('small', {}, words.hint),
    ];
    this.el = h(
      'div',
      { class: words.choices ? 'field wide' : 'field', 'data-field': entry.name },
      h('label', { for: this.id }, ...label),
      this.input,
      this.message,
    );
  }

  /** @param {'typed' | 'half'} what @param {string} id */
  #number(what, id) {
    const { name } = this.entry;
    return h('input', {
      id,
      type: 'text',
      inputmode: this.entry.low < 0 ? 'text' : 'decimal',
      autocomplete: 'off',
      value: this.row[what][name] ?? '',
      'data-name': what === 'typed' ? name : `${name}-half`,
      input: (/** @type {any} */ e) => {
        this.row[what][name] = e.target.value;
        this.onChange(false);
      },
      change: () => this.onChange(true),
    });
  }

  /** @param {[string, string][]} choices places in core's list and their words */
  #select(choices) {
    const { name } = this.entry;
    const chosen = this.row.typed[name] ?? '';
    return h(
      'select',
      {
        id: this.id,
        'data-name': name,
        change: (/** @type {any} */ e) => {
          this.row.typed[name] = e.target.value;
          this.onChange(true);
        },
      },
      h('option', { value: '', selected: chosen === '' }, '–'),
      ...choices.map(([value, label]) => h('option', { value, selected: value === chosen }, label)),
    );
  }

  /** The half-width's own field, for the list a tap deeper. */
  halfRow() {
    if (!this.half || isSpread(this.entry)) return null;
    const unit = unitLabel(this.entry.unit, this.ctx.settings.system);
    return h(
      'div',
      { class: 'field', 'data-half': this.entry.name },
      h('label', { for: this.half.id }, `± ${this.words.label} ${unit}`),
      this.half,
    );
  }

  #numbers() {
    const { ctx, row, entry, words } = this;
    return numbersOf(ctx, row, entry, ctx.settings.system, words.copied);
  }

  /** Core's number and half-width; NaN where nothing is typed. A complaint stands at the field, and
   * `undefined` comes back, where the text is no number. */
  read() {
    try {
      const numbers = this.#numbers();
      if (this.half) this.half.placeholder = this.#assumed(numbers.x);
      return numbers;
    } catch {
      this.complain(this.ctx.plan.words.notANumber);
      return undefined;
    }
  }

  /** @param {number} x */
  #assumed(x) {
    const { half_width, half_share, unit } = this.entry;
    const width = half_width + (Number.isNaN(x) ? 0 : half_share * Math.abs(x));
    return digits(widthToShown(width, unit, this.ctx.settings.system), 2);
  }

  /** @param {string} words */
  complain(words) {
    this.message.textContent = words;
    this.message.hidden = words === '';
    for (const input of [this.input, this.half]) {
      input?.setAttribute('aria-invalid', String(words !== ''));
      input?.setAttribute('aria-describedby', words ? this.message.id : '');
    }
  }
}
