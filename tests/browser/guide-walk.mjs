// The way that "Five minutes" shows, walked in the try-out's invented job by what buttons are called
// in code, so that it is the same in every language. Each picture is taken where `see` is called.

import { tap, waitReason } from './harness.mjs';

const at = (page, screen) => page.waitForSelector(`[data-screen="${screen}"]`);

/** Until the job view has counted. */
const told = (page) =>
  page.waitForFunction(() => document.querySelector('.parts .summary')?.textContent !== '');

async function back(page, screen) {
  while (!(await page.$(`[data-screen="${screen}"]`))) {
    await page.goBack();
    await page.waitForTimeout(80);
  }
}

/** The job of the try-out, filled in; the strip says on every screen that nothing is measured. */
async function intoTryout(page) {
  await tap(page, 'tryout');
  await told(page);
  await tap(page, 'demo');
  await page.waitForSelector('.parts .caution');
  await told(page);
}

async function limits(page, see) {
  await tap(page, 'limits');
  await at(page, 'limits');
  await tap(page, 'guide');
  await at(page, 'guide');
  await tap(page, 'guide-next');
  await page.waitForSelector('[data-screen="guide"] fieldset');
  await see('limits');
  await back(page, 'parts');
  await told(page);
}

async function measured(page, see) {
  await tap(page, 'part-heater');
  await at(page, 'hold');
  await see('hold');
  await tap(page, 'hold-next');
  await at(page, 'ends');
  await tap(page, 'end-head');
  await tap(page, 'end-tail');
  await at(page, 'live');
  await waitReason(page, '');
  await see('verdict');
  await tap(page, 'turn-part');
  await waitReason(page, 'not_turned');
  await see('turn');
  await tap(page, 'cancel-turn');
  await waitReason(page, '');
  await tap(page, 'blind');
  await page.waitForSelector('.live.blind');
  await see('blind');
  await back(page, 'parts');
  await told(page);
}

async function typed(page, see) {
  await tap(page, 'section-place');
  await at(page, 'place');
  await see('tape');
  await back(page, 'parts');
  await told(page);
  await tap(page, 'section-start_up');
  await at(page, 'start_up');
  await tap(page, 'to-start_co');
  await at(page, 'start_co');
  await see('co');
  await back(page, 'parts');
  await told(page);
}

/** From the first screen to the record.
 * @param {(id: string, from?: string) => Promise<void>} see what is to stand at the top, else the
 * top of the screen */
export async function walk(page, see) {
  await at(page, 'start');
  await see('open');
  await intoTryout(page);
  await limits(page, see);
  await measured(page, see);
  await typed(page, see);
  await tap(page, 'record');
  await at(page, 'record');
  await see('record', '[data-name="sha256"]');
}
