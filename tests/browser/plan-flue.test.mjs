// Exhaust and combustion air: legs as typed, low points and drains, ends, boats.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { words } from '../../web/words/flue.js';
import { axe, served, tap } from './harness.mjs';
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

const row = (i) => `[data-row="${i}"]`;
const main = (i) => `.sheet-rows ${row(i)}`;
const state = (page, i) => page.textContent(`${main(i)} .leg-state`);
const lines = (page) => page.$$eval('.flue-picture .pipe', (all) => all.map((e) => e.dataset.verdict));

async function toSheet(page, sheet) {
  await tap(page, `sheet-${sheet}`);
  await page.waitForSelector(`[data-screen="flue_${sheet}"]`);
}

async function back(page) {
  await tap(page, 'back');
  await page.waitForSelector('[data-screen="flue"]');
}

async function addLegs(page, sheet, legs) {
  const before = await page.locator('.sheet-rows .card').count();
  for (const [i, [elevation_deg, length_m, bend_deg]] of legs.entries()) {
    await tap(page, `add-${sheet}`);
    await type(page, { elevation_deg, length_m, bend_deg }, main(before + i));
  }
}

/** Opens a leg's fields. */
const openLeg = (page, i) =>
  page.evaluate((leg) => {
    for (const d of document.querySelectorAll(`${leg} details`)) d.open = true;
  }, main(i));

test('a pipe that falls drains; one that rises holds water; the drawing says so by line and word', async (t) => {
  const { page, faults } = await openSection(t, server, 'flue');
  await toSheet(page, 'exhaust');
  await type(page, { boat: '0' });
  // 5.71059° is 10 %, so 995 mm of fall a metre of pipe (sin of atan 0.1).
  await addLegs(page, 'exhaust', [
    ['-5.71059', '1', '0'],
    ['-20', '0.5', '90'],
  ]);
  assert.deepEqual(await lines(page), ['within', 'within']);
  const end = await worked(page, 'exhaust', 'height_mm');
  assert.ok(Math.abs(end.value + 99.5) < 0.6, String(end.value));
  const first = page.locator('[data-result="standing_mm"][data-row="0"] .verdict');
  assert.equal(await first.getAttribute('data-verdict'), 'within');
  await addLegs(page, 'exhaust', [
    ['9', '0.5', '60'],
    ['0.3', '0.4', '0'],
    ['-30', '0.3', '0'],
  ]);
  assert.deepEqual(await lines(page), ['within', 'within', 'beyond', 'not_proven', 'within']);
  const key = await page.$$eval('.flue-key b', (all) => all.map((e) => e.textContent));
  const s = words.pipe.state;
  assert.deepEqual(key, [s.within, s.within, s.beyond, s.not_proven, s.within]);
  // 500 · sin 9° + 400 · sin 0.3° = 80.3 mm, until it runs over.
  assert.match(await page.textContent('.flue-picture'), /80\.3 mm of water/);
  assert.equal(await page.locator('.flue-picture .water').count(), 1);
  assert.equal((await check(page, 'depth_mm')).verdict, 'beyond');
  assert.match(await state(page, 2), /no drain may be set/);
  // Doing what the answer says settles it.
  const answer = page.locator('[data-result="standing_mm"][data-row="3"]');
  assert.match(await answer.locator('.does').textContent(), /Lower its end by .* mm/);
  assert.deepEqual(faults, []);
});

test('a drain only where core allows one, and only then advised', async (t) => {
  const { page } = await openSection(t, server, 'flue');
  await toSheet(page, 'exhaust');
  await type(page, { boat: '0', drain_in_manual: '1' });
  await addLegs(page, 'exhaust', [
    ['-15', '0.6', '0'],
    ['12', '0.5', '90'],
    ['-15', '0.8', '90'],
  ]);
  await openLeg(page, 1);
  await type(page, { place: '0' }, main(1));
  assert.match(await state(page, 1), /no drain may be set/);
  await type(page, { clear: '1' }, main(1));
  assert.match(await state(page, 1), /a drain of the manual’s bore may be set/);
  for (const place of ['1', '2', '3', '4', '5']) {
    await type(page, { place }, main(1));
    assert.match(await state(page, 1), /no drain may be set/);
  }
  await type(page, { drain_bore_mm: '4' }, main(1));
  assert.match(await complaint(page, 'drain_bore_mm', main(1)), /No drain is allowed here/);
  assert.equal(await page.locator('.answers .check').count(), 0);
  await type(page, { place: '0' }, main(1));
  assert.deepEqual(await lines(page), ['within', 'within', 'within']);
  assert.equal((await check(page, 'drain_bore_mm')).verdict, 'within');
  await type(page, { drain_in_manual: '0' });
  assert.match(await complaint(page, 'drain_bore_mm', main(1)), /No drain is allowed here/);
});

test('in feet and inches; bad input at its field; nothing lost over a reload', async (t) => {
  const { page } = await openSection(t, server, 'flue', { us: true });
  await toSheet(page, 'air_pipe');
  await type(page, { boat: '0' });
  await addLegs(page, 'air_pipe', [['-30', '2', '45']]);
  const end = await worked(page, 'air_pipe', 'end_height_mm');
  assert.equal(end.unit, 'in');
  assert.ok(Math.abs(end.value + 12) < 0.05, String(end.value));
  await type(page, { elevation_deg: 'down' }, main(0));
  assert.match(await complaint(page, 'elevation_deg', main(0)), /number/);
  // Folded away it would be a mark that nobody sees.
  await page.evaluate(() => {
    for (const d of document.querySelectorAll('.sheet-rows details')) d.open = false;
  });
  await type(page, { drain_in_manual: '0' });
  assert.ok(await page.isVisible(`${main(0)} [data-name="elevation_deg"]`));
  await type(page, { elevation_deg: '-120' }, main(0));
  assert.match(await complaint(page, 'elevation_deg', main(0)), /−90/);
  await type(page, { elevation_deg: '-30' }, main(0));
  await saved(page);
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await toSection(page, 'flue');
  // What is told of the vehicle is told once.
  assert.equal(await page.inputValue('[data-name="boat"]'), '0');
  await toSheet(page, 'air_pipe');
  await openLeg(page, 0);
  assert.equal(await page.inputValue(`${main(0)} [data-name="length_m"]`), '2');
  assert.deepEqual(await lines(page), ['within']);
});

