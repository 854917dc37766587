// Heat wanted: surfaces as a person tells them, a loss that says when it is only the least, the
// heater held against it, what is taken along. Expected numbers are worked out here by ISO 6946 and
// by hand.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { words } from '../../web/words/demand.js';
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

const SPACE = {
  inside_celsius: '20',
  outside_celsius: '-10',
  volume_m3: '9.18',
  changes_per_h: '1',
  altitude_m: '0',
};
/** Plywood inside, insulation, steel: 1.0837 W/(m²·K) with films of 0.13 and 0.04. */
const LAYERS = {
  thickness_1_mm: '5',
  conductivity_1_w_per_m_k: '0.13',
  thickness_2_mm: '25',
  conductivity_2_w_per_m_k: '0.035',
  thickness_3_mm: '1.5',
  conductivity_3_w_per_m_k: '50',
};
const near = (got, want, share = 0.01) =>
  assert.ok(Math.abs(got - want) <= share * Math.abs(want), `${got}, not ${want}`);
const row = (i) => `main [data-row="${i}"]`;

/** Adds a surface and types its numbers. */
async function surface(page, i, what, values) {
  await tap(page, `add-${what}`);
  await openAll(page);
  await type(page, values, row(i));
}

/** The box of 27.12 m², its ribs told or not. */
async function box(page, ribs = '0') {
  await type(page, SPACE);
  await surface(page, 0, 'wall', { area_m2: '27.12', ...LAYERS, bridged_share: ribs });
}

async function sheet(page, name) {
  await tap(page, `sheet-${name}`);
  await page.waitForSelector(`[data-screen="demand_${name}"]`);
}

async function back(page) {
  await page.goBack();
  await page.waitForSelector('[data-screen="demand"]');
}

const HEATER = { full_w: '2400', lowest_w: '800', altitude_m: '0', altitude_share: '0' };

test('a box by ISO 6946, line by line, and still there after a reload', async (t) => {
  const { page, faults } = await openSection(t, server, 'demand');
  await box(page);
  const of = (name) => worked(page, 'heat_loss', name);
  near((await of('u_w_per_m2_k')).value, 1.0837);
  // 27.12 · 1.0837 · 30 W; 9.18 m³ · 30 K · 1212 J/(m³·K) ÷ 3600 s (CoolProp at 20 °C).
  near((await of('surfaces_w')).value, 881.69, 0.02);
  near((await of('air_w')).value, 92.7, 0.02);
  const loss = await of('loss_w');
  assert.equal(loss.unit, 'W');
  assert.ok(Math.abs(loss.value - 974.4) < 0.1 * loss.u);
  assert.match(await page.textContent('.lead'), /^The space loses \d/);
  await saved(page);
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await toSection(page, 'demand');
  assert.equal((await of('loss_w')).value, loss.value);
  assert.deepEqual(faults, []);
});

test('ribs not told: at least so much, drawn broken, and no heater is proven by it', async (t) => {
  const { page } = await openSection(t, server, 'demand');
  await box(page, '');
  assert.match(await page.textContent('.lead'), /at least .* never large enough/);
  assert.match(await page.textContent(`${row(0)} .summary`), /Loses at least/);
  assert.equal(await page.locator('.plan-picture .far').count(), 1);
  await sheet(page, 'heater_size');
  await type(page, { ...HEATER, full_w: '9000' });
  await tap(page, 'take');
  assert.equal(await page.inputValue('[data-name="loss_is"]'), '1');
  assert.equal((await check(page, 'spare_at_most_w')).verdict, 'not_proven');
  assert.match(await page.textContent('.sums'), /at most this multiple/);
  assert.equal(await page.locator('[data-result="spare_w"]').count(), 0);
  await type(page, { full_w: '500' });
  assert.equal((await check(page, 'spare_at_most_w')).verdict, 'beyond');
  // With its ribs told the loss is whole, and what was taken follows.
  await back(page);
  await openAll(page);
  await type(page, { bridged_share: '0' }, row(0));
  await sheet(page, 'heater_size');
  assert.equal(await page.inputValue('[data-name="loss_is"]'), '0');
  await type(page, { full_w: '9000' });
  assert.equal((await check(page, 'spare_w')).verdict, 'within');
});

