// The four parts in the order of the work, each with its latest capture.

import { button, h } from '../dom.js';
import { allChecks, worstFirst } from '../sentences.js';
import { frame, verdictFrame } from './frame.js';
import { levelState } from './level.js';

/** @typedef {import('../app.js').Context} Context */

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

/** @param {Context} ctx */
export function parts(ctx) {
  const t = ctx.text.parts;
  const n = { beyond: 0, not_proven: 0, within: 0, none: 0 };
  const rows = ctx.engine.catalogue.parts.map(({ id }) => {
    const worst = partVerdict(ctx, id);
    n[worst?.verdict ?? 'none'] += 1;
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
        : verdictFrame(null, t.unchecked),
    );
    return h('li', { 'data-part': id }, row);
  });
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
  return frame(
    ctx,
    'parts',
    t.title,
    [
      h('p', { class: 'summary' }, t.summary(n)),
      h('ul', { class: 'rows' }, h('li', {}, level), ...rows),
    ],
    [
      button(ctx.text.phone.title, 'phone', () => ctx.go('phone'), 'lesser'),
      button(t.all, 'captures', () => ctx.go('captures'), 'lesser'),
    ],
  );
}
