// The list of captures, newest first.

import { button, h } from '../dom.js';
import {
  allChecks,
  hasMovedSince,
  uText,
  valueText,
  verdictNote,
  verdictWord,
  viewsOfCapture,
  worstFirst,
} from '../sentences.js';
import { timeOf, zeroOf } from './captured.js';
import { frame, verdictFrame } from './frame.js';

/** @typedef {import('../context.js').Context} Context */

/** @param {Context} ctx @param {import('../types.js').Capture} capture */
function row(ctx, capture) {
  const { level, checks } = ctx.text;
  const worst = worstFirst(allChecks(ctx, capture))[0];
  const moved = hasMovedSince(ctx, capture);
  const lines = viewsOfCapture(ctx, capture).flatMap(({ parked, inVehicle, equal }) => {
    const both = [
      h(
        'small',
        { 'data-check': parked.id },
        `${/** @type {Record<string, string>} */ (checks)[parked.id]} ${valueText(ctx, parked)} ${uText(ctx, parked)} ${verdictNote(ctx, parked)}`,
      ),
      inVehicle &&
        !moved &&
        h(
          'small',
          {},
          `${level.inVehicle} ${valueText(ctx, inVehicle)} ${uText(ctx, inVehicle)}, ${verdictWord(ctx, inVehicle)}`,
        ),
    ];
    // The vehicle's first where the limit holds in operation.
    return equal ? both.reverse() : both;
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
        h('b', {}, `${ctx.text.parts[capture.report.part]}, ${timeOf(ctx, capture)}`),
        ...lines,
        h('small', {}, zeroOf(ctx, capture)),
        moved && h('small', { class: 'moved' }, level.movedSince),
        capture.overruled && h('small', { class: 'moved' }, ctx.text.overruled.short),
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
      button(t.gauge, 'from-gauge', () => ctx.go('gauge'), 'row'),
      h('p', { class: 'source' }, ctx.text.details.no_claim),
    ],
    [button(t.go, 'to-parts', () => ctx.go(ctx.feeding ? 'parts' : 'start'))],
  );
}