test('bare metal through insulation is no number, ribs of wood are one', async (t) => {
  const { page } = await openSection(t, server, 'demand');
  await box(page, '0.05');
  await type(page, { bridged_u_w_per_m2_k: '5.88' }, row(0));
  near((await worked(page, 'heat_loss', 'u_w_per_m2_k')).value, 0.95 * 1.0837 + 0.05 * 5.88, 0.02);
  assert.match(await page.textContent('.lead'), /at least/);
  await type(page, { bridged_u_w_per_m2_k: '2.5' }, row(0));
  assert.match(await page.textContent('.lead'), /^The space loses \d/);
});

test('what was taken follows the loss, what was typed over stays and is said to be another', async (t) => {
  const { page } = await openSection(t, server, 'demand');
  await box(page);
  await sheet(page, 'heater_size');
  await type(page, HEATER);
  await tap(page, 'take');
  const first = await page.inputValue('[data-name="loss_w"]');
  near(Number(first), 974.4, 1e-3);
  assert.equal((await check(page, 'spare_w')).verdict, 'within');
  await back(page);
  await sheet(page, 'night');
  await type(page, { loss_w: '700', hours_h: '10', fuel: '0', efficiency: '0.8' });
  await back(page);
  await openAll(page);
  await type(page, { area_m2: '50' }, row(0));
  assert.match(await page.textContent('[data-action="sheet-night"]'), new RegExp(words.another));
  assert.doesNotMatch(await page.textContent('[data-action="sheet-heater_size"]'), new RegExp(words.another));
  await sheet(page, 'heater_size');
  const more = Number(await page.inputValue('[data-name="loss_w"]'));
  near(more, 50 * 1.0837 * 30 + 92.7, 2e-3);
  near(Number((await check(page, 'spare_w')).value), 2400 - more, 0.02);
  // Away, since there is nothing new to take.
  assert.equal(await page.locator('[data-action="take"]').isVisible(), false);
  await back(page);
  await sheet(page, 'night');
  assert.equal(await page.inputValue('[data-name="loss_w"]'), '700');
  // 0.7 kW · 10 h ÷ 0.8 ÷ 9.9 kWh/L.
  near((await worked(page, 'night', 'night_l')).value, 7 / 0.8 / 9.9);
});

test('the height is held against the manual’s, which nobody has entered', async (t) => {
  const { page } = await openSection(t, server, 'demand');
  await sheet(page, 'heater_size');
  await type(page, { ...HEATER, loss_w: '1000', loss_is: '0', altitude_m: '900' });
  const height = await check(page, 'altitude_m');
  assert.equal(height.verdict, 'not_proven');
  assert.equal(height.value, '900');
  near((await worked(page, 'heater_size', 'lowest_ratio')).value, 0.8);
});

test('warming up by its differential equation; never, and nearly never', async (t) => {
  const { page } = await openSection(t, server, 'demand');
  await sheet(page, 'warm_up');
  const cold = { inside_celsius: '20', outside_celsius: '-10', start_celsius: '-10' };
  await type(page, { power_w: '4000', loss_w: '1500', ...cold, heat_kj_per_k: '200' });
  // 200 kJ/K ÷ 50 W/K · ln(80/50) = 1880 s.
  near((await worked(page, 'warm_up', 'warm_min')).value, 31.3, 0.02);
  await type(page, { power_w: '1700' });
  assert.match(await page.textContent('.sums'), new RegExp(words.nearly.slice(0, 20)));
  await type(page, { power_w: '1200' });
  assert.match(await page.textContent('.sums'), /^Never/);
  await type(page, { start_celsius: '25' });
  assert.match(await complaint(page, 'start_celsius'), /Warmer than wanted/);
});

