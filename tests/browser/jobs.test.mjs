// Several jobs: what is of one stays with it, through reloads and deletion; a database of the version
// before becomes its first job.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { words } from '../../web/words/jobs.js';
import { axe, launch, served, tap } from './harness.mjs';
import { saved, tooWide, type } from './plan-page.mjs';

const server = served();

async function open(t, options = {}) {
  const b = await launch(options);
  t.after(() => b.close());
  b.page.setDefaultTimeout(8000);
  await b.page.goto(server.url);
  await b.page.waitForSelector('[data-screen="start"]');
  return b;
}

async function again(page) {
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
}

/** Opens a section of the job that is open, from the first screen. */
async function toSection(page, section) {
  await tap(page, 'tape');
  await tap(page, `section-${section}`);
  await page.waitForSelector(`[data-screen="${section}"]`);
}

const names = (page) =>
  page.$$eval('[data-screen="jobs"] [data-job] b', (all) => all.map((e) => e.textContent));

/** Names the job whose card is shown, as a person types. */
async function name(page, fields) {
  await type(page, fields);
  await page.waitForSelector('.saved[data-saved="yes"]');
}

test('what is of one job stays with it: numbers, limits, ticks, over a reload', async (t) => {
  const { page, faults } = await open(t);
  await toSection(page, 'place');
  await type(page, { top_mm: '61' });
  await saved(page);
  await page.goBack();
  await tap(page, 'jobs');
  assert.equal((await names(page)).length, 1);
  await tap(page, 'new-job');
  await page.waitForSelector('[data-screen="job_card"]');
  await name(page, { vehicle: 'Carrier 12', heater: 'H-7 no. 55', customer: 'Dune Haulage' });
  await tap(page, 'open-job');
  await page.waitForSelector('[data-screen="parts"]');
  assert.equal(await page.textContent('h1'), 'Carrier 12');
  await tap(page, 'section-place');
  assert.equal(await page.inputValue('[data-name="top_mm"]'), '');
  await type(page, { top_mm: '88' });
  await saved(page);
  await again(page);
  await toSection(page, 'place');
  assert.equal(await page.inputValue('[data-name="top_mm"]'), '88');
  await page.goBack();
  await tap(page, 'jobs');
  await page.locator('[data-job="1"] button').click();
  await tap(page, 'open-job');
  await page.waitForSelector('[data-screen="parts"]');
  await tap(page, 'section-place');
  assert.equal(await page.inputValue('[data-name="top_mm"]'), '61');
  assert.deepEqual(faults, []);
});

test('search finds by any of the fields; the next vehicle begins with the limits, nothing measured', async (t) => {
  const { page } = await open(t);
  await tap(page, 'limits');
  await page.fill('[id="f-pump_outlet-low_deg"]', '17');
  await tap(page, 'save-limits');
  await page.waitForTimeout(300);
  await page.goBack();
  await toSection(page, 'place');
  await type(page, { top_mm: '61' });
  await saved(page);
  await page.goBack();
  await tap(page, 'jobs');
  await page.locator('[data-job="1"] button').click();
  await name(page, { vehicle: 'Carrier 12', heater: 'H-7', customer: 'Dune Haulage' });
  await tap(page, 'next-vehicle');
  await page.waitForSelector('[data-screen="parts"]');
  await tap(page, 'section-place');
  assert.equal(await page.inputValue('[data-name="top_mm"]'), '');
  await page.goBack();
  await tap(page, 'limits');
  assert.equal(await page.inputValue('[id="f-pump_outlet-low_deg"]'), '17');
  await page.goBack();
  await tap(page, 'jobs');
  assert.equal((await names(page)).length, 2);
  await type(page, { search: 'dune 12' });
  assert.deepEqual(await names(page), ['Carrier 12']);
  await type(page, { search: 'dune' });
  assert.equal((await names(page)).length, 2);
  await type(page, { search: 'nobody' });
  assert.match(await page.textContent('.missing'), new RegExp(words.none));
});

test('put away and deleted jobs come back whole; deleting asks first', async (t) => {
  const { page } = await open(t);
  await toSection(page, 'place');
  await type(page, { top_mm: '61' });
  await saved(page);
  await page.goBack();
  await tap(page, 'jobs');
  await page.locator('[data-job="1"] button').click();
  await name(page, { vehicle: 'Carrier 12' });
  await tap(page, 'archive');
  await page.waitForSelector('[data-action="take-out"]');
  await tap(page, 'delete');
  await tap(page, 'keep-it');
  await tap(page, 'delete');
  assert.match(await page.textContent('main'), new RegExp(words.askDelete.slice(0, 30)));
  await tap(page, 'do-delete');
  await page.waitForSelector('[data-action="put-back"]');
  assert.equal(await page.isDisabled('[data-action="open-job"]'), true);
  await again(page);
  // The only job is deleted: another one is open, and empty.
  await toSection(page, 'place');
  assert.equal(await page.inputValue('[data-name="top_mm"]'), '');
  await page.goBack();
  await tap(page, 'jobs');
  await page.locator('summary', { hasText: words.deleted }).click();
  await page.locator('[data-job="1"] button').click();
  await tap(page, 'put-back');
  await page.waitForSelector('[data-action="take-out"]');
  await tap(page, 'take-out');
  await page.waitForSelector('[data-action="archive"]');
  await tap(page, 'open-job');
  await page.waitForSelector('[data-screen="parts"]');
  await tap(page, 'section-place');
  assert.equal(await page.inputValue('[data-name="top_mm"]'), '61');
});

