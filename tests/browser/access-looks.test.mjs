// Verdicts for eyes that tell no colours apart, in colours of the reader's own, and the page for the
// left hand. The line round a verdict carries it; the pictures are for a person to look at, in
// shots/latest.

import assert from 'node:assert/strict';
import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { after, before, test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { axe, serve, tap, toLive, waitReason } from './harness.mjs';
import { measuring, open } from './access-walk.mjs';
import { home } from './record-page.mjs';

const SHOTS = join(dirname(fileURLToPath(import.meta.url)), 'shots/latest');
const shot = (page, name) => page.screenshot({ path: join(SHOTS, `access-${name}.png`) });
/** Head end raised by so much gives the pump this verdict. */
const VERDICTS = { within: 25, not_proven: 15.4, beyond: 6 };
const BLIND_TO = ['deuteranopia', 'protanopia', 'tritanopia', 'achromatopsia'];

let server;
before(async () => {
  mkdirSync(SHOTS, { recursive: true });
  server = await serve();
});
after(() => server.kill());

/** The live screen with each verdict in turn. */
async function eachVerdict({ page, pose }, look) {
  await toLive(page, 'pump', ['tail']);
  for (const [verdict, deg] of Object.entries(VERDICTS)) {
    pose.deg = deg;
    await page.waitForSelector(`.slot .verdict[data-verdict="${verdict}"]`);
    await page.waitForTimeout(300);
    await look(verdict);
  }
}

/** How the line round a verdict is drawn. */
const lineOf = (page, selector) =>
  page.locator(selector).evaluate((el) => {
    const { borderTopStyle, borderTopWidth, backgroundImage, borderTopColor, color } = getComputedStyle(el);
    const isDrawn = Number.parseFloat(borderTopWidth) > 0 && borderTopColor !== 'rgba(0, 0, 0, 0)';
    return { line: isDrawn ? borderTopStyle : 'none', broken: backgroundImage !== 'none', color };
  });

/** Buttons on a ground that is not the paper's, behind whose words the browser lays the paper. */
const plated = (page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('button')]
      .filter((el) => {
        const { backgroundColor, forcedColorAdjust } = getComputedStyle(el);
        const paper = getComputedStyle(document.documentElement).backgroundColor;
        return backgroundColor !== paper && forcedColorAdjust !== 'none' && el.checkVisibility();
      })
      .map((el) => el.dataset.action),
  );

test('in colours of the reader’s own each verdict keeps its line', async (t) => {
  const b = await measuring(t, server, { forcedColors: 'active' });
  const { page } = b;
  const lines = {};
  await eachVerdict(b, async (verdict) => {
    lines[verdict] = await lineOf(page, '.slot .verdict');
    assert.deepEqual(await plated(page), []);
    await shot(page, `forced-live-${verdict}`);
  });
  assert.match(lines.within.line, /solid|double/);
  assert.equal(lines.not_proven.line, 'dashed');
  assert.ok(lines.beyond.broken, 'the open broken line is drawn');
  assert.equal(new Set(Object.values(lines).map((l) => l.color)).size, 1, 'the reader’s colour for all');
  await waitReason(page, '');
  await tap(page, 'capture');
  await page.waitForSelector('.saved:not([data-saved="no"])');
  assert.ok((await lineOf(page, '.check .verdict')).broken);
  assert.deepEqual(await axe(page), []);
  await shot(page, 'forced-captured');
  await home(page);
  await tap(page, 'tape');
  await page.waitForSelector('[data-part="pump"] .verdict[data-verdict="beyond"]');
  assert.ok((await lineOf(page, '[data-part="pump"] .verdict')).broken);
  await shot(page, 'forced-job');
});

test('pictures for eyes that tell no colours apart', async (t) => {
  const b = await measuring(t, server);
  const { page } = b;
  const cdp = await b.context.newCDPSession(page);
  const inEach = async (name, shown = '.screen') => {
    for (const type of BLIND_TO) {
      await page.waitForSelector(shown);
      await cdp.send('Emulation.setEmulatedVisionDeficiency', { type });
      await shot(page, `${name}-${type}`);
    }
    await cdp.send('Emulation.setEmulatedVisionDeficiency', { type: 'none' });
  };
  const words = new Set();
  const lines = new Set();
  await eachVerdict(b, async (verdict) => {
    await inEach(`live-${verdict}`, `.slot .verdict[data-verdict="${verdict}"]`);
    words.add(await page.textContent('.slot .verdict'));
    const { line, broken } = await lineOf(page, '.slot .verdict');
    lines.add(`${line} ${broken}`);
  });
  assert.equal(words.size, 3, 'three words');
  assert.equal(lines.size, 3, 'three lines');
  await waitReason(page, '');
  await tap(page, 'capture');
  await page.waitForSelector('.saved:not([data-saved="no"])');
  await inEach('captured');
  await home(page);
  await tap(page, 'tryout');
  await tap(page, 'demo');
  await page.waitForSelector('.parts .caution');
  await page.waitForTimeout(500);
  await page.evaluate(() => document.querySelector('[data-part="place"]').scrollIntoView());
  await inEach('job');
});

for (const [width, height] of [
  [360, 740],
  [740, 360],
])
  test(`the left hand has the one thing to do under its thumb, ${width}×${height}`, async (t) => {
    const { page } = await open(t, server, { viewport: { width, height } });
    const places = () =>
      page.evaluate(() => {
        const [lesser, main] = ['other-holds', 'hold-next'].map((action) =>
          document.querySelector(`[data-action="${action}"]`).getBoundingClientRect(),
        );
        return { left: main.left, right: innerWidth - main.right, apart: main.left - lesser.left };
      });
    const toHold = async () => {
      await tap(page, 'tape');
      await tap(page, 'part-pump');
      await page.waitForSelector('[data-screen="hold"]');
    };
    await toHold();
    const right = await places();
    await shot(page, `hand-right-${width}`);
    await home(page);
    await tap(page, 'settings');
    await page.click('input[name="hand"][value="left"]');
    await tap(page, 'done');
    await home(page);
    assert.equal(await page.getAttribute('html', 'data-hand'), 'left', 'kept over a reload');
    await toHold();
    const left = await places();
    await shot(page, `hand-left-${width}`);
    assert.ok(Math.abs(left.left - right.right) < 1.5, `${JSON.stringify({ left, right })}`);
    assert.ok(Math.abs(left.apart + right.apart) < 200 && left.apart <= 0 && right.apart >= 0);
    assert.deepEqual(await axe(page), []);
  });
