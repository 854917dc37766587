// The page as one file in a browser: opened from the disk or where nothing is kept, what it hands
// out, what it says of the job.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { words as recordWords } from '../../web/words/record.js';
import {
  anglesOfUp,
  collectRequests,
  DIST,
  launch,
  synthetic,
  tap,
  toLive,
  upFor,
  waitReason,
} from './harness.mjs';
import { saved, type } from './plan-page.mjs';
import { bring } from './record-page.mjs';
import { atJob, section } from './whole-job.mjs';

const G = 9.80665;
export const PUMP = ['pump', ['tail'], { hold: 'long_edge', surface: 'round_body' }];
export const FILE = join(DIST, 'plumbmark.html');
export const FROM_DISK = pathToFileURL(FILE).href;

/** The file in a browser of its own, from the disk and without a network until told; it must be quiet,
 * and ask for nothing else. */
export async function open(t, { url = FROM_DISK, ...options } = {}) {
  const b = await launch(options);
  t.after(async () => {
    await b.close();
    assert.deepEqual(b.faults, [], 'the page logged no error');
    assert.deepEqual([...new Set(requests)], [url], 'it asked for itself alone');
  });
  b.page.setDefaultTimeout(15_000);
  const requests = collectRequests(b.context);
  await b.context.setOffline(url === FROM_DISK);
  await b.page.goto(url);
  await b.page.waitForSelector('[data-screen="start"]');
  return b;
}

/** Where the file is its own origin, as a browser may see what an app hands it: no storage at all. */
export async function storeless(t) {
  const policy = 'sandbox allow-scripts allow-downloads allow-modals';
  const other = createServer((_, response) => {
    response.writeHead(200, { 'Content-Type': 'text/html', 'Content-Security-Policy': policy });
    response.end(readFileSync(FILE));
  });
  await new Promise((done) => other.listen(0, '127.0.0.1', () => done()));
  t.after(() => other.close());
  return `http://localhost:${other.address().port}/`;
}

/** What a tap hands out. */
export async function handedOut(page, action) {
  const [download] = await Promise.all([page.waitForEvent('download'), tap(page, action)]);
  return readFileSync(await download.path());
}

export const filing = (page) => page.textContent('[data-name="filing"]');

export const filingSays = (page, said) =>
  page.waitForFunction(
    (said) => document.querySelector('[data-name="filing"]')?.textContent.includes(said),
    said,
  );

/** A record into a page on its first screen, and out again. */
export async function through(page, bytes) {
  await bring(page, bytes);
  await page.waitForSelector('[data-screen="job_card"]');
  assert.equal(await page.textContent('[data-screen="job_card"] .caution'), recordWords.sound);
  await tap(page, 'open-job');
  await atJob(page);
  await tap(page, 'record');
  await page.waitForSelector('[data-name="sha256"]:not(:empty)');
  return handedOut(page, 'record-json');
}

/** A lesser job: one sheet's number and a photo, and the pump's angle as an engine sends it that does not round. */
export async function lesserJob(page) {
  await tap(page, 'tape');
  await atJob(page);
  await section(page, 'place', async () => {
    await type(page, { top_mm: '61' });
    await tap(page, 'tick-reach');
    await page.locator('[data-tick="reach"] input[type="text"]').first().fill('R. Okoro');
    await page.locator('[data-tick="reach"] input[type="file"]').setInputFiles({
      name: 'p.png',
      mimeType: 'image/png',
      buffer: readFileSync(join(DIST, 'icons/mark-180.png')),
    });
    await page.waitForSelector('[data-tick="reach"][data-done="yes"]');
    await saved(page);
  });
  const up = upFor('long_edge', 22);
  await synthetic(page, { a: up.map((v) => G * v), angles: anglesOfUp(up) });
  await page.goBack();
  await toLive(page, ...PUMP);
  await waitReason(page, '');
  await tap(page, 'capture');
  await page.waitForSelector('.saved:not([data-saved="no"])');
}

export async function backTo(page, screen) {
  while (!(await page.$(`[data-screen="${screen}"]`))) {
    await page.goBack();
    await page.waitForTimeout(60);
  }
}
