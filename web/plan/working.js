// The working of a sheet, line by line: what it was given, what core made of it, by which formula.

import { h } from '../dom.js';
import { isSpread } from './fields.js';
import { valueAndU, withUnit, widthWithUnit } from './units.js';

/** @typedef {import('./sheet.js').SheetForm} SheetForm */

export class Working {
  /** @param {SheetForm} form */
  constructor(form) {
    this.form = form;
    this.body = h('tbody', {});
    this.el = h(
      'details',
      { class: 'working', 'data-sheet': form.name },
      h('summary', {}, form.ctx.plan.words.working),
      h('table', {}, this.body),
    );
  }

  /** @param {import('./model.js').Result[] | null} results */
  show(results) {
    const told = (results ?? []).filter(
      (r) => Number.isFinite(r.value) && r.unit !== 'choice' && !this.#isTabled(r),
    );
    const given = results ? this.#given() : [];
    this.el.hidden = told.length === 0;
    this.body.replaceChildren(...given, ...told.map((r) => this.#result(r)));
  }

  /** @param {{ name: string }} number */
  #isTabled({ name }) {
    return this.form.words.tabled?.includes(name) ?? false;
  }

  #given() {
    const { ctx, x, half } = this.form;
    const { system } = ctx.settings;
    return this.form.all.flatMap((field, i) => {
      if (Number.isNaN(x[i]) || isSpread(field.entry) || this.#isTabled(field.entry)) return [];
      const { unit, name, half_width, half_share } = field.entry;
      const assumed = half_width + half_share * Math.abs(x[i]);
      const width = Number.isNaN(half[i]) ? assumed : half[i];
      const value = field.words.choices
        ? field.words.choices[x[i]]?.[1]
        : `${withUnit(x[i], unit, system)}${width ? ` ${together(`(± ${widthWithUnit(width, unit, system)})`)}` : ''}`;
      return [line(`in-${name}`, field.words.label, value, '')];
    });
  }

  /** @param {import('./model.js').Result} r */
  #result(r) {
    const { ctx, words } = this.form;
    const shown = valueAndU(r.value, r.u, r.unit, ctx.settings.system);
    const row = r.row === null ? '' : `${words.row?.(r.row + 1) ?? r.row + 1}: `;
    const name = `${row}${words.results[r.name] ?? r.name}`;
    return line(r.name, name, `${shown.value} ${shown.u}`, words.how?.[r.name] ?? '', r.row);
  }
}

/** Not to be broken over two lines. @param {string} words */
const together = (words) => words.replaceAll(' ', '\u00a0');

/** @param {string} key @param {string} name @param {string} value @param {string} how
 * @param {number | null} [row] */
const line = (key, name, value, how, row = null) =>
  h(
    'tr',
    { 'data-name': key, 'data-row': row },
    h('th', { scope: 'row' }, name, how && h('small', {}, how)),
    h('td', {}, value),
  );
