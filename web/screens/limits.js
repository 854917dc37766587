// The limit set, edited: every check a card of fields. Core judges it; its message stands at the
// field that it names, and nothing typed is lost.

import { button, h } from '../dom.js';
import { lengthFromField, lengthToField, parseNumber } from '../units.js';
import { bringIn, copyOut } from '../exchange.js';
import { frame } from './frame.js';

/** @typedef {import('../app.js').Context} Context */
/** @typedef {import('../types.js').LimitSet} LimitSet */
/** @typedef {import('../types.js').LimitLine} LimitLine */

class FieldError extends Error {
  /** @param {string} field @param {string} message */
  constructor(field, message) {
    super(message);
    this.field = field;
  }
}

/** The fields of a set, by the names that core uses in its messages. */
class Form {
  /** @param {Context} ctx */
  constructor(ctx) {
    this.ctx = ctx;
    /** @type {Map<string, HTMLInputElement | HTMLSelectElement>} */
    this.fields = new Map();
    /** Lengths as kept, by field: one that nobody touched keeps its last digit. @type {Map<string, number>} */
    this.lengths = new Map();
    this.el = h('div', { class: 'form' });
  }

  /** @param {string} field @param {string} label @param {HTMLInputElement | HTMLSelectElement} input */
  #field(field, label, input) {
    const id = `f-${field.replaceAll('.', '-')}`;
    const message = h('p', { class: 'trouble', id: `${id}-m`, hidden: true });
    input.id = id;
    input.dataset.field = field;
    this.fields.set(field, input);
    return h('div', { class: 'field' }, h('label', { for: id }, label), input, message);
  }

  /** @param {string} field @param {string} label @param {number | null} value */
  #number(field, label, value) {
    const input = h('input', {
      type: 'text',
      inputmode: 'decimal',
      autocomplete: 'off',
      value: value === null ? '' : String(value),
    });
    return this.#field(field, label, input);
  }

  /** @param {LimitSet} set */
  fill(set) {
    const t = this.ctx.text.limits;
    this.fields.clear();
    this.lengths.clear();
    const name = h('input', { type: 'text', value: set.name, maxlength: 64, autocomplete: 'off' });
    this.el.replaceChildren(
      this.#field('name', t.name, name),
      ...this.ctx.engine.catalogue.checks.map(({ id }) =>
        this.#card(
          id,
          set.lines.find((l) => l.check === id),
        ),
      ),
      h(
        'fieldset',
        { class: 'card' },
        h('legend', {}, t.surfaces),
        h('p', { class: 'source' }, t.surfacesWhy),
        ...set.surfaces.flatMap((s) => {
          const words = /** @type {Record<string, string>} */ (this.ctx.text.surfaces)[s.surface];
          return [
            this.#number(`${s.surface}.hold_deg`, `${words}, ${t.hold} °`, s.hold_deg),
            this.#number(`${s.surface}.align_deg`, `${words}, ${t.align} °`, s.align_deg),
          ];
        }),
      ),
    );
  }

  /** @param {string} id @param {LimitLine | undefined} line */
  #card(id, line) {
    const { text, settings } = this.ctx;
    const t = text.limits;
    const missing = [];
    if (line?.low_deg == null && line?.high_deg == null) missing.push(t.limitMissing);
    if (line?.at_limit_allowed && line.allowance_deg === null) missing.push(t.allowanceMissing);
    const atLimit = h('input', { type: 'checkbox', checked: line?.at_limit_allowed === true });
    const basis = h(
      'select',
      {},
      ...Object.entries(text.bases).map(([value, label]) =>
        h('option', { value, selected: value === line?.basis }, label),
      ),
    );
    const source = h('input', {
      type: 'text',
      value: line?.source ?? '',
      maxlength: 120,
      autocomplete: 'off',
    });
    const length = line?.length_mm == null ? null : lengthToField(line.length_mm, settings.system);
    if (line?.length_mm != null) this.lengths.set(`${id}.length_mm`, line.length_mm);
    return h(
      'fieldset',
      { class: 'card', 'data-check': id },
      h('legend', {}, /** @type {Record<string, string>} */ (text.checks)[id]),
      h('p', { class: 'source' }, /** @type {Record<string, string>} */ (text.axis)[id]),
      missing.length ? h('p', { class: 'missing' }, missing.join(', ')) : null,
      this.#number(`${id}.low_deg`, `${t.low} °`, line?.low_deg ?? null),
      this.#number(`${id}.high_deg`, `${t.high} °`, line?.high_deg ?? null),
      this.#number(
        `${id}.preferred_low_deg`,
        `${t.preferredLow} °`,
        line?.preferred_low_deg ?? null,
      ),
      this.#number(
        `${id}.preferred_high_deg`,
        `${t.preferredHigh} °`,
        line?.preferred_high_deg ?? null,
      ),
      this.#field(`${id}.at_limit_allowed`, t.atLimit, atLimit),
      this.#number(`${id}.allowance_deg`, `${t.allowance} °`, line?.allowance_deg ?? null),
      this.#field(`${id}.basis`, t.basis, basis),
      this.#field(`${id}.source`, t.source, source),
      this.#number(
        `${id}.length_mm`,
        `${t.length} ${settings.system === 'us' ? 'in' : 'mm'}`,
        length,
      ),
    );
  }

  /** @param {string} field */
  #text(field) {
    return this.fields.get(field)?.value ?? '';
  }

  /** @param {string} field */
  #parsed(field) {
    try {
      return parseNumber(this.#text(field));
    } catch {
      throw new FieldError(field, this.ctx.text.limits.notANumber);
    }
  }

  /** @param {string} field @param {number} typed @returns {number} mm */
  #length(field, typed) {
    const { system } = this.ctx.settings;
    const kept = this.lengths.get(field);
    if (kept !== undefined && lengthToField(kept, system) === typed) return kept;
    return lengthFromField(typed, system);
  }

  /** The set as typed. @returns {LimitSet} */
  read() {
    const { catalogue } = this.ctx.engine;
    const lines = catalogue.checks.map(({ id }) => {
      const length = this.#parsed(`${id}.length_mm`);
      return {
        check: id,
        low_deg: this.#parsed(`${id}.low_deg`),
        high_deg: this.#parsed(`${id}.high_deg`),
        preferred_low_deg: this.#parsed(`${id}.preferred_low_deg`),
        preferred_high_deg: this.#parsed(`${id}.preferred_high_deg`),
        at_limit_allowed: /** @type {HTMLInputElement} */ (
          this.fields.get(`${id}.at_limit_allowed`)
        ).checked,
        allowance_deg: this.#parsed(`${id}.allowance_deg`),
        basis: /** @type {import('../types.js').Basis} */ (this.#text(`${id}.basis`)),
        source: this.#text(`${id}.source`),
        length_mm: length === null ? null : this.#length(`${id}.length_mm`, length),
      };
    });
    const surfaces = catalogue.surfaces.map((surface) => {
      const hold_deg = this.#parsed(`${surface}.hold_deg`);
      const align_deg = this.#parsed(`${surface}.align_deg`);
      if (hold_deg === null)
        throw new FieldError(`${surface}.hold_deg`, this.ctx.text.limits.notANumber);
      if (align_deg === null)
        throw new FieldError(`${surface}.align_deg`, this.ctx.text.limits.notANumber);
      return { surface, hold_deg, align_deg };
    });
    return { format: 'plumbmark-limits', version: 1, name: this.#text('name'), lines, surfaces };
  }

  /** Puts a complaint at its field; true where there is such a field. @param {string} field @param {string} words */
  complain(field, words) {
    for (const input of this.fields.values()) this.#message(input, '');
    const input = this.fields.get(field);
    if (!input) return false;
    this.#message(input, words);
    input.focus();
    input.scrollIntoView({ block: 'center' });
    return true;
  }

  /** @param {HTMLElement} input @param {string} words */
  #message(input, words) {
    const message = document.getElementById(`${input.id}-m`);
    if (!message) return;
    message.textContent = words;
    message.hidden = words === '';
    input.setAttribute('aria-invalid', String(words !== ''));
    input.setAttribute('aria-describedby', words ? message.id : '');
  }
}

