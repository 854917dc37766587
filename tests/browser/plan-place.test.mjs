// Place: clearances, cut plan, fit, typed as a person does on a phone; expectations by hand, in both
// unit systems; the plan measured on paper.

import assert from 'node:assert/strict';
import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { words as cut } from '../../web/words/cut.js';
import { words as fit } from '../../web/words/fit.js';
import { words as shared } from '../../web/words/plan.js';
import { axe, launch, served, tap } from './harness.mjs';

const SHOTS = join(dirname(fileURLToPath(import.meta.url)), 'shots/latest');
mkdirSync(SHOTS, { recursive: true });

const server = served();

/** Limits of an invented heater, by bound: mm. */
const MANUAL = {
  clear_outlet_end_mm: 110,
  clear_intake_end_mm: 105,
  clear_top_mm: 60,
  clear_bottom_mm: 55,
  clear_left_mm: 65,
  clear_right_mm: 55,
  outlet_to_person_mm: 240,
  intake_to_exhaust_mm: 1800,
  cut_to_obstacle_mm: 25,
};

const NAMES = { us: 'us', metric: 'metric' };

/** A browser at the place, with these limits typed into the guide. */
async function open(test, { system = 'metric', limits = {}, ...options } = {}) {
  const b = await launch(options);
  test.after(() => b.close());
  const { page } = b;
  page.setDefaultTimeout(8000);
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  if (system === NAMES.us) {
    await tap(page, 'settings');
    await page.click('input[value="us"]');
    await tap(page, 'done');
    await page.waitForSelector('[data-screen="start"]');
  }
  if (Object.keys(limits).length) {
    await tap(page, 'limits');
    await tap(page, 'guide');
    // Past the heat wanted.
    await tap(page, 'guide-next');
    await page.waitForSelector('[data-limit="clear_top_mm"]');
    for (const [id, low] of Object.entries(limits)) {
      await page.fill(`[id="f-${id}-low"]`, String(low));
      await page.fill(`[id="f-${id}-source"]`, 'Unit H-7, p. 12');
    }
    await tap(page, 'guide-next');
    await page.waitForSelector('[data-limit="unevenness_mm"]');
    await page.goto(server.url);
  }
  await tap(page, 'tape');
  await tap(page, 'section-place');
  await page.waitForSelector('[data-screen="place"]');
  return b;
}

const field = (name, row) =>
  row === undefined
    ? `:not([data-row]) > [data-field="${name}"] [data-name="${name}"]`
    : `[data-row="${row}"] [data-name="${name}"]`;

async function type(page, name, words, row) {
  const at = page.locator(field(name, row)).first();
  await at.fill('');
  await at.pressSequentially(words);
}

const card = (page, result, row) =>
  page.locator(
    row === undefined ? `[data-result="${result}"]` : `[data-result="${result}"][data-row="${row}"]`,
  );

const verdict = (page, result, row) =>
  card(page, result, row).locator('.verdict').getAttribute('data-verdict');

const number = async (page, result, row) =>
  Number((await card(page, result, row).locator('.value').textContent()).replace('−', '-'));

/** Shows that nothing hangs over the edge of the phone. */
async function fitsAcross(page) {
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  assert.ok(over <= 0, `${over} px over the edge`);
}

test('free spaces against the manual’s, and the drawing’s lines carry the verdicts', async (t) => {
  const { page, faults } = await open(t, { limits: MANUAL });
  await type(page, 'outlet_end_mm', '150');
  await type(page, 'top_mm', '40');
  await type(page, 'left_mm', '65');
  await type(page, 'outlet_to_person_mm', '300');
  assert.equal(await verdict(page, 'outlet_end_mm'), 'within');
  assert.equal(await verdict(page, 'top_mm'), 'beyond');
  assert.equal(await verdict(page, 'left_mm'), 'not_proven');
  assert.equal(await verdict(page, 'outlet_to_person_mm'), 'within');
  // 2 mm + 0.2 % of 150 as a rectangle: U = 2 · 2.3/√3 = 2.66, rounded up.
  assert.equal(await card(page, 'outlet_end_mm').locator('.u').textContent(), '± 2.7 mm');
  const lines = page.locator('.plan-picture .dimension');
  const drawn = await lines.evaluateAll((all) => all.map((l) => l.getAttribute('data-verdict')));
  assert.deepEqual(drawn.sort(), ['beyond', 'not_proven', 'unchecked', 'unchecked', 'unchecked', 'within']);
  assert.equal(await page.locator('[data-space="right_mm"]').last().textContent(), '?');
  assert.deepEqual(await axe(page), []);
  await fitsAcross(page);
  await page.screenshot({ path: join(SHOTS, 'place-360.png'), fullPage: true });
  assert.deepEqual(faults, []);
});

