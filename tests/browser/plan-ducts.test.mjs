// Ducts: pieces by taps, what they cost, two layouts, flow from a rise, openings, a fan's curve.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { words } from '../../web/words/ducts.js';
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

const AIR = { flow_m3_per_h: '100', power_w: '0', inlet_celsius: '20', altitude_m: '0' };
const WARM = { ...AIR, power_w: '2000' };
const row = (i) => `[data-row="${i}"]`;
const near = (told, expected, share) =>
  assert.ok(Math.abs(told / expected - 1) < share, `${told} is not ${expected}`);

/** Adds a piece and types into it; gives its place. */
async function add(page, kind, values) {
  await tap(page, `add-${kind}`);
  const place = await page.locator('.piece-fields[open]').evaluate((el) => el.closest('li').dataset.row);
  await type(page, values, row(place));
  return Number(place);
}

/** To which run, or in which layout, pieces are added from now on. */
const choose = (page, what, value) => page.click(`input[name="add-${what}"][value="${value}"]`);

/** A run with something of each side. */
async function build(page) {
  await type(page, WARM);
  await add(page, 'open_end', { bore_mm: '75', share: '0.7' });
  await add(page, 'bend', { angle_deg: '90', radius_ratio: '1.5' });
  await choose(page, 'run', '1');
  await add(page, 'straight', { length_m: '1' });
  await add(page, 'open_end', {});
  await add(page, 'flexible', { length_m: '1.2', share: '0.1', angle_deg: '90', radius_ratio: '1.5' });
}

test('a straight metre costs what the library says, metric and US', async (t) => {
  // fluids 1.3.1, 75 mm, roughness 0.09 mm, 100 m³/h at 20 °C: 8.335 Pa/m.
  for (const us of [false, true]) {
    const { page, faults } = await openSection(t, server, 'ducts', { us });
    const air = us ? { flow_m3_per_h: '58.8578', power_w: '0', inlet_celsius: '68', altitude_m: '0' } : AIR;
    await type(page, air);
    await choose(page, 'run', '1');
    const place = await add(
      page,
      'straight',
      us ? { bore_mm: '2.952756', length_m: '3.28084' } : { bore_mm: '75', length_m: '1' },
    );
    await openAll(page);
    await type(page, { roughness_mm: us ? '0.00354331' : '0.09' }, row(place));
    const loss = await worked(page, 'ducts', 'loss_a_pa');
    assert.equal(loss.unit, us ? 'inH₂O' : 'Pa');
    near(loss.value, us ? 8.335 / 249.08891 : 8.335, 0.02);
    assert.ok(loss.u > 0);
    assert.deepEqual(faults, []);
  }
});

test('pieces stand in the order of the air, the dearest is named', async (t) => {
  const { page } = await openSection(t, server, 'ducts');
  await build(page);
  const kinds = await page.$$eval('.piece-fields .words b', (all) => all.map((e) => e.textContent));
  // The flexible duct went in before the outlet, where air leaves.
  assert.deepEqual(kinds, ['1 open end', '2 bend', '3 straight', '4 flexible', '5 open end']);
  const costs = await page.$$eval('.piece-fields .costs b', (all) =>
    all.map((e) => Number.parseFloat(e.textContent)),
  );
  const dearest = costs.indexOf(Math.max(...costs));
  assert.match(await page.textContent('.sums'), new RegExp(`Costs most: ${kinds[dearest]}`));
  assert.equal(await page.locator('.bar.most').count(), 1);
  const total = (await worked(page, 'ducts', 'loss_a_pa')).value;
  near(
    costs.reduce((a, b) => a + b),
    total,
    0.02,
  );
  // 59 K at 2 kW and 100 m³/h; 180° of bends.
  near((await worked(page, 'ducts', 'rise_k')).value, 59.3, 0.02);
  assert.equal((await check(page, 'bends_a_deg')).value, '180.0');
  assert.equal((await check(page, 'bends_a_deg')).verdict, 'within');
  await page.click(`${row(3)} [data-action="move-up"]`);
  assert.match(await page.textContent(`${row(2)} .words`), /3 flexible/);
});

