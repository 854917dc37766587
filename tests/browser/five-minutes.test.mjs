// "Five minutes": its pictures are those that the script takes, in every language; the way that they
// show can be walked; it opens without a network from first screen and job.

import assert from 'node:assert/strict';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { text } from '../../web/text.js';
import { steps } from '../../web/words/guide-steps.js';
import * as limits from '../../web/words/limit-lines.js';
import { walk } from './guide-walk.mjs';
import { axe, DIST, launch, served, tap } from './harness.mjs';
import { tooWide } from './plan-page.mjs';

const GUIDE = fileURLToPath(new URL('../../web/guide/', import.meta.url));
const LANGUAGES = readdirSync(GUIDE, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);
const IDS = steps.map((s) => s.id);
const MOST_BYTES = 14_000;

const server = served();

test('every step has its picture in every language, small, shipped, kept for offline, and with words', () => {
  const worker = readFileSync(join(DIST, 'sw.js'), 'utf8');
  assert.ok(LANGUAGES.includes('en'));
  for (const language of LANGUAGES) {
    const pictures = readdirSync(join(GUIDE, language)).map((file) => file.replace(/\.webp$/, ''));
    assert.deepEqual(pictures.sort(), [...IDS].sort(), language);
    for (const id of IDS) {
      const file = join('guide', language, `${id}.webp`);
      assert.ok(statSync(join(DIST, file)).size < MOST_BYTES, file);
      assert.ok(worker.includes(`"${file}"`), file);
    }
  }
  for (const { id, alt, points } of steps) assert.ok(alt.length > 30 && points.length > 1, id);
  assert.equal(new Set(steps.map((s) => s.alt)).size, IDS.length);
});

test('what the guide quotes is written so on the page', () => {
  const page = JSON.stringify([text, limits]);
  const said = steps.flatMap((s) => s.points).join(' ');
  const quoted = [...said.matchAll(/“([^”]+)”/g)].map((found) => found[1]);
  assert.ok(quoted.length >= 5);
  for (const words of quoted) assert.ok(page.includes(`"${words}"`), words);
});

test('the way that the pictures show can be walked, step by step', async () => {
  const b = await launch({ viewport: { width: 360, height: 560 } });
  b.page.setDefaultTimeout(12_000);
  await b.page.goto(server.url);
  const seen = [];
  await walk(b.page, async (id) => {
    seen.push(id);
    // All but the first show the try-out, and say so.
    assert.equal(await b.page.locator('.tryout p').count(), id === 'open' ? 0 : 1, id);
    if (id === 'verdict') {
      const words = await b.page.$$eval('.slot .verdict', (all) => all.map((v) => v.dataset.verdict));
      assert.deepEqual(words, ['within', 'beyond'], 'as the words beside the picture have it');
    }
  });
  assert.deepEqual(seen, IDS);
  assert.deepEqual(b.faults, []);
  await b.close();
});

test('it opens from first screen and job, without a network', async () => {
  const b = await launch();
  const { page } = b;
  page.setDefaultTimeout(12_000);
  await page.goto(server.url);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => {}));
  await page.waitForFunction(async () => (await navigator.serviceWorker.ready).active.state === 'activated');
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await b.context.setOffline(true);
  await tap(page, 'minutes');
  await page.waitForSelector('[data-screen="minutes"]');
  assert.deepEqual(await page.$$eval('[data-step]', (all) => all.map((el) => el.dataset.step)), IDS);
  for (const id of IDS) {
    await page.locator(`[data-step="${id}"] img`).scrollIntoViewIfNeeded();
    const there = (id) => document.querySelector(`[data-step="${id}"] img`).naturalWidth === 360;
    await page.waitForFunction(there, id);
  }
  await tap(page, 'guide-job');
  await page.waitForSelector('[data-screen="parts"]');
  await tap(page, 'minutes');
  await page.waitForSelector('[data-screen="minutes"]');
  assert.deepEqual(b.faults, []);
  await b.close();
});

test('fits a phone and is clean for axe, by day and by night', async () => {
  for (const colorScheme of ['light', 'dark']) {
    const b = await launch({ colorScheme });
    await b.page.goto(server.url);
    await tap(b.page, 'minutes');
    await b.page.waitForSelector('[data-screen="minutes"]');
    assert.deepEqual(await axe(b.page), []);
    assert.equal(await tooWide(b.page), 0);
    assert.deepEqual(b.faults, []);
    await b.close();
  }
});
