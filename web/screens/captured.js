// A capture, with its time: what was found, whether it is saved, what to do next.

import { button, h } from '../dom.js';
import {
  fellBack,
  uText,
  valueText,
  verdictNote,
  verdictWord,
  viewOfReport,
  whatToDo,
  whoseLimit,
  worstFirst,
} from '../sentences.js';
import { frame, verdictFrame } from './frame.js';
import { partVerdict } from './parts.js';

/** @typedef {import('../app.js').Context} Context */
/** @typedef {import('../types.js').Capture} Capture */

/** Time of day, with the date where it is not today's. @param {string} iso */
export function clock(iso) {
  const at = new Date(iso);
  const two = (/** @type {number} */ n) => String(n).padStart(2, '0');
  const time = `${two(at.getHours())}:${two(at.getMinutes())}`;
  if (at.toDateString() === new Date().toDateString()) return time;
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())} ${time}`;
}

/** One check of a capture, in words. @param {Context} ctx @param {import('../types.js').CheckReport} report */
export function checkWords(ctx, report) {
  const v = viewOfReport(report);
  const name = /** @type {Record<string, string>} */ (ctx.text.checks)[v.id];
  return h(
    'article',
    { class: 'check', 'data-check': v.id },
    h('h3', {}, name),
    h(
      'p',
      { class: 'number' },
      h('span', { class: 'value' }, valueText(ctx, v)),
      ' ',
      h('span', { class: 'u' }, uText(ctx, v)),
    ),
    verdictFrame(v.verdict, verdictWord(ctx, v), v.basis),
    h('span', { class: 'note' }, verdictNote(ctx, v)),
    h('p', { class: 'does' }, whatToDo(ctx, v)),
    h(
      'p',
      { class: 'source' },
      whoseLimit(ctx, v),
      fellBack(ctx, v) ? ` ${ctx.text.details.fallback}` : '',
    ),
  );
}

/** The part to go on with: the next one in the order of the work without a capture.
 * @param {Context} ctx @param {string} part */
function nextPart(ctx, part) {
  const order = ctx.engine.catalogue.parts.map((p) => p.id);
  const at = order.indexOf(/** @type {import("../types.js").PartId} */ (part));
  const later = [...order.slice(at + 1), ...order.slice(0, at)];
  return later.find((id) => partVerdict(ctx, id) === null) ?? null;
}

/** @param {Context} ctx @param {{ capture: Capture }} params */
export function captured(ctx, { capture }) {
  const t = ctx.text.captured;
  const { report } = capture;
  const known = capture.id !== undefined;
  const state = h(
    'span',
    { class: 'saved', 'data-saved': known ? capture.id : 'no' },
    known ? t.saved : t.saving,
  );
  const trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
  const next = nextPart(ctx, report.part);
  const title = h(
    'p',
    { class: 'summary' },
    `${ctx.text.parts[report.part]}, ${t.at(clock(capture.taken_at))}${capture.blind ? `, ${t.blind}` : ''}${capture.photo ? `, ${t.photo}` : ''}, `,
    state,
  );
  const el = frame(
    ctx,
    'captured',
    t.title,
    [
      title,
      trouble,
      ...worstFirst(report.checks).map((c) => checkWords(ctx, c)),
      h('p', { class: 'source' }, ctx.text.live.unchecked),
      button(t.where, 'where', () => ctx.go('details', { capture }), 'row'),
    ],
    [
      button(t.again, 'again', () => ctx.go('live', { part: report.part }), 'lesser'),
      next
        ? button(t.next(ctx.text.parts[next]), 'next', () => ctx.go('hold', { part: next }))
        : button(t.done, 'next', () => ctx.go('parts')),
    ],
  );
  return Object.assign(el, {
    /** The store's word, and nobody else's. @param {Promise<Capture>} kept */
    follow(kept) {
      kept.then(
        (saved) => {
          capture.id = saved.id;
          state.textContent = t.saved;
          state.dataset.saved = String(saved.id);
        },
        (error) => {
          state.textContent = '';
          const code = /** @type {keyof typeof ctx.text.storeErrors} */ (error.code ?? 'failed');
          trouble.textContent = ctx.text.storeErrors[code] ?? ctx.text.storeErrors.failed;
          trouble.hidden = false;
        },
      );
    },
  });
}
