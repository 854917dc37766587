// From a devicemotion event to the frame that shows a number which knows of it: median and 95th
// percentile, in the built page. Printed, not judged: it is this machine's Chromium.

import { launch, serve, tap, toLive } from '../browser/harness.mjs';

const EVENTS = 600;
const EVERY_MS = 1000 / 60;

const server = await serve();
const browser = await launch();
try {
  const { page } = browser;
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  await tap(page, 'tryout');
  await toLive(page, 'pump', ['tail']);
  const waits = await page.evaluate(
    ({ events, everyMs }) =>
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
    { events: EVENTS, everyMs: EVERY_MS },
  );
  waits.sort((a, b) => a - b);
  const at = (share) => Math.round(waits[Math.floor(share * (waits.length - 1))]);
  console.log(`median ${at(0.5)} ms, 95th percentile ${at(0.95)} ms, ${waits.length} events`);
} finally {
  await browser.close();
  await server.kill();
}