test('the cut plan: both faces, plate and seal, gaps by hand', async (t) => {
  const { page, faults } = await open(t, { limits: MANUAL });
  await tap(page, 'sheet-cut_plan');
  await page.waitForSelector('[data-screen="cut"]');
  assert.equal(
    await page.textContent('[data-sheet-state="cut_plan"]'),
    shared.missing(cut.cut.fields.panel_mm),
  );
  await type(page, 'panel_mm', '12');
  await type(page, 'a_diameter_mm', '84');
  await type(page, 'middle_right_mm', '25');
  await tap(page, 'add-near');
  await type(page, 'right_mm', '120', 0);
  await type(page, 'up_mm', '-40', 0);
  await type(page, 'up_to_mm', '60', 0);
  await tap(page, 'add-far');
  // As told behind the panel, to the right: seen from here it lies left.
  await type(page, 'right_mm', '70', 1);
  await tap(page, 'add-far');
  await page.locator('li[data-row="2"] summary').click();
  await type(page, 'distance_mm', '90', 2);
  // 120 − 25 − 42; 70 + 25 − 42; 90 − (25 + 42) in the worst direction.
  assert.equal(await number(page, 'gap_mm', 0), 53);
  assert.equal(await number(page, 'gap_mm', 1), 53);
  assert.equal(await number(page, 'gap_mm', 2), 23);
  assert.equal(await verdict(page, 'gap_mm', 0), 'within');
  assert.equal(await verdict(page, 'gap_mm', 2), 'not_proven');
  const far = await page.locator('.cut-picture path.thing.far').first().boundingBox();
  const pilot = await page.locator('.cut-picture circle.pilot').first().boundingBox();
  assert.ok(far.x < pilot.x, 'what lies right behind the panel is drawn left');
  // The working is what core used, read back.
  await page.click('.working summary');
  const line = (name) => page.locator(`tr[data-name="${name}"] td`).first().textContent();
  assert.match(await line('reach_mm'), /^67\.0 ± /);
  assert.match(await line('in-panel_mm'), /^12\.0 mm/);
  assert.deepEqual(await axe(page), []);
  await fitsAcross(page);
  await page.screenshot({ path: join(SHOTS, 'cut-360.png'), fullPage: true });
  assert.deepEqual(faults, []);
});

test('on paper the plan is as long as it says', async (t) => {
  const { page } = await open(t, { viewport: { width: 720, height: 1000 } });
  await tap(page, 'sheet-cut_plan');
  await type(page, 'panel_mm', '3');
  await type(page, 'a_diameter_mm', '80');
  await tap(page, 'add-near');
  await type(page, 'right_mm', '60', 0);
  await page.emulateMedia({ media: 'print' });
  // The shape without its stroke, in CSS pixels: 96 of them are 25.4 mm.
  const mm = (selector) =>
    page.locator(selector).evaluate((el) => (el.getBBox().width * el.getScreenCTM().a * 25.4) / 96);
  const text = await page.textContent('.paper');
  assert.ok(text.includes(cut.picture.scale(1)), text);
  const hole = await mm('.paper .cut-edge circle');
  assert.ok(Math.abs(hole - 80) < 0.1, `${hole}`);
  const bar = await mm('.paper .bar');
  const told = Number(text.match(/(\d+)(\.\d+)? mm: measure/)[1]);
  assert.ok(Math.abs(bar - told) < 0.1, `${bar} for ${told}`);
  assert.ok(text.includes(cut.tick.cut_airbag_belt), 'what was not looked for stands there too');
  assert.ok(text.includes(shared.tick.open));
  assert.equal(await page.isVisible('[data-action="add-near"]'), false);
  await page.screenshot({ path: join(SHOTS, 'cut-print.png'), fullPage: true });
});

