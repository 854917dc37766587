// The first start: one step at a time, none passed over in silence; STOP; a test for carbon monoxide
// that is never within.

import assert from 'node:assert/strict';
import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { after, before, test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { words } from '../../web/words/start.js';
import { axe, serve, tap } from './harness.mjs';
import { check, complaint, openAll, openSection, saved, type, worked } from './plan-page.mjs';
import {
  again,
  beside,
  current,
  DONE,
  done,
  limits,
  METER,
  NOT_PROVEN,
  OPEN,
  readings,
  row,
  SKIPPED,
  upTo,
  worth,
} from './start-page.mjs';

const SHOTS = join(dirname(fileURLToPath(import.meta.url)), 'shots/latest');
let server;
before(async () => {
  mkdirSync(SHOTS, { recursive: true });
  server = await serve();
});
after(() => server.kill());

test('one step at a time, by name and hour; a skipped one stands there and takes others with it', async (t) => {
  const { page, faults } = await openSection(t, server, 'start_up');
  assert.equal(await current(page), 'extinguisher');
  assert.equal(await page.locator('details[open] .cautions li').count(), words.cautions.length);
  await tap(page, 'done');
  assert.match(await page.textContent('.step .trouble'), /name/);
  // A name that was typed outlives a look at "Skip".
  await page.fill('#step-who', 'Ada');
  await tap(page, 'skip');
  assert.equal(await page.inputValue('#step-who'), 'Ada');
  await tap(page, 'skip-back');
  await done(page, 'powder, 2 kg');
  assert.equal(await current(page), 'outdoors');
  assert.match(await row(page, 'extinguisher'), /Ada, \d\d:\d\d: powder, 2 kg/);
  await done(page);
  // Skipping takes words.
  assert.equal(await current(page), 'meter');
  await tap(page, 'skip');
  await tap(page, 'skip-confirm');
  assert.match(await page.textContent('.step .trouble'), /why/);
  assert.equal(await worth(page, 'meter'), OPEN);
  await page.fill('#step-reason', 'none in the workshop');
  await tap(page, 'skip-confirm');
  assert.equal(await worth(page, 'meter'), SKIPPED);
  assert.match(await row(page, 'meter'), /none in the workshop.*skipped/s);
  await upTo(page, 'co_test');
  await done(page);
  assert.equal(await worth(page, 'co_test'), NOT_PROVEN);
  // That is told at once, with the way back to it.
  assert.match(await page.textContent('.lacking'), /not proven/);
  await tap(page, 'lacking');
  assert.equal(await current(page), 'co_test');
  await tap(page, 'go-on');
  // Voltages that nobody typed are not proven by a tap.
  assert.equal(await worth(page, 'voltage'), NOT_PROVEN);
  assert.equal(await worth(page, 'leaks_hot'), OPEN);
  await saved(page).catch(() => {});
  await page.waitForTimeout(200);
  await again(page);
  assert.match(await row(page, 'meter'), /none in the workshop/);
  assert.equal(await worth(page, 'co_test'), NOT_PROVEN);
  // Taken back, it is open again, and so is what stood on it no better.
  await tap(page, 'step-extinguisher');
  await tap(page, 'take-back');
  assert.equal(await worth(page, 'extinguisher'), OPEN);
  await page.goBack();
  await page.waitForSelector('[data-screen="parts"]');
  await page.waitForFunction(() => document.querySelector('.parts .summary')?.textContent !== '');
  assert.equal(await page.getAttribute('[data-part="start_up"] .verdict', 'data-verdict'), 'not_proven');
  assert.deepEqual(faults, []);
});

test('the whole way: what was read bears the steps out, and no rise found is the best there is', async (t) => {
  const { page, faults } = await openSection(t, server, 'start_up');
  await upTo(page, 'meter');
  await beside(page, 'start_co', async () => {
    await type(page, METER);
    await saved(page);
  });
  await upTo(page, 'voltage');
  await type(page, { battery_glow_v: '12.4', heater_glow_v: '11.9' });
  assert.equal((await check(page, 'heater_glow_v')).verdict, 'not_proven');
  await upTo(page, 'co_test');
  await beside(page, 'start_co', async () => {
    await readings(page, [
      ['5', '0', '0'],
      ['20', '0', '1'],
      ['30', '1', '0'],
      ['50', '1', '0'],
    ]);
    const rise = await check(page, 'rise_ppm');
    assert.equal(rise.verdict, 'not_proven');
    assert.match(rise.does, /No rise found by this meter, this time/);
    // 50 min against 3/n = 30 min; least air change known to a fifth.
    assert.equal((await check(page, 'spare_test_min')).verdict, 'within');
    assert.equal((await worked(page, 'co_check', 'spare_test_min')).value, 20);
    // The box by hand: c = sqrt((9 + 0.5)/(0.75 − 0.0025)) ppm, 12/h, 9 m³, 20 min.
    const c = Math.sqrt(9.5 / 0.7475);
    const want = (c * 12 * 9) / 1000 / (1 - Math.exp(-12 / 3));
    const { value, u } = await worked(page, 'co_check', 'unseen_full_l_per_h');
    assert.ok(Math.abs(value - want) < 0.05 * u, `${value}, not ${want}`);
    await openAll(page);
    await page.screenshot({ path: join(SHOTS, 'start-co.png'), fullPage: true });
    await saved(page);
  });
  await done(page);
  assert.equal(await worth(page, 'co_test'), DONE);
  // More inside than outdoors, within the meter's error: nothing is cleared.
  await beside(page, 'start_co', async () => {
    await type(page, { ppm: '3' }, '[data-row="1"]');
    assert.match((await check(page, 'shown_rise_ppm')).does, /nothing is cleared/);
    assert.match(await page.textContent('.urgent'), /WHO 2021/);
    await saved(page);
  });
  assert.equal(await worth(page, 'co_test'), NOT_PROVEN);
  // An alarm clears nothing at all.
  await beside(page, 'start_co', async () => {
    await type(page, { device: '1' });
    assert.match((await check(page, 'alarm_rise_ppm')).does, /not a survey meter/);
    assert.equal(await page.locator('[data-result="spare_test_min"]').count(), 0);
    await type(page, { meter_ppm: 'three' });
    assert.match(await complaint(page, 'meter_ppm'), /number/);
  });
  assert.deepEqual(faults, []);
});

test('a rise beyond the meter stops the work; going on takes words that stay', async (t) => {
  const { page, faults } = await openSection(t, server, 'start_up');
  await upTo(page, 'co_test');
  await beside(page, 'start_co', async () => {
    await type(page, METER);
    await readings(page, [['4', '0', '38']]);
    assert.equal((await check(page, 'shown_rise_ppm')).verdict, 'beyond');
    assert.match(await page.textContent('.stop-now'), /Out: everybody/);
    assert.match(await page.textContent('.urgent'), /NIOSH REL, 35 ppm, mean over 8 h/);
    // Under the thumb at once, in sight once the field is left, and nothing says to read on.
    assert.ok(await page.isVisible('[data-action="stop-now"]'));
    assert.ok(await page.isHidden('[data-action="add-co_check"]'));
    assert.equal(await page.locator('[data-result="spare_test_min"] .does').count(), 0);
    await page.locator('[data-row="0"] [data-name="ppm"]').blur();
    await page.waitForFunction(() => scrollY === 0);
    await page.waitForTimeout(300);
  });
  // Whoever comes back to the job is led to it.
  await again(page, null);
  await page.waitForSelector('[data-screen="start"] [data-action="to-stop"]');
  await tap(page, 'tape');
  await page.waitForSelector('.trouble:visible');
  assert.match(await page.textContent('.trouble:visible'), /STOP is on.*Carbon monoxide rose/);
  await tap(page, 'record');
  await page.waitForSelector('.stopped', { state: 'attached' });
  assert.match(await page.textContent('.record-paper .stopped'), /STOP is on.*Carbon monoxide/);
  await page.goBack();
  await page.waitForSelector('[data-screen="parts"]');
  await page.waitForSelector('.trouble:visible');
  await tap(page, 'next');
  await page.waitForSelector('[data-screen="start_up"]');
  // The stop outlives a reload, and nothing else can be done.
  await again(page);
  assert.equal(await page.textContent('h1'), words.stop.title);
  assert.equal(await page.locator('[data-action="done"]').count(), 0);
  await page.screenshot({ path: join(SHOTS, 'start-stop.png'), fullPage: true });
  assert.deepEqual(await axe(page), []);
  await tap(page, 'resume');
  assert.match(await page.textContent('.trouble:visible'), /what was found/);
  await page.fill('#stop-who', 'Ada');
  await page.fill('#stop-why', 'clamp fitted, pipe tight');
  await tap(page, 'resume');
  assert.equal(await page.textContent('h1'), words.stop.title);
  await page.fill('#stop-found', 'exhaust clamp loose');
  await tap(page, 'resume');
  // Everything that the stop undid is to be done again; the extinguisher still stands there.
  assert.equal(await current(page), 'outdoors');
  assert.equal(await worth(page, 'extinguisher'), DONE);
  assert.equal(await worth(page, 'ignition'), NOT_PROVEN);
  const past = await page.textContent('[data-stop="co"]');
  assert.match(past, /Ada.*clamp fitted, pipe tight.*exhaust clamp loose.*38 ppm/s);
  await page.waitForTimeout(200);
  await again(page);
  assert.match(await page.textContent('[data-stop="co"]'), /exhaust clamp loose/);
  // The readings of then are no longer those of now.
  await beside(page, 'start_co', async () => {
    assert.equal(await page.locator('.sheet-rows .card').count(), 0);
    assert.equal(await page.inputValue('[data-name="outdoor_ppm"]'), '');
    // Without clean air to compare with no reading could stop anything.
    assert.ok(await page.isHidden('[data-action="add-co_check"]'));
    await tap(page, 'outdoors-first');
    await page.keyboard.type('0');
    await page.waitForSelector('[data-action="add-co_check"]:visible');
    assert.equal(await page.inputValue('[data-name="volume_m3"]'), '9');
  });
  assert.deepEqual(faults, []);
});

test('with the manual’s limits every step can be borne out; a start too many stops the work', async (t) => {
  const { page, faults } = await openSection(t, server, 'start_up');
  await limits(page);
  await upTo(page, 'meter');
  await beside(page, 'start_co', () => type(page, METER).then(() => saved(page)));
  const MEASURED = {
    ignition: { flame_min: '2.5', starts: '2' },
    voltage: { battery_glow_v: '12.4', heater_glow_v: '11.9', battery_run_v: '12.6', heater_run_v: '12.5' },
    outlet: { intake_celsius: '12', outlet_celsius: '78' },
    low: { low_a: '0.9', outlet_low_celsius: '55' },
    after_run: { after_run_min: '3.2' },
  };
  for (const [id, values] of Object.entries(MEASURED)) {
    if (id === 'after_run') {
      await upTo(page, 'co_test');
      await beside(page, 'start_co', async () => {
        await readings(page, [
          ['20', '0', '0'],
          ['50', '1', '0'],
        ]);
        await saved(page);
      });
    }
    await upTo(page, id);
    await type(page, values);
    await done(page);
    assert.equal(await worth(page, id), DONE, id);
  }
  await upTo(page, 'alarms');
  await tap(page, 'add-alarm');
  await page.fill('[data-row="0"] [data-name="expires"]', `${new Date().getFullYear() + 4}-01-31`);
  await done(page);
  assert.equal(await page.textContent('.summary'), '17 done');
  await page.screenshot({ path: join(SHOTS, 'start-all.png'), fullPage: true });
  // The card may now say what the test found, and nothing more.
  await page.locator('[data-action="to-start_card"]').first().click();
  assert.match(await page.textContent('.driver-card'), /no rise found by the fitter’s meter, that time/);
  await page.goBack();
  // A fourth start.
  await tap(page, 'step-ignition');
  await type(page, { starts: '4' });
  assert.equal((await check(page, 'starts')).verdict, 'beyond');
  await page.locator('[data-name="starts"]').blur();
  await page.waitForSelector('.stop-now');
  assert.ok(await page.isChecked('input[value="starts"]'));
  await page.fill('#stop-why', 'pause of the manual kept');
  await page.fill('#stop-found', 'air in the line');
  await tap(page, 'resume');
  assert.match(await page.textContent('[data-stop="starts"]'), /air in the line.*starts: 4/s);
  assert.equal(await worth(page, 'voltage'), NOT_PROVEN);
  assert.deepEqual(faults, []);
});

test('STOP by hand asks what it was', async (t) => {
  const { page } = await openSection(t, server, 'start_up');
  await tap(page, 'stop');
  await page.fill('#stop-who', 'Ada');
  await page.fill('#stop-why', 'dry again');
  await page.fill('#stop-found', 'clamp at the filter');
  await tap(page, 'resume');
  assert.match(await page.textContent('.trouble:visible'), /what it was/);
  await page.click('input[name="stop-what"][value="leak"]');
  await tap(page, 'resume');
  assert.match(await page.textContent('[data-stop="leak"]'), /clamp at the filter/);
});
