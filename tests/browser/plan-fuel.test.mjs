// Fuel: typed once, worked out by core, shown with its working; refused at the field; never better
// than what was measured. Expected numbers come from the handbook's formulas, written out here.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { words } from '../../web/words/fuel.js';
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

const LINE = {
  suction_bore_mm: '2',
  suction_length_m: '1.6',
  suction_lift_mm: '350',
  pressure_bore_mm: '2',
  pressure_length_m: '3.2',
  pressure_lift_mm: '600',
};
const STROKE = { stroke_ml: '0.03', stroke_ms: '40' };
const near = (got, want, share = 0.01) =>
  assert.ok(Math.abs(got - want) <= share * Math.abs(want), `${got}, not ${want}`);

async function sheet(page, name) {
  await tap(page, `sheet-${name}`);
  await page.waitForSelector(`[data-screen="fuel_${name}"]`);
}

async function back(page) {
  await page.goBack();
  await page.waitForSelector('[data-screen="fuel"]');
}

test('what is typed on one sheet stands on the others, and is still there after a reload', async (t) => {
  const { page, faults } = await openSection(t, server, 'fuel');
  await type(page, { fuel: '0' });
  await sheet(page, 'fuel_run');
  await type(page, LINE);
  await saved(page);
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await toSection(page, 'fuel');
  await sheet(page, 'prime');
  for (const name of ['suction_bore_mm', 'suction_length_m', 'pressure_length_m'])
    assert.equal(await page.inputValue(`[data-name="${name}"]`), LINE[name]);
  await back(page);
  await sheet(page, 'burn');
  assert.equal(await page.inputValue('[data-name="fuel"]'), '0');
  assert.deepEqual(faults, []);
});

test('lift and loss are the handbook’s, line by line', async (t) => {
  const { page } = await openSection(t, server, 'fuel');
  await type(page, { fuel: '0' });
  await sheet(page, 'fuel_pressure');
  await openAll(page);
  await type(page, { fuel_celsius: '40', cloud_point_celsius: '-9', ...STROKE, ...LINE });
  await type(page, { viscosity_40_mm2_per_s: '3', density_15_kg_per_m3: '840' });
  const of = (name) => worked(page, 'fuel_pressure', name);
  // At 40 °C the viscosity is the one typed; 840 kg/m³ less 0.084 % a kelvin.
  const rho = 840 * (1 - 8.4e-4 * 25);
  const flow = 0.03e-6 / 0.04;
  const loss = (m) => (128 * 3e-6 * rho * m * flow) / (Math.PI * 0.002 ** 4);
  near((await of('density_kg_per_m3')).value, rho);
  near((await of('viscosity_mm2_per_s')).value, 3);
  near((await of('peak_l_per_h')).value, flow * 3.6e6, 0.03);
  // Shown to as many digits as U leaves.
  for (const [name, pa] of [
    ['suction_loss_pa', loss(1.6)],
    ['suction_pa', loss(1.6) + rho * 9.80665 * 0.35],
    ['pump_pressure_pa', loss(3.2) + rho * 9.80665 * 0.6],
  ]) {
    const { value, u, unit } = await of(name);
    assert.equal(unit, 'Pa');
    assert.ok(Math.abs(value - pa) < 0.05 * u, `${name}: ${value}, not ${pa}`);
  }
});

test('below its cloud point fuel has no answer, near it none that is proven', async (t) => {
  const { page } = await openSection(t, server, 'fuel');
  await type(page, { fuel: '0' });
  await sheet(page, 'fuel_pressure');
  await type(page, { fuel_celsius: '-10', cloud_point_celsius: '-9', ...STROKE, ...LINE });
  assert.match(await complaint(page, 'fuel_celsius'), /cloud point/);
  assert.equal(await page.locator('.answers .verdict').count(), 0);
  await type(page, { fuel_celsius: '-8' });
  const told = await check(page, 'suction_pa');
  assert.equal(told.verdict, 'not_proven');
  assert.match(told.u, /∞/);
  assert.match(told.does, /formulas end/);
  await type(page, { fuel_celsius: '12' });
  assert.doesNotMatch((await check(page, 'suction_pa')).u, /∞/);
});

test('US units: the same line, and bad input at its field', async (t) => {
  const { page } = await openSection(t, server, 'fuel', { us: true });
  await sheet(page, 'fuel_run');
  await type(page, { suction_bore_mm: '0.0787402', suction_length_m: '5.25', suction_lift_mm: '13.8' });
  const bore = await worked(page, 'fuel_run', 'suction_bore_mm');
  assert.equal(bore.unit, 'in');
  near(bore.value, 0.0787, 0.02);
  near((await worked(page, 'fuel_run', 'suction_length_m')).value, 5.25);
  await type(page, { suction_length_m: '131000' });
  assert.match(await complaint(page, 'suction_length_m'), /0 ft to 49\.2126 ft/);
  await type(page, { suction_length_m: 'two' });
  assert.match(await complaint(page, 'suction_length_m'), /number/);
  assert.equal(await page.locator('.answers .verdict').count(), 0);
  await type(page, { suction_length_m: '5.25' });
  assert.equal(await complaint(page, 'suction_length_m'), '');
  // Over to metric: what was typed is the same line.
  await saved(page);
  await page.reload();
  await tap(page, 'settings');
  await page.click('input[value="metric"]');
  await tap(page, 'done');
  await toSection(page, 'fuel');
  await sheet(page, 'fuel_run');
  near(Number(await page.inputValue('[data-name="suction_length_m"]')), 1.6002, 1e-4);
  near(Number(await page.inputValue('[data-name="suction_bore_mm"]')), 2, 1e-4);
});