test('dangers are looked for one by one: by whom, with a photo or in words', async (t) => {
  const { page } = await open(t);
  await tap(page, 'sheet-cut_plan');
  const ticks = page.locator('.tick');
  assert.equal(await ticks.count(), Object.keys(cut.tick).length);
  assert.equal(await page.locator('.tick[data-done="yes"]').count(), 0);
  await tap(page, 'tick-cut_high_voltage');
  await tap(page, 'tick-reason');
  assert.equal(
    await page.textContent('[data-tick="cut_high_voltage"] .trouble:not([hidden])'),
    shared.tick.needsWho,
  );
  await page.fill('[id="t-cut_high_voltage-who"]', 'R. Sand');
  await page.fill('[id="t-cut_high_voltage-reason"]', 'camera behind the lining: none within 400 mm');
  await tap(page, 'tick-reason');
  assert.equal(await page.locator('.tick[data-done="yes"]').count(), 1);
  await page.reload();
  await tap(page, 'tape');
  await tap(page, 'section-place');
  await tap(page, 'sheet-cut_plan');
  const done = page.locator('[data-tick="cut_high_voltage"]');
  assert.equal(await done.getAttribute('data-done'), 'yes');
  assert.match(await done.textContent(), /R\. Sand/);
});

test('the fit: room by hand, 16 of 24 allowed, clearances only from the limits', async (t) => {
  const { page, faults } = await open(t, { limits: MANUAL });
  await tap(page, 'sheet-fit');
  await page.waitForSelector('[data-screen="fit"]');
  assert.equal(await page.locator('[data-name="outlet_end_mm"]').count(), 0, 'not to be typed');
  assert.match(await page.textContent('[data-clear="outlet_end_mm"]'), /110 mm/);
  for (const [name, mm] of Object.entries({
    inner_x_mm: 620,
    inner_y_mm: 430,
    inner_z_mm: 360,
    length_mm: 370,
    width_mm: 140,
    height_mm: 150,
  }))
    await type(page, name, String(mm));
  assert.equal(await page.locator('.way-round').count(), 24);
  assert.equal(await page.locator('.way-round[data-allowed="true"]').count(), 16);
  // Lying left to right: 620 − 370 − 110 − 105 = 35, half on each side.
  const upright = page.locator('[data-lay="1"]');
  assert.match(await upright.locator('.value').textContent(), /^17\.5/);
  assert.equal(await upright.getAttribute('data-verdict'), 'within');
  // Inwards 430 − 585.
  assert.equal(await page.locator('[data-lay="3"]').getAttribute('data-verdict'), 'beyond');
  await tap(page, 'way-0');
  assert.equal(await verdict(page, 'room_mm'), 'within');
  // Outlet to the right: 17.5 + 105 from the left wall; left is inwards: (430 − 260)/2 + 55;
  // (360 − 265)/2 + 55.
  const at = await page.textContent('.chosen-way');
  assert.ok(at.includes(fit.at('123 mm', '140 mm', '103 mm')), at);
  assert.deepEqual(await axe(page), []);
  await fitsAcross(page);
  await page.screenshot({ path: join(SHOTS, 'fit-360.png'), fullPage: true });
  await page.locator('details summary', { hasText: fit.boxes }).click();
  await tap(page, 'add-fit');
  for (const [name, mm] of Object.entries({
    x_mm: 0,
    y_mm: 0,
    z_mm: 0,
    size_x_mm: 90,
    size_y_mm: 430,
    size_z_mm: 120,
  }))
    await type(page, name, String(mm), 0);
  // Above it 360 − 120 − 265 = −25, beside it 620 − 90 − 585 = −55: −12.5.
  assert.match(await upright.locator('.value').textContent(), /^−12\.5/);
  await page.screenshot({ path: join(SHOTS, 'fit-box-360.png'), fullPage: true });
  assert.deepEqual(faults, []);
});

