// This phone: which of its sides have been checked, in its case or bare, and the way to do it.

import { button, h, say } from '../dom.js';
import { clock } from '../units.js';
import { frame, pick } from './frame.js';
import { words as t } from '../words/phone.js';

/** @typedef {import('../context.js').Context} Context */

/** How often it is asked again whether a check still counts. */
const AGAIN_MS = 5000;

/** What is known of a side, in words. @param {Context} ctx @param {string} hold */
function stateOf(ctx, hold) {
  const found_ms = ctx.engine.foundAt(hold);
  if (found_ms === null) return t.unchecked;
  return ctx.engine.foundCounts(hold) ? t.checked(found_ms) : t.over(clock(found_ms));
}

/** @param {Context} ctx */
export function phone(ctx) {
  const { holds } = ctx.engine.catalogue;
  const names = /** @type {Record<string, string>} */ (ctx.text.holds);
  let side = ctx.placement?.hold ?? holds[0];
  const states = new Map(holds.map((hold) => [hold, h('small', { 'data-side': hold })]));
  const show = () => {
    for (const [hold, el] of states) say(el, stateOf(ctx, hold));
  };
  const sides = holds.map(
    (hold) =>
      /** @type {const} */ ([hold, h('span', {}, h('b', {}, names[hold]), states.get(hold))]),
  );
  const el = frame(
    ctx,
    'phone',
    t.title,
    [
      h('p', { class: 'source' }, t.why),
      pick(
        t.case,
        'case',
        [
          ['case', t.inCase],
          ['bare', t.bare],
        ],
        ctx.settings.in_case ? 'case' : 'bare',
        (v) => {
          ctx.useCase(v === 'case');
          show();
        },
      ),
      pick(t.side, 'side', sides, side, (v) => {
        side = v;
      }),
      h('p', { class: 'source' }, t.place),
    ],
    [
      button(t.poses, 'poses', () => ctx.go('poses'), 'lesser'),
      button(t.turn, 'turn', () => ctx.go('turn', { hold: side })),
    ],
  );
  /** @type {ReturnType<typeof setInterval> | undefined} */
  let timer;
  return Object.assign(el, {
    enter() {
      show();
      timer = setInterval(show, AGAIN_MS);
    },
    leave() {
      clearInterval(timer);
    },
  });
}
