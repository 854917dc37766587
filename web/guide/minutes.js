// Five minutes for an installer: steps with pictures, each taken from the page itself.

import { guidePicture } from '../carrier.js';
import { button, h } from '../dom.js';
import { frame } from '../screens/frame.js';
import { steps, words as t } from '../words/guide-steps.js';

/** @typedef {import('../context.js').Context} Context */

/** Size of each. */
export const GUIDE_PICTURE = { width: 360, height: 560 };

/** @param {import('../words/guide-steps.js').Step} step */
function stepCard({ id, title, points, alt }) {
  const src = guidePicture(id);
  return h(
    'li',
    { 'data-step': id },
    h('h2', {}, title),
    h('ul', {}, ...points.map((p) => h('li', {}, p))),
    src && h('img', { src, alt, ...GUIDE_PICTURE, loading: 'lazy' }),
  );
}

/** @param {Context} ctx */
export function minutes(ctx) {
  return frame(
    ctx,
    'minutes',
    t.title,
    [
      h('p', { class: 'lead' }, t.lead),
      h('ol', { class: 'guide' }, ...steps.map(stepCard)),
      h(
        'nav',
        { class: 'row' },
        button(t.plusMinus, 'plus-minus', () => ctx.go('plus_minus'), 'lesser'),
        button(t.tryout, 'tryout', () => ctx.startTryout(), 'lesser'),
      ),
    ],
    [button(t.job, 'guide-job', () => ctx.go('parts'))],
  );
}
