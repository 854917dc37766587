// The limit set, edited: every check a card of fields. Core judges it; its message stands at the
// field that it names, and nothing typed is lost.

import { button, h } from '../dom.js';
import { copyOut } from '../exchange.js';
import { FieldError, Fields } from '../fields.js';
import { readJson } from '../json.js';
import { asKept, asRead } from '../own-words.js';
import { lengthFromField, lengthToField } from '../units.js';
import { checkSet } from '../plan/limit-set.js';
import { frame } from './frame.js';
import { words as t } from '../words/limit-lines.js';
import { angleSigns } from '../words/limits.js';

const LARGEST_BYTES = 256 * 1024;

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../types.js').LimitSet} LimitSet */
/** @typedef {import('../types.js').LimitLine} LimitLine */

/** The fields of a set, by the names that core uses in its messages. */
class Form {
  /** @param {Context} ctx */
  constructor(ctx) {
    this.ctx = ctx;
    this.fields = new Fields(t.notANumber);
    /** Lengths as kept, by field: one that nobody touched keeps its last digit. @type {Map<string, number>} */
    this.lengths = new Map();
    /** Limits that have no card here: the guide asks them. @type {LimitSet['bounds']} */
    this.bounds = [];
    this.el = h('div', { class: 'form' });
  }

  /** @param {LimitSet} set */
  fill(set) {
    this.fields.inputs.clear();
    this.lengths.clear();
    this.bounds = set.bounds;
    const name = h('input', {
      type: 'text',
      value: asRead(set.name),
      maxlength: 64,
      autocomplete: 'off',
    });
    this.el.replaceChildren(
      this.fields.field('name', t.name, name),
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
            this.fields.number(`${s.surface}.hold_deg`, `${words}, ${t.hold} °`, s.hold_deg),
            this.fields.number(`${s.surface}.align_deg`, `${words}, ${t.align} °`, s.align_deg),
          ];
        }),
      ),
    );
  }

  /** @param {string} field @param {string} label @param {string} value */
  #text(field, label, value) {
    const shown = asRead(value);
    const input = h('input', { type: 'text', value: shown, maxlength: 120, autocomplete: 'off' });
    return this.fields.field(field, label, input);
  }

  /** @param {string} id @param {LimitLine | undefined} line */
  #card(id, line) {
    const { text, settings } = this.ctx;
    const missing = [];
    if (line?.low_deg == null && line?.high_deg == null) missing.push(t.limitMissing);
    if (line?.at_limit_allowed && line.allowance_deg === null) missing.push(t.allowanceMissing);
    const basis = h(
      'select',
      {},
      ...Object.entries(text.bases).map(([value, label]) =>
        h('option', { value, selected: value === line?.basis }, label),
      ),
    );
    const length = line?.length_mm == null ? null : lengthToField(line.length_mm, settings.system);
    if (line?.length_mm != null) this.lengths.set(`${id}.length_mm`, line.length_mm);
    return h(
      'fieldset',
      { class: 'card', 'data-check': id },
      h('legend', {}, /** @type {Record<string, string>} */ (text.checks)[id]),
      h('p', { class: 'source' }, /** @type {Record<string, string>} */ (text.axis)[id]),
      angleSigns[id] ? h('p', { class: 'source' }, angleSigns[id]) : null,
      missing.length ? h('p', { class: 'missing' }, missing.join(', ')) : null,
      this.fields.number(`${id}.low_deg`, `${t.low} °`, line?.low_deg ?? null),
      this.fields.number(`${id}.high_deg`, `${t.high} °`, line?.high_deg ?? null),
      this.fields.number(
        `${id}.preferred_low_deg`,
        `${t.preferredLow} °`,
        line?.preferred_low_deg ?? null,
      ),
      this.fields.number(
        `${id}.preferred_high_deg`,
        `${t.preferredHigh} °`,
        line?.preferred_high_deg ?? null,
      ),
      this.fields.flag(`${id}.at_limit_allowed`, t.atLimit, line?.at_limit_allowed === true),
      this.fields.number(`${id}.allowance_deg`, `${t.allowance} °`, line?.allowance_deg ?? null),
      this.fields.flag(
        `${id}.holds_in_operation`,
        t.inOperation,
        line?.holds_in_operation === true,
      ),
      this.fields.field(`${id}.basis`, t.basis, basis),
      this.#text(`${id}.source`, t.source, line?.source ?? ''),
      this.#text(`${id}.vehicles`, t.vehicles, line?.vehicles ?? ''),
      this.#text(`${id}.reason`, t.reason, line?.reason ?? ''),
      this.fields.number(
        `${id}.length_mm`,
        `${t.length} ${settings.system === 'us' ? 'in' : 'mm'}`,
        length,
      ),
    );
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
      const length = this.fields.parsed(`${id}.length_mm`);
      return {
        check: id,
        low_deg: this.fields.parsed(`${id}.low_deg`),
        high_deg: this.fields.parsed(`${id}.high_deg`),
        preferred_low_deg: this.fields.parsed(`${id}.preferred_low_deg`),
        preferred_high_deg: this.fields.parsed(`${id}.preferred_high_deg`),
        at_limit_allowed: this.fields.isOn(`${id}.at_limit_allowed`),
        holds_in_operation: this.fields.isOn(`${id}.holds_in_operation`),
        allowance_deg: this.fields.parsed(`${id}.allowance_deg`),
        basis: /** @type {import('../types.js').Basis} */ (this.fields.text(`${id}.basis`)),
        source: asKept(this.fields.text(`${id}.source`)),
        vehicles: asKept(this.fields.text(`${id}.vehicles`)),
        reason: this.fields.text(`${id}.reason`),
        length_mm: length === null ? null : this.#length(`${id}.length_mm`, length),
      };
    });
    const surfaces = catalogue.surfaces.map((surface) => ({
      surface,
      hold_deg: this.fields.needed(`${surface}.hold_deg`),
      align_deg: this.fields.needed(`${surface}.align_deg`),
    }));
    return {
      format: 'plumbmark-limits',
      version: 2,
      name: asKept(this.fields.text('name')),
      lines,
      surfaces,
      bounds: this.bounds,
    };
  }
}

