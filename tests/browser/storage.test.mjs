// Storage that is missing, full, held by an earlier version, of a newer one, or thrown away while the
// page is open: said at once on whatever screen, with a way out, and what was typed is not lost.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import Ajv from 'ajv/dist/2020.js';
import { schema } from '../../web/record/schema.js';
import { text } from '../../web/text.js';
import { words as settingWords } from '../../web/words/settings.js';
import { words as recordWords } from '../../web/words/record.js';
import { anglesOfUp, axe, launch, served, synthetic, tap, toLive, upFor, waitReason } from './harness.mjs';
import { stored } from './kill.mjs';
import { saved, tooWide, toSection, type } from './plan-page.mjs';

const valid = new Ajv({ allErrors: true, allowUnionTypes: true }).compile(schema);
const PATIENCE_MS = 30_000;
const server = served();

/** A browser on the first screen, `patch` run before the page. */
async function open(t, { patch, arg } = {}) {
  const b = await launch();
  t.after(() => b.close());
  b.page.setDefaultTimeout(PATIENCE_MS);
  if (patch) await b.page.addInitScript(patch, arg);
  await b.page.goto(server.url);
  await b.page.waitForSelector('[data-screen="start"]');
  return b;
}

const told = (page, code) =>
  page.waitForSelector(`.notice[role="alert"] .trouble:text-is("${text.storeErrors[code]}")`);
const quiet = (page) => page.waitForSelector('.notice', { state: 'hidden' });

/** Tries again, in vain: until the notice can be tapped anew. */
async function tryAgain(page) {
  await page.evaluate(() => {
    document.querySelector('[data-action="tryAgain"]').dataset.tried = '';
  });
  await tap(page, 'tryAgain');
  await page.waitForSelector('[data-action="tryAgain"]:not([data-tried]):enabled');
}

/** The notice is in sight, fits, and is clean for axe, wherever the screen is scrolled to. */
async function inSight(page) {
  await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  const box = await page.locator('.notice').boundingBox();
  assert.ok(box.y >= 0 && box.y < 5, `at the top: ${box.y}`);
  assert.ok(box.height < 300, `leaves room: ${box.height}`);
  assert.equal(await tooWide(page), 0);
  assert.deepEqual(await axe(page), []);
}

/** The file that the notice hands out. */
async function copiedOut(page) {
  const [download] = await Promise.all([page.waitForEvent('download'), tap(page, 'copyOut')]);
  const bytes = readFileSync(await download.path());
  const record = JSON.parse(bytes);
  assert.ok(valid(record), JSON.stringify(valid.errors?.slice(0, 3)));
  return { bytes, record, typed: (key) => record.entries.find((e) => e.key === key)?.typed };
}

/** Another browser takes the file in, and shows a field of it. */
async function takenIn(t, bytes, name) {
  const { page } = await open(t);
  await tap(page, 'jobs');
  await page.locator('[data-screen="jobs"] input[type="file"]').setInputFiles({
    name: 'r.json',
    mimeType: 'application/json',
    buffer: bytes,
  });
  await page.waitForSelector(`[data-screen="job_card"] >> text=${recordWords.sound}`);
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  await toSection(page, 'place');
  return page.inputValue(`input[data-name="${name}"]`);
}

async function again(page) {
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
}

/** Sees a fact, by words. */
async function see(page, id) {
  await tap(page, `tick-${id}`);
  await page.fill(`#t-${id}-who`, 'A. Fitter');
  await page.fill(`#t-${id}-reason`, 'looked at with a lamp');
  await page.locator(`[data-tick="${id}"] [data-action="tick-reason"]`).click();
  await page.waitForSelector(`[data-tick="${id}"][data-done="yes"]`);
}

/** The origin's quota as the browser has it: its own "full". */
async function quota(b, bytes) {
  const cdp = await b.context.newCDPSession(b.page);
  const origin = server.url.replace(/\/$/, '');
  await cdp.send('Storage.overrideQuotaForOrigin', {
    origin,
    ...(bytes === null ? {} : { quotaSize: bytes }),
  });
  return cdp;
}

