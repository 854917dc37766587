// The core in the page: loads it, and builds it anew when it traps. After a trap nothing of the
// old instance is shown: callers get `undefined`, and the next tick has no reading yet.

import { openBorder } from './border.js';
import { loadModule } from './module.js';
import { wall } from './wall.js';

/** @typedef {ReturnType<typeof openBorder>} Border */
/** @typedef {import('./border.js').Live} Live */
/** @typedef {import('./types.js').VehicleTerms} VehicleTerms */

/** @param {number} again */
async function load(again) {
  /** @type {import('./border.js').Module} */
  const module = await loadModule('phone', again);
  return openBorder(module);
}

export class Engine {
  #again = 0;
  /** @type {Border} */ #border;
  /** @type {Live | null} */ #live;
  /** @type {[string, string, string] | null} */ #chosen = null;
  /** A table, a rail or a floor in place of the part that was chosen. @type {[string, string] | null} */
  #face = null;
  /** @type {import('./types.js').LimitSet | null} */ #limits = null;
  /** @type {VehicleTerms | null} */ #vehicle = null;
  /** @type {number[]} */ #findings = [];
  #device = 0;
  #inCase = false;
  #pointing = 'same';
  #sign = 0;
  /** @type {Map<string, string | null>} */ #ends = new Map();
  /** Called after every trap. */
  onTrap = () => {};
  /** Called with the hold that a placement asks for. @type {(hold: string) => void} */
  onHold = () => {};

  /** @param {Border} border */
  constructor(border) {
    this.#border = border;
    this.#live = border.live;
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

  /**
   * The same where core may refuse, by a number below zero: what came out, or the refusal's name.
   * @template T
   * @param {(live: Live, border: Border) => T} use
   * @returns {{ value?: T, refusal: string }}
   */
  attempt(use) {
    try {
      const value = this.call(use);
      const refused = typeof value === 'number' && value < 0;
      if (refused) return { refusal: this.#border.refusalName(value) };
      return { value, refusal: this.trapped ? 'trapped' : '' };
    } catch (error) {
      return { refusal: /** @type {Error} */ (error).message };
    }
  }

  /** Answers anew: null for a reading, else the reason. @returns {string | null} */
  tick() {
    const code = this.call((live) => {
      live.set_clock(wall());
      return live.tick(performance.now());
    });
    return code === undefined ? 'trapped' : this.catalogue.reasons[code];
  }

  async #rebuild() {
    this.#live = null;
    this.onTrap();
    this.#again += 1;
    const border = await load(this.#again);
    const { live } = border;
    this.#border = border;
    this.#live = live;
    if (this.#limits) border.setLimits(this.#limits);
    if (this.#vehicle) border.setVehicle(this.#vehicle);
    live.set_sign(this.#sign);
    live.set_device(this.#device, this.#inCase);
    border.restoreFindings(this.#findings);
    border.point(this.#pointing);
    this.#choose(border);
  }

  /** @param {Border} border */
  #choose(border) {
    if (this.#face) return border.selectFace(...this.#face);
    if (this.#chosen) border.select(...this.#chosen);
    for (const [check, end] of this.#ends) border.tellEnd(check, end);
  }

  /**
   * @param {string} part
   * @param {string} hold
   * @param {string} surface
   */
  select(part, hold, surface) {
    this.call((_, border) => border.select(part, hold, surface));
    this.#chosen = [part, hold, surface];
    this.#face = null;
    this.#ends.clear();
    this.onHold(hold);
  }

  /** A table, or the vehicle's rail or floor, until the part is wanted again.
   * @param {string} hold @param {string} surface */
  selectFace(hold, surface) {
    this.#face = [hold, surface];
    this.call((_, border) => this.#choose(border));
    this.onHold(hold);
  }

  /** Back to the part that was chosen, and to one placement. */
  backToPart() {
    const away = this.#face !== null;
    this.#face = null;
    if (away && this.#chosen) this.onHold(this.#chosen[1]);
    this.call((live, border) => {
      if (away) this.#choose(border);
      else live.forget_placements();
    });
  }

  /**
   * @param {string} check
   * @param {string | null} end
   */
  tellEnd(check, end) {
    this.call((_, border) => border.tellEnd(check, end));
    this.#ends.set(check, end);
  }

  /** @param {string} pointing */
  point(pointing) {
    this.#pointing = pointing;
    this.call((_, border) => border.point(pointing));
  }

  /** @param {import('./types.js').LimitSet} set */
  setLimits(set) {
    this.call((_, border) => border.setLimits(set));
    this.#limits = set;
  }

  /** An error's message is the field that can't be. @param {VehicleTerms} terms */
  setVehicle(terms) {
    this.call((_, border) => border.setVehicle(terms));
    this.#vehicle = terms;
  }

  /** @param {number} number @param {boolean} inCase */
  setDevice(number, inCase) {
    [this.#device, this.#inCase] = [number, inCase];
    this.call((live) => live.set_device(number, inCase));
  }

  /** @param {number[]} rows */
  restoreFindings(rows) {
    this.#findings = rows;
    this.call((_, border) => border.restoreFindings(rows));
  }

  /** What has been found so far, to be kept. */
  takeFindings() {
    this.#findings = this.call((_, border) => border.findings()) ?? this.#findings;
    return this.#findings;
  }

  /** When this phone was last checked on a side, ms, or null. @param {string} hold */
  foundAt(hold) {
    return this.call((_, border) => border.foundAt(this.#device, this.#inCase, hold)) ?? null;
  }

  /** Whether that still counts. @param {string} hold */
  foundCounts(hold) {
    return this.call((_, border) => border.foundCounts(this.#device, this.#inCase, hold)) ?? false;
  }

  /** The report of the last tick's reading. */
  capture() {
    return this.call((_, border) => border.capture(this.#limits));
  }

  /** Whether the vehicle's level that is kept still counts. */
  levelCounts() {
    return this.call((live) => live.level_counts(wall())) ?? false;
  }

  /** @param {number} sign */
  setSign(sign) {
    this.#sign = sign;
    this.call((live) => live.set_sign(sign));
  }

  /** The sign as learnt; kept for a rebuild. */
  get sign() {
    const sign = this.call((live) => live.sign()) ?? 0;
    if (sign) this.#sign = sign;
    return sign;
  }

  /** Rotation of a hold, row-major, body = R · device. @param {string} hold */
  rotationOf(hold) {
    const placements = this.catalogue.parts.flatMap((p) => p.placements);
    return placements.find((p) => p.hold === hold)?.rotation ?? [];
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