/** Core's message: "field: what to do". @param {string} message @returns {[string, string]} */
export function fieldAndWords(message) {
  const at = message.indexOf(': ');
  return at < 0 ? ['', message] : [message.slice(0, at), message.slice(at + 2)];
}

/** @param {Context} ctx */
export function limits(ctx) {
  const form = new Form(ctx);
  const state = h('p', { class: 'summary', role: 'status' });
  const tell = (/** @type {string} */ words) => {
    state.textContent = words;
  };
  form.fill(ctx.limits);
  const toGuide = button(t.guide, 'guide', () => ctx.go('guide'));
  const toSave = button(t.save, 'save-limits', () => save(), 'lesser');
  /** The one thing to do: the guide, until something waits to be saved. @param {string} words */
  const changed = (words) => {
    tell(words);
    toGuide.className = 'lesser';
    toSave.className = 'main';
    toSave.before(toGuide);
  };
  form.el.addEventListener('input', () => changed(t.unsaved));

  const save = async () => {
    try {
      const set = checkSet(ctx, form.read());
      form.fields.complain('', '');
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
    if (form.fields.complain(field, words)) return tell(t.wrongField);
    const stored = error.code && ctx.storeWords(error);
    tell(stored ?? t.refused(String(error.message)));
  };
  const file = h('input', {
    type: 'file',
    accept: 'application/json,.json',
    class: 'sr',
    // The button beside it opens it.
    tabindex: -1,
    'aria-label': t.in,
    change: async () => {
      const chosen = file.files?.[0];
      if (!chosen) return;
      try {
        form.fill(checkSet(ctx, await readJson(chosen, LARGEST_BYTES, t)));
        changed(t.replaced);
      } catch (error) {
        tell(error instanceof Error ? t.refused(error.message) : String(error));
      }
      file.value = '';
    },
  });
  const replace = (/** @type {LimitSet} */ set) => {
    form.fill(set);
    changed(t.replaced);
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
    [toSave, toGuide],
  );
}
