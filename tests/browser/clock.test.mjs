// A clock that was set back: what is newest goes by the order of taking, nothing counts longer for
// it, and the record says that its times are out of order.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { words as recordWords } from '../../web/words/record.js';
import { anglesOfUp, launch, served, synthetic, tap, toLive, upFor, waitReason } from './harness.mjs';
import { saved, toSection, type } from './plan-page.mjs';
import { onBack, PARKED, rig } from './rig.mjs';
import { upTo } from './start-page.mjs';

const HOUR_MS = 3_600_000;
const server = served();

/** Clocks of the page that can be set: the wall's, and the steady one. Over reloads too. */
function settable() {
  const Real = Date;
  const read = (name) => Number(sessionStorage.getItem(name) ?? 0);
  window.Date = class extends Real {
    constructor(...given) {
      super(...(given.length ? given : [Real.now() + read('wall_ms')]));
    }
    static now() {
      return Real.now() + read('wall_ms');
    }
  };
  const now = performance.now.bind(performance);
  performance.now = () => now() + read('steady_ms');
}
const set = (page, times) =>
  page.evaluate((times) => {
    for (const [name, ms] of Object.entries(times)) sessionStorage.setItem(name, ms);
  }, times);

async function open(t) {
  const b = await launch();
  t.after(() => b.close());
  b.page.setDefaultTimeout(30_000);
  await b.page.addInitScript(settable);
  await b.page.goto(server.url);
  await b.page.waitForSelector('[data-screen="start"]');
  return b;
}

/** The record, from the list of the job; and what is on paper. */
async function record(page) {
  await tap(page, 'record');
  await page.waitForFunction(() => document.querySelector('[data-name="sha256"]')?.textContent);
  const [download] = await Promise.all([page.waitForEvent('download'), tap(page, 'record-json')]);
  const told = JSON.parse(readFileSync(await download.path(), 'utf8'));
  return { told, paper: await page.textContent('.record-paper') };
}

async function capture(page, deg) {
  const up = upFor('long_edge', deg);
  await synthetic(page, { a: up.map((v) => 9.80665 * v), angles: anglesOfUp(up) });
  await toLive(page, 'pump', ['tail'], { hold: 'long_edge', surface: 'round_body' });
  await waitReason(page, '');
  await tap(page, 'capture');
  await page.waitForSelector('.saved:not([data-saved="no"])');
  while (!(await page.$('[data-screen="parts"]'))) await page.goBack();
}

test('the last capture counts, whatever the clock said; the record says that it was set back', async (t) => {
  const { page, faults } = await open(t);
  await capture(page, 22);
  const before_ = await record(page);
  assert.ok(!before_.told.does_not_claim.includes(recordWords.clockBack));
  await page.goBack();
  await set(page, { wall_ms: -26 * HOUR_MS });
  await capture(page, 31);
  for (const reload of [false, true]) {
    if (reload) {
      await page.goto(server.url);
      await page.waitForSelector('[data-screen="start"]');
      await tap(page, 'tape');
      await page.waitForSelector('[data-screen="parts"]');
    }
    const { told, paper } = await record(page);
    const [first, last] = told.captures.map((c) => c.taken_at);
    assert.ok(last < first, 'as the clock said');
    assert.ok(Math.abs(told.checks.find((c) => c.id === 'pump_outlet').value - 31) < 0.3, 'the last one');
    assert.ok(told.does_not_claim.includes(recordWords.clockBack));
    assert.ok(paper.includes(recordWords.clockBack));
    await page.goBack();
  }
  assert.deepEqual(faults, []);
});

test('what was typed after the clock was set back is there, and the record says so', async (t) => {
  const { page } = await open(t);
  await toSection(page, 'place');
  await type(page, { top_mm: '61' });
  await saved(page);
  await set(page, { wall_ms: -HOUR_MS / 2 });
  await page.goBack();
  await tap(page, 'section-support');
  await type(page, { long_mm: '180' });
  await saved(page);
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  await toSection(page, 'support');
  assert.equal(await page.inputValue('input[data-name="long_mm"]'), '180');
  await page.goBack();
  const { told } = await record(page);
  assert.ok(told.does_not_claim.includes(recordWords.clockBack));
});

test('a clock set back makes no alarm younger', async (t) => {
  const { page } = await open(t);
  // Ahead by ten years, then right again.
  await set(page, { wall_ms: 10 * 365 * 24 * HOUR_MS });
  await toSection(page, 'place');
  await type(page, { top_mm: '61' });
  await saved(page);
  await set(page, { wall_ms: 0 });
  await page.goBack();
  await tap(page, 'section-start_up');
  await upTo(page, 'alarms');
  await tap(page, 'add-alarm');
  await page.fill('[data-row="0"] [data-name="space"]', 'roof bed');
  const year = new Date().getFullYear() + 4;
  await page.fill('[data-row="0"] [data-name="expires"]', `${year}-01-31`);
  assert.match(await page.textContent('[data-row="0"] .missing'), /expired/);
});

test('a level counts for an hour, not for longer by a clock that was set back', async (t) => {
  const r = await rig(server);
  const { page } = r;
  t.after(() => r.end());
  await page.addInitScript(settable);
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await tap(page, 'allow');
  await tap(page, 'level');
  await r.lay(onBack(PARKED.along, PARKED.across));
  await page.click('[data-action="keep-level"]:enabled');
  await page.waitForSelector('.level [data-action="done"]:visible');
  const said = async () => {
    await page.goBack();
    await page.waitForSelector('[data-screen="parts"]');
    const told = await page.textContent('[data-action="level"]');
    await tap(page, 'level');
    return told;
  };
  assert.match(await said(), /counts until/);
  // Seventy minutes later; on the wall it is only ten.
  await set(page, { steady_ms: 70 * 60_000, wall_ms: 10 * 60_000 });
  assert.match(await said(), /over an hour ago/);
});