test('against trade usage the fit says so; without a clearance there is none', async (t) => {
  const { page } = await open(t);
  await tap(page, 'sheet-fit');
  for (const name of ['inner_x_mm', 'inner_y_mm', 'inner_z_mm']) await type(page, name, '900');
  for (const name of ['length_mm', 'width_mm', 'height_mm']) await type(page, name, '200');
  const frame = page.locator('[data-lay="0"] .verdict');
  assert.equal(await frame.getAttribute('data-verdict'), 'within');
  assert.equal(await frame.getAttribute('data-basis'), 'trade_usage');
  assert.match(await page.textContent('[data-lay="0"]'), /manual not entered/);
  await page.keyboard.press('Tab');
  await page.waitForSelector('[data-saved="yes"]');
  await tap(page, 'guide');
  await tap(page, 'guide-next');
  await page.waitForSelector('[data-limit="clear_top_mm"]');
  await page.fill('[id="f-clear_top_mm-low"]', '');
  await tap(page, 'guide-next');
  await page.waitForSelector('[data-limit="unevenness_mm"]');
  await page.goto(server.url);
  await tap(page, 'tape');
  await tap(page, 'section-place');
  await tap(page, 'sheet-fit');
  assert.equal(await page.textContent('[data-sheet-state="fit"]'), shared.missing(fit.fit.fields.top_mm));
  assert.equal(await page.locator('.way-round').count(), 0);
});

test('in inches: the same cut, and what was typed stays', async (t) => {
  const { page } = await open(t, { system: NAMES.us });
  await tap(page, 'sheet-cut_plan');
  await type(page, 'panel_mm', '0.5');
  await type(page, 'a_diameter_mm', '4');
  await tap(page, 'add-near');
  await type(page, 'right_mm', '5', 0);
  // 5 − 2 in; the international inch is 25.4 mm exactly (NIST SP 811).
  assert.equal(await number(page, 'gap_mm', 0), 3);
  assert.match(await card(page, 'gap_mm', 0).locator('.u').textContent(), / in$/);
  await page.keyboard.press('Tab');
  await page.waitForSelector('[data-saved="yes"]');
  await page.goto(server.url);
  await tap(page, 'tape');
  await tap(page, 'section-place');
  await tap(page, 'sheet-cut_plan');
  assert.equal(await page.inputValue(field('a_diameter_mm')), '4');
  assert.equal(await page.inputValue(field('right_mm', 0)), '5');
});

test('what can’t be is refused at its field, and takes every verdict away', async (t) => {
  const { page } = await open(t);
  await tap(page, 'sheet-cut_plan');
  await type(page, 'panel_mm', '12');
  await type(page, 'a_diameter_mm', '80');
  await tap(page, 'add-far');
  await type(page, 'right_mm', '90', 0);
  assert.equal(await card(page, 'gap_mm', 0).count(), 1);
  const complaint = (name) => page.locator(`[data-field="${name}"] .trouble:visible`).textContent();
  for (const [name, bad] of [
    ['a_diameter_mm', 'abc'],
    ['a_diameter_mm', '0.08'],
    ['panel_mm', '-3'],
    ['panel_mm', '40000'],
  ]) {
    const was = await page.inputValue(field(name));
    await type(page, name, bad);
    assert.ok((await complaint(name)).length > 10, bad);
    assert.equal(await card(page, 'gap_mm', 0).count(), 0, bad);
    await type(page, name, was);
  }
  await page.locator('li[data-row="0"] summary').click();
  await type(page, 'distance_mm', '90', 0);
  assert.equal(await complaint('distance_mm'), cut.cut.problems['distance_mm.contradiction']);
  await type(page, 'distance_mm', '', 0);
  assert.equal(await card(page, 'gap_mm', 0).count(), 1);
});