/** Types on until the browser looks at the room again: it does so twice a minute. */
async function untilFull(page) {
  const full = page.locator('.notice .trouble');
  for (let i = 0; i < 120 && !(await full.count()); i += 1) {
    await type(page, { left_mm: String(100 + i) });
    await page.waitForTimeout(1000);
  }
}

for (const [how, patch] of Object.entries({
  missing: () => Object.defineProperty(window, 'indexedDB', { value: undefined }),
  refused: () => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('refused', 'SecurityError');
    };
  },
}))
  test(`storage ${how}: told at once, everything works, and goes out as a file`, async (t) => {
    const { page, faults } = await open(t, { patch });
    await told(page, 'blocked');
    await inSight(page);
    const up = upFor('long_edge', 22);
    await synthetic(page, { a: up.map((v) => 9.80665 * v), angles: anglesOfUp(up) });
    await toLive(page, 'pump', ['tail'], { hold: 'long_edge', surface: 'round_body' });
    await waitReason(page, '');
    await tap(page, 'capture');
    await page.waitForSelector('[data-screen="captured"]');
    while (!(await page.$('[data-screen="parts"]'))) await page.goBack();
    await tap(page, 'section-place');
    await type(page, { top_mm: '61' });
    await page.waitForSelector(`.saved:text-is("${text.storeErrors.blocked}")`);
    await see(page, 'reach');
    await inSight(page);
    await page.goBack();
    await tap(page, 'section-place');
    assert.equal(await page.inputValue('input[data-name="top_mm"]'), '61', 'there as long as the page');
    const { bytes, record, typed } = await copiedOut(page);
    assert.equal(typed('clearances').top_mm, '61');
    assert.equal(record.facts.find((f) => f.id === 'clearances.reach').state, 'seen');
    assert.equal(record.captures.length, 1);
    assert.equal(await takenIn(t, bytes, 'top_mm'), '61');
    assert.deepEqual(faults, []);
  });

test('storage really full: told on every screen, kept in memory, written once there is room', async (t) => {
  const b = await open(t);
  const { page, faults } = b;
  await toSection(page, 'place');
  await type(page, { top_mm: '61' });
  await saved(page);
  await quota(b, 1);
  await untilFull(page);
  await type(page, { left_mm: '80' });
  await told(page, 'full');
  await page.waitForSelector(`.saved:text-is("${text.storeErrors.full}")`);
  await inSight(page);
  await see(page, 'reach');
  await page.goBack();
  await tap(page, 'section-start_up');
  await page.fill('#step-who', 'Ada');
  await tap(page, 'done');
  await page.waitForSelector(`[data-kept="start"]:text-is("${text.storeErrors.full}")`);
  await told(page, 'full');
  await page.goBack();
  await tap(page, 'jobs');
  await page.locator('[data-job="1"] button').click();
  await type(page, { vehicle: 'Carrier 12' });
  await page.waitForSelector(`.saved:text-is("${text.storeErrors.full}")`);
  const { record, typed } = await copiedOut(page);
  assert.deepEqual(typed('clearances'), { top_mm: '61', left_mm: '80' });
  assert.equal(record.job.vehicle, 'Carrier 12');
  assert.ok(record.entries.find((e) => e.key === 'start').ticks.extinguisher);
  // Still no room: it says so again, and nothing is lost by asking.
  await tryAgain(page);
  await told(page, 'full');
  await quota(b, null);
  await tap(page, 'tryAgain');
  await quiet(page);
  await again(page);
  await toSection(page, 'place');
  assert.equal(await page.inputValue('input[data-name="left_mm"]'), '80');
  assert.equal(await page.getAttribute('[data-tick="reach"]', 'data-done'), 'yes');
  const [job] = await stored(page, 'plumbmark', 'jobs');
  assert.equal(job.vehicle, 'Carrier 12');
  const entries = await stored(page, 'plumbmark', 'entries');
  assert.ok(entries.find((e) => e.key === 'start').ticks.extinguisher);
  assert.deepEqual(faults, []);
});

