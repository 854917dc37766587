// What came of a sheet: each result that has a limit, with its uncertainty, verdict, what to do,
// whose limit; where the uncertainty comes from and photos a tap deeper.

import { h } from '../dom.js';
import { photosOf } from '../photos.js';
import { verdictFrame } from '../screens/frame.js';
import { bounds } from '../words/limits.js';
import { contributions } from './model.js';
import { asRead } from '../own-words.js';
import { worstFirst } from '../sentences.js';
import { aloud } from './spoken.js';
import { valueAndU, widthWithUnit, limitWithUnit } from './units.js';

/** @typedef {import('./model.js').Answer} Answer */
/** @typedef {import('./sheet.js').SheetForm} SheetForm */

let made = 0;

export class Answers {
  /** Details that are open, by check. @type {Set<string>} */ #open = new Set();

  /** @param {SheetForm} form */
  constructor(form) {
    this.form = form;
    this.el = h('div', { class: 'answers' });
    made += 1;
    /** The same in one line, for who hears a picture. */
    this.aloud = h('p', { id: `answers-${made}`, class: 'answers-aloud', hidden: true });
  }

  /** The screen's pictures say what came of the sheets that they show. */
  describe() {
    const screen = this.el.closest('.screen');
    const ids = [...(screen?.querySelectorAll('.answers-aloud') ?? [])].map((el) => el.id);
    for (const picture of screen?.querySelectorAll('svg[role="img"]') ?? [])
      picture.setAttribute('aria-describedby', ids.join(' '));
  }