test('a database of version 2 becomes the first job, with limits, numbers and photos', async (t) => {
  const b = await launch();
  t.after(() => b.close());
  const { page } = b;
  await page.goto(`${server.url}manifest.webmanifest`);
  await page.evaluate(
    () =>
      new Promise((done, fail) => {
        const open = indexedDB.open('plumbmark', 2);
        open.onerror = () => fail(open.error);
        open.onupgradeneeded = () => {
          const db = open.result;
          db.createObjectStore('captures', { keyPath: 'id', autoIncrement: true });
          db.createObjectStore('kept');
          db.createObjectStore('sheets', { keyPath: 'key' });
          db.createObjectStore('photos', { keyPath: 'id', autoIncrement: true });
        };
        open.onsuccess = () => {
          const db = open.result;
          const tx = db.transaction(['kept', 'sheets', 'photos'], 'readwrite');
          const limits = {
            format: 'plumbmark-limits',
            version: 2,
            name: 'Unit H-7',
            lines: [],
            surfaces: [],
            bounds: [],
          };
          tx.objectStore('kept').put(limits, 'limits');
          tx.objectStore('sheets').put({
            key: 'clearances',
            system: 'metric',
            typed: { top_mm: '73' },
            half: {},
            rows: [],
            ticks: {},
            photos: [1],
            changed_at: '2026-05-05T10:00:00.000Z',
          });
          tx.objectStore('photos').put({
            sheet: 'clearances',
            about: 'x',
            at: '2026-05-05',
            blob: new Blob(['p']),
          });
          tx.oncomplete = () => {
            db.close();
            done(undefined);
          };
        };
      }),
  );
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  await toSection(page, 'place');
  assert.equal(await page.inputValue('[data-name="top_mm"]'), '73');
  const now = await page.evaluate(
    () =>
      new Promise((done) => {
        const open = indexedDB.open('plumbmark');
        open.onsuccess = () => {
          const db = open.result;
          const tx = db.transaction(['jobs', 'photos']);
          const [jobs, photos] = ['jobs', 'photos'].map((n) => tx.objectStore(n).getAll());
          tx.oncomplete = () => {
            db.close();
            done({
              stores: [...db.objectStoreNames],
              jobs: jobs.result.map((j) => [j.id, j.limits?.name]),
              photos: photos.result.map((p) => p.job_id),
            });
          };
        };
      }),
  );
  assert.deepEqual(now, {
    stores: ['captures', 'entries', 'jobs', 'kept', 'photos'],
    jobs: [[1, 'Unit H-7']],
    photos: [1],
  });
});

test('the list and a job’s card fit a phone and are clean for axe', async (t) => {
  for (const colorScheme of ['light', 'dark']) {
    const { page, faults } = await open(t, { colorScheme });
    await tap(page, 'jobs');
    await page.waitForSelector('[data-job]');
    assert.equal(await tooWide(page), 0);
    assert.deepEqual(await axe(page), []);
    await page.locator('[data-job="1"] button').click();
    await page.waitForSelector('[data-screen="job_card"]');
    await tap(page, 'delete');
    assert.equal(await tooWide(page), 0);
    assert.deepEqual(await axe(page), []);
    assert.deepEqual(faults, []);
  }
});

test('checked again: what has moved beyond both uncertainties, and what was not read', async (t) => {
  const { page, faults } = await open(t);
  await toSection(page, 'place');
  await type(page, { top_mm: '61', left_mm: '80', bottom_mm: '20' });
  await saved(page);
  await page.goBack();
  await tap(page, 'jobs');
  await page.locator('[data-job="1"] button').click();
  await name(page, { vehicle: 'Carrier 12' });
  await tap(page, 'check-again');
  await page.waitForSelector('[data-screen="again"]');
  const state = () =>
    page.$$eval('[data-again]', (all) =>
      Object.fromEntries(all.map((e) => [e.dataset.again, e.dataset.moved])),
    );
  assert.deepEqual(await state(), {
    'clearances.top_mm': 'open',
    'clearances.bottom_mm': 'beyond',
    'clearances.left_mm': 'open',
  });
  const then = page.locator('[data-again]').first();
  assert.match(await then.textContent(), /Below.*Then: 20\.0 ± 2\.4 mm, beyond, /);
  // On to the new job, not back to the card of the earlier one.
  await tap(page, 'read-parts');
  await page.waitForSelector('[data-screen="parts"]');
  assert.ok(await page.isVisible('[data-action="again"]'));
  await again(page);
  await toSection(page, 'place');
  // A tape's ± is 2 mm and 0.2 %: U of one is 2.5 mm, of both together 5.0 mm.
  await type(page, { top_mm: '64', left_mm: '86' });
  await saved(page);
  await page.goBack();
  await tap(page, 'again');
  assert.deepEqual(await state(), {
    'clearances.left_mm': 'yes',
    'clearances.bottom_mm': 'beyond',
    'clearances.top_mm': 'no',
  });
  assert.match(await page.textContent('[data-again="clearances.left_mm"]'), /Moved: 6\.0 mm more/);
  assert.equal(await tooWide(page), 0);
  assert.deepEqual(await axe(page), []);
  assert.deepEqual(faults, []);
});