test('full, then room by itself: the next letter writes everything, and the notice goes', async (t) => {
  const { page } = await open(t, {
    patch: () => {
      const { put } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.put = function (...given) {
        if (window.full) throw new DOMException('no room', 'QuotaExceededError');
        return put.apply(this, given);
      };
    },
  });
  const full = (on) =>
    page.evaluate((on) => {
      window.full = on;
    }, on);
  await toSection(page, 'place');
  await type(page, { top_mm: '61' });
  await saved(page);
  await full(true);
  await type(page, { left_mm: '80' });
  await told(page, 'full');
  // Another job would take the place of what only memory has.
  await page.goBack();
  await tap(page, 'jobs');
  await tap(page, 'new-job');
  await page.waitForSelector(`[data-screen="jobs"] .trouble:text-is("${text.storeErrors.full}")`);
  await page.goBack();
  await tap(page, 'section-place');
  assert.equal(await page.inputValue('input[data-name="left_mm"]'), '80');
  await full(false);
  await type(page, { right_mm: '90' });
  await quiet(page);
  await saved(page);
  const [entry] = await stored(page, 'plumbmark', 'entries');
  assert.deepEqual(entry.typed, { top_mm: '61', left_mm: '80', right_mm: '90' });
});

test('thrown away while open: told without a tap; what is in memory goes into a file and back', async (t) => {
  const b = await open(t);
  const { page, faults } = b;
  await toSection(page, 'place');
  await type(page, { top_mm: '61' });
  await see(page, 'reach');
  await saved(page);
  await page.goBack();
  await tap(page, 'section-support');
  const cdp = await b.context.newCDPSession(page);
  const origin = server.url.replace(/\/$/, '');
  await cdp.send('Storage.clearDataForOrigin', { origin, storageTypes: 'indexeddb' });
  await told(page, 'evicted');
  await inSight(page);
  await type(page, { long_mm: '180' });
  await page.waitForSelector(`.saved:text-is("${text.storeErrors.evicted}")`);
  const { bytes, record, typed } = await copiedOut(page);
  assert.equal(typed('clearances').top_mm, '61', 'typed before');
  assert.equal(typed('support').long_mm, '180', 'typed since');
  assert.equal(record.facts.find((f) => f.id === 'clearances.reach').state, 'seen');
  await tap(page, 'tryAgain');
  await quiet(page);
  await type(page, { short_mm: '120' });
  await saved(page);
  await again(page);
  await toSection(page, 'support');
  assert.equal(await page.inputValue('input[data-name="long_mm"]'), '180');
  assert.equal(await page.inputValue('input[data-name="short_mm"]'), '120');
  assert.equal(await takenIn(t, bytes, 'top_mm'), '61');
  assert.deepEqual(faults, []);
});

/** In another tab: opens the page's database at a version and holds on to it. */
const holdOn = (page, version) =>
  page.evaluate(
    (version) =>
      new Promise((done, fail) => {
        const open = indexedDB.open('plumbmark', version);
        open.onerror = () => fail(open.error);
        open.onupgradeneeded = () => {
          if (version !== 2) return;
          open.result.createObjectStore('captures', { keyPath: 'id', autoIncrement: true });
          open.result.createObjectStore('kept');
          open.result.createObjectStore('sheets', { keyPath: 'key' });
          open.result.createObjectStore('photos', { keyPath: 'id', autoIncrement: true });
          const sheet = { key: 'clearances', system: 'metric', half: {}, rows: [], ticks: {}, photos: [] };
          open.transaction
            .objectStore('sheets')
            .put({ ...sheet, typed: { top_mm: '73' }, changed_at: '2026-05-05T10:00:00.000Z' });
        };
        open.onsuccess = () => {
          window.held = open.result;
          done();
        };
      }),
    version,
  );

