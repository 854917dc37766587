// A simulated phone. It makes the browser's own events, on the window where real ones enter, after
// a browser's rounding; nothing behind that point knows the difference.

const G = 9.80665;
const RAD = Math.PI / 180;

/** Rounds as browsers do: to a multiple, half away from zero.
 * @param {number} v @param {number} step */
export function rounded(v, step) {
  return Math.sign(v) * Math.round(Math.abs(v) / step + 1e-12) * step || 0;
}

/** @typedef {[number, number, number]} Vector */

/** β and γ, degrees, of an up vector in the device frame (W3C Z-X'-Y'').
 * @param {Vector} up @returns {[number, number]} */
export function anglesOf([x, y, z]) {
  const beta = Math.asin(Math.max(-1, Math.min(1, y)));
  const gamma = Math.atan2(-x, z);
  // The standard keeps γ within ±90° and lets β run on.
  if (Math.abs(gamma) <= Math.PI / 2) return [beta / RAD, gamma / RAD];
  const turned = (beta >= 0 ? Math.PI : -Math.PI) - beta;
  return [turned / RAD, (gamma > 0 ? gamma - Math.PI : gamma + Math.PI) / RAD];
}

/** Dispatches what a browser would send for these values.
 * @param {Vector | null} acceleration m/s², up at rest @param {Vector | null} up */
export function send(acceleration, up, { rounding = true } = {}) {
  if (up) {
    const [beta, gamma] = anglesOf(up).map((a) => (rounding ? rounded(a, 0.1) : a));
    dispatchEvent(
      new DeviceOrientationEvent('deviceorientation', { alpha: 0, beta, gamma, absolute: false }),
    );
  }
  const [x, y, z] = acceleration?.map((v) => (rounding ? rounded(v, 0.1) : v)) ?? [
    null,
    null,
    null,
  ];
  dispatchEvent(
    new DeviceMotionEvent('devicemotion', {
      accelerationIncludingGravity: { x, y, z },
      interval: 16,
    }),
  );
}

/** A normal deviate (Box and Muller). */
function normal() {
  return Math.sqrt(-2 * Math.log(1 - Math.random())) * Math.cos(2 * Math.PI * Math.random());
}

/** @param {Vector} v @returns {Vector} */
function unit(v) {
  const length = Math.hypot(...v);
  return /** @type {Vector} */ (v.map((c) => c / length));
}

const PERIOD_MS = 1000 / 60;
/** What this phone is like: an invented one. */
const ZERO = /** @type {Vector} */ ([0.04, -0.05, 0.03]);
const NOISE = 0.02;
const LAG_S = 0.4;

/** The simulated phone: it moves towards a pose and rests there. */
export class SimulatedPhone {
  /** Elevation and roll of the part's body, degrees. */
  elevation = 8;
  roll = 0;
  /** Rotation of the placement: body = R · device, row-major. */
  rotation = [0, 1, 0, -1, 0, 0, 0, 0, 1];
  #shown = { elevation: 8, roll: 0 };
  /** @type {Vector} */ #fused = [0, 0, 1];
  /** @type {[number, number] | null} */ #sent = null;
  #knock = 0;
  /** @type {ReturnType<typeof setInterval> | undefined} */ #timer;

  start() {
    this.#timer ??= setInterval(() => this.#step(), PERIOD_MS);
  }

  stop() {
    clearInterval(this.#timer);
    this.#timer = undefined;
  }

  knock() {
    this.#knock = 12;
  }

  /** @returns {Vector} up in the device frame */
  #up() {
    const e = this.#shown.elevation * RAD;
    const r = this.#shown.roll * RAD;
    const body = [Math.sin(e), Math.cos(e) * Math.sin(r), Math.cos(e) * Math.cos(r)];
    const R = this.rotation;
    return /** @type {Vector} */ (
      [0, 1, 2].map((i) => body[0] * R[i] + body[1] * R[3 + i] + body[2] * R[6 + i])
    );
  }

  #step() {
    for (const axis of /** @type {const} */ (['elevation', 'roll'])) {
      const gap = this[axis] - this.#shown[axis];
      this.#shown[axis] = Math.abs(gap) < 0.05 ? this[axis] : this.#shown[axis] + 0.12 * gap;
    }
    const up = this.#up();
    const follow = PERIOD_MS / 1000 / LAG_S;
    const felt = unit(/** @type {Vector} */ (up.map((v, i) => v + ZERO[i] / G)));
    this.#fused = unit(
      /** @type {Vector} */ (this.#fused.map((v, i) => v + follow * (felt[i] - v))),
    );
    const shake = this.#knock > 0 ? 3 : 0;
    this.#knock -= 1;
    const a = /** @type {Vector} */ (
      up.map((v, i) => G * v + ZERO[i] + NOISE * normal() + shake * normal())
    );
    const [beta, gamma] = anglesOf(this.#fused).map((v) => rounded(v, 0.1));
    // Orientation events come only when the rounded angles change.
    const changed = this.#sent?.[0] !== beta || this.#sent?.[1] !== gamma;
    this.#sent = [beta, gamma];
    send(a, changed ? this.#fused : null);
  }
}
