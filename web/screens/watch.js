// What every measuring screen does: ticks, says why there is no reading, and lets its button be
// tapped only when there is one.

import { button, h, say } from '../dom.js';
import { askPermission } from '../phone.js';

/** @typedef {import('../context.js').Context} Context */

const TICK_MS = 120;

export class Watch {
  #ctx;
  #label;
  #waiting;
  /** @type {string | null | undefined} */ #reason;

  /**
   * @param {Context} ctx @param {string} label @param {string} action @param {() => void} take
   * @param {string} [waiting] what the button says without a reading
   */
  constructor(ctx, label, action, take, waiting = ctx.text.live.waiting) {
    this.#ctx = ctx;
    this.#label = label;
    this.#waiting = waiting;
    this.hint = h('p', { class: 'does' });
    this.progress = h('progress', { max: 1, value: 0, 'aria-label': ctx.text.live.waiting });
    this.take = button(label, action, take);
    /** Stands in for it where the sensor's sign, or the sensors, must be asked for. */
    this.ask = button('', 'sign', () => (ctx.feeding ? this.#askSign() : this.#askSensors()));
    this.ask.hidden = true;
  }

  /** Whoever came by the list of jobs, or after a reload, was never asked. Where a browser asks
   * nobody they are there at once, elsewhere by a tap. */
  #askSensors(tapped = true) {
    askPermission().then((answer) => {
      if (answer === 'granted') this.#ctx.useSensors();
      else if (tapped) say(this.hint, this.#ctx.text.sensors[answer]);
    });
  }

  #askSign() {
    const { engine, text } = this.#ctx;
    if (this.#reason === 'sign_flipped') return engine.setSign(0);
    const sign = engine.call((l) => l.learn_sign_face_up()) ?? 0;
    if (sign) this.#ctx.keep({ sign });
    else say(this.hint, text.faceUp.again);
  }

  /** Answers anew; null for a reading, else the reason. */
  tick() {
    const { engine, text } = this.#ctx;
    const reason = engine.tick();
    const { feeding } = this.#ctx;
    const asks = !feeding || reason === 'sign_unknown' || reason === 'sign_flipped';
    this.ask.hidden = !asks;
    if (!feeding) say(this.ask, text.start.allow);
    else if (asks) say(this.ask, reason === 'sign_unknown' ? text.faceUp.button : text.learnAgain);
    this.take.hidden = asks;
    this.take.disabled = reason !== null;
    say(this.take, reason ? this.#waiting : this.#label);
    this.progress.value = reason ? (engine.call((l) => l.progress()) ?? 0) : 1;
    // A hint that answers a tap stays until the state changes.
    if (reason !== this.#reason && feeding) say(this.hint, this.words(reason)[1]);
    this.#reason = reason;
    if (!reason) this.#ctx.rememberSign();
    return reason;
  }

  /** A reason's word, and what to do. @param {string | null} reason */
  words(reason) {
    if (!reason) return ['', ''];
    return /** @type {Record<string, string[]>} */ (this.#ctx.text.reasons)[reason];
  }

  /** Ticks while the screen is open.
   * @template {HTMLElement} T @param {T} el @param {() => void} onTick */
  follow(el, onTick) {
    /** @type {ReturnType<typeof setInterval> | undefined} */
    let timer;
    return Object.assign(el, {
      enter: () => {
        // Outside a tap those that ask refuse: then the button asks.
        if (!this.#ctx.feeding) this.#askSensors(false);
        onTick();
        timer = setInterval(onTick, TICK_MS);
      },
      leave() {
        clearInterval(timer);
      },
    });
  }
}
