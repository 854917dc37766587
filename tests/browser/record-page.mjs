// A job with a little of everything, and its record as the page hands it out.

import { readFileSync } from 'node:fs';
import { anglesOfUp, launch, synthetic, tap, toLive, upFor, waitReason } from './harness.mjs';
import { saved, type } from './plan-page.mjs';

const G = 9.80665;

export async function openStart(t, server, options = {}) {
  const b = await launch(options);
  t.after(() => b.close());
  b.page.setDefaultTimeout(8000);
  await b.page.goto(server.url);
  await b.page.waitForSelector('[data-screen="start"]');
  return b;
}

/** From wherever it is to the first screen, as by a reload. */
export const home = async (page) => {
  await page.goto(new URL('./', page.url()).href);
  await page.waitForSelector('[data-screen="start"]');
};

/** A job with numbers, a fact with a photo, a capture, a mark that something is not needed. */
export async function fillJob(page) {
  await tap(page, 'jobs');
  await page.locator('[data-job] button').first().click();
  await type(page, { vehicle: '=Carrier "12", long', heater: 'H-7 no. 55', customer: 'Düne & Söhne' });
  await page.waitForSelector('.saved[data-saved="yes"]');
  await home(page);
  await tap(page, 'tape');
  await tap(page, 'section-support');
  await type(page, { long_mm: '180', short_mm: '120', straightedge_mm: '300', straightness_mm: '0.02' });
  await tap(page, 'six-lines');
  for (let i = 0; i < 6; i += 1) await type(page, { goes_mm: '0.1', stays_mm: '0.15' }, `[data-row="${i}"]`);
  await tap(page, 'tick-new_seal');
  await page.locator('[data-tick="new_seal"] input[type="text"]').first().fill('R. Okoro');
  await page.locator('[data-tick="new_seal"] input[type="file"]').setInputFiles({
    name: 'p.png',
    mimeType: 'image/png',
    buffer: readFileSync(new URL('../../web/icons/mark-180.png', import.meta.url)),
  });
  await page.waitForSelector('[data-tick="new_seal"][data-done="yes"]');
  await saved(page);
  await home(page);
  const up = upFor('long_edge', 22);
  await synthetic(page, { a: up.map((v) => G * v), angles: anglesOfUp(up) });
  await toLive(page, 'pump', ['tail'], { hold: 'long_edge', surface: 'round_body' });
  await waitReason(page, '');
  await tap(page, 'capture');
  await page.waitForSelector('.saved:not([data-saved="no"])');
  await home(page);
}

/** The record's file, as handed out. */
export async function handedOut(page, action = 'record-json') {
  await tap(page, 'tape');
  await tap(page, 'record');
  await page.waitForSelector('[data-screen="record"]');
  const [download] = await Promise.all([page.waitForEvent('download'), tap(page, action)]);
  const bytes = readFileSync(await download.path());
  await home(page);
  return { bytes, name: download.suggestedFilename() };
}

/** A file into the list of jobs, from the first screen. */
export async function bring(page, bytes, name = 'r.json') {
  await tap(page, 'jobs');
  await page.waitForSelector('[data-screen="jobs"]');
  await page.locator('[data-screen="jobs"] input[type="file"]').setInputFiles({
    name,
    mimeType: 'application/json',
    buffer: Buffer.from(bytes),
  });
}
