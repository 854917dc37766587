// One limit of the guide: its numbers, on whose word, where a manual usually states it.

import { button, h, say } from '../dom.js';
import { asTyped } from '../locale.js';
import { guide as t } from '../words/limits.js';
import { asKept, asRead } from '../own-words.js';
import { fromShown, toShown, unitLabel, limitWithUnit } from './units.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../types.js').BoundLine} BoundLine */

/**
 * What a card is of. Angles and the limits of sheets are told apart by their unit only.
 * @typedef {object} Asked
 * @property {BoundLine} line
 * @property {string} unit
 * @property {string} label
 * @property {'low' | 'high' | 'both'} ask
 * @property {string} where
 * @property {string} [sign] which way its numbers count
 * @property {BoundLine | null} usage
 * @property {BoundLine | null} law
 */

const BOTH = /** @type {const} */ (['low', 'high']);
/** After a document's name, for its page. */
const PAGE = ', p. ';
const NO_PAGE = /, p\.$/;

export class GuideCard {
  /** Numbers as kept and as shown: one that nobody touched keeps its last digit.
   * @type {Map<string, { kept: number, shown: string }>} */
  #shown = new Map();

  /** What its number stands on. @type {HTMLElement} */
  state = h('p', {});

  /** @param {Context} ctx @param {Asked} asked @param {import('../fields.js').Fields} fields
   * @param {() => string} document the document's title, for a source that is still empty */
  constructor(ctx, asked, fields, document) {
    this.ctx = ctx;
    this.asked = asked;
    this.fields = fields;
    this.document = document;
    this.line = asked.line;
    this.el = h('fieldset', { class: 'card', 'data-limit': asked.line.id });
    this.show(asked.line);
  }

  /** @param {BoundLine} line */
  show(line) {
    const { asked } = this;
    this.line = line;
    const entered = line.low !== null || line.high !== null;
    const copied = entered && ['manual', 'law'].includes(line.basis);
    this.state = h(
      'p',
      { class: copied ? 'source' : 'missing', 'data-entered': String(entered) },
      copied ? t.entered : entered ? t.example : t.notEntered,
    );
    const ends = BOTH.filter((end) => [end, 'both'].includes(asked.ask) || line[end] !== null);
    this.el.replaceChildren(
      h('legend', {}, asked.label),
      h('p', { class: 'source' }, `${t.where} ${asked.where}`),
      asked.sign ? h('p', { class: 'source' }, asked.sign) : '',
      this.state,
      ...ends.map((end) => this.#number(end)),
      this.#basis(),
      this.#text('source', t.source, line.source),
      this.#text('vehicles', t.vehicles, line.vehicles),
      this.#text('reason', t.reason, line.reason),
      // One slip must not put it over a number that was copied.
      copied ? '' : this.#offer(asked.usage, (k) => t.useUsage(this.#range(k))),
      copied
        ? ''
        : this.#offer(asked.law, (k) => t.useLaw(this.#range(k), k.source, asRead(k.vehicles))),
    );
    this.#fold();
  }

  /** @param {string} field */
  #key(field) {
    return `${this.asked.line.id}.${field}`;
  }

