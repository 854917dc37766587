// The core in the page: loads it, and builds it anew when it traps. After a trap nothing of the
// old instance is shown: callers get `undefined`, and the next tick has no reading yet.

import { openBorder } from './border.js';

/** @typedef {ReturnType<typeof openBorder>} Border */
/** @typedef {import('./pkg/plumbmark_wasm.js').Live} Live */

/** @param {number} again */
async function load(again) {
  // Another address is another module instance; the service worker ignores what follows "?".
  const url = new URL(`./pkg/plumbmark_wasm.js${again ? `?again=${again}` : ''}`, import.meta.url);
  /** @type {typeof import('./pkg/plumbmark_wasm.js')} */
  const pkg = await import(url.href);
  await pkg.default();
  return openBorder(pkg);
}

export class Engine {
  #again = 0;
  /** @type {Border} */ #border;
  /** @type {Live | null} */ #live;
  /** @type {[string, string, string] | null} */ #chosen = null;
  /** @type {unknown} */ #limits = null;
  #sign = 0;
  /** @type {Map<string, string | null>} */ #ends = new Map();
  /** Called after every trap. */
  onTrap = () => {};

  /** @param {Border} border */
  constructor(border) {
    this.#border = border;
    this.#live = border.newLive();
  }

  get catalogue() {
    return this.#border.catalogue;
  }

  /** Whether the core has died and its successor is not there yet. */
  get trapped() {
    return this.#live === null;
  }

  /**
   * Runs `use` on the live core. An error of the core's own passes; a trap rebuilds.
   * @template T
   * @param {(live: Live, border: Border) => T} use
   * @returns {T | undefined}
   */
  call(use) {
    if (!this.#live) return undefined;
    try {
      return use(this.#live, this.#border);
    } catch (error) {
      if (!(error instanceof WebAssembly.RuntimeError)) throw error;
      this.#rebuild();
      return undefined;
    }
  }

  async #rebuild() {
    this.#live = null;
    this.onTrap();
    this.#again += 1;
    const border = await load(this.#again);
    const live = border.newLive();
    this.#border = border;
    this.#live = live;
    if (this.#limits) border.setLimits(live, this.#limits);
    live.set_sign(this.#sign);
    if (this.#chosen) border.select(live, ...this.#chosen);
    for (const [check, end] of this.#ends) border.tellEnd(live, check, end);
  }

  /**
   * @param {string} part
   * @param {string} hold
   * @param {string} surface
   */
  select(part, hold, surface) {
    this.call((live, border) => border.select(live, part, hold, surface));
    this.#chosen = [part, hold, surface];
    this.#ends.clear();
  }

  /**
   * @param {string} check
   * @param {string | null} end
   */
  tellEnd(check, end) {
    this.call((live, border) => border.tellEnd(live, check, end));
    this.#ends.set(check, end);
  }

  /** @param {unknown} set */
  setLimits(set) {
    this.call((live, border) => border.setLimits(live, set));
    this.#limits = set;
  }

  /** @param {number} sign */
  setSign(sign) {
    this.#sign = sign;
    this.call((live) => live.set_sign(sign));
  }

  /** The sign as learnt; kept for a rebuild. */
  get sign() {
    const sign = this.call((live) => live.sign) ?? 0;
    if (sign) this.#sign = sign;
    return sign;
  }

  defaultLimits() {
    return this.#border.defaultLimits();
  }

  blankLimits() {
    return this.#border.blankLimits();
  }

  /** @param {unknown} set */
  checkLimits(set) {
    return this.#border.checkLimits(set);
  }
}

export async function loadEngine() {
  return new Engine(await load(0));
}
