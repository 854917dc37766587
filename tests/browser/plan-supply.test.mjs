// Supply: the cable out and back, which size holds, fuse, take-off, hours; typed as a person does, in
// both unit systems. Expected numbers are worked out here or are the handbook's.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { text } from '../../web/text.js';
import { steps } from '../../web/words/limits.js';
import { words } from '../../web/words/supply.js';
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

/** An invented manual. */
const MANUAL = {
  'supply_voltage_v-low': 10.6,
  'supply_voltage_v-high': 15.4,
  'start_voltage_v-low': 11.2,
  'cable_drop_v-high': 0.7,
  'fuse_a-low': 15,
  'fuse_a-high': 20,
  'fuse_to_battery_mm-high': 160,
};
const WAY = {
  out_m: '4.2',
  back_by: '0',
  back_m: '3.7',
  conductor: '4',
  conductor_celsius: '45',
  joints_mohm: '9',
};
const CURRENTS = { start_supply_v: '12.3', start_a: '11', running_supply_v: '12.6', running_a: '2.4' };
const NIGHT = {
  capacity_ah: '100',
  rated_h: '20',
  usable: '0.5',
  cold: '1',
  average_a: '1.5',
  standby_a: '0',
  starts: '0',
};
const SHEETS = Object.keys(words.sheets);

async function sheet(page, name) {
  await tap(page, `sheet-${name}`);
  await page.waitForSelector(`[data-screen="supply_${name}"]`);
}

async function back(page) {
  await page.goBack();
  await page.waitForSelector('[data-screen="supply"]');
}

/** A section with these limits typed into the guide. */
async function withLimits(t, limits, options) {
  const b = await openSection(t, server, 'supply', options);
  const { page } = b;
  await page.goto(server.url);
  await tap(page, 'limits');
  await tap(page, 'guide');
  await openAll(page);
  await tap(page, `step-${steps.findIndex((s) => s.id === 'supply')}`);
  for (const [id, value] of Object.entries(limits)) {
    await page.fill(`[id="f-${id}"]`, String(value));
    await page.fill(`[id="f-${id.replace(/-.*/, '')}-source"]`, 'Unit K-3, p. 41');
  }
  await tap(page, 'guide-next');
  await page.waitForSelector('[data-limit="after_run_min"]');
  await page.goto(server.url);
  await toSection(page, 'supply');
  return b;
}

/** What a sheet's button in the list says. */
const inList = (page, name) =>
  page.locator(`[data-action="sheet-${name}"] .verdict`).evaluate((e) => [e.dataset.verdict, e.textContent]);

/** Shown to as many digits as U leaves. */
const near = ({ value, u }, want) =>
  assert.ok(Math.abs(value - want) <= 0.05 * u, `${value} ± ${u}, not ${want}`);

test('out and back are asked each by itself; the drop is the handbook’s', async (t) => {
  const { page, faults } = await openSection(t, server, 'supply');
  await sheet(page, 'cable');
  const example = { ...WAY, out_m: '5', conductor: '3', conductor_celsius: '20', joints_mohm: '0' };
  const { back_m, ...oneWay } = example;
  await type(page, { ...oneWay, start_supply_v: '12', start_a: '10' });
  assert.match(await page.textContent('[data-sheet-state="cable"]'), /Heater back/);
  assert.equal(await page.locator('.answers .verdict').count(), 0, back_m);
  await type(page, { back_m: '5' });
  await openAll(page);
  // 2 · 5 m · 10 A · 7.98 mΩ/m (IEC 60228) = 0.798 V, 6.65 % of 12 V; × 1.1572 at 60 °C.
  near(await worked(page, 'cable', 'start_drop_v'), 0.798);
  near(await worked(page, 'cable', 'start_drop_percent'), 6.65);
  near(await worked(page, 'cable', 'start_out_v'), 0.399);
  near(await worked(page, 'cable', 'heater_start_v'), 12 - 0.798);
  await type(page, { conductor_celsius: '60' });
  near(await worked(page, 'cable', 'start_drop_v'), 0.92345);
  // The drawing tells what the working tells.
  assert.match(await page.textContent('.circuit [data-of="lost"]'), /^0\.9\d V$/);
  // Other sizes stand in their table, not in the working.
  assert.equal(await page.locator('.working [data-name="size_start_drop_v"]').count(), 0);
  assert.deepEqual(faults, []);
});

