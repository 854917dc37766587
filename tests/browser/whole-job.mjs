// The ways of a whole job as a person goes them: named, limits copied, angles captured, numbers typed
// section by section.

import assert from 'node:assert/strict';
import { entries } from '../../web/tryout/demo-job.js';
import { steps as guideSteps } from '../../web/words/limits.js';
import { anglesOfUp, synthetic, tap, upFor, waitReason } from './harness.mjs';
import { check, openAll, saved, type, worked } from './plan-page.mjs';

const G = 9.80665;
export const WHO = 'R. Okoro';
/** Some of a manual's limits, by step of the guide; the rest stays not entered. */
const LIMITS = {
  demand: { 'altitude_m.high': '1700' },
  place: { 'clear_top_mm.low': '68', 'clear_right_mm.low': '60', 'intake_to_exhaust_mm.low': '1200' },
  ducts: { 'duct_length_m.high': '7', 'outlet_air_celsius.high': '115' },
  fuel: { 'suction_lift_mm.high': '420', 'starts_in_a_row.high': '3' },
  flue: { 'exhaust_length_m.low': '0.5', 'exhaust_length_m.high': '1.9' },
  supply: { 'start_voltage_v.low': '10.8', 'supply_voltage_v.low': '10.8', 'cable_drop_v.high': '0.65' },
  start: { 'after_run_min.low': '2', 'after_run_min.high': '5' },
};
/** Where the phone lies on each part, its head end raised by so much, and which ends look lower. */
const ANGLES = [
  { part: 'heater', deg: -30, ends: ['head', 'head'] },
  { part: 'pump', deg: 25, ends: ['tail'] },
  { part: 'filter', deg: 70, ends: ['tail'] },
  { part: 'pipe', deg: -7, ends: ['head'] },
];

const row = (i) => `main .sheet-rows [data-row="${i}"]`;

/** The list of the job, its answers in. */
export async function atJob(page) {
  await page.waitForSelector('[data-screen="parts"]');
  await page.waitForFunction(() => document.querySelector('.parts .summary')?.textContent !== '');
}

/** Into a section, and back to the list. */
export async function section(page, name, act) {
  await tap(page, `section-${name}`);
  await page.waitForSelector(`[data-screen="${name}"]`);
  await act();
  await page.waitForTimeout(100);
  await page.goBack();
  await atJob(page);
}

/** Into a sheet of the section, and back to it. */
async function sheet(page, within, name, act) {
  await page.locator(`[data-action="${name}"]`).first().click();
  await page.waitForSelector(`[data-screen="${within}"]`, { state: 'detached' });
  await act();
  await page.goBack();
  await page.waitForSelector(`[data-screen="${within}"]`);
}

/** Types a sheet's own numbers, with everything a tap deeper open; rows are there once told. */
export async function fill(page, name, { inside, rows = [], without = [] } = {}) {
  const own = ([field]) => !without.includes(field);
  await openAll(page);
  await type(page, Object.fromEntries(Object.entries(entries[name].typed).filter(own)), inside);
  for (const [i, add] of rows.entries()) {
    if (add) await tap(page, add);
    await openAll(page);
    const given = Object.entries(entries[name].rows[i]).filter(own);
    await type(page, Object.fromEntries(given), `${inside ?? 'main'} .sheet-rows [data-row="${i}"]`);
  }
  await saved(page);
}

/** A fact seen, or something not needed, with words. */
export async function told(page, id, words) {
  const card = page.locator(`[data-tick="${id}"]`);
  await card.locator(`[data-action="tick-${id}"]`).click();
  await card.locator('input[type="text"]').first().fill(WHO);
  await card.locator('input[type="text"]').last().fill(words);
  await card.locator('[data-action="tick-reason"]').click();
  await page.waitForSelector(`[data-tick="${id}"][data-done="yes"]`);
}

export async function nameIt(page) {
  await tap(page, 'jobs');
  await page.locator('[data-job] button').first().click();
  const header = { vehicle: 'Ladder truck 4', heater: 'Unit H-9, no. 31', customer: 'Weir Lane depot' };
  await type(page, { ...header, installer: WHO });
  await page.waitForSelector('.saved[data-saved="yes"]');
  await tap(page, 'open-job');
  await atJob(page);
  assert.equal(await page.textContent('h1'), 'Ladder truck 4');
}

export async function copyLimits(page) {
  await tap(page, 'limits');
  await tap(page, 'guide');
  for (const [i, step] of guideSteps.entries()) {
    await page.waitForSelector(`text=: ${step.title}`);
    if (i === 0) await page.fill('[id="f-document"]', 'Unit H-9, mounting, edition 2');
    for (const [field, value] of Object.entries(LIMITS[step.id] ?? {})) {
      await page.fill(`[id="f-${field.replace('.', '-')}"]`, value);
      await page.fill(`[id="f-${field.split('.')[0]}-source"]`, `Unit H-9, p. ${20 + i}`);
    }
    await tap(page, 'guide-next');
  }
  await page.waitForSelector('.summary:not(:empty)');
  while (!(await page.$('[data-screen="parts"]'))) {
    await page.goBack();
    await page.waitForTimeout(60);
  }
  await atJob(page);
}

