// What ± means, with a reading to play with. The page moves a made-up part; value, U and verdict are
// what a core of its own makes of the samples.

import { button, h, say, set } from '../dom.js';
import { frame, pick, verdictFrame } from '../screens/frame.js';
import { Slot } from '../screens/slot.js';
import { uText, valueText, verdictWord, whatToDo } from '../sentences.js';
import { formatAngle } from '../units.js';
import { words as t } from '../words/guide-uncertainty.js';
import { CHECK, Example } from './example.js';
import { throwsCard } from './throws.js';

/** @typedef {import('../context.js').Context} Context */

const G = 9.80665;
const RAD = Math.PI / 180;
const HIGH_DEG = -6;
/** How much too high this phone reads lengthwise. */
const ZERO_DEG = 0.7;
const STEP_DEG = 0.5;
const [LOWEST_DEG, HIGHEST_DEG] = [-16, 4];
/** Sideways on the screen for one step. */
const STEP_PX = 14;
/** The one of which two in forty miss. */
const FIRST_THROW = 0;
/** By hand: keys to steps. @type {Record<string, number>} */
const KEYS = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1 };

/** The core that is read here, once for all visits. @type {Promise<Example> | null} */
let loaded = null;

/** @param {Context} ctx */
function exampleOf(ctx) {
  loaded ??= Example.load(ctx);
  // Whoever comes again may try again.
  loaded.catch(() => {
    loaded = null;
  });
  return loaded;
}

/** @param {[string, string[]]} section */
const prose = ([title, paragraphs]) => [
  h('h2', {}, title),
  ...paragraphs.map((p) => h('p', {}, p)),
];

/** @param {string} title @param {string[]} points */
const list = (title, points) => [
  h('h2', {}, title),
  h('ul', {}, ...points.map((p) => h('li', {}, p))),
];

/** The part under the hand of the reader. */
class Play {
  /** @type {import('./example.js').Scene} */
  scene = {
    really_deg: -7,
    seed: 7,
    zero: [0.04, G * Math.sin(ZERO_DEG * RAD), 0.03],
    surface: 'metal_face',
    turned: false,
    trembles: false,
  };

  /** @param {Example} example */
  constructor(example) {
    this.example = example;
    example.setLimit(HIGH_DEG, t.limit);
    this.slot = new Slot(example.shown, CHECK, false);
    this.does = h('p', { class: 'does' });
    this.mostly = h('p', {});
    this.really = h('p', { class: 'source' });
    this.spoken = h('p', { class: 'sr', 'aria-live': 'polite' });
    this.handle = h(
      'div',
      {
        class: 'slots n1 handle',
        role: 'slider',
        tabindex: 0,
        'aria-label': t.part,
        'aria-valuemin': LOWEST_DEG,
        'aria-valuemax': HIGHEST_DEG,
        keydown: (/** @type {KeyboardEvent} */ event) => this.#key(event),
        pointerdown: (/** @type {PointerEvent} */ event) => this.#grab(event),
      },
      this.slot.el,
    );
  }

