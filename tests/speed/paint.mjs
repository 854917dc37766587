// From a devicemotion event to the frame that shows a number which knows of it: median and 95th
// percentile, in the built page. Printed, not judged: it is this machine's Chromium.

import { anglesOfUp, launch, serve, synthetic, toLive, upFor, waitReason } from '../browser/harness.mjs';

const EVENTS = 600;
const G_M_S2 = 9.80665;

const server = await serve();
const browser = await launch();
try {
  const { page } = browser;
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  const up = upFor('long_edge', 27.3);
  await synthetic(page, { a: up.map((v) => v * G_M_S2), angles: anglesOfUp(up) });
  await toLive(page, 'pump', ['tail'], { hold: 'long_edge', surface: 'round_body' });
  await waitReason(page, '');
  const waits = await page.evaluate(
    (events) =>
      new Promise((done) => {
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
      }),
    EVENTS,
  );
  waits.sort((a, b) => a - b);
  const at = (share) => Math.round(waits[Math.floor(share * (waits.length - 1))]);
  console.log(`median ${at(0.5)} ms, 95th percentile ${at(0.95)} ms, ${waits.length} events`);
} finally {
  await browser.close();
  await server.kill();
}
