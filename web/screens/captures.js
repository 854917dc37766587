// The list of captures, newest first.

import { button, h } from '../dom.js';
import { uText, valueText, verdictNote, viewOfReport, worstFirst } from '../sentences.js';
import { clock } from './captured.js';
import { frame, verdictFrame } from './frame.js';

/** @typedef {import('../app.js').Context} Context */

/** @param {Context} ctx @param {import('../types.js').Capture} capture */
function row(ctx, capture) {
  const worst = worstFirst(capture.report.checks)[0];
  const lines = capture.report.checks.map((c) => {
    const v = viewOfReport(c);
    const name = /** @type {Record<string, string>} */ (ctx.text.checks)[v.id];
    return h(
      'small',
      { 'data-check': c.id },
      `${name} ${valueText(ctx, v)} ${uText(ctx, v)} ${verdictNote(ctx, v)}`,
    );
  });
  return h(
    'li',
    { 'data-capture': capture.id },
    h(
      'button',
      {
        type: 'button',
        class: 'row',
        'data-action': 'details',
        click: () => ctx.go('details', { capture }),
      },
      h(
        'span',
        { class: 'words' },
        h('b', {}, `${ctx.text.parts[capture.report.part]}, ${clock(capture.taken_at)}`),
        ...lines,
      ),
      worst ? verdictFrame(worst.verdict, ctx.text.verdicts[worst.verdict], worst.basis) : null,
    ),
  );
}

/** @param {Context} ctx */
export function captures(ctx) {
  const t = ctx.text.captures;
  const list = [...ctx.captures].reverse();
  return frame(
    ctx,
    'captures',
    t.title,
    [
      list.length
        ? h('ul', { class: 'rows' }, ...list.map((c) => row(ctx, c)))
        : h('p', { class: 'lead' }, t.empty),
      h('p', { class: 'source' }, ctx.text.details.no_claim),
    ],
    [button(t.go, 'to-parts', () => ctx.go(ctx.feeding ? 'parts' : 'start'))],
  );
}
