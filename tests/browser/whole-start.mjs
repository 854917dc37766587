// The end of a whole job, its first start, as a person goes through it; and the whole job, section by
// section.

import assert from 'node:assert/strict';
import { entries } from '../../web/tryout/demo-job.js';
import { facts } from '../../web/words/job.js';
import { tap } from './harness.mjs';
import { saved, type } from './plan-page.mjs';
import {
  air,
  atJob,
  capture,
  copyLimits,
  fill,
  flueAndSupply,
  fuel,
  heatAndPlace,
  nameIt,
  section,
  told,
  WHO,
} from './whole-job.mjs';

const current = (page) => page.getAttribute('[data-current]', 'data-current');

/** A step's number typed as it was read. */
const measured = (page, ...names) =>
  type(page, Object.fromEntries(names.map((name) => [name, entries.started.typed[name]])));

/** To the test for carbon monoxide, and back. */
async function beside(page, act) {
  await page.locator('[data-action="to-start_co"]').first().click();
  await page.waitForSelector('[data-screen="start_co"]');
  await act();
  await saved(page);
  await page.goBack();
  await page.waitForSelector('[data-screen="start_up"]');
}

/** What is done in a step, by its name. */
const STEPS = {
  meter: (page) => beside(page, () => fill(page, 'co_check')),
  prime: async (page) => {
    await tap(page, 'timer-prime');
    // By hand: π · 1.1² mm² · 5.2 m and 9 mL, by 0.028 mL · 3.5 Hz, are 294 s; less does not prove it.
    await page.clock.runFor(290_000);
    assert.match(await page.textContent('.timer-left'), /left/);
    await page.clock.runFor(120_000);
    assert.match(await page.textContent('.timer-left'), /Over/);
  },
  ignition: async (page) => {
    await measured(page, 'flame_min', 'starts');
    await tap(page, 'timer-co');
  },
  voltage: (page) => measured(page, 'battery_glow_v', 'heater_glow_v', 'battery_run_v', 'heater_run_v'),
  outlet: (page) => measured(page, 'intake_celsius', 'outlet_celsius'),
  low: (page) => measured(page, 'low_a', 'outlet_low_celsius'),
  co_test: async (page) => {
    await page.clock.runFor(3_600_000);
    const add = entries.co_check.rows.map(() => 'add-co_check');
    await beside(page, () => fill(page, 'co_check', { rows: add }));
  },
  after_run: async (page) => {
    await tap(page, 'timer-after_run');
    await page.clock.runFor(186_000);
    await tap(page, 'seen-after_run');
    assert.equal(await page.inputValue('[data-name="after_run_min"]'), '3.1');
  },
  alarms: async (page) => {
    await tap(page, 'add-alarm');
    const year = new Date().getFullYear() + 3;
    await page.fill('[data-row="0"] [data-name="expires"]', `${year}-06-30`);
  },
};

async function firstStart(page) {
  await section(page, 'start_up', async () => {
    for (let i = 0; i < 17; i += 1) {
      const id = await current(page);
      await STEPS[id]?.(page);
      await page.fill('#step-who', WHO);
      await tap(page, 'done');
    }
    assert.equal(await page.textContent('[data-screen="start_up"] .summary'), '17 done');
  });
}

/** What this vehicle does not have. */
async function notNeeded(page) {
  await tap(page, 'unchecked');
  await page.waitForSelector('[data-screen="unchecked"]');
  const cut = page.locator('[data-group="cut_plan"]');
  await cut.locator('summary').click();
  await told(page, 'no_need:cut_plan', 'bolted to the rack, nothing is cut');
  await page.waitForTimeout(200);
  await page.goBack();
  await atJob(page);
}

/** From the first screen to the end of the job, with a reload on the way. From then on the page's
 * clock is the test's. */
export async function wholeJob(page) {
  await tap(page, 'allow');
  await atJob(page);
  await nameIt(page);
  await copyLimits(page);
  await section(page, 'job', async () => {
    for (const id of Object.keys(facts)) await told(page, id, 'asked the owner, read on the unit');
  });
  await capture(page);
  await heatAndPlace(page);
  await air(page);
  await fuel(page);
  await flueAndSupply(page);
  // Another day: the page was closed meanwhile.
  await page.clock.install({ time: new Date() });
  await page.reload();
  await tap(page, 'tape');
  await atJob(page);
  await firstStart(page);
  await notNeeded(page);
}
