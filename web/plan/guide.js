// The way through the heater's manual: every limit in the order of the work, with where a manual
// usually states it. What stays empty is "not entered".

import { button, h, say } from '../dom.js';
import { FieldError, Fields } from '../fields.js';
import { frame } from '../screens/frame.js';
import { words as angleLines } from '../words/limit-lines.js';
import { angleSigns, angleWhere, bounds, guide as t, steps } from '../words/limits.js';
import { GuideCard } from './guide-card.js';
import { blankBound, boundTrouble, checkSet, knownOf, troubleWords } from './limit-set.js';
import { catalogue } from './model.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../types.js').BoundLine} BoundLine */
/** @typedef {import('../types.js').LimitSet} LimitSet */
/** @typedef {import('./guide-card.js').Asked} Asked */

/** @param {LimitSet} set @param {string} id @returns {BoundLine} */
const boundOf = (set, id) => set.bounds?.find((b) => b.id === id) ?? blankBound(id);

/** An angle's line in the shape of the others. @param {LimitSet} set @param {string} id @returns {BoundLine} */
function angleOf(set, id) {
  const line = set.lines.find((l) => l.check === id);
  return {
    ...blankBound(id),
    low: line?.low_deg ?? null,
    high: line?.high_deg ?? null,
    basis: line?.basis ?? 'manual',
    source: line?.source ?? '',
    vehicles: line?.vehicles ?? '',
    reason: line?.reason ?? '',
  };
}

/** Everything that a step asks. @param {Context} ctx @param {typeof steps[number]} step @returns {Asked[]} */
function askedIn(ctx, step) {
  const angles = /** @type {string[]} */ (step.angles).map((id) => ({
    line: angleOf(ctx.limits, id),
    unit: 'deg',
    label: /** @type {Record<string, string>} */ (ctx.text.checks)[id],
    ask: /** @type {const} */ ('both'),
    where: angleWhere[id],
    sign: angleSigns[id],
    usage: angleOf(ctx.engine.defaultLimits(), id),
    law: null,
  }));
  const own = catalogue.bounds.filter((b) => b.section === step.id);
  const lines = own.map(({ id, unit }) => ({
    line: boundOf(ctx.limits, id),
    unit,
    ...bounds[id],
    ...knownOf(id),
  }));
  return [...lines, ...angles];
}

/** As the job counts them: on the manual's word. @param {Asked} asked */
const isCopied = ({ line }) => line.basis === 'manual' && (line.low !== null || line.high !== null);

/** The set with these lines in place of what it had. @param {LimitSet} set @param {BoundLine[]} lines */
function withLines(set, lines) {
  const told = new Map(lines.map((line) => [line.id, line]));
  const kept = (set.bounds ?? []).filter((b) => !told.has(b.id));
  const own = lines.filter((line) => line.id in bounds);
  const angles = set.lines.map((l) => {
    const line = told.get(l.check);
    if (!line) return l;
    const { low, high, basis, source, vehicles, reason } = line;
    return { ...l, low_deg: low, high_deg: high, basis, source, vehicles, reason };
  });
  return { ...set, bounds: [...kept, ...own], lines: angles };
}

/** The steps as a list, each with what is entered; who comes back sees how far it went.
 * @param {Context} ctx @param {number} at */
function stepList(ctx, at) {
  let begun = false;
  const rows = steps.map((step, i) => {
    const all = askedIn(ctx, step);
    begun ||= all.some(isCopied);
    const words = `${step.title}: ${t.count(all.filter(isCopied).length, all.length)}`;
    return h(
      'li',
      {},
      button(words, `step-${i}`, () => ctx.go('guide', { at: i }), 'row'),
    );
  });
  return h(
    'details',
    { open: at === 0 && begun },
    h('summary', {}, t.other),
    h('ul', { class: 'rows' }, ...rows),
  );
}

/** @param {Context} ctx @param {{ at?: number }} params */
export function guide(ctx, { at = 0 }) {
  const step = steps[at];
  const fields = new Fields(angleLines.notANumber);
  const title = h('input', {
    type: 'text',
    value: ctx.settings.document,
    maxlength: 80,
    autocomplete: 'off',
  });
  title.addEventListener('change', () => ctx.keep({ document: title.value.trim() }));
  const cards = askedIn(ctx, step).map(
    (asked) => new GuideCard(ctx, asked, fields, () => title.value.trim()),
  );
  const state = h('p', { class: 'summary', role: 'status' });

  /** @param {BoundLine[]} lines @returns {boolean} whether core takes them all */
  const allFine = (lines) =>
    lines.every((line, i) => {
      const trouble = line.id in bounds ? boundTrouble(ctx, line) : null;
      if (!trouble) return true;
      if (trouble.field === 'reason') cards[i].askReason();
      fields.complain(`${line.id}.${trouble.field}`, troubleWords(ctx, line.id, trouble));
      return false;
    });

  const save = async () => {
    try {
      const lines = cards.map((card) => card.read());
      if (!allFine(lines)) return say(state, t.seeField);
      // Core looks at the angles with the rest of their lines.
      await ctx.useLimits(checkSet(ctx, withLines(ctx.limits, lines)));
      fields.complain('', '');
      if (at + 1 < steps.length) ctx.go('guide', { at: at + 1 });
      else ctx.go('parts');
    } catch (error) {
      report(/** @type {any} */ (error));
    }
  };
  /** @param {any} error */
  const report = (error) => {
    const cut = String(error.message).indexOf(': ');
    const [field, words] =
      error instanceof FieldError
        ? [error.field, error.message]
        : [error.message.slice(0, cut).replace('_deg', ''), error.message.slice(cut + 2)];
    if (field.endsWith('.reason'))
      cards.find((c) => field.startsWith(`${c.asked.line.id}.`))?.askReason();
    if (fields.complain(field, words)) return say(state, t.seeField);
    const stored = error.code && ctx.storeWords(error);
    // A line of another step, by its own name.
    const [id] = field.split('.');
    const named = bounds[id]?.label ?? /** @type {Record<string, string>} */ (ctx.text.checks)[id];
    say(state, stored ?? angleLines.refused(named ? `${named}: ${words}` : error.message));
  };

  return frame(
    ctx,
    'guide',
    t.title,
    [
      h('p', { class: 'source' }, `${t.step(at + 1, steps.length)}: ${step.title}`),
      at === 0 ? h('p', {}, t.lead) : null,
      stepList(ctx, at),
      fields.field('document', `${t.document}: ${t.documentHint}`, title),
      ...cards.map((card) => card.el),
      state,
    ],
    [button(at + 1 < steps.length ? t.next : t.last, 'guide-next', save)],
  );
}