test('taken away by mistake, it comes back; nothing is lost over a reload', async (t) => {
  const { page } = await openSection(t, server, 'ducts');
  await build(page);
  const before = (await check(page, 'loss_a_pa')).value;
  await page.click(`${row(1)} .piece-fields > summary`);
  await page.click(`${row(1)} [data-action="remove-row"]`);
  assert.notEqual((await check(page, 'loss_a_pa')).value, before);
  // Where it was, not one piece higher.
  assert.equal(await page.locator('.undo + li').getAttribute('data-row'), '1');
  await tap(page, 'undo-ducts');
  assert.equal((await check(page, 'loss_a_pa')).value, before);
  await saved(page);
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await toSection(page, 'ducts');
  assert.equal((await check(page, 'loss_a_pa')).value, before);
  assert.equal(await page.locator('.piece-fields').count(), 5);
});

test('two layouts: what both share cancels, and B has its own answers', async (t) => {
  const { page } = await openSection(t, server, 'ducts');
  await build(page);
  assert.equal(await page.locator('[data-result="bends_b_deg"]').count(), 0);
  assert.doesNotMatch(await page.textContent('main'), /Not measured/);
  await tap(page, 'compare');
  await choose(page, 'layout', '2');
  await add(page, 'bend', { bore_mm: '75', angle_deg: '180', radius_ratio: '1' });
  const b = await check(page, 'bends_b_deg');
  assert.equal(b.value, '360.0');
  assert.equal(b.verdict, 'beyond');
  assert.match(b.does, /of bends away/);
  assert.match(await page.textContent('.sums'), /B less A: [1-9]/);
  const apart = await worked(page, 'ducts', 'loss_difference_pa');
  assert.ok(apart.u < 0.7 * (await worked(page, 'ducts', 'loss_b_pa')).u);
});

test('bad input stands at its field, in the piece where it is', async (t) => {
  const { page } = await openSection(t, server, 'ducts');
  await build(page);
  for (const [place, name, typed, said] of [
    [3, 'bore_mm', '90', /reducer/],
    [2, 'bore_mm', '0.075', /metres/],
    [2, 'length_m', '40000', /can’t be/],
    [1, 'angle_deg', '0', /turns the air/],
    [3, 'share', '0.8', /stretch/],
    [1, 'radius_ratio', 'tight', /number/],
  ]) {
    await openAll(page);
    const field = page.locator(`${row(place)} [data-name="${name}"]`);
    const was = await field.inputValue();
    await type(page, { [name]: typed }, row(place));
    assert.match(await complaint(page, name, row(place)), said, `${name} ${typed}`);
    assert.equal(await page.locator('.check').count(), 0, 'no verdict stands on a wrong number');
    await type(page, { [name]: was }, row(place));
  }
  await type(page, { radius_ratio: '' }, row(1));
  assert.match(await page.textContent('[data-sheet-state="ducts"]'), /Piece 2: Radius/);
  await type(page, { radius_ratio: '1.5' }, row(1));
  // Too little air for the heat: no number, and the reason at the flow.
  await type(page, { flow_m3_per_h: '15' });
  assert.match(await complaint(page, 'flow_m3_per_h'), /hotter/);
});

test('one tap after typing is enough', async (t) => {
  const { page } = await openSection(t, server, 'ducts');
  await build(page);
  const toggles = [`${row(2)} .piece-fields > summary`, '.check summary'];
  for (const summary of toggles) {
    await type(page, { power_w: '1900' });
    await page.click(summary);
    assert.ok(
      await page
        .locator(summary)
        .first()
        .evaluate((el) => el.parentElement.open),
      summary,
    );
  }
});

