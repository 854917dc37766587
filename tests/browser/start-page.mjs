// The first start in a browser: its steps done, skipped and looked at, as a person does.

import assert from 'node:assert/strict';
import { steps as guideSteps } from '../../web/words/limits.js';
import { tap } from './harness.mjs';
import { toSection, type } from './plan-page.mjs';

export const METER = {
  device: '0',
  meter_ppm: '3',
  meter_share: '0.05',
  step_ppm: '1',
  outdoor_ppm: '0',
  volume_m3: '9',
  air_least_per_h: '6',
  air_most_per_h: '12',
  powers: '0',
};
export const current = (page) => page.getAttribute('[data-current]', 'data-current');
export const worth = (page, id) => page.getAttribute(`[data-step="${id}"]`, 'data-worth').then(Number);
export const row = (page, id) => page.textContent(`[data-step="${id}"]`);
export const [OPEN, DONE, SKIPPED, NOT_PROVEN] = [0, 1, 2, 3];

export async function done(page, reason = '') {
  await page.fill('#step-who', 'Ada');
  if (reason) await page.fill('#step-reason', reason);
  await tap(page, 'done');
}

export async function skip(page, reason) {
  await tap(page, 'skip');
  await page.fill('#step-who', 'Ada');
  await page.fill('#step-reason', reason);
  await tap(page, 'skip-confirm');
}

/** Goes on until a step is the one to do. */
export async function upTo(page, id) {
  for (let i = 0; (await current(page)) !== id && i < 20; i += 1) await done(page);
  assert.equal(await current(page), id);
}

/** To a screen beside the list, and back. */
export async function beside(page, screen, act) {
  await page.locator(`[data-action="to-${screen}"]`).first().click();
  await page.waitForSelector(`[data-screen="${screen}"]`);
  await act();
  await page.goBack();
  await page.waitForSelector('[data-screen="start_up"]');
}

/** Readings as [minutes, power, ppm]. */
export async function readings(page, list, from = 0) {
  for (const [i, [minutes, power, ppm]] of list.entries()) {
    await tap(page, 'add-co_check');
    await type(page, { minutes, power, ppm }, `[data-row="${from + i}"]`);
  }
}

/** The manual's limits, typed into the guide. */
export const LIMITS = {
  ducts: { 'outlet_air_celsius.high': '110' },
  fuel: { 'starts_in_a_row.high': '3' },
  supply: { 'start_voltage_v.low': '10.5', 'supply_voltage_v.low': '10.5', 'supply_voltage_v.high': '15' },
  start: { 'after_run_min.low': '2', 'after_run_min.high': '5' },
};

/** From the first screen into the guide and back to it. */
export async function limits(page) {
  await again(page, null);
  await tap(page, 'limits');
  await tap(page, 'guide');
  for (const [id, fields] of Object.entries(LIMITS)) {
    const i = guideSteps.findIndex((s) => s.id === id);
    await page.waitForSelector('summary');
    await page.evaluate(() => {
      document.querySelector('details').open = true;
    });
    await tap(page, `step-${i}`);
    await page.waitForSelector(`text=${guideSteps[i].title}`);
    for (const [field, value] of Object.entries(fields)) {
      const name = field.split('.')[0];
      await page.fill(`[id="f-${field.replace('.', '-')}"]`, value);
      await page.fill(`[id="f-${name}-source"]`, 'H-7, p. 30');
    }
    await tap(page, 'guide-next');
    await page.waitForTimeout(300);
  }
  await again(page);
}

export async function again(page, section = 'start_up') {
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  if (section) await toSection(page, section);
}