test('an earlier version holds on in another tab: told, and nothing of either is lost', async (t) => {
  const b = await launch();
  t.after(() => b.close());
  await b.page.goto(`${server.url}manifest.webmanifest`);
  await holdOn(b.page, 2);
  const page = await b.context.newPage();
  page.setDefaultTimeout(PATIENCE_MS);
  await page.goto(server.url);
  await told(page, 'older_tab');
  await toSection(page, 'place');
  assert.equal(await page.inputValue('input[data-name="top_mm"]'), '');
  await type(page, { top_mm: '61' });
  await tryAgain(page);
  await told(page, 'older_tab');
  await b.page.close();
  await tap(page, 'tryAgain');
  await quiet(page);
  assert.equal(await page.inputValue('input[data-name="top_mm"]'), '61');
  const entries = await stored(page, 'plumbmark', 'entries');
  assert.deepEqual(
    entries.map((e) => [e.job_id, e.typed.top_mm]),
    [
      [1, '73'],
      [2, '61'],
    ],
  );
});

test('a newer version in another tab: what is half typed is written first, then told', async (t) => {
  const { page, context } = await open(t);
  await toSection(page, 'place');
  await type(page, { top_mm: '61' });
  await saved(page);
  const newer = await context.newPage();
  await newer.goto(`${server.url}manifest.webmanifest`);
  await page.locator('input[data-name="left_mm"]').pressSequentially('80');
  await holdOn(newer, 9);
  await told(page, 'newer');
  const typed = await newer.evaluate(
    () =>
      new Promise((done) => {
        const all = window.held.transaction('entries').objectStore('entries').getAll();
        all.onsuccess = () => done(all.result[0].typed);
      }),
  );
  assert.deepEqual(typed, { top_mm: '61', left_mm: '80' });
  await page.locator('input[data-name="right_mm"]').pressSequentially('90');
  assert.equal((await copiedOut(page)).typed('clearances').right_mm, '90');
  await Promise.all([page.waitForEvent('load'), tap(page, 'reload')]);
  // This version of the page can't read it: it says so, and writes nothing over it.
  await told(page, 'newer');
});

test('a sheet that can’t be read is not written over', async (t) => {
  const { page } = await open(t);
  await toSection(page, 'place');
  await type(page, { top_mm: '61' });
  await saved(page);
  await page.addInitScript(() => {
    const getAll = IDBObjectStore.prototype.getAll;
    IDBObjectStore.prototype.getAll = function (...given) {
      if (this.name === 'entries' && !window.readable) throw new DOMException('disk', 'UnknownError');
      return getAll.apply(this, given);
    };
  });
  await again(page);
  await toSection(page, 'place');
  await told(page, 'failed');
  await type(page, { left_mm: '80' });
  await page.waitForSelector(`.saved:text-is("${text.storeErrors.failed}")`);
  await page.evaluate(() => {
    window.readable = true;
  });
  const [entry] = await stored(page, 'plumbmark', 'entries');
  assert.deepEqual(entry.typed, { top_mm: '61' });
  assert.equal((await copiedOut(page)).typed('clearances').left_mm, '80');
});

test('the browser is asked to keep it once there is something, and its answer is shown', async (t) => {
  for (const answer of [true, false]) {
    const { page } = await open(t, {
      patch: (answer) => {
        window.asked = 0;
        const persist = async () => {
          window.asked += 1;
          return answer;
        };
        const asks = { persisted: async () => false, persist };
        for (const [name, value] of Object.entries(asks)) StorageManager.prototype[name] = value;
      },
      arg: answer,
    });
    assert.equal(await page.evaluate(() => window.asked), 0, 'not at the door');
    await toSection(page, 'place');
    await type(page, { top_mm: '61' });
    await saved(page);
    await page.waitForFunction(() => window.asked === 1);
    await page.goBack();
    await page.waitForSelector('[data-screen="parts"]');
    assert.equal(await page.locator('[data-kept-by="chance"]').count(), answer ? 0 : 1);
    await again(page);
    await tap(page, 'settings');
    await page.waitForSelector('[data-screen="settings"]');
    const { kept } = settingWords;
    assert.match(await page.textContent('main'), new RegExp(answer ? kept.yes : kept.no));
  }
});
