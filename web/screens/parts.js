// Everything in the order of the work: sections with their sheets' worst answer, parts with that of
// their latest capture.

import { button, h } from '../dom.js';
import { allChecks, worstFirst } from '../sentences.js';
import { frame, verdictFrame } from './frame.js';
import { levelState } from './level.js';

/** @typedef {import('../app.js').Context} Context */

/** @param {Record<string, any>} table @param {string} name @returns {[string, string]} */
const of = (table, name) => table[name];

/** What must be known before the first cut comes first. */
const ORDER = ['place', 'support', 'level', 'heater', 'ducts', 'fuel', 'pump', 'filter', 'pipe'];

/** The worst verdict of a part's latest captures, as parked and in the vehicle, or null.
 * @param {Context} ctx @param {string} part */
export function partVerdict(ctx, part) {
  /** @type {Map<string, import('../types.js').CheckReport[]>} */
  const latest = new Map();
  for (const capture of ctx.captures)
    if (capture.report.part === part) {
      const all = allChecks(ctx, capture);
      for (const { id } of capture.report.checks)
        latest.set(
          id,
          all.filter((c) => c.id === id),
        );
    }
  return worstFirst([...latest.values()].flat())[0] ?? null;
}

/** A section of the tape-measure half. Its answer comes once that half is loaded.
 * @param {Context} ctx @param {string} name
 * @param {(verdict: import('../types.js').Verdict) => void} count */
function section(ctx, name, count) {
  const t = ctx.text.sections;
  const words = of(t, name);
  const verdict = h('span', {}, verdictFrame(null, '…'));
  ctx.loadPlan().then((plan) => {
    /** @type {{ worst: import('../plan/model.js').Answer | null, open: number }} */
    const { worst: found, open } = plan.stateOf(ctx, name);
    const worst = found?.verdict === 'within' && open ? null : found;
    count(worst?.verdict ?? 'none');
    verdict.replaceChildren(
      worst
        ? verdictFrame(worst.verdict, ctx.text.verdicts[worst.verdict], worst.limit?.basis ?? '')
        : verdictFrame(null, found ? ctx.text.parts.open(open) : ctx.text.parts.unchecked),
    );
  });
  return h(
    'li',
    { 'data-part': name },
    h(
      'button',
      { type: 'button', class: 'row', 'data-action': `section-${name}`, click: () => ctx.go(name) },
      h('span', { class: 'words' }, h('b', {}, words[0]), h('small', {}, words[1])),
      verdict,
    ),
  );
}

/** @param {Context} ctx */
export function parts(ctx) {
  const t = ctx.text.parts;
  const n = { beyond: 0, not_proven: 0, within: 0, none: 0 };
  const summary = h('p', { class: 'summary', role: 'status' });
  /** @param {import('../types.js').Verdict} verdict */
  const count = (verdict) => {
    n[verdict] += 1;
    summary.textContent = t.summary(n);
  };
  const level = h(
    'button',
    { type: 'button', class: 'row', 'data-action': 'level', click: () => ctx.go('level') },
    h(
      'span',
      { class: 'words' },
      h('b', {}, ctx.text.level.title),
      h('small', {}, levelState(ctx)),
    ),
  );
  const rows = new Map([['level', h('li', {}, level)]]);
  for (const { id, checks } of ctx.engine.catalogue.parts) {
    const found = partVerdict(ctx, id);
    const taken = ctx.captures.flatMap((c) => c.report.checks.map((check) => check.id));
    const open = checks.filter((check) => !taken.includes(check)).length;
    const worst = found?.verdict === 'within' && open ? null : found;
    count(worst?.verdict ?? 'none');
    const row = h(
      'button',
      {
        type: 'button',
        class: 'row',
        'data-action': `part-${id}`,
        click: () => ctx.go('hold', { part: id }),
      },
      h('span', { class: 'words' }, h('b', {}, t[id]), h('small', {}, t.sub[id])),
      worst
        ? verdictFrame(worst.verdict, ctx.text.verdicts[worst.verdict], worst.basis)
        : verdictFrame(null, found ? t.open(open) : t.unchecked),
    );
    rows.set(id, h('li', { 'data-part': id }, row));
  }
  return frame(
    ctx,
    'parts',
    t.title,
    [
      summary,
      h(
        'ul',
        { class: 'rows' },
        ...ORDER.map((name) => rows.get(name) ?? section(ctx, name, count)),
      ),
      // Below the list and not over it.
      h(
        'nav',
        { class: 'row' },
        button(ctx.text.phone.title, 'phone', () => ctx.go('phone'), 'lesser'),
        button(t.all, 'captures', () => ctx.go('captures'), 'lesser'),
      ),
    ],
    [],
  );
}
