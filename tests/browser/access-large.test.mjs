// Every screen for who needs large letters: 320 px wide, a page zoomed to 200 % and more (180 px wide),
// letters of 32 px as the browser's own, and letters and lines set apart as WCAG 1.4.12 asks. Nothing
// cut off, nothing over other text, no scrolling sideways, room left by what stays in sight.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { flowFaults } from './access-checks.mjs';
import { open, walk } from './access-walk.mjs';
import { FLAGS, served } from './harness.mjs';

const APART = `* { line-height: 1.5 !important; letter-spacing: 0.12em !important;
  word-spacing: 0.16em !important } p { margin-bottom: 2em !important }`;

const server = served();

/** Every screen's faults. @param {(page) => Promise<void>} [begin] before the walk */
async function faultsOn(t, options, begin = async () => {}) {
  const { page } = await open(t, server, options);
  await begin(page);
  const faults = [];
  await walk(page, async (name) => {
    await page.waitForTimeout(50);
    faults.push(...(await flowFaults(page)).map((f) => `${name}: ${f}`));
  });
  return faults;
}

for (const [width, height] of [
  [320, 640],
  [180, 370],
])
  test(`every screen at ${width} × ${height}`, async (t) => {
    assert.deepEqual(await faultsOn(t, { viewport: { width, height } }), []);
  });

test('every screen with letters of 32 px', async (t) => {
  const args = [...FLAGS, '--blink-settings=defaultFontSize=32'];
  const faults = await faultsOn(t, { args }, async (page) => {
    const size = await page.evaluate(() => getComputedStyle(document.querySelector('.body p')).fontSize);
    assert.ok(Number.parseFloat(size) >= 32, `the page follows the browser's letters: ${size}`);
  });
  assert.deepEqual(faults, []);
});

test('every screen with letters and lines apart', async (t) => {
  const faults = await faultsOn(t, {}, (page) =>
    page.evaluate((css) => {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync(css);
      document.adoptedStyleSheets = [sheet];
    }, APART),
  );
  assert.deepEqual(faults, []);
});