/** Core's message: "field: what to do". @param {string} message @returns {[string, string]} */
export function fieldAndWords(message) {
  const at = message.indexOf(': ');
  return at < 0 ? ['', message] : [message.slice(0, at), message.slice(at + 2)];
}

/** @param {Context} ctx */
export function limits(ctx) {
  const t = ctx.text.limits;
  const form = new Form(ctx);
  const state = h('p', { class: 'summary', role: 'status' });
  const tell = (/** @type {string} */ words) => {
    state.textContent = words;
  };
  form.fill(ctx.limits);
  form.el.addEventListener('input', () => tell(t.unsaved));

  const save = async () => {
    try {
      const set = ctx.engine.checkLimits(form.read());
      form.complain('', '');
      await ctx.useLimits(set);
      tell(t.saved);
    } catch (error) {
      report(error);
    }
  };
  /** @param {any} error */
  const report = (error) => {
    const [field, words] =
      error instanceof FieldError
        ? [error.field, error.message]
        : fieldAndWords(String(error.message));
    if (form.complain(field, words)) return tell(t.wrongField);
    const stored = /** @type {Record<string, string>} */ (ctx.text.storeErrors)[error.code];
    tell(stored ?? t.refused(String(error.message)));
  };
  const file = h('input', {
    type: 'file',
    accept: 'application/json,.json',
    class: 'sr',
    'aria-label': t.in,
    change: async () => {
      const chosen = file.files?.[0];
      if (!chosen) return;
      try {
        form.fill(ctx.engine.checkLimits(await bringIn(chosen, t)));
        tell(t.replaced);
      } catch (error) {
        tell(error instanceof Error ? t.refused(error.message) : String(error));
      }
      file.value = '';
    },
  });
  const replace = (/** @type {LimitSet} */ set) => {
    form.fill(set);
    tell(t.replaced);
  };
  return frame(
    ctx,
    'limits',
    t.title,
    [
      h('p', { class: 'caution' }, ctx.text.start.cautions[0], ' ', t.loose),
      form.el,
      h(
        'nav',
        { class: 'row' },
        button(t.out, 'copy-out', () => copyOut('plumbmark-limits.json', ctx.limits), 'lesser'),
        button(t.in, 'bring-in', () => file.click(), 'lesser'),
        button(t.blank, 'blank', () => replace(ctx.engine.blankLimits()), 'lesser'),
        button(t.examples, 'examples', () => replace(ctx.engine.defaultLimits()), 'lesser'),
      ),
      file,
      state,
    ],
    [button(t.save, 'save-limits', save)],
  );
}
