// "What ± means": value, U and verdict come from a core of its own, follow what the reader does, and
// leave nothing behind; of forty readings two miss, and in the long run no more than one in twenty.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { openBorder } from '../../web/border.js';
import { Example } from '../../web/guide/example.js';
import { thrown } from '../../web/guide/throws.js';
import * as pkg from '../../web/pkg/plumbmark_phone.js';
import { text } from '../../web/text.js';
import { axe, launch, sensors, served, tap, toLive, upFor, waitReason } from './harness.mjs';
import { tooWide } from './plan-page.mjs';
import { numberIn } from './rig.mjs';

const server = served();

/** The reading that is shown. */
async function shown(page) {
  const words = (what) => page.textContent(`[data-card="play"] ${what}`);
  return {
    value: numberIn(await words('.value')),
    u: numberIn(await words('.u')),
    verdict: await page.getAttribute('[data-card="play"] .verdict', 'data-verdict'),
    does: await words('.does'),
    really: numberIn(await words('.source')),
  };
}

const choose = (page, name, i) => page.check(`input[name="play-${name}"][value="${i}"]`);

async function open(page) {
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  await tap(page, 'minutes');
  await tap(page, 'plus-minus');
  await page.waitForSelector('[data-card="throws"]');
}

test('the reading follows the part and what it stands on', async () => {
  const b = await launch();
  const { page } = b;
  page.setDefaultTimeout(12_000);
  await open(page);
  const first = await shown(page);
  assert.equal(first.verdict, 'not_proven');
  assert.ok(Math.abs(first.value - first.really) < first.u, JSON.stringify(first));
  assert.ok(Math.abs(first.value - first.really - 0.7) < 0.15, 'the phone’s own zero');

  await choose(page, 'phone', 1);
  const turned = await shown(page);
  assert.ok(turned.u < first.u / 2, `${turned.u} of ${first.u}`);
  assert.ok(Math.abs(turned.value - turned.really) < 0.15, 'the zero drops out');
  assert.equal(turned.verdict, 'within');
  await choose(page, 'surface', 1);
  const sheet = await shown(page);
  assert.ok(sheet.u > 1.2 * turned.u, `${sheet.u} of ${turned.u}`);

  await choose(page, 'hand', 1);
  const trembling = await shown(page);
  assert.ok(Number.isNaN(trembling.value) && trembling.verdict === 'lost', 'no number while it trembles');
  await choose(page, 'hand', 0);
  assert.deepEqual(await shown(page), sheet, 'the same again');

  for (let i = 0; i < 8; i += 1) await tap(page, 'raise');
  const raised = await shown(page);
  assert.equal(raised.verdict, 'beyond');
  assert.match(raised.does, /^Lower the outlet end by /);
  await page.focus('.handle');
  for (let i = 0; i < 8; i += 1) await page.keyboard.press('ArrowDown');
  assert.deepEqual(await shown(page), sheet);
  const box = await page.locator('.handle').boundingBox();
  await page.mouse.move(box.x + 200, box.y + 60);
  await page.mouse.down();
  await page.mouse.move(box.x + 200 - 14 * 6, box.y + 60);
  await page.mouse.up();
  assert.equal((await shown(page)).really, sheet.really - 3);
  await page.mouse.move(box.x + 20, box.y + 60);
  assert.equal((await shown(page)).really, sheet.really - 3, 'let go');
  assert.deepEqual(b.faults, []);
  await b.close();
});

test('forty readings, two of which miss; others may differ', async () => {
  const b = await launch({ reducedMotion: 'reduce' });
  const { page } = b;
  page.setDefaultTimeout(12_000);
  await open(page);
  const count = (which) => page.locator(`.throws .${which}`).count();
  assert.deepEqual([await count('hit'), await count('miss')], [38, 2]);
  const said = await page.textContent('[data-card="throws"] [role="status"]');
  assert.match(said, /^40 readings: 38 bars hold the truth, 2 miss it/);
  await tap(page, 'others');
  assert.equal((await count('hit')) + (await count('miss')), 40);
  // The first picture keeps its own limit.
  await tap(page, 'lower');
  assert.match(await page.textContent('[data-card="play"] .slot'), /−6\.0°/);
  await b.close();
});

test('in the long run no more than one in twenty misses, as its words say', async () => {
  const { memory } = await pkg.default({
    module_or_path: readFileSync(new URL('../../web/pkg/plumbmark_phone_bg.wasm', import.meta.url)),
  });
  pkg.start();
  const numbers = (count) => new Float64Array(memory.buffer, pkg.numbers_at(), count).slice();
  const ctx = { text, settings: { angle_unit: 'deg', system: 'metric' } };
  const example = new Example(ctx, openBorder({ pkg, give() {}, numbers }));
  const readings = Array.from({ length: 100 }, (_, i) => thrown(example, i)).flat();
  assert.ok(readings.length > 3950, `${readings.length}`);
  const missed = readings.filter((r) => !r.holds).length / readings.length;
  assert.ok(missed > 0.02 && missed < 0.05, `${missed}`);
});

test('it is reached from a capture’s ±, leaves the phone’s own core alone, and keeps nothing', async () => {
  const b = await launch();
  const { page } = b;
  page.setDefaultTimeout(12_000);
  const feed = await sensors(b);
  feed.keep(() => ({ up: upFor('back', 20) }));
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  await toLive(page, 'pump', ['tail']);
  await waitReason(page, '');
  await tap(page, 'capture');
  await page.waitForSelector('.saved:not([data-saved="no"])');
  await tap(page, 'where');
  await tap(page, 'plus-minus');
  await page.waitForSelector('[data-card="play"]');
  await choose(page, 'phone', 1);
  for (const back of ['details', 'captured', 'live']) {
    await page.goBack();
    await page.waitForSelector(`[data-screen="${back}"]`);
  }
  await waitReason(page, '');
  assert.ok(Math.abs(numberIn(await page.textContent('.live .value')) - 20) < 1);
  assert.equal(await page.textContent('.phone-state'), text.live.unchecked);
  feed.stop();
  assert.deepEqual(b.faults, []);
  await b.close();
});

test('fits a phone and is clean for axe, by day and by night', async () => {
  for (const colorScheme of ['light', 'dark']) {
    const b = await launch({ colorScheme });
    await open(b.page);
    assert.deepEqual(await axe(b.page), []);
    assert.equal(await tooWide(b.page), 0);
    const small = await b.page.$$eval('[data-card="play"] button, [data-card="play"] label.pick', (all) =>
      all.map((el) => Math.min(el.offsetWidth, el.offsetHeight)).filter((least) => least < 64),
    );
    assert.deepEqual(small, []);
    await b.close();
  }
});
