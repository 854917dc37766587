// Many readings of one part, each by another phone: what 95 in 100 means. Whether an interval holds
// the truth is core's own answer: with the limit at the truth, "not proven" says that it does.

import { button, h, s, say } from '../dom.js';
import { words as t } from '../words/guide-uncertainty.js';
import { normals } from './chance.js';

/** @typedef {import('./example.js').Example} Example */
/** @typedef {import('./example.js').Vector} Vector */

const G = 9.80665;
export const MANY = 40;
export const REALLY_DEG = -9;
/** As unlike as core takes phones to be (core/src/prior.rs): zero, share of gravity, and scale. */
const ZERO = 0.008;
const SCALE = 0.005;
const [WIDTH, HEIGHT] = [340, 190];
const [LEFT, RIGHT] = [10, 330];
/** Room above and below the truth, degrees. */
const SPAN_DEG = 2.4;

/** Another phone, laid down another time. @param {Example} example @param {number} seed
 * @returns {import('./example.js').Scene} */
export function sceneOf(example, seed) {
  const normal = normals(seed);
  const three = (/** @type {number} */ u) =>
    /** @type {Vector} */ ([0, 0, 0].map(() => u * normal()));
  const hold_deg = example.holdOf('metal_face');
  return {
    really_deg: REALLY_DEG,
    seed: seed + 1,
    zero: three(ZERO * G),
    scale: /** @type {Vector} */ (three(SCALE).map((v) => 1 + v)),
    surface: 'metal_face',
    turned: false,
    trembles: false,
    lies_deg: [hold_deg * normal(), hold_deg * normal()],
  };
}

/** Readings and whether each holds the truth. @param {Example} example @param {number} throw_ */
export function thrown(example, throw_) {
  example.setLimit(REALLY_DEG, t.truth);
  const seeds = Array.from({ length: MANY }, (_, i) => 1000 * throw_ + 10 * i);
  return seeds.flatMap((seed) => {
    const { views } = example.read(sceneOf(example, seed));
    if (!views) return [];
    const { value, u, verdict } = views.parked;
    return [{ value, u, holds: verdict === 'not_proven' }];
  });
}

/** @param {number} deg */
const y = (deg) => (HEIGHT / 2) * (1 - (deg - REALLY_DEG) / SPAN_DEG);

/** @param {ReturnType<typeof thrown>} readings */
function bars(readings) {
  return readings.map(({ value, u, holds }, i) => {
    const x = LEFT + ((i + 0.5) / readings.length) * (RIGHT - LEFT);
    return s(
      'g',
      { class: holds ? 'hit' : 'miss' },
      s('path', { d: `M${x} ${y(value + u)}V${y(value - u)}` }),
      s('circle', { cx: x, cy: y(value), r: holds ? 2.4 : 4 }),
    );
  });
}

/** @param {Example} example @param {number} first the throw that is shown first */
export function throwsCard(example, first) {
  const words = h('p', { role: 'status' });
  const drawn = s('g', {});
  const picture = s(
    'svg',
    { viewBox: `0 0 ${WIDTH} ${HEIGHT}`, class: 'throws', role: 'img' },
    s('path', { d: `M0 ${HEIGHT / 2}H${WIDTH}`, class: 'limit' }),
    drawn,
  );
  let at = first;
  const show = () => {
    const readings = thrown(example, at);
    const missed = readings.filter((r) => !r.holds).length;
    drawn.replaceChildren(...bars(readings));
    say(words, t.thrown(readings.length, missed));
    picture.setAttribute('aria-label', t.thrown(readings.length, missed));
  };
  const others = () => {
    at += 1;
    show();
  };
  show();
  return h(
    'section',
    { class: 'card', 'data-card': 'throws' },
    h('h2', {}, t.throwsTitle),
    h('p', {}, t.throwsWhy),
    picture,
    words,
    button(t.others, 'others', others, 'row'),
  );
}
