// From a devicemotion event to the frame that shows a number which knows of it.

import { anglesOfUp, launch, serve, synthetic, toLive, upFor, waitReason } from '../browser/harness.mjs';
import { median, quantile } from './figures.mjs';

const EVENTS = 600;
const G_M_S2 = 9.80665;

/** What each of `events` events waited for, ms. @param {number} events */
function waitsOf(events) {
  return new Promise((done) => {
    const waits = [];
    let waiting = [];
    addEventListener('devicemotion', () => waiting.push(performance.now()), true);
    // The screen writes its reason anew each time it has asked the core.
    const asked = new MutationObserver(() => {
      const known = waiting;
      waiting = [];
      requestAnimationFrame(() =>
        setTimeout(() => {
          const shown = performance.now();
          waits.push(...known.map((t) => shown - t));
          if (waits.length >= events) done(waits);
        }),
      );
    });
    const live = document.querySelector('[data-screen="live"]');
    asked.observe(live, { attributeFilter: ['data-reason'] });
  });
}

export async function eventToPaint() {
  const server = await serve();
  const browser = await launch();
  const { page } = browser;
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  const up = upFor('long_edge', 27.3);
  await synthetic(page, { a: up.map((v) => v * G_M_S2), angles: anglesOfUp(up) });
  await toLive(page, 'pump', ['tail'], { hold: 'long_edge', surface: 'round_body' });
  await waitReason(page, '');
  const waits = await page.evaluate(waitsOf, EVENTS);
  await browser.close();
  await server.kill();
  return { median_ms: median(waits), p95_ms: quantile(waits, 0.95) };
}