test('a complaint in a closed piece opens it', async (t) => {
  const { page } = await openSection(t, server, 'ducts');
  await build(page);
  await page.click(`${row(2)} .piece-fields > summary`);
  await type(page, { length_m: '40000' }, row(2));
  await page.locator('.piece-fields').evaluateAll((all) => {
    for (const details of all) details.open = false;
  });
  await type(page, { power_w: '2001' });
  assert.equal(await page.locator(`${row(2)} .piece-fields[open]`).count(), 1);
});

test('flow from a measured rise, openings, and the fan', async (t) => {
  const { page, faults } = await openSection(t, server, 'ducts');
  await build(page);
  await openAll(page);
  const rise = '[data-part="rise"]';
  await type(page, { power_w: '2000', inlet_celsius: '20', outlet_celsius: '79.3', altitude_m: '0' }, rise);
  const flow = await worked(page, 'air_flow', 'flow_m3_per_h');
  near(flow.value, 100, 0.01);
  await tap(page, 'take-flow');
  near(Number(await page.inputValue('[data-name="flow_m3_per_h"]')), flow.value, 0.01);
  await type(page, { outlet_celsius: '15' }, rise);
  assert.match(await complaint(page, 'outlet_celsius', rise), /nothing is heated/);

  const openings = '[data-part="openings"]';
  await tap(page, 'take-air');
  assert.equal(await page.inputValue(`${openings} [data-name="air_celsius"]`), '20');
  await tap(page, 'add-return_air');
  await type(
    page,
    { width_mm: '100', height_mm: '60', free_share: '0.65', count: '2' },
    `${openings} ${row(0)}`,
  );
  assert.equal(Number((await check(page, 'free_area_cm2')).value), 78);

  const fan = '[data-part="fan"]';
  const point = (n, q, p) => ({ [`flow_${n}_m3_per_h`]: q, [`pressure_${n}_pa`]: p });
  assert.equal(await page.inputValue(`${fan} [data-name="power"]`), '1.8');
  await type(page, { ...point(1, '30', '400'), ...point(2, '60', '390') }, fan);
  assert.equal(await page.locator('[data-result="fan_flow_a_m3_per_h"]').count(), 0);
  assert.match(await page.textContent(fan), new RegExp(words.beyondCurve));
  await type(page, point(3, '200', '10'), fan);
  const found = await check(page, 'fan_flow_a_m3_per_h');
  assert.ok(Number(found.value) > 60 && Number(found.value) < 200);
  await tap(page, 'take-fan');
  near(Number(await page.inputValue('[data-name="flow_m3_per_h"]')), Number(found.value), 0.05);
  await type(page, point(3, '200', '395'), fan);
  assert.match(await complaint(page, 'pressure_3_pa', fan), /contradicts/);
  assert.deepEqual(faults, []);
});

test('the screen fits and is clean for axe, by day and by night', async (t) => {
  for (const [colorScheme, us] of [
    ['light', false],
    ['dark', true],
  ]) {
    const { page, faults } = await openSection(t, server, 'ducts', { colorScheme, us });
    const bore = us ? '3' : '75';
    await type(
      page,
      us ? { flow_m3_per_h: '60', power_w: '2000', inlet_celsius: '60', altitude_m: '500' } : WARM,
    );
    await add(page, 'open_end', { bore_mm: bore });
    await choose(page, 'run', '1');
    for (const kind of ['straight', 'bend', 'mitre', 'flexible', 'reducer', 'branch', 'open_end'])
      await add(page, kind, {});
    await tap(page, 'compare');
    assert.equal(await page.locator('.caution').count(), 1);
    for (const open of [false, true]) {
      if (open) await openAll(page);
      await page.waitForTimeout(100);
      assert.equal(await tooWide(page), 0);
      assert.deepEqual(await axe(page), []);
    }
    const small = await page.$$eval(
      'main button, main summary',
      (all) => all.filter((e) => e.getClientRects().length && e.getBoundingClientRect().height < 48).length,
    );
    assert.equal(small, 0, 'for gloves');
    assert.deepEqual(faults, []);
  }
});
