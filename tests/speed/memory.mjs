// An hour of events, 60 a second, with the answers that the live screen gives meanwhile: what is left
// in the heap once everything is collected, and whether the core's memory has grown.

import { anglesOfUp, launch, serve, toLive, upFor } from '../browser/harness.mjs';
import { onObjects } from './objects.mjs';

export const EVENTS = 216_000;
/** Until the engine has compiled what it is going to compile. */
const WARM_EVENTS = 36_000;
const G_M_S2 = 9.80665;

/** The page's clock and timers by the count of events: an hour passes in seconds. */
function driveTimers() {
  const timers = new Map();
  let now_ms = performance.now();
  performance.now = () => now_ms;
  window.setInterval = (act, every_ms) => {
    timers.set(act, { every_ms, due_ms: now_ms + every_ms });
    return act;
  };
  window.clearInterval = (act) => timers.delete(act);
  const send = (event) => {
    Object.defineProperty(event, 'timeStamp', { value: now_ms });
    dispatchEvent(event);
  };
  const sample = ([x, y, z], [beta, gamma]) => {
    now_ms += 1000 / 60;
    const noise = () => 0.04 * (Math.random() - 0.5);
    send(new DeviceOrientationEvent('deviceorientation', { alpha: 0, beta, gamma }));
    const accelerationIncludingGravity = { x: x + noise(), y: y + noise(), z: z + noise() };
    send(new DeviceMotionEvent('devicemotion', { accelerationIncludingGravity, interval: 1000 / 60 }));
    for (const [act, timer] of timers) {
      if (timer.due_ms > now_ms) continue;
      timer.due_ms += timer.every_ms;
      act();
    }
  };
  window.sendSamples = async (count, a, angles) => {
    for (let i = 1; i <= count; i += 1) {
      sample(a, angles);
      if (i % 600 === 0) await new Promise((done) => setTimeout(done));
    }
    return document.querySelector('[data-screen="live"]').dataset.reason;
  };
}

/** Bytes that are in use once nothing is left to collect. */
async function used(cdp) {
  await cdp.send('HeapProfiler.collectGarbage');
  await cdp.send('HeapProfiler.collectGarbage');
  const { usedSize, embedderHeapUsedSize = 0 } = await cdp.send('Runtime.getHeapUsage');
  return usedSize + embedderHeapUsedSize;
}

const coreBytes = (cdp) =>
  onObjects(
    cdp,
    'WebAssembly.Memory.prototype',
    '(memories) => memories.reduce((sum, m) => sum + m.buffer.byteLength, 0)',
  );

export async function anHour() {
  const server = await serve();
  const browser = await launch();
  const { page } = browser;
  await page.addInitScript(driveTimers);
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  await toLive(page, 'pump', ['tail']);
  const cdp = await browser.context.newCDPSession(page);
  const up = upFor('back', 27.3);
  const send = (count) =>
    page.evaluate(
      ([count, a, angles]) => window.sendSamples(count, a, angles),
      [count, up.map((v) => G_M_S2 * v), anglesOfUp(up)],
    );
  await send(WARM_EVENTS);
  const before = { heap: await used(cdp), core: await coreBytes(cdp) };
  const reason = await send(EVENTS);
  const after = { heap: await used(cdp), core: await coreBytes(cdp) };
  await browser.close();
  await server.kill();
  if (reason !== '') throw new Error(`the hour ended without a reading: ${reason}`);
  return { heap_bytes: after.heap - before.heap, core_bytes: after.core - before.core };
}
