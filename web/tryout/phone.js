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

/** A device vector on the earth: turned by γ about y, β about x, α about z (W3C Z-X'-Y''), degrees.
 * @param {Vector} angles α, β, γ @param {Vector} v @returns {Vector} */
export function onEarth(angles, v) {
  const [[sa, ca], [sb, cb], [sg, cg]] = angles.map((a) => [Math.sin(a * RAD), Math.cos(a * RAD)]);
  const [x, w] = [cg * v[0] + sg * v[2], cg * v[2] - sg * v[0]];
  const [y, z] = [cb * v[1] - sb * w, sb * v[1] + cb * w];
  return [ca * x - sa * y, sa * x + ca * y, z];
}

/** α, degrees, that goes with β and γ where device axis i points along `axes[i]` on the earth. The
 * flattest axis tells it best.
 * @param {[number, number]} angles β, γ @param {Vector[]} axes */
function alphaOf([beta, gamma], axes) {
  const flat = axes.map(([x, y]) => Math.hypot(x, y));
  const i = flat.indexOf(Math.max(...flat));
  const unturned = onEarth(
    [0, beta, gamma],
    /** @type {Vector} */ ([0, 1, 2].map((k) => Number(k === i))),
  );
  const alpha = (Math.atan2(axes[i][1], axes[i][0]) - Math.atan2(unturned[1], unturned[0])) / RAD;
  return ((alpha % 360) + 360) % 360;
}

/** Dispatches what a browser would send for these values.
 * @param {Vector | null} acceleration m/s², up at rest
 * @param {Vector | null} angles α, β, γ, degrees */
export function send(acceleration, angles, { rounding = true } = {}) {
  if (angles) {
    const [alpha, beta, gamma] = angles;
    dispatchEvent(
      new DeviceOrientationEvent('deviceorientation', { alpha, beta, gamma, absolute: false }),
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
/** What this phone is like: an invented one, 0.7° too high lengthwise. */
const ZERO = /** @type {Vector} */ ([0.04, G * Math.sin(0.7 * RAD), 0.03]);
const NOISE = 0.02;
const LAG_S = 0.4;

/** Elevation and roll of a face, degrees, and how far the phone is turned about its normal.
 * @typedef {{ elevation: number, roll: number, turn: number }} Pose */

/** The simulated phone: it moves towards a pose and rests there. */
export class SimulatedPhone {
  /** Where it can lie: on the part, which the strip moves; on a table; on the rail of a vehicle that
   * is parked on a slope. */
  places = {
    part: { elevation: 8, roll: 0, turn: 0 },
    table: { elevation: 0.4, roll: -0.3, turn: 0 },
    rail: { elevation: 3, roll: -2, turn: 0 },
  };
  /** @type {'part' | 'table' | 'rail'} */ place = 'part';
  /** Rotation of the placement: body = R · device, row-major. */
  rotation = [0, 1, 0, -1, 0, 0, 0, 0, 1];
  /** @type {Pose} */ #shown = { ...this.places.part };
  /** @type {Vector} */ #fused = [0, 0, 1];
  #sent = '';
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

  /** The pose that it moves to. */
  get pose() {
    return this.places[this.place];
  }

  /** The device's axes on the earth. @returns {Vector[]} */
  #axes() {
    const { elevation, roll, turn } = this.#shown;
    const R = this.rotation;
    return [0, 1, 2].map((i) => {
      const [x, y, z] = [R[i], R[3 + i], R[6 + i]];
      // On the face, turned about its normal (z); rolled about x; then x raised: a turn about −y,
      // which is β = 0, γ = −elevation in the standard's order.
      const [c, s] = [Math.cos(turn * RAD), Math.sin(turn * RAD)];
      const [px, py] = [c * x - s * y, s * x + c * y];
      const [cr, sr] = [Math.cos(roll * RAD), Math.sin(roll * RAD)];
      return onEarth([0, 0, -elevation], [px, cr * py - sr * z, sr * py + cr * z]);
    });
  }

  #step() {
    for (const axis of /** @type {const} */ (['elevation', 'roll', 'turn'])) {
      const gap = this.pose[axis] - this.#shown[axis];
      this.#shown[axis] = Math.abs(gap) < 0.05 ? this.pose[axis] : this.#shown[axis] + 0.12 * gap;
    }
    const axes = this.#axes();
    const up = /** @type {Vector} */ (axes.map((axis) => axis[2]));
    const follow = PERIOD_MS / 1000 / LAG_S;
    const felt = unit(/** @type {Vector} */ (up.map((v, i) => v + ZERO[i] / G)));
    this.#fused = unit(
      /** @type {Vector} */ (this.#fused.map((v, i) => v + follow * (felt[i] - v))),
    );
    // A hand shakes it on the way.
    const moves = JSON.stringify(this.#shown) !== JSON.stringify(this.pose);
    const shake = this.#knock > 0 ? 3 : moves ? 0.5 : 0;
    this.#knock -= 1;
    const a = /** @type {Vector} */ (
      up.map((v, i) => G * v + ZERO[i] + NOISE * normal() + shake * normal())
    );
    const tilt = anglesOf(this.#fused);
    const angles = /** @type {Vector} */ (
      [alphaOf(tilt, axes), ...tilt].map((v) => rounded(v, 0.1))
    );
    // Orientation events come only when the rounded angles change.
    const changed = this.#sent !== angles.join();
    this.#sent = angles.join();
    send(a, changed ? angles : null);
  }
}
