// A capture, with its time: what was found, whether it is saved, what to do next.

import { button, h, say } from '../dom.js';
import { photosOf } from '../photos.js';
import {
  allViews,
  fellBack,
  hasMovedSince,
  uText,
  valueText,
  verdictNote,
  verdictWord,
  viewsOfCapture,
  whatToDo,
  whoseLimit,
  worstFirst,
  zeroWords,
} from '../sentences.js';
import { clock } from '../units.js';
import { frame, verdictFrame } from './frame.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../types.js').Capture} Capture */

/** @param {Context} ctx @param {import('../sentences.js').CheckView} v */
function answer(ctx, v) {
  return [
    h(
      'p',
      { class: 'number' },
      h('span', { class: 'value' }, valueText(ctx, v)),
      ' ',
      h('span', { class: 'u' }, uText(ctx, v)),
    ),
    verdictFrame(v.verdict, verdictWord(ctx, v), v.basis),
  ];
}

/** Why there is nothing in the vehicle, or why it no longer counts. @param {Context} ctx @param {Capture} capture */
function levelTrouble(ctx, capture) {
  if (hasMovedSince(ctx, capture)) return ctx.text.level.movedSince;
  const refused = capture.report.vehicle?.refused;
  return refused ? /** @type {Record<string, string>} */ (ctx.text.levelRefusals)[refused] : '';
}

/** One check of a capture, in words. @param {Context} ctx @param {Capture} capture @param {number} i */
export function checkWords(ctx, capture, i) {
  const { parked, inVehicle, equal, working } = viewsOfCapture(ctx, capture)[i];
  const trouble = capture.report.vehicle && levelTrouble(ctx, capture);
  const name = /** @type {Record<string, string>} */ (ctx.text.checks)[parked.id];
  return h(
    'article',
    { class: equal && inVehicle ? 'check equal' : 'check', 'data-check': parked.id },
    h('h2', {}, inVehicle || trouble ? `${name}, ${ctx.text.level.parked}` : name),
    ...answer(ctx, parked),
    h('span', { class: 'note' }, verdictNote(ctx, parked)),
    h('p', { class: 'does' }, whatToDo(ctx, parked)),
    (inVehicle || trouble) &&
      h(
        'div',
        { class: 'in-vehicle' },
        h('span', {}, ctx.text.level.inVehicle),
        ...(inVehicle ? answer(ctx, inVehicle) : []),
        h('span', { class: 'why' }, trouble || working),
        inVehicle &&
          !trouble &&
          inVehicle.verdict !== 'within' &&
          whatToDo(ctx, inVehicle) !== whatToDo(ctx, parked) &&
          h('p', { class: 'does' }, whatToDo(ctx, inVehicle)),
      ),
    h(
      'p',
      { class: 'source' },
      whoseLimit(ctx, parked),
      fellBack(ctx, parked) ? ` ${ctx.text.details.fallback}` : '',
    ),
  );
}

/** When it was captured; by a gauge, which has no clock, when it was taken in.
 * @param {Context} ctx @param {Capture} capture */
export const timeOf = (ctx, { gauge, taken_at }) =>
  gauge ? ctx.text.gauge.at(clock(taken_at)) : clock(taken_at);

/** Which zero this capture stands on, and whose. @param {Context} ctx @param {Capture} capture */
export function zeroOf(ctx, { gauge, report, found_ms }) {
  const t = ctx.text.gauge;
  if (gauge) return `${t.zero[report.zero_by]}. ${t.by(gauge)}`;
  return zeroWords(ctx, report.zero_by, found_ms);
}

/** The part to go on with: the next one in the order of the work without a capture.
 * @param {Context} ctx @param {string} part */
function nextPart(ctx, part) {
  const order = ctx.engine.catalogue.parts.map((p) => p.id);
  const at = order.indexOf(/** @type {import("../types.js").PartId} */ (part));
  const later = [...order.slice(at + 1), ...order.slice(0, at)];
  return later.find((id) => !ctx.captures.some((c) => c.report.part === id)) ?? null;
}

/** Photos belong to what is kept. @param {Context} ctx @param {Capture} capture */
function capturePhotos(ctx, capture) {
  const photos = capture.photos ?? [];
  const value = () => Object.assign(capture, { photos });
  const changed = () => ctx.write((store) => store.updateCapture(capture));
  const owner = {
    sheet: 'capture',
    photos,
    name: /** @type {const} */ ('captures'),
    value,
    changed,
  };
  return photosOf(ctx, owner, String(capture.id));
}

/** Whether another reading may settle it: a limit that nobody entered it does not.
 * @param {import('../types.js').CheckReport} check */
const asksAgain = ({ verdict, why }) =>
  verdict !== 'within' && !['limit_not_entered', 'allowance_not_entered'].includes(why ?? '');

/** Once more, from the question that only an eye answers: what was moved may lean the other way.
 * @param {Context} ctx @param {import('../types.js').PartId} part */
const readAgain = (ctx, part) => ctx.go(ctx.questions().length ? 'ends' : 'live', { part });

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
  const spoken = h('p', { class: 'sr', 'aria-live': 'polite' });
  // What is to be moved, or turned, is read again before anything else.
  const [again, on] = report.checks.some(asksAgain)
    ? /** @type {const} */ (['main', 'lesser'])
    : /** @type {const} */ (['lesser', 'main']);
  const photos = h('div', {});
  const offerPhotos = () => photos.replaceChildren(capturePhotos(ctx, capture));
  if (known) offerPhotos();
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
      spoken,
      ...worstFirst(report.checks).map((c) => checkWords(ctx, capture, report.checks.indexOf(c))),
      h('p', { class: 'source' }, `${zeroOf(ctx, capture)}.`),
      photos,
      button(t.where, 'where', () => ctx.go('details', { capture }), 'row'),
    ],
    [
      button(t.again, 'again', () => readAgain(ctx, report.part), again),
      next
        ? button(t.next(ctx.text.parts[next]), 'next', () => ctx.go('hold', { part: next }), on)
        : button(t.done, 'next', () => ctx.go('parts'), on),
    ].sort((a) => (a.classList.contains('lesser') ? -1 : 1)),
  );
  return Object.assign(el, {
    /** The store's word, and nobody else's. @param {Promise<Capture>} kept */
    follow(kept) {
      // After the heading, which has the focus now.
      ctx.loadPlan().then((plan) => {
        const views = allViews(viewsOfCapture(ctx, capture));
        setTimeout(() => say(spoken, plan.spoken.answersAloud(ctx, views)), 500);
      });
      kept.then(
        (saved) => {
          offerPhotos();
          state.textContent = t.saved;
          state.dataset.saved = String(saved.id);
        },
        (error) => {
          state.textContent = '';
          trouble.textContent = ctx.storeWords(error);
          trouble.hidden = false;
        },
      );
    },
  });
}
