// Which end is lower? One question for each elevation that this placement gives.

import { button, h, s } from '../dom.js';
import { outline } from '../drawings/outlines.js';
import { camera } from '../photos.js';
import { frame } from './frame.js';

/** @typedef {import('../context.js').Context} Context */

/** @param {Record<string, string>} table @param {string} name */
const of = (table, name) => table[name];

/** @param {string} check @param {string} tail @param {string} head */
function picture(check, tail, head) {
  return s(
    'svg',
    { viewBox: '0 0 340 154', class: 'ends-picture', 'aria-hidden': 'true' },
    s('g', { transform: 'translate(80 60) scale(1.8)' }, outline(check)),
    // One above the other: long names would run into each other.
    s('text', { x: 6, y: 131, class: 'small' }, tail),
    s('text', { x: 334, y: 150, class: 'small', 'text-anchor': 'end' }, head),
  );
}

/** @param {Context} ctx @param {{ part: import('../types.js').PartId, asked?: number, photo?: boolean }} params */
export function ends(ctx, { part, asked = 0, photo }) {
  const t = ctx.text.ends;
  const questions = ctx.questions();
  const check = questions[asked];
  if (!check) return frame(ctx, 'ends', t.title, [], []);
  const tail = of(t.tail, check);
  const head = of(t.head, check);
  /** @param {import('../types.js').End} end */
  const answer = (end) => {
    ctx.tellEnd(check, end);
    if (asked + 1 < questions.length) ctx.go('ends', { part, asked: asked + 1 });
    else ctx.go('live', { part });
  };
  if (photo) return askPhoto(ctx, part, check, answer);
  const choice = (/** @type {string} */ label, /** @type {import('../types.js').End} */ end) =>
    button(label, `end-${end}`, () => answer(end), 'row');
  return frame(
    ctx,
    'ends',
    of(t.questions, check),
    [picture(check, tail, head), h('p', { class: 'source' }, t.why)],
    [
      choice(tail, 'tail'),
      choice(head, 'head'),
      button(t.cant, 'end-cant', () => ctx.go('ends', { part, asked, photo: true }), 'row'),
    ],
  );
}

/** @param {Context} ctx @param {import('../types.js').PartId} part @param {string} check
 * @param {(end: import('../types.js').End) => void} answer */
function askPhoto(ctx, part, check, answer) {
  const t = ctx.text.ends;
  const { parts, ask } = camera(
    ctx,
    t.photo,
    (photo) => {
      ctx.photo = photo;
      answer('photo');
    },
    null,
  );
  const arrow = s(
    'svg',
    { viewBox: '0 0 340 120', class: 'photo-arrow', role: 'img', 'aria-label': t.arrow },
    s('path', { d: 'M20 60H300m-40 -40l40 40l-40 40', class: 'big-arrow' }),
  );
  return frame(
    ctx,
    'ends',
    of(t.questions, check),
    [
      h('p', { class: 'lead' }, t.photoWhy),
      arrow,
      h('p', { class: 'source' }, `${t.arrow} ${ctx.text.headEnd[part]}`),
      ...parts,
    ],
    [
      button(t.without, 'end-cant_tell', () => answer('cant_tell'), 'lesser'),
      button(t.photo, 'take-photo', ask),
    ],
  );
}