  /** @param {Answer[] | null} answers nothing while refused: no verdict stands on a wrong number */
  show(answers) {
    const { silent = [] } = this.form.words;
    const own = (answers ?? []).filter((a) => !a.alternative);
    // A "beyond" is not to be looked for below what is well.
    const told = worstFirst(own.filter((a) => !Number.isNaN(a.result.value)));
    const open = own.filter(
      ({ result }) => Number.isNaN(result.value) && !silent.includes(result.name),
    );
    const t = this.form.ctx.plan.words;
    const names = [...new Set(open.map((a) => this.#title(a)))];
    this.aloud.textContent = told.map((a) => this.#line(a)).join('; ');
    this.el.replaceChildren(
      this.aloud,
      ...told.map((a) => this.#card(a)),
      ...(names.length ? [h('p', { class: 'missing' }, t.notMeasured(names.join(', ')))] : []),
    );
  }

  /** @param {Answer} a */
  #title({ result, bound }) {
    const { words } = this.form;
    const name = words.results[result.name] ?? bounds[bound].label;
    if (result.row === null) return name;
    const { typed } = this.form.kept.record.rows[result.row] ?? {};
    return `${words.row?.(result.row + 1, typed) ?? result.row + 1}: ${name}`;
  }

  /** @param {Answer} a */
  #shown({ result, limit }) {
    const { system } = this.form.ctx.settings;
    const ends = [limit?.low ?? NaN, limit?.high ?? NaN];
    return valueAndU(result.value, result.u, result.unit, system, ends);
  }

  /** @param {Answer} a */
  #line(a) {
    const { value, u } = this.#shown(a);
    return aloud(`${this.#title(a)}: ${value} ${u}, ${this.form.ctx.text.verdicts[a.verdict]}`);
  }

  /** @param {Answer} a */
  #card(a) {
    const { ctx } = this.form;
    const { result, limit } = a;
    const basis = limit?.basis ?? '';
    const shown = this.#shown(a);
    const usage = /** @type {Record<string, string>} */ (ctx.text.againstUsage)[basis];
    const note = a.why
      ? /** @type {any} */ (ctx.text.whys)[a.why]
      : a.verdict === 'within'
        ? usage
        : '';
    return h(
      'article',
      { class: 'check', 'data-check': a.bound, 'data-row': result.row, 'data-result': result.name },
      h('h2', {}, this.#title(a)),
      h(
        'p',
        { class: 'number' },
        h('span', { class: 'value' }, shown.value),
        ' ',
        h('span', { class: 'u' }, shown.u),
      ),
      verdictFrame(a.verdict, ctx.text.verdicts[a.verdict], /** @type {any} */ (basis)),
      note && h('span', { class: 'note' }, note),
      h('p', { class: 'does' }, this.#toDo(a)),
      h('p', { class: 'source' }, this.#limitWords(a)),
      this.#more(a),
    );
  }

  /** @param {Answer} a */
  #toDo(a) {
    const { ctx, words } = this.form;
    const t = ctx.plan.words;
    const { system } = ctx.settings;
    const { unit, dominant } = a.result;
    if (a.result.u === Infinity) return t.unbounded;
    if (a.why === 'limit_not_entered') return ctx.text.live.enterLimit;
    const own = words.advice?.[`${a.result.name}.${a.verdict}`];
    if (own) return own;
    if (a.verdict === 'within' && !a.margin && !a.result.u) return t.exact;
    if (a.verdict === 'within') return ctx.text.live.within(widthWithUnit(a.margin, unit, system));
    const mostly = dominant ? t.mostly(this.#label(dominant)) : '';
    if (Number.isNaN(a.change)) {
      const between = a.limit && a.limit.low !== null && a.limit.high !== null;
      return a.only_beyond ? t.onlyBeyond : between ? `${t.tooNarrow} ${mostly}` : mostly;
    }
    const change = words.change?.[a.bound] ?? t.change;
    const move = change(widthWithUnit(a.change, unit, system), a.change > 0);
    return a.verdict === 'not_proven' ? `${move} ${mostly}` : move;
  }

  /** @param {import('./model.js').Place} place */
  #label({ entry, row }) {
    const told = this.form.words.fields[entry.name] ?? entry.name;
    const label = Array.isArray(told) ? told[0] : told;
    return row === null ? label : `${this.form.words.row?.(row + 1) ?? row + 1}: ${label}`;
  }

  /** @param {Answer} a */
  #limitWords({ limit, result }) {
    const { ctx } = this.form;
    if (!limit || (limit.low === null && limit.high === null)) return '';
    const t = ctx.plan.words;
    const { system } = ctx.settings;
    const end = (/** @type {number} */ v) => limitWithUnit(v, result.unit, system);
    const { low, high } = limit;
    const both = [
      low === null ? '' : t.atLeast(end(low)),
      high === null ? '' : t.atMost(end(high)),
    ];
    const ends = low !== null && low === high ? [t.exactly(end(low))] : both;
    const whose = ctx.text.basisLine[limit.basis](asRead(limit.source));
    const law = limit.vehicles ? t.lawFor(asRead(limit.vehicles)) : '';
    const reason = limit.reason ? t.looserBecause(limit.reason) : '';
    return [`${ends.filter(Boolean).join('. ')}.`, whose, law, reason].filter(Boolean).join(' ');
  }

  /** @param {Answer} a */
  #more(a) {
    const t = this.form.ctx.plan.words;
    const key = `${a.bound}/${a.result.row}`;
    const body = h('div', {});
    const details = h('details', { class: 'more' }, h('summary', {}, t.more), body);
    const fill = () => {
      const photos = photosOf(this.form.ctx, this.form.kept.owner, key);
      body.replaceChildren(this.#budget(a), photos);
    };
    details.addEventListener('toggle', () => {
      if (details.open) this.#open.add(key);
      else this.#open.delete(key);
      if (details.open && !body.firstChild) fill();
    });
    if (this.#open.has(key)) details.open = true;
    return details;
  }

  /** @param {Answer} a */
  #budget(a) {
    const { ctx, name, x, half } = this.form;
    const parts = contributions(ctx, name, x, half, a.result.output);
    const largest = parts[0]?.u ?? 1;
    const row = (/** @type {import('./model.js').Place & { u: number }} */ part) =>
      h(
        'tr',
        { 'data-source': part.entry.name },
        h('th', { scope: 'row' }, this.#label(part)),
        h('td', {}, widthWithUnit(part.u, a.result.unit, ctx.settings.system)),
        h('td', {}, h('meter', { min: 0, max: 1, value: part.u / largest, 'aria-hidden': 'true' })),
      );
    return h(
      'section',
      { class: 'budget' },
      h('p', { class: 'source' }, ctx.text.details.standard),
      h('table', {}, ...parts.map(row)),
    );
  }
}

/** The answers' foot: saved or not, and the way back. @param {SheetForm} form */
export const savedLine = (form) => h('p', { class: 'source' }, form.saved);