  /** @param {KeyboardEvent} event */
  #key(event) {
    const steps = KEYS[event.key];
    if (!steps) return;
    event.preventDefault();
    this.move(this.scene.really_deg + steps * STEP_DEG);
  }

  /** @param {PointerEvent} event */
  #grab(event) {
    const [from_px, from_deg] = [event.clientX, this.scene.really_deg];
    const drag = (/** @type {PointerEvent} */ at) =>
      this.move(from_deg + Math.round((at.clientX - from_px) / STEP_PX) * STEP_DEG);
    const drop = () => {
      removeEventListener('pointermove', drag);
      for (const end of ['pointerup', 'pointercancel']) removeEventListener(end, drop);
    };
    addEventListener('pointermove', drag);
    for (const end of ['pointerup', 'pointercancel']) addEventListener(end, drop);
  }

  /** @param {number} deg */
  move(deg) {
    this.change({ really_deg: Math.max(LOWEST_DEG, Math.min(HIGHEST_DEG, deg)) });
  }

  /** @param {Partial<import('./example.js').Scene>} by */
  change(by) {
    Object.assign(this.scene, by);
    // The second picture asks the same core by another limit.
    this.example.setLimit(HIGH_DEG, t.limit);
    this.show();
  }

  show() {
    const { shown } = this.example;
    const { reason, views } = this.example.read(this.scene);
    const [word, why] = reason
      ? /** @type {Record<string, string[]>} */ (shown.text.reasons)[reason]
      : ['', ''];
    this.slot.show(views, word, '');
    const view = views?.parked;
    say(this.does, view ? whatToDo(shown, view) : why);
    const sources = /** @type {Record<string, string>} */ (shown.text.sources);
    say(this.mostly, view ? t.mostly(sources[view.dominant]) : '');
    const really = formatAngle(this.scene.really_deg);
    say(this.really, t.really(really, formatAngle(ZERO_DEG)));
    set(this.handle, { 'aria-valuenow': this.scene.really_deg, 'aria-valuetext': really });
    const answer = view && [valueText(shown, view), uText(shown, view), verdictWord(shown, view)];
    say(this.spoken, answer ? answer.join(' ') : word);
  }
}

/** One of a few, each with what it changes; the first one is chosen.
 * @param {Play} play @param {string} name @param {string} legend
 * @param {[string, Partial<import('./example.js').Scene>][]} ways words and change */
function choice(play, name, legend, ways) {
  const labels = ways.map(([words], i) => /** @type {const} */ ([String(i), words]));
  return pick(legend, name, labels, '0', (i) => play.change(ways[Number(i)][1]));
}

/** @param {Example} example */
function playCard(example) {
  const play = new Play(example);
  const by = (/** @type {number} */ steps) => () =>
    play.move(play.scene.really_deg + steps * STEP_DEG);
  play.show();
  return h(
    'section',
    { class: 'card', 'data-card': 'play' },
    h('h2', {}, t.play),
    play.handle,
    h(
      'nav',
      { class: 'row' },
      button(t.lower, 'lower', by(-1), 'lesser'),
      button(t.raise, 'raise', by(1), 'lesser'),
    ),
    play.does,
    choice(play, 'play-phone', t.phone.legend, [
      [t.phone.unchecked, { turned: false }],
      [t.phone.turned, { turned: true }],
    ]),
    choice(play, 'play-hand', t.hand.legend, [
      [t.hand.rests, { trembles: false }],
      [t.hand.trembles, { trembles: true }],
    ]),
    choice(play, 'play-surface', t.surface.legend, [
      [t.surface.metal, { surface: 'metal_face' }],
      [t.surface.sheet, { surface: 'sheet' }],
    ]),
    play.mostly,
    play.really,
    play.spoken,
  );
}

/** What each word follows from. */
function verdictWords(/** @type {Context} */ ctx) {
  const lines = t.verdicts.map(([verdict, what, then]) =>
    h('li', {}, verdictFrame(verdict, ctx.text.verdicts[verdict]), ` ${what} `, h('b', {}, then)),
  );
  return [h('h2', {}, t.follow), h('ul', { class: 'plain' }, ...lines)];
}

/** @param {Context} ctx */
export function plusMinus(ctx) {
  const play = h('div', {});
  const throws = h('div', {});
  exampleOf(ctx).then(
    (example) => {
      // The second picture leaves its own limit behind: the first one sets its own with each change.
      throws.append(throwsCard(example, FIRST_THROW));
      play.append(playCard(example));
    },
    () => play.append(h('p', { class: 'trouble', role: 'alert' }, ctx.text.storeErrors.unloaded)),
  );
  return frame(
    ctx,
    'plus_minus',
    t.title,
    [
      h('p', { class: 'caution' }, t.made),
      ...t.before.flatMap(prose),
      play,
      ...verdictWords(ctx),
      throws,
      ...list(t.smaller, t.does),
      ...list(t.smallerNot, t.doesNot),
    ],
    [button(t.done, 'plus-minus-done', () => history.back())],
  );
}
