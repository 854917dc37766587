// The seal face: a whole list can be within, a part of it never; the phone only ever beyond.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { text } from '../../web/text.js';
import { words } from '../../web/words/support.js';
import { axe, launch, served, tap } from './harness.mjs';
import {
  check,
  complaint,
  openAll,
  openSection,
  saved,
  toSection,
  tooWide,
  type,
  worked,
} from './plan-page.mjs';

const server = served();

const SEAL = { long_mm: '180', short_mm: '120', straightedge_mm: '300', straightness_mm: '0.02' };
const GAPS = [
  ['0.1', '0.15'],
  ['0.2', '0.25'],
  ['0.4', '0.45'],
  ['0', '0.05'],
  ['0.3', '0.35'],
  ['0.2', '0.25'],
];
const row = (i) => `[data-row="${i}"]`;
const read = (page, i, [goes_mm, stays_mm] = GAPS[i]) => type(page, { goes_mm, stays_mm }, row(i));
const verdicts = (page) => page.$$eval('.check .verdict', (all) => all.map((e) => e.dataset.verdict));

test('line by line: open until all six are read, then the widest gap answers', async (t) => {
  const { page, faults } = await openSection(t, server, 'support');
  await type(page, SEAL);
  await tap(page, 'six-lines');
  assert.equal(await page.locator('.sheet-rows .card').count(), 6);
  for (let i = 0; i < 5; i += 1) {
    await read(page, i);
    // Common practice permits 1 mm: every gap so far is far less, and nothing is proven by it.
    assert.deepEqual(await verdicts(page), ['not_proven'], `line ${i}`);
    assert.equal(await page.locator('.seal-line.read').count(), i + 1);
  }
  assert.match(await page.textContent('main'), /1 of 6 lines not read/);
  await read(page, 5);
  const told = await check(page, 'unevenness_mm');
  assert.equal(told.verdict, 'within');
  assert.equal(await page.locator('.answers .missing').count(), 0);
  assert.equal(Number((await worked(page, 'support', 'unevenness_mm')).value), 0.425);
  // A straightedge shorter than the diagonal leaves two lines open.
  await type(page, { straightedge_mm: '200' });
  assert.deepEqual(await verdicts(page), ['not_proven']);
  assert.match(await page.textContent('main'), /2 of 6 lines not read/);
  assert.deepEqual(faults, []);
});

test('one wide gap is enough; nothing is lost over a reload', async (t) => {
  const { page } = await openSection(t, server, 'support');
  await type(page, SEAL);
  await tap(page, 'six-lines');
  await read(page, 4, ['1.6', '1.7']);
  const told = await check(page, 'at_least_mm');
  assert.equal(told.verdict, 'beyond');
  assert.match(told.does, /plate/);
  await saved(page);
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await toSection(page, 'support');
  assert.equal(await page.inputValue(`${row(4)} [data-name="goes_mm"]`), '1.6');
  assert.deepEqual(await verdicts(page), ['beyond']);
});

test('bad input stands at its field, in inches too', async (t) => {
  const { page } = await openSection(t, server, 'support', { us: true });
  await type(page, { long_mm: '7.1', short_mm: '4.7', straightedge_mm: '12', straightness_mm: '0.001' });
  await tap(page, 'six-lines');
  await read(page, 0, ['0.012', '0.010']);
  assert.match(await complaint(page, 'stays_mm', row(0)), /thicker/);
  await read(page, 0, ['0.010', '0.012']);
  const { value, unit } = await worked(page, 'support', 'at_least_mm');
  assert.equal(unit, 'in');
  assert.ok(Math.abs(value - 0.011) < 1e-4);
  await type(page, { long_mm: 'seven' });
  assert.match(await complaint(page, 'long_mm'), /number/);
});

test('the phone may only say beyond', async (t) => {
  const { page } = await openSection(t, server, 'support');
  await openAll(page);
  for (const [second_deg, verdict] of [
    ['0.4', 'not_proven'],
    ['0.5', 'not_proven'],
    ['6.4', 'beyond'],
  ]) {
    await type(page, { first_deg: '0.4', second_deg, base_mm: '150' });
    assert.deepEqual(await verdicts(page), [verdict]);
  }
  // 150 mm · sin 6°/2.
  const { value, u } = await worked(page, 'twist', 'at_least_mm');
  assert.ok(Math.abs(value - 7.84) < 0.05 * u);
});

test('ticks wait; the screen fits and is clean for axe, by day and by night', async (t) => {
  for (const colorScheme of ['light', 'dark']) {
    const { page, faults } = await openSection(t, server, 'support', { colorScheme });
    assert.equal(await page.locator('.tick[data-done="no"]').count(), Object.keys(words.tick).length);
    assert.equal(await page.locator('.caution').count(), 1);
    await type(page, SEAL);
    await tap(page, 'six-lines');
    for (let i = 0; i < 6; i += 1) await read(page, i);
    await openAll(page);
    await page.waitForTimeout(100);
    assert.equal(await tooWide(page), 0);
    assert.deepEqual(await axe(page), []);
    assert.deepEqual(faults, []);
  }
});

test('sheets that trap show no number, and are loaded anew', async (t) => {
  const b = await launch();
  t.after(() => b.close());
  const { page } = b;
  // The module's own glue, with one call that traps once.
  await page.route('**/pkg/plumbmark_sheets.js', async (route) => {
    const answer = await route.fetch();
    const glue = await answer.text();
    const trapping = glue.replace(
      /return (\w+\.sheet_work\()/,
      "if (globalThis.trapNow) { globalThis.trapNow = false; throw new WebAssembly.RuntimeError('unreachable'); } return $1",
    );
    assert.notEqual(trapping, glue, 'the glue works sheets out');
    await route.fulfill({ response: answer, body: trapping });
  });
  await page.goto(server.url);
  await toSection(page, 'support');
  await type(page, SEAL);
  await tap(page, 'six-lines');
  await read(page, 0, ['1.6', '1.7']);
  assert.deepEqual(await verdicts(page), ['beyond']);
  await page.evaluate(() => {
    globalThis.trapNow = true;
  });
  const again = page.waitForResponse(/plumbmark_sheets_bg\.wasm/);
  await page.fill(`${row(0)} [data-name="stays_mm"]`, '1.8');
  assert.equal(await page.textContent('[data-sheet-state="support"]'), text.live.trapped);
  assert.deepEqual(await verdicts(page), []);
  await again;
  await page.waitForTimeout(200);
  await page.fill(`${row(0)} [data-name="stays_mm"]`, '1.9');
  assert.deepEqual(await verdicts(page), ['beyond']);
});