test('a boat: afloat only as a long mean; her outlet as she heels', async (t) => {
  const { page, faults } = await openSection(t, server, 'flue');
  assert.equal(await page.locator('[data-action="sheet-boat_outlet"]:visible').count(), 0);
  await type(page, { boat: '1' });
  await toSheet(page, 'exhaust');
  assert.equal(await page.locator('[data-name="drain_in_manual"]:visible').count(), 0);
  await type(page, { afloat: '1' });
  await addLegs(page, 'exhaust', [['-8', '1', '0']]);
  await type(page, { roll_period_s: '5', averaged_s: '40', roll_deg: '4' });
  assert.match(await complaint(page, 'averaged_s'), /at least ten roll periods/);
  await type(page, { averaged_s: '100' });
  assert.deepEqual(await lines(page), ['within']);
  await type(page, { afloat: '0' });
  assert.equal(await page.locator('[data-name="averaged_s"]:visible').count(), 0);
  await back(page);
  await toSheet(page, 'boat_outlet');
  // cos 36.87° = 0.8, sin = 0.6: 800 − 300 − 50.
  await type(page, {
    outlet_height_mm: '1000',
    outlet_across_mm: '500',
    heel_deg: '36.8699',
    sinkage_mm: '50',
  });
  const outlet = await worked(page, 'boat_outlet', 'outlet_mm');
  assert.ok(Math.abs(outlet.value - 450) < 1, String(outlet.value));
  await type(page, { loop_height_mm: '1500' });
  assert.match(await page.textContent('[data-sheet-state="boat_outlet"]'), /Still to enter: Loop/);
  await type(page, { loop_across_mm: '500' });
  assert.equal(await page.locator('.plan-picture .pipe-end').count(), 2);
  assert.match(await page.textContent('main'), /waves/);
  assert.deepEqual(faults, []);
});

test('ends: each thing has its limit, a lagged pipe none for what can burn', async (t) => {
  const { page } = await openSection(t, server, 'flue');
  await toSheet(page, 'pipe_ends');
  await type(page, { air_to_exhaust_mm: '400', past_body_mm: '-20' });
  // Common practice, no source: outside the body's outline.
  assert.equal((await check(page, 'past_body_mm')).verdict, 'beyond');
  for (const [action, distance_mm] of [
    ['addOpening', '700'],
    ['addLine', '150'],
    ['addCombustible', '90'],
  ]) {
    const i = await page.locator('.sheet-rows .card').count();
    await tap(page, action);
    await type(page, { distance_mm }, main(i));
  }
  const told = await page.$$eval('[data-check]', (all) => all.map((e) => e.dataset.check));
  assert.deepEqual(told.slice(2), [
    'exhaust_to_opening_mm',
    'exhaust_to_line_mm',
    'exhaust_to_combustible_mm',
  ]);
  await type(page, { lagged: '1' });
  assert.equal(await page.locator('[data-check="exhaust_to_combustible_mm"]').count(), 0);
});

test('cautions stand, ticks wait, all of it fits and is clean for axe, by day and by night', async (t) => {
  for (const colorScheme of ['light', 'dark']) {
    const { page, faults } = await openSection(t, server, 'flue', { colorScheme });
    assert.equal(await page.locator('.cautions li').count(), words.cautions.length);
    await type(page, { boat: '1' });
    const ticks = Object.values(words.tick).flatMap((each) => Object.keys(each));
    assert.equal(await page.locator('.tick[data-done="no"]').count(), ticks.length);
    assert.deepEqual(await axe(page), []);
    await type(page, { boat: '0' });
    await toSheet(page, 'exhaust');
    await type(page, { drain_in_manual: '1' });
    await addLegs(page, 'exhaust', [
      ['-10', '0.6', '0'],
      ['-3', '0.9', '45'],
      ['0.4', '0.5', '30'],
      ['8', '0.4', '45'],
      ['-30', '0.3', '90'],
    ]);
    await openAll(page);
    await page.waitForTimeout(100);
    assert.equal(await tooWide(page), 0);
    assert.deepEqual(await axe(page), []);
    await back(page);
    await toSheet(page, 'pipe_ends');
    await tap(page, 'addLine');
    await type(page, { distance_mm: '120', air_to_exhaust_mm: '300', past_body_mm: '15' });
    assert.equal(await tooWide(page), 0);
    assert.deepEqual(await axe(page), []);
    await back(page);
    await type(page, { boat: '1' });
    await toSheet(page, 'boat_outlet');
    await type(page, {
      outlet_height_mm: '900',
      outlet_across_mm: '1100',
      loop_height_mm: '1300',
      loop_across_mm: '700',
      heel_deg: '15',
      sinkage_mm: '30',
    });
    assert.equal(await tooWide(page), 0);
    assert.deepEqual(await axe(page), []);
    assert.deepEqual(faults, []);
  }
});