  /** @param {'low' | 'high'} end */
  #number(end) {
    const { unit } = this.asked;
    const { system } = this.ctx.settings;
    const kept = this.line[end];
    const label = `${t[end]} ${unitLabel(unit, system)}`;
    const el = this.fields.number(this.#key(end), label, null);
    el.addEventListener('input', () => {
      say(this.state, t.typed);
      this.#copied();
      this.#named();
      // One slip must not put it over what was just typed.
      for (const offer of this.el.querySelectorAll('[data-action^="use-"]'))
        offer.toggleAttribute('hidden', !this.#isEmpty());
    });
    if (kept !== null) {
      const shown = asTyped(Number(toShown(kept, unit, system).toPrecision(6)));
      this.#shown.set(end, { kept, shown });
      /** @type {HTMLInputElement} */ (this.fields.inputs.get(this.#key(end))).value = shown;
    }
    return el;
  }

  /** Who types over an example copies from the manual: its page is asked. */
  #copied() {
    const basis = this.fields.inputs.get(this.#key('basis'));
    const source = this.fields.inputs.get(this.#key('source'));
    if (!basis || !source || basis.value === 'manual' || basis.value !== this.line.basis) return;
    basis.value = 'manual';
    if (asKept(source.value) === this.line.source) source.value = '';
    this.#fold();
  }

  #isEmpty() {
    return BOTH.every((end) => this.fields.text(this.#key(end)) === '');
  }

  /** The document that was named once stands at each limit of the manual's; its page is asked. */
  #named() {
    const source = this.fields.inputs.get(this.#key('source'));
    if (source?.value !== '' || !this.document()) return;
    if (this.fields.text(this.#key('basis')) === 'manual')
      source.value = `${this.document()}${PAGE}`;
  }

  #basis() {
    const { text } = this.ctx;
    const options = Object.entries(text.bases).map(([value, label]) =>
      h('option', { value, selected: value === this.line.basis }, label),
    );
    const select = h('select', { change: () => this.#fold() }, ...options);
    return this.fields.field(this.#key('basis'), t.basis, select);
  }

  /** @param {'source' | 'vehicles' | 'reason'} name @param {string} label @param {string} value */
  #text(name, label, value) {
    const shown = asRead(value);
    const input = h('input', { type: 'text', value: shown, maxlength: 120, autocomplete: 'off' });
    if (name === 'source') input.addEventListener('focus', () => this.#named());
    const el = this.fields.field(this.#key(name), label, input);
    el.dataset.part = name;
    return el;
  }

  /** @param {BoundLine | null} known @param {(k: BoundLine) => string} words */
  #offer(known, words) {
    return known
      ? button(words(known), `use-${known.basis}`, () => this.show({ ...known }), 'lesser')
      : '';
  }

  /** @param {BoundLine} k */
  #range(k) {
    const { system } = this.ctx.settings;
    const told = BOTH.filter((end) => k[end] !== null);
    return told
      .map((end) => `${t[end]} ${limitWithUnit(k[end] ?? NaN, this.asked.unit, system)}`)
      .join(', ');
  }

  /** Vehicles are asked of a law, a reason where core wants one or one is told. */
  #fold() {
    const part = (/** @type {string} */ name) =>
      /** @type {HTMLElement} */ (this.el.querySelector(`[data-part="${name}"]`));
    part('vehicles').hidden = this.fields.text(this.#key('basis')) !== 'law';
    part('reason').hidden = this.fields.text(this.#key('reason')) === '';
  }

  askReason() {
    /** @type {HTMLElement} */ (this.el.querySelector('[data-part="reason"]')).hidden = false;
  }

  /** @param {'low' | 'high'} end */
  #typed(end) {
    const key = this.#key(end);
    if (!this.fields.inputs.has(key) || !this.el.contains(this.fields.inputs.get(key) ?? null))
      return null;
    const typed = this.fields.parsed(key);
    if (typed === null) return null;
    const before = this.#shown.get(end);
    if (before && this.fields.text(key) === before.shown) return before.kept;
    return fromShown(typed, this.asked.unit, this.ctx.settings.system);
  }

  /** The line as typed; a FieldError where a number is none. @returns {BoundLine} */
  read() {
    const text = (/** @type {string} */ name) => asKept(this.fields.text(this.#key(name)).trim());
    const basis = /** @type {import('../types.js').Basis} */ (text('basis'));
    return {
      id: this.asked.line.id,
      low: this.#typed('low'),
      high: this.#typed('high'),
      basis,
      // A page that nobody told is none.
      source: text('source').replace(NO_PAGE, ''),
      vehicles: basis === 'law' ? text('vehicles') : '',
      reason: text('reason'),
    };
  }
}
