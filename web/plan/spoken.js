// What a screen reader is told of a reading: the verdict, the value with its uncertainty, what to
// do, once it has stood still; not each of its repaints.

import { say, set } from '../dom.js';
import { uText, valueText, verdictNote, verdictWord, whatToDo } from '../sentences.js';
import { words as t } from '../words/spoken.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../sentences.js').CheckView} CheckView */

/** A verdict that stands for so long is told; the same one again not before so long. */
const [STILL_MS, AGAIN_MS] = [1500, 6000];

/** Signs as words. @param {string} shown */
export const aloud = (shown) =>
  shown
    .replaceAll('−', `${t.minus} `)
    .replaceAll('±', t.within)
    .replaceAll(/\s?°/g, ` ${t.degrees}`);

/** @param {Context} ctx @param {CheckView} v */
const nameOf = (ctx, v) => /** @type {Record<string, string>} */ (ctx.text.checks)[v.id];

/** @param {Context} ctx @param {CheckView} v */
const verdictOf = (ctx, v) => [verdictWord(ctx, v), verdictNote(ctx, v)].filter(Boolean).join(', ');

/** @param {Context} ctx @param {CheckView} v */
const numberOf = (ctx, v) => [valueText(ctx, v), uText(ctx, v)].filter(Boolean).join(', ');

/** Every answer as one text. @param {Context} ctx @param {CheckView[]} views */
export const answersAloud = (ctx, views) =>
  views
    .map((v) =>
      aloud(t.answer(nameOf(ctx, v), verdictOf(ctx, v), numberOf(ctx, v), whatToDo(ctx, v))),
    )
    .join(' ');

/** What is told while measuring. */
export class Told {
  #state = '';
  #since_ms = 0;
  #told = '';
  #told_ms = -AGAIN_MS;
  /** Reasons that were told on this screen: each once. @type {Set<string>} */ #reasons = new Set();
  /** Whether there was something else since it was told. */
  #left = true;

  /** @param {Context} ctx @param {Element} el the live region */
  constructor(ctx, el) {
    this.ctx = ctx;
    this.el = el;
  }

  /** At each tick. @param {string[] | null} reason why there is no reading, and what to do
   * @param {CheckView[]} views */
  show(reason, views) {
    const now_ms = performance.now();
    const state = reason?.join('. ') ?? views.map((v) => v.verdict).join();
    if (state !== this.#state) {
      this.#state = state;
      this.#since_ms = now_ms;
      this.#left = true;
    }
    if (!this.#left || now_ms - this.#since_ms < STILL_MS) return;
    const again = reason
      ? this.#reasons.has(state)
      : state === this.#told && now_ms - this.#told_ms < AGAIN_MS;
    if (again) return;
    this.#left = false;
    if (reason) this.#reasons.add(state);
    else [this.#told, this.#told_ms] = [state, now_ms];
    say(this.el, reason ? aloud(state) : answersAloud(this.ctx, views));
  }

  /** A drawing's text. @param {Element} el @param {CheckView | undefined} v
   * @param {string} reason the word where there is no reading */
  describe(el, v, reason) {
    const { ctx } = this;
    const label = v
      ? aloud(t.drawing(nameOf(ctx, v), verdictOf(ctx, v), numberOf(ctx, v)))
      : reason;
    if (el.getAttribute('aria-label') === label) return;
    set(el, { 'aria-hidden': null, role: 'img', 'aria-label': label });
  }
}