test('a material from the list is taken by a tap alone', async (t) => {
  const { page } = await openSection(t, server, 'demand');
  await tap(page, 'add-wall');
  await openAll(page);
  const k = page.locator(`${row(0)} [data-name="conductivity_1_w_per_m_k"]`);
  assert.equal(await k.inputValue(), '');
  const list = page.locator(`${row(0)} [data-list="conductivity_1_w_per_m_k"]`);
  assert.match(await list.textContent(), /Plywood, 500 kg\/m³: 0.13/);
  assert.doesNotMatch(await list.textContent(), /air/i);
  // EN 12524: steel 50 W/(m·K).
  await list.selectOption({ label: 'Steel: 50' });
  assert.equal(await k.inputValue(), '50');
});

test('US units, and bad input at its field', async (t) => {
  const { page } = await openSection(t, server, 'demand', { us: true });
  const space = { inside_celsius: '68', outside_celsius: '14', volume_m3: '324.19', altitude_m: '0' };
  await type(page, { ...space, changes_per_h: '1' });
  await surface(page, 0, 'whole', { area_m2: '291.917', u_w_per_m2_k: '1.0837' });
  near((await worked(page, 'heat_loss', 'surfaces_w')).value, 881.69, 0.02);
  await type(page, { area_m2: 'wide' }, row(0));
  assert.match(await complaint(page, 'area_m2', row(0)), /number/);
  assert.equal(await page.textContent('.lead'), '');
  await type(page, { area_m2: '291.917' }, row(0));
  await type(page, { outside_celsius: '70' });
  assert.match(await complaint(page, 'outside_celsius'), /No colder/);
  await type(page, { outside_celsius: '14' });
  await type(page, { thickness_1_mm: '1', conductivity_1_w_per_m_k: '0.13' }, row(0));
  assert.match(await complaint(page, 'u_w_per_m2_k', row(0)), /not both/);
});

test('arrows are as wide as the losses', async (t) => {
  const { page } = await openSection(t, server, 'demand');
  await type(page, SPACE);
  await surface(page, 0, 'wall', { area_m2: '10', thickness_1_mm: '', u_w_per_m2_k: '2' });
  await surface(page, 1, 'roof', { area_m2: '5', u_w_per_m2_k: '2' });
  const width = (label) =>
    page.getAttribute(`[data-loss="${label}"]`, 'd').then((d) => -2 * Number(d.match(/^M0 ([^H]+)H/)[1]));
  near((await width('1')) / (await width('2')), 2, 1e-6);
  near((await width('air')) / (await width('2')), 92.7 / 300, 0.01);
});

test('cautions first; every screen fits 360 px and is clean for axe, by day and by night', async (t) => {
  for (const colorScheme of ['light', 'dark']) {
    const { page, faults } = await openSection(t, server, 'demand', { colorScheme });
    assert.equal(await page.locator('.cautions li').count(), words.cautions.length);
    await box(page, '');
    await openAll(page);
    assert.equal(await tooWide(page), 0);
    assert.deepEqual(await axe(page), []);
    const inputs = {
      heater_size: HEATER,
      warm_up: { start_celsius: '-10', heat_kj_per_k: '200' },
      night: { hours_h: '9', fuel: '1', efficiency: '0.8', electrical_w: '20', battery_v: '12.5' },
    };
    for (const [name, values] of Object.entries(inputs)) {
      await sheet(page, name);
      await tap(page, 'take');
      await type(page, values);
      await openAll(page);
      await page.waitForTimeout(100);
      assert.equal(await page.textContent(`[data-sheet-state="${name}"]`), '', name);
      assert.equal(await tooWide(page), 0, name);
      assert.deepEqual(await axe(page), [], name);
      await back(page);
    }
    assert.deepEqual(faults, []);
  }
});