/** How many of everything are in the store. */
const counts = (page) =>
  page.evaluate(
    () =>
      new Promise((done) => {
        const open = indexedDB.open('plumbmark');
        open.onsuccess = () => {
          const names = ['jobs', 'captures', 'entries', 'photos'];
          const tx = open.result.transaction(names);
          const all = names.map((n) => tx.objectStore(n).count());
          tx.oncomplete = () => {
            open.result.close();
            done(all.map((r) => r.result));
          };
        };
      }),
  );

test('a deleted job is removed for good: asked, with what is lost; the others stay', async (t) => {
  const { page, context, faults } = await open(t);
  await toSection(page, 'place');
  await type(page, { top_mm: '61' });
  const check = '[data-check="clear_top_mm"]';
  await page.click(`${check} summary`);
  const photo = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(900, 600);
    canvas.getContext('2d').fillRect(0, 0, 300, 300);
    const blob = await canvas.convertToBlob({ type: 'image/jpeg' });
    return [...new Uint8Array(await blob.arrayBuffer())];
  });
  await page.setInputFiles(`${check} input[type="file"]`, {
    name: 'p.jpg',
    mimeType: 'image/jpeg',
    buffer: Buffer.from(photo),
  });
  await page.waitForSelector(`${check} .photos img`);
  await saved(page);
  await page.goBack();
  await tap(page, 'jobs');
  await page.waitForSelector('[data-job="1"] small:text-matches("about \\\\d+ kB")');
  await page.waitForSelector('text=/takes about [\\d.]+ [kM]B/');
  await tap(page, 'new-job');
  await page.waitForSelector('[data-screen="job_card"]');
  await name(page, { vehicle: 'Carrier 12' });
  await tap(page, 'open-job');
  await tap(page, 'section-place');
  await type(page, { top_mm: '88' });
  await saved(page);
  await page.goBack();
  await tap(page, 'jobs');
  await page.locator('[data-job="1"] button').click();
  await tap(page, 'delete');
  await tap(page, 'do-delete');
  // Open in another tab it is not removed.
  const other = await context.newPage();
  await other.goto(`${server.url}manifest.webmanifest`);
  await other.evaluate(() => {
    navigator.locks.request('plumbmark/job/1', () => new Promise(() => {}));
  });
  await tap(page, 'remove');
  await tap(page, 'do-remove');
  await page.waitForSelector(`text=${words.openElsewhere}`);
  assert.deepEqual(await counts(page), [2, 0, 2, 1]);
  await other.close();
  await tap(page, 'remove');
  await page.waitForSelector('text=/0 captures, 1 sheets .* 1 photos/');
  await tap(page, 'keep-it');
  assert.deepEqual(await counts(page), [2, 0, 2, 1], 'nothing without the second tap');
  await tap(page, 'remove');
  assert.equal(await tooWide(page), 0);
  assert.deepEqual(await axe(page), []);
  await tap(page, 'do-remove');
  await page.waitForSelector('[data-screen="jobs"]');
  assert.deepEqual(await counts(page), [1, 0, 1, 0]);
  assert.deepEqual(await names(page), ['Carrier 12']);
  // The one that is open goes too, and another one is begun.
  await page.locator('[data-job="2"] button').click();
  await tap(page, 'delete');
  await tap(page, 'do-delete');
  await tap(page, 'remove');
  await tap(page, 'do-remove');
  await page.waitForSelector('[data-job="3"]');
  await again(page);
  await toSection(page, 'place');
  assert.equal(await page.inputValue('[data-name="top_mm"]'), '');
  assert.deepEqual(await counts(page), [1, 0, 0, 0]);
  assert.deepEqual(faults, []);
});

test('a job is opened while its last letter is on its way to a slow store', async (t) => {
  const b = await launch();
  t.after(() => b.close());
  const { page, faults } = b;
  page.setDefaultTimeout(30_000);
  await page.addInitScript(() => {
    const { get, set } = Object.getOwnPropertyDescriptor(IDBTransaction.prototype, 'oncomplete');
    Object.defineProperty(IDBTransaction.prototype, 'oncomplete', {
      get,
      set(told) {
        set.call(this, told && (() => setTimeout(told, this.mode === 'readwrite' ? 700 : 0)));
      },
    });
  });
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  await tap(page, 'jobs');
  await page.locator('[data-job="1"] button').click();
  await type(page, { vehicle: 'Carrier 12' });
  await tap(page, 'open-job');
  await page.waitForSelector('[data-screen="parts"]');
  assert.equal(await page.textContent('h1'), 'Carrier 12');
  assert.equal(await page.locator('.notice:visible').count(), 0);
  assert.deepEqual(faults, []);
});