/** The phone on each part, one after the other. */
export async function capture(page) {
  await tap(page, 'part-heater');
  for (const { deg, ends } of ANGLES) {
    await synthetic(page, {});
    await tap(page, 'hold-next');
    for (const end of ends) await tap(page, `end-${end}`);
    await page.waitForSelector('[data-screen="live"]');
    const up = upFor('back', deg);
    await synthetic(page, { a: up.map((v) => G * v), angles: anglesOfUp(up) });
    await waitReason(page, '');
    await tap(page, 'capture');
    await page.waitForSelector('.saved:not([data-saved="no"])');
    await tap(page, 'next');
  }
  await synthetic(page, {});
  await atJob(page);
}

export async function heatAndPlace(page) {
  await section(page, 'demand', async () => {
    const surfaces = ['add-wall', 'add-roof', 'add-floor', 'add-whole'];
    await fill(page, 'heat_loss', { rows: surfaces, without: ['flow'] });
    for (const name of ['heater_size', 'warm_up', 'night'])
      await sheet(page, 'demand', `sheet-${name}`, () => fill(page, name));
  });
  await section(page, 'place', async () => {
    await fill(page, 'clearances');
    // 92 mm above against 68 mm and more.
    assert.equal((await check(page, 'top_mm')).verdict, 'within');
    await told(page, 'reach', 'cover and plug from the side hatch');
    await sheet(page, 'place', 'sheet-fit', () => fill(page, 'fit', { without: ['orientation'] }));
  });
  await section(page, 'support', async () => {
    await type(page, entries.support.typed);
    await fill(page, 'support', { rows: ['six-lines', '', '', '', '', ''], without: ['line'] });
    await openAll(page);
    await type(page, entries.twist.typed);
    await saved(page);
  });
}

export async function air(page) {
  await section(page, 'ducts', async () => {
    const { rows } = entries.ducts;
    await fill(page, 'ducts');
    const kinds = ['straight', 'bend', 'mitre', 'flexible', 'open_end'];
    for (const { run, kind, layout: _, ...piece } of rows) {
      await page.click(`input[name="add-run"][value="${run}"]`);
      await tap(page, `add-${kinds[kind]}`);
      const at = await page.locator('.piece-fields[open]').evaluate((el) => el.closest('li').dataset.row);
      await openAll(page);
      await type(page, piece, row(at));
      await page.evaluate(() => {
        for (const d of document.querySelectorAll('.piece-fields')) d.open = false;
      });
    }
    // 0.9 m, 1.2 m, and a quarter of a circle of 112.5 mm.
    const length = await worked(page, 'ducts', 'length_a_m');
    assert.ok(Math.abs(length.value - 2.277) < 0.01, JSON.stringify(length));
    await openAll(page);
    await fill(page, 'air_flow', { inside: '[data-part="rise"]' });
    await fill(page, 'return_air', { inside: '[data-part="openings"]', rows: ['add-return_air'] });
  });
}

export async function fuel(page) {
  await section(page, 'fuel', async () => {
    await openAll(page);
    await type(page, entries.bubble.typed);
    for (const name of ['fuel_run', 'fuel_pressure', 'prime', 'tank', 'burn'])
      await sheet(page, 'fuel', `sheet-${name}`, () => fill(page, name));
  });
}

export async function flueAndSupply(page) {
  await section(page, 'flue', async () => {
    await sheet(page, 'flue', 'sheet-exhaust', async () => {
      await type(page, { boat: '0' });
      await tap(page, 'take-all');
      await openAll(page);
      await type(page, { length_m: '0.9', bend_deg: '90' }, row(0));
      const angle = Number(await page.inputValue(`${row(0)} [data-name="elevation_deg"]`));
      assert.ok(Math.abs(angle + 7) < 0.3, `${angle}`);
      assert.equal((await check(page, 'standing_mm')).verdict, 'within');
      await saved(page);
    });
    await sheet(page, 'flue', 'sheet-air_pipe', () =>
      fill(page, 'air_pipe', { rows: ['add-air_pipe', 'add-air_pipe'] }),
    );
    const things = ['addOpening', 'addOpening', 'addLine', 'addCombustible'];
    await sheet(page, 'flue', 'sheet-pipe_ends', () => fill(page, 'pipe_ends', { rows: things }));
  });
  await section(page, 'supply', async () => {
    for (const name of ['bank', 'cable', 'fuse', 'battery'])
      await sheet(page, 'supply', `sheet-${name}`, () => fill(page, name));
  });
}
