// Timers of the first start: they outlive a reload and notice a clock that was set.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { served, tap } from './harness.mjs';
import { openSection, saved, type } from './plan-page.mjs';
import { again, beside, current, DONE, done, METER, NOT_PROVEN, row, upTo, worth } from './start-page.mjs';

const server = served();

test('a timer outlives a reload and a locked screen, and ends with a sound', async (t) => {
  const { page, faults, context } = await openSection(t, server, 'start_up');
  await context.addInitScript(() => {
    window.buzzed = 0;
    navigator.vibrate = () => {
      window.buzzed += 1;
      return true;
    };
  });
  await page.clock.install({ time: new Date('2031-03-01T10:00:00') });
  await again(page);
  await upTo(page, 'meter');
  await beside(page, 'start_co', () => type(page, METER).then(() => saved(page)));
  await upTo(page, 'ignition');
  await tap(page, 'timer-co');
  const left = async () => {
    const [, min, s] = (await page.textContent('.timer-left')).match(/(\d+) min (\d+) s left/);
    return 60 * Number(min) + Number(s);
  };
  // 3/6 h, and what a fifth of the least air change adds: 180/6·(1 + 2·0.2/√3/(1 − 0.2/√3)).
  const due = 60 * 30 * (1 + (2 * 0.2) / Math.sqrt(3) / (1 - 0.2 / Math.sqrt(3)));
  assert.ok(Math.abs((await left()) - due) < 3, `${await left()}, not ${due}`);
  await page.clock.runFor(300_000);
  assert.ok(Math.abs((await left()) - due + 300) < 3);
  await page.waitForTimeout(200);
  await again(page);
  assert.ok(Math.abs((await left()) - due + 300) < 8, 'as much as before is left');
  // Out of sight for ten minutes, the phone's steady clock asleep: only the wall clock went on.
  const sight = (state) =>
    page.evaluate((state) => {
      Object.defineProperty(document, 'visibilityState', { value: state, configurable: true });
      document.dispatchEvent(new Event('visibilitychange'));
    }, state);
  await sight('hidden');
  const now = await page.evaluate(() => Date.now());
  await page.clock.setSystemTime(now + 600_000);
  await sight('visible');
  await page.clock.runFor(2000);
  assert.ok(Math.abs((await left()) - due + 902) < 10);
  assert.match(
    await page.textContent('.timer'),
    /10 min \d\d s of it with the page closed or the phone asleep/,
  );
  assert.equal(await page.evaluate(() => window.buzzed), 0);
  await page.clock.runFor((await left()) * 1000 + 2000);
  assert.match(await page.textContent('.timer-left'), /Over/);
  assert.equal(await page.evaluate(() => window.buzzed), 1);
  // A reading after the end has the minutes that it came after, not those of the end.
  await page.clock.runFor(300_000);
  await beside(page, 'start_co', async () => {
    await tap(page, 'add-co_check');
    const minutes = Number(await page.inputValue('[data-row="0"] [data-name="minutes"]'));
    assert.ok(Math.abs(minutes - (due / 60 + 5)) <= 1, `${minutes} of ${due / 60 + 5}`);
  });
  assert.deepEqual(faults, []);
});

test('a clock that was set back or put on is said, and the timer proves nothing', async (t) => {
  for (const [by, said] of [
    [-600_000, /set back/],
    [3_600_000, /jumped ahead/],
  ]) {
    const { page } = await openSection(t, server, 'start_up');
    await page.clock.install({ time: new Date('2031-03-01T10:00:00') });
    await again(page);
    await upTo(page, 'prime');
    await tap(page, 'timer-prime');
    await page.clock.runFor(5000);
    assert.match(await page.textContent('.timer-left'), /so far/);
    const now = await page.evaluate(() => Date.now());
    await page.clock.setSystemTime(now + by);
    await page.clock.runFor(2000);
    assert.match(await page.textContent('.timer .trouble'), said);
    await done(page);
    assert.equal(await worth(page, 'prime'), NOT_PROVEN);
    // It stays so over a reload; started again it runs.
    await page.waitForTimeout(200);
    await again(page);
    assert.equal(await worth(page, 'prime'), NOT_PROVEN);
    await tap(page, 'step-prime');
    await tap(page, 'timer-prime');
    await page.clock.runFor(3000);
    await tap(page, 'seen-prime');
    assert.equal(await worth(page, 'prime'), DONE);
  }
});