test('against the manual: verdicts, and the first size of each list that holds', async (t) => {
  const { page } = await withLimits(t, MANUAL);
  await sheet(page, 'cable');
  await type(page, { ...WAY, ...CURRENTS });
  await openAll(page);
  // 4.95 Ω/km · 7.9 m · (1 + 0.00393 · 25 K) + 9 mΩ = 51.95 mΩ.
  near(await worked(page, 'cable', 'loop_mohm'), 51.95);
  for (const [result, want] of [
    ['start_drop_v', 'within'],
    ['running_drop_v', 'within'],
    ['heater_start_v', 'within'],
    ['heater_running_v', 'within'],
  ])
    assert.equal((await check(page, result)).verdict, want, result);
  const answer = (size) => page.getAttribute(`[data-size="${size}"]`, 'data-answer');
  const first = (list) => page.getAttribute(`[data-list="${list}"] [data-first]`, 'data-first');
  // 2.5 mm² loses 0.86 V, 4 mm² 0.57 ± 0.11 V; AWG 12 loses 0.60 ± 0.11 V, AWG 10 0.41 V.
  assert.equal(await answer('2.5 mm²'), 'beyond');
  assert.equal(await first(words.sizes.area), '4 mm²');
  assert.equal(await answer('AWG 12'), 'not_proven');
  assert.equal(await first(words.sizes.gauge), 'AWG 10');
  // What is in the cable's place stands in the list's own line.
  await type(page, { conductor: '3' });
  const told = await check(page, 'start_drop_v');
  assert.equal(told.verdict, 'beyond');
  assert.match(told.does, /thicker conductor/);
  assert.equal(await first(words.sizes.area), '4 mm²');
  // Without a current nothing is proven for any size.
  await type(page, { start_a: '' });
  assert.equal(await first(words.sizes.area), '');
});

test('US units; the cable’s own paper; the body; bad input at its field', async (t) => {
  const { page } = await openSection(t, server, 'supply', { us: true });
  await sheet(page, 'cable');
  await openAll(page);
  await type(page, { ...WAY, out_m: '20', back_m: '20', conductor: '11', conductor_celsius: '68' });
  await type(page, { joints_mohm: '0', start_supply_v: '12', start_a: '15' });
  // Handbook of solid copper: AWG 12 has 1.588 Ω per 1000 ft at 20 °C.
  const listed = await worked(page, 'cable', 'start_drop_v');
  near(listed, (15 * 40 * 1.588) / 1000);
  await type(page, { paper_ohm_per_km: '1.65' });
  const own = await worked(page, 'cable', 'start_drop_v');
  near(own, (15 * 40 * 1.65) / 1000);
  assert.ok(own.u < listed.u);
  assert.equal(await page.isVisible('[data-field="body_mohm"]'), false);
  await type(page, { back_by: '1' });
  assert.match(await page.textContent('[data-sheet-state="cable"]'), /The body/);
  await type(page, { body_mohm: '4' });
  near(await worked(page, 'cable', 'start_drop_v'), (15 * 40 * 1.65) / 1000 + 0.06);
  await type(page, { back_by: '0' });
  assert.match(await complaint(page, 'body_mohm'), /Only where the body/);
  await type(page, { body_mohm: '', out_m: '6000' });
  assert.match(await complaint(page, 'out_m'), /0\.164042 ft to 164\.042 ft/);
  await type(page, { out_m: 'twenty' });
  assert.match(await complaint(page, 'out_m'), /number/);
  assert.equal(await page.locator('.answers .verdict').count(), 0);
});

test('a centre tap is found; readings that agree leave the tick to say it', async (t) => {
  const { page } = await withLimits(t, { 'supply_voltage_v-low': 21, 'supply_voltage_v-high': 30 });
  await sheet(page, 'bank');
  await type(page, { nominal: '1', bank_v: '25.3', take_off_v: '12.6' });
  assert.equal((await check(page, 'missed_v')).verdict, 'beyond');
  assert.match((await check(page, 'missed_v')).does, /centre tap/);
  assert.equal((await check(page, 'take_off_v')).verdict, 'beyond');
  await type(page, { take_off_v: '25.25' });
  const agreed = await check(page, 'missed_v');
  assert.equal(agreed.verdict, 'not_proven');
  assert.match(agreed.does, /prove nothing/);
  await saved(page);
  await back(page);
  assert.deepEqual(await inList(page, 'bank'), ['unchecked', '1 not checked']);
  await sheet(page, 'bank');
  await tap(page, 'tick-across');
  await page.fill('[id="t-across-who"]', 'J. Fitter');
  await page.fill('[id="t-across-reason"]', 'both cables followed to the end posts');
  await tap(page, 'tick-reason');
  await saved(page);
  await back(page);
  // What can be found wrong and never right keeps the sheet from reading "within".
  assert.deepEqual(await inList(page, 'bank'), ['unchecked', text.parts.notFound]);
});