test('priming is a lower bound: volume, time and starts', async (t) => {
  const { page } = await openSection(t, server, 'fuel');
  await sheet(page, 'prime');
  const { suction_lift_mm: _, pressure_lift_mm: __, ...lengths } = LINE;
  await type(page, { ...lengths, stroke_ml: '0.03', stroke_hz: '2', start_s: '90', starts_made: '1' });
  const ml = (Math.PI / 4) * 4 * 4.8;
  near((await worked(page, 'prime', 'volume_ml')).value, ml, 0.02);
  near((await worked(page, 'prime', 'prime_s')).value, ml / 0.06, 0.02);
  assert.equal((await check(page, 'starts_worth')).verdict, 'not_proven');
});

test('a tank: gaps, what is left, the engine’s share', async (t) => {
  const { page } = await openSection(t, server, 'fuel');
  await sheet(page, 'tank');
  const box = { shape: '0', depth_mm: '420', length_mm: '800', width_mm: '500' };
  await type(page, { ...box, standpipe_mm: '385', second_mm: '400', level_mm: '300' });
  near((await worked(page, 'tank', 'left_l')).value, 14, 0.02);
  near((await worked(page, 'tank', 'heater_l')).value, 106, 0.02);
  near((await worked(page, 'tank', 'second_l')).value, 6, 0.02);
  // Trade usage asks for an inch of the heater's pipe; the engine's own is not the heater's matter.
  assert.equal((await check(page, 'gap_mm')).verdict, 'within');
  near((await worked(page, 'tank', 'second_gap_mm')).value, 20, 0.02);
  assert.equal(await page.locator('.check[data-result="second_gap_mm"]').count(), 0);
  await type(page, { standpipe_mm: '405' });
  assert.match((await check(page, 'gap_mm')).does, /Shorten the pipe by/);
  await type(page, { standpipe_mm: '430' });
  assert.equal(await complaint(page, 'standpipe_mm'), 'Longer than the tank is deep.');
});

test('the bubble explains and passes nothing', async (t) => {
  const { page } = await openSection(t, server, 'fuel');
  await type(page, { fuel: '0' });
  await openAll(page);
  await type(page, { bore_mm: '2' });
  // Bretherton 1961: 0.842; 3.32 mm for 840 kg/m³ and 27 mN/m (tension from memory).
  const critical = await worked(page, 'bubble', 'critical_bore_mm');
  assert.ok(Math.abs(critical.value - 3.32) <= critical.u);
  assert.equal(await page.locator('[data-check]').count(), 0);
  assert.match(await page.textContent('main'), /permits no bore that the manual does not list/);
});

test('ticks: none by default, each by itself, with a name and how it is known', async (t) => {
  const { page } = await openSection(t, server, 'fuel');
  const ids = Object.keys(words.tick);
  const done = () => page.$$eval('.tick[data-done="yes"]', (all) => all.map((e) => e.dataset.tick));
  assert.equal(await page.locator('.tick').count(), ids.length);
  assert.deepEqual(await done(), []);
  await tap(page, 'tick-joints');
  await tap(page, 'tick-reason');
  assert.deepEqual(await done(), []);
  await page.fill('#t-joints-who', 'A. Fitter');
  await tap(page, 'tick-reason');
  assert.deepEqual(await done(), []);
  await page.fill('#t-joints-reason', 'pulled at each, looked into the coupler');
  await tap(page, 'tick-reason');
  assert.deepEqual(await done(), ['joints']);
});

test('cautions first; every screen fits 360 px and is clean for axe, by day and by night', async (t) => {
  for (const colorScheme of ['light', 'dark']) {
    const { page, faults } = await openSection(t, server, 'fuel', { colorScheme });
    assert.equal(await page.locator('.cautions li').count(), words.cautions.length);
    await type(page, { fuel: '0' });
    const inputs = {
      fuel_run: { ...LINE, pump_air_celsius: '31', fuel_to_hot_mm: '140' },
      fuel_pressure: { fuel_celsius: '2', cloud_point_celsius: '-9', ...STROKE },
      prime: { stroke_hz: '2', start_s: '90' },
      tank: { shape: '1', depth_mm: '420', length_mm: '800', standpipe_mm: '385', cut_mm: '8' },
      burn: { output_w: '3000', efficiency: '0.8', reach_l: '60' },
    };
    await openAll(page);
    assert.equal(await tooWide(page), 0);
    assert.deepEqual(await axe(page), []);
    for (const [name, values] of Object.entries(inputs)) {
      await sheet(page, name);
      await type(page, values);
      await openAll(page);
      await page.waitForTimeout(100);
      assert.equal(await page.locator('[data-sheet-state]').first().textContent(), '', name);
      assert.equal(await tooWide(page), 0, name);
      assert.deepEqual(await axe(page), [], name);
      await back(page);
    }
    assert.deepEqual(faults, []);
  }
});

test('what is burnt and how long it lasts is said on the sheet, not only in its working', async (t) => {
  const { page } = await openSection(t, server, 'fuel');
  await sheet(page, 'burn');
  await type(page, { fuel: '0', output_w: '1584', efficiency: '0.8', reach_l: '40' });
  // 1.584 kW ÷ (0.8 · 9.9 kWh/L) is 0.2 L an hour: 40 L last 200 h.
  const said = (await page.textContent('.sums')) ?? '';
  assert.match(said, /0\.200? ±/);
  assert.match(said, /200 ±/);
});