test('a clock set back across a reload is noticed', async (t) => {
  const { page } = await openSection(t, server, 'start_up');
  await page.clock.install({ time: new Date('2031-03-01T10:00:00') });
  await again(page);
  await upTo(page, 'prime');
  await tap(page, 'timer-prime');
  await page.clock.runFor(15_000);
  await page.waitForTimeout(200);
  const now = await page.evaluate(() => Date.now());
  await page.clock.setSystemTime(now - 3_600_000);
  await again(page);
  await page.clock.runFor(1500);
  assert.match(await page.textContent('.timer .trouble'), /set back/);
});

test('another job has steps and timers of its own, and this one’s are not lost', async (t) => {
  const { page, faults } = await openSection(t, server, 'start_up');
  const toJob = async (open) => {
    await page.goBack();
    await page.waitForSelector('[data-screen="parts"]');
    await tap(page, 'jobs');
    await open();
    await tap(page, 'open-job');
    await page.waitForSelector('[data-screen="parts"]');
    await tap(page, 'section-start_up');
    await page.waitForSelector('[data-screen="start_up"]');
  };
  await upTo(page, 'prime');
  await tap(page, 'timer-prime');
  await page.waitForTimeout(300);
  await toJob(() => tap(page, 'new-job'));
  assert.equal(await current(page), 'extinguisher');
  await done(page, 'of the second');
  await page.waitForTimeout(1500);
  await toJob(() => page.locator('[data-job="1"] button').click());
  assert.equal(await current(page), 'prime');
  assert.doesNotMatch(await row(page, 'extinguisher'), /second/);
  assert.match(await page.textContent('.timer-left'), /so far/);
  await tap(page, 'seen-prime');
  await done(page);
  assert.equal(await worth(page, 'prime'), DONE);
  // What looked on from before does not write over it.
  await page.waitForTimeout(2500);
  await again(page);
  assert.equal(await worth(page, 'prime'), DONE);
  assert.deepEqual(faults, []);
});

test('the after-run is timed until it is still, and becomes the measured value', async (t) => {
  const { page } = await openSection(t, server, 'start_up');
  await page.clock.install({ time: new Date('2031-03-01T10:00:00') });
  await again(page);
  await upTo(page, 'after_run');
  await tap(page, 'timer-after_run');
  await page.clock.runFor(186_000);
  await tap(page, 'seen-after_run');
  assert.equal(await page.inputValue('[data-name="after_run_min"]'), '3.1');
});

test('the time to fill the line is what the fuel’s sheet tells', async (t) => {
  const { page } = await openSection(t, server, 'start_up');
  await upTo(page, 'prime');
  assert.match(await page.textContent('.timer'), /fuel’s sheet has to tell/);
  await beside(page, 'fuel_prime', async () => {
    const line = {
      suction_bore_mm: '2',
      suction_length_m: '1.6',
      pressure_bore_mm: '2',
      pressure_length_m: '3.2',
    };
    await type(page, { ...line, stroke_ml: '0.03', stroke_hz: '4' });
    await saved(page);
  });
  // π·1 mm²·4.8 m = 15.08 mL by 0.12 mL/s are 125.7 s; with what is known of it, more.
  const [, min, s] = (await page.textContent('.timer')).match(/At least (\d+) min (\d+) s/);
  const due = 60 * Number(min) + Number(s);
  assert.ok(due > 126 && due < 160, `${due}`);
});
