// The whole job answered anew: every sheet of the invented job of the try-out, every check, every
// fact, by the page as built.

import { launch, serve, tap } from '../browser/harness.mjs';
import { median, quantile } from './figures.mjs';
import { onObjects } from './objects.mjs';

const TIMES = 400;

/** The page's context is the one thing that can say what the whole job has come to. */
const answerAnew = `(objects) => {
  const context = objects.find((o) => Object.hasOwn(o, 'engine') && Object.hasOwn(o, 'screens') && o.plan);
  return Array.from({ length: ${TIMES} }, () => {
    const begun = performance.now();
    const { items } = context.plan.stateOf(context);
    return { ms: performance.now() - begun, lines: items.length };
  });
}`;

export async function wholeJob() {
  const server = await serve();
  const browser = await launch();
  const { page } = browser;
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  await tap(page, 'tryout');
  await tap(page, 'demo');
  await page.waitForSelector('.caution[role="status"]');
  const cdp = await browser.context.newCDPSession(page);
  const times = await onObjects(cdp, 'Object.prototype', answerAnew);
  await browser.close();
  await server.kill();
  const ms = times.map((t) => t.ms);
  return { lines: times[0].lines, median_ms: median(ms), p95_ms: quantile(ms, 0.95) };
}
