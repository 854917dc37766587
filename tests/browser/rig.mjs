// A phone with a zero of its own, laid on things and turned on them; fed through the browser's own
// sensor overrides. Written from the words of the holds, not from the core's matrices.

import assert from 'node:assert/strict';
import { endForEnd, launch, sensors, tap, waitReason } from './harness.mjs';

const G = 9.80665;
const sin = (deg) => Math.sin((deg * Math.PI) / 180);

/** Up on a face under the phone's back, its head end raised by `along`, its left side by `across`. */
export const onBack = (along, across = 0) => {
  const [x, y] = [-sin(across), sin(along)];
  return [x, y, Math.sqrt(1 - x * x - y * y)];
};

/** How the vehicle is parked: its front up, its left side down. */
export const PARKED = { along: 4, across: -2 };

/**
 * Up, felt by a phone on its back on a part that makes `deg` with the vehicle's floor, its head end
 * pointing `heading` to the left of the vehicle's front. By definition: the part's axes in the
 * vehicle, each times up in the vehicle.
 */
export function upOnPart(deg, heading, { along, across } = PARKED) {
  const [s, c] = [Math.sin((deg * Math.PI) / 180), Math.cos((deg * Math.PI) / 180)];
  const [sh, ch] = [Math.sin((heading * Math.PI) / 180), Math.cos((heading * Math.PI) / 180)];
  const [right, front, top] = onBack(along, across);
  const up = [front, -right, top];
  const dot = (axis) => axis.reduce((sum, v, i) => sum + v * up[i], 0);
  const head = dot([c * ch, c * sh, s]);
  const left = dot([-sh, ch, 0]);
  const out = dot([-s * ch, -s * sh, c]);
  // Top edge to the head end; the phone's left side is the part's left.
  return [-left, head, out];
}

/** Up of a phone on its back that was turned by a quarter, anticlockwise from above. */
const quarter = ([x, y, z]) => [y, -x, z];

/** A browser on the first screen, fed by a phone that reads `zeroDeg` too high towards its top edge. */
export async function rig(server, { zeroDeg = 0, ...options } = {}) {
  const b = await launch(options);
  b.page.setDefaultTimeout(12_000);
  const feed = await sensors(b);
  const zero = sin(zeroDeg);
  const now = { up: [0, 0, 1], alpha: 10, shake: 0 };
  const random = () => Math.random() + Math.random() - 1;
  feed.keep(() => {
    const felt = now.up.map((v, i) => v + (i === 1 ? zero : 0));
    const extra = [0, 1, 2].map((i) => (i === 1 ? G * zero : 0) + (0.02 + now.shake) * random());
    const length = Math.hypot(...felt);
    return { up: now.up, extra, fused: felt.map((v) => v / length), alpha: now.alpha };
  });
  await b.page.goto(server.url);
  await b.page.waitForSelector('[data-screen="start"]');
  /** By hand: it shakes on the way. */
  const move = async (up, turned = 0) => {
    now.shake = 3;
    await b.page.waitForTimeout(250);
    now.up = up;
    now.alpha = (now.alpha + turned) % 360;
    await b.page.waitForTimeout(250);
    now.shake = 0;
    // What rested before is not taken for what rests now.
    await b.page.waitForTimeout(250);
  };
  return {
    ...b,
    lay: (up) => move(up),
    turnEnd: (hold) => move(endForEnd(hold, now.up), 180),
    turnQuarter: () => move(quarter(now.up), 90),
    /** The same, but as if the browser saw no turn. */
    turnUnseen: (hold) => move(endForEnd(hold, now.up)),
    /** Tipped: turned as the browser says, to any other up. */
    tip: (up) => move(up, 180),
    async end() {
      feed.stop();
      await b.close();
      assert.deepEqual(b.faults, [], 'the page logged no error');
    },
  };
}

/** Taps "Keep" once the phone rests. */
export async function keep(page, action = 'keep', screen = 'turn') {
  await waitReason(page, '', { screen });
  await tap(page, action);
}

/** The first number of a text, typographic minus included. */
export const numberIn = (text) => Number(text.replace('−', '-').match(/-?[\d.]+/)?.[0] ?? NaN);

/** Back to the list of parts, from anywhere behind it. */
export async function toParts(page) {
  for (let i = 0; i < 12 && !(await page.$('[data-screen="parts"]')); i += 1) {
    await page.goBack();
    await page.waitForTimeout(80);
  }
  await page.waitForSelector('[data-screen="parts"]');
}
