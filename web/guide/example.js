// A made-up phone on a made-up heater, read by a core of its own: nothing of it can reach the job,
// and whatever comes out is the core's answer to samples such as a browser sends.

import { openBorder } from '../border.js';
import { loadModule } from '../module.js';
import { viewsOfLive } from '../sentences.js';
import { normals } from './chance.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {[number, number, number]} Vector */
/**
 * One reading to be made.
 * @typedef {object} Scene
 * @property {number} really_deg how the outlet really lies
 * @property {number} seed of the noise
 * @property {Vector} zero of the phone's sensor, m/s²
 * @property {Vector} [scale] of the phone's sensor, 1 unless told
 * @property {'metal_face' | 'sheet'} surface
 * @property {boolean} turned whether it is read again, turned end for end
 * @property {boolean} trembles
 * @property {[number, number]} [lies_deg] how crookedly the phone lies, about two axes
 */

const G = 9.80665;
const RAD = Math.PI / 180;
const PERIOD_MS = 1000 / 60;
const SAMPLES = 75;
const NOISE_M_S2 = 0.02;
/** A hand that holds a phone free in the air; a hand that carries it. */
const TREMBLE_M_S2 = 0.25;
const CARRY_M_S2 = 3;
/** Browsers round acceleration to this (W3C). */
const STEP_M_S2 = 0.1;
const PART = 'heater';
const HOLD = 'back';
export const CHECK = 'heater_outlet';

/** The invented manual says "at most"; none of it is anybody's.
 * @param {import('../types.js').LimitSet} blank @param {number} high_deg @param {string} source */
function limitsOf(blank, high_deg, source) {
  const told = { high_deg, basis: /** @type {const} */ ('manual'), source };
  const lines = blank.lines.map((l) => (l.check === CHECK ? { ...l, ...told } : l));
  return { ...blank, lines };
}

/** Up in the device, of a phone on its back.
 * @param {number[]} rotation body = R · device @param {number} elevation_deg
 * @param {[number, number]} lies_deg @returns {Vector} */
function upOf(rotation, elevation_deg, [along_deg, across_deg]) {
  const e = (elevation_deg + along_deg) * RAD;
  const a = across_deg * RAD;
  const body = [Math.sin(e), Math.cos(e) * Math.sin(a), Math.cos(e) * Math.cos(a)];
  const device = [0, 1, 2].map((i) => body.reduce((sum, v, k) => sum + rotation[3 * k + i] * v, 0));
  return /** @type {Vector} */ (device);
}

/** @param {number} v m/s² */
const asBrowsersDo = (v) => Math.round(v / STEP_M_S2) * STEP_M_S2;

/** Modules that were made here so far. The page's own are numbered upwards. */
let made = 0;

export class Example {
  #t_ms = 0;

  /** @param {Context} ctx @param {import('../engine.js').Border} border */
  constructor(ctx, border) {
    this.border = border;
    const engine = {
      catalogue: border.catalogue,
      /** @template T @param {(live: import('../border.js').Live) => T} use */
      call: (use) => use(border.live),
    };
    const placements = border.catalogue.parts.find((p) => p.id === PART)?.placements ?? [];
    this.placement = placements.find((p) => p.hold === HOLD) ?? placements[0];
    /** What screens show a reading of: the page's words and units, this core, these limits. */
    this.shown = /** @type {Context} */ (
      Object.assign(Object.create(ctx), { engine, placement: this.placement })
    );
    border.live.set_sign(1);
  }

  /** @param {Context} ctx */
  static async load(ctx) {
    made -= 1;
    return new Example(ctx, openBorder(await loadModule('phone', made)));
  }

  /** @param {number} high_deg @param {string} source */
  setLimit(high_deg, source) {
    const limits = limitsOf(this.border.blankLimits(), high_deg, source);
    this.border.setLimits(limits);
    this.shown.limits = limits;
  }

  /** Standard uncertainty that core assumes of how a phone lies on a surface, degrees.
   * @param {string} surface */
  holdOf(surface) {
    const { surfaces } = this.border.catalogue.blank_limits;
    return surfaces.find((s) => s.surface === surface)?.hold_deg ?? 0;
  }

  /** What core makes of it: a reading, or the reason why there is none.
   * @param {Scene} scene */
  read(scene) {
    const { live } = this.border;
    this.border.select(PART, HOLD, scene.surface);
    live.forget_placements();
    // The drawing shows which end is lower.
    this.border.tellEnd(CHECK, 'photo');
    const lies = scene.lies_deg ?? [0, 0];
    const up = upOf(this.placement.rotation, scene.really_deg, lies);
    const normal = normals(scene.seed);
    // What lay there before is forgotten.
    this.#t_ms += 5000;
    let code = this.#feed(scene, up, normal);
    if (scene.turned && code === 0) {
      live.keep_placement();
      this.#feed(scene, up, normal, CARRY_M_S2);
      live.tell_turned();
      code = this.#feed(scene, [-up[0], -up[1], up[2]], normal);
    }
    const reason = this.border.catalogue.reasons[code];
    const views = reason ? [] : viewsOfLive(this.shown);
    return { reason, views: views.find((v) => v.parked.id === CHECK) ?? null };
  }

  /** Some rest, or some shaking. @param {Scene} scene @param {Vector} up @param {() => number} normal
   * @param {number} shake_m_s2 */
  #feed(scene, up, normal, shake_m_s2 = scene.trembles ? TREMBLE_M_S2 : 0) {
    const { live } = this.border;
    const spread = Math.hypot(NOISE_M_S2, shake_m_s2);
    for (let i = 0; i < SAMPLES; i += 1) {
      this.#t_ms += PERIOD_MS;
      const [x, y, z] = up.map((v, k) =>
        asBrowsersDo((scene.scale?.[k] ?? 1) * G * v + scene.zero[k] + spread * normal()),
      );
      live.motion(this.#t_ms, x, y, z);
    }
    return live.tick(this.#t_ms);
  }
}
