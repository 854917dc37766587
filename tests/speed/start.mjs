// How long somebody waits: for the first screen, for a page that needs no network any more, for the
// first number.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DIST, launch, sensors, serve, upFor } from '../browser/harness.mjs';
import { slowHost } from './host.mjs';

/** A cheap phone beside this machine. */
const SLOWER = 4;
/** What a reading is made of at 60 samples a second: 5 batches of 13. No page can be quicker. */
export const READING_MS = Math.round((5 * 13 * 1000) / 60);
/** An edge of a mobile network. */
const SLOW = { rtt_ms: 400, bytes_per_s: 50_000 };

/** Notes when the first screen is painted, ms from the start of navigation. */
function noteFirstScreen() {
  const look = new MutationObserver(() => {
    if (!document.querySelector('[data-screen="start"] [data-action="allow"]')) return;
    look.disconnect();
    requestAnimationFrame(() =>
      setTimeout(() => {
        window.firstScreen = performance.now();
      }),
    );
  });
  look.observe(document, { childList: true, subtree: true });
}

async function opened(url, profile) {
  const browser = await launch({ profile });
  const cdp = await browser.context.newCDPSession(browser.page);
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  await browser.page.addInitScript(noteFirstScreen);
  const feed = await sensors(browser);
  feed.keep(() => ({ up: upFor('back', 22), extra: [0, 0, 0].map(() => 0.04 * (Math.random() - 0.5)) }));
  await browser.page.goto(url, { waitUntil: 'commit' });
  const first = await browser.page.waitForFunction(() => window.firstScreen, null, { timeout: 60_000 });
  return { browser, feed, first_ms: await first.jsonValue() };
}

/** Nothing in the cache, a slow network, a slow CPU. */
export async function firstVisit(dist = DIST) {
  const host = await slowHost(dist, SLOW);
  const { browser, feed, first_ms } = await opened(host.url);
  const first_bytes = host.sent();
  const offline_ms = await browser.page.evaluate(() =>
    navigator.serviceWorker.ready.then(() => performance.now()),
  );
  feed.stop();
  await browser.close();
  host.kill();
  return { first_ms, offline_ms, first_bytes, bytes: host.sent() };
}

/** Taps whatever comes next as soon as it is there; ms from the tap that allows the sensors to the
 * number's frame. */
function toFirstNumber() {
  const steps = ['allow', 'part-pump', 'hold-next', 'end-tail'];
  const begun = performance.now();
  return new Promise((done) => {
    const step = () => {
      const button = document.querySelector(`[data-action="${steps[0]}"]`);
      if (button) {
        button.click();
        steps.shift();
      }
      const value = document.querySelector('[data-screen="live"] .value');
      if (value?.textContent) return setTimeout(() => done(performance.now() - begun));
      requestAnimationFrame(step);
    };
    step();
  });
}

/** Visited before; then no network, a browser started anew, a slow CPU. */
export async function offlineStart(dist = DIST) {
  const profile = mkdtempSync(join(tmpdir(), 'plumbmark-'));
  const server = await serve({ dist });
  const before = await launch({ profile });
  await before.page.goto(server.url);
  await before.page.evaluate(() => navigator.serviceWorker.ready.then(() => {}));
  await before.page.waitForTimeout(500);
  await before.close();
  await server.kill();
  const { browser, feed, first_ms } = await opened(server.url, profile);
  // Nobody taps sooner.
  await browser.page.waitForTimeout(1000);
  const number_ms = await browser.page.evaluate(toFirstNumber);
  feed.stop();
  await browser.close();
  rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  return { first_ms, number_ms };
}