test('the fuse: the manual’s, below what its conductor carries, near the battery', async (t) => {
  const { page } = await withLimits(t, MANUAL);
  await sheet(page, 'fuse');
  await type(page, { fuse_a: '15', fuse_to_battery_mm: '140', ampacity_a: '32', conductor: '11' });
  // Neither factor told: what it carries is open.
  assert.match(await page.textContent('.answers .missing'), /less its fuse/);
  await type(page, { engine_space: '0.8', bundle: '0.7' });
  near(await worked(page, 'fuse', 'spare_a'), 32 * 0.8 * 0.7 - 15);
  assert.equal((await check(page, 'spare_a')).verdict, 'within');
  assert.equal((await check(page, 'fuse_a')).verdict, 'within');
  assert.equal((await check(page, 'fuse_to_battery_mm')).verdict, 'within');
  // 33 CFR 183.425: 45 A for AWG 12, with its scope, and used nowhere.
  assert.match(await page.textContent('[data-told="boat_law_a"]'), /US petrol boats.* 45\.0 A.*used nowhere/);
  await type(page, { fuse_a: '25' });
  assert.match((await check(page, 'fuse_a')).does, /manual names/);
  const told = await check(page, 'spare_a');
  assert.equal(told.verdict, 'beyond');
  assert.match(told.does, /smaller/);
  await type(page, { bundle: '1.4' });
  assert.match(await complaint(page, 'bundle'), /0\.1 to 1/);
});

test('hours: charge over current, starts counted, a bound where no more is known', async (t) => {
  const { page } = await openSection(t, server, 'supply');
  await sheet(page, 'battery');
  await type(page, NIGHT);
  await openAll(page);
  near(await worked(page, 'battery', 'lasts_h'), 33.33);
  assert.match(await page.textContent('[data-told="lasts_h"]'), /^It lasts 33/);
  // Peukert: 20 h · (100 Ah ÷ (10 A · 20 h))^1.2 = 8.706 h.
  await type(page, { usable: '1', average_a: '10' });
  assert.equal(await page.textContent('[data-told="lasts_h"]'), '');
  assert.match(await page.textContent('[data-told="lasts_at_most_h"]'), /at most 10/);
  await type(page, { peukert: '1.2' });
  near(await worked(page, 'battery', 'lasts_h'), 8.706);
  assert.equal(await page.textContent('[data-told="lasts_at_most_h"]'), '');
  await type(page, { starts: '2' });
  assert.match(await page.textContent('[data-sheet-state="battery"]'), /Current during start/);
  await type(page, {
    ...NIGHT,
    peukert: '',
    starts: '2',
    start_a: '9',
    start_min: '2',
    after_a: '3',
    after_min: '4',
  });
  await type(page, { wanted_h: '24' });
  // (50 − 2·9·2/60 − 2·3·4/60) Ah ÷ 1.5 A = 32.67 h.
  near(await worked(page, 'battery', 'spare_h'), 32.667 - 24);
  assert.equal((await check(page, 'spare_h')).verdict, 'within');
  await type(page, { wanted_h: '40' });
  assert.equal((await check(page, 'spare_h')).verdict, 'beyond');
});

test('typed once, there on the others, and still there after a reload', async (t) => {
  const { page, faults } = await openSection(t, server, 'supply');
  await sheet(page, 'cable');
  await type(page, { ...WAY, ...CURRENTS });
  await saved(page);
  await back(page);
  await sheet(page, 'fuse');
  assert.equal(await page.inputValue('[data-name="conductor"]'), WAY.conductor);
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await toSection(page, 'supply');
  await sheet(page, 'battery');
  assert.equal(await page.inputValue('[data-name="start_a"]'), CURRENTS.start_a);
  await back(page);
  await sheet(page, 'cable');
  for (const [name, typed] of Object.entries({ ...WAY, ...CURRENTS }))
    assert.equal(await page.inputValue(`[data-name="${name}"]`), typed, name);
  assert.deepEqual(faults, []);
});

test('ticks wait; every screen fits and is clean for axe, by day and by night', async (t) => {
  for (const colorScheme of ['light', 'dark']) {
    const { page, faults } = await withLimits(t, MANUAL, { colorScheme });
    assert.deepEqual(await axe(page), []);
    assert.equal(await tooWide(page), 0);
    for (const name of SHEETS) {
      await sheet(page, name);
      const ticks = Object.keys(words.tick[name]).length;
      assert.equal(await page.locator('.tick[data-done="no"]').count(), ticks);
      assert.ok((await page.locator('.caution').count()) > 0);
      if (name === 'cable') await type(page, { ...WAY, ...CURRENTS });
      if (name === 'bank') await type(page, { nominal: '0', bank_v: '12.7', take_off_v: '12.7' });
      await openAll(page);
      await page.waitForTimeout(100);
      assert.equal(await tooWide(page), 0, name);
      assert.deepEqual(await axe(page), [], name);
      await back(page);
    }
    assert.deepEqual(faults, []);
  }
});
