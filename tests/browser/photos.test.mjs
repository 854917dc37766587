// Photos with any check, of a sheet and of a capture; ticks by photo or by words. Scaled, without
// the data that cameras write, kept with what they are of.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { text } from '../../web/text.js';
import { words } from '../../web/words/plan.js';
import { words as record } from '../../web/words/record.js';
import { anglesOfUp, launch, served, synthetic, tap, toLive, upFor, waitReason } from './harness.mjs';

const server = served();

async function open(test) {
  const b = await launch();
  test.after(() => b.close());
  b.page.setDefaultTimeout(10_000);
  await b.page.goto(server.url);
  await b.page.waitForSelector('[data-screen="start"]');
  return b;
}

/** A picture of 2000 × 1000 with a comment segment where cameras keep place and time. */
const picture = (page) =>
  page
    .evaluate(async () => {
      const canvas = new OffscreenCanvas(2000, 1000);
      canvas.getContext('2d').fillRect(0, 0, 900, 900);
      const blob = await canvas.convertToBlob({ type: 'image/jpeg' });
      const bytes = new Uint8Array(await blob.arrayBuffer());
      const note = new TextEncoder().encode('PLACE-48.1N');
      const segment = [0xff, 0xfe, 0, note.length + 2, ...note];
      return [...bytes.slice(0, 2), ...segment, ...bytes.slice(2)];
    })
    .then((bytes) => ({ name: 'p.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(bytes) }));

/** What the database keeps of photos and of one sheet. */
const kept = (page, sheet) =>
  page.evaluate(
    (sheet) =>
      new Promise((done) => {
        const open = indexedDB.open('plumbmark');
        open.onsuccess = () => {
          const tx = open.result.transaction(['photos', 'entries', 'captures']);
          const all = ['photos', 'captures'].map((name) => tx.objectStore(name).getAll());
          const record = tx.objectStore('entries').get([1, sheet]);
          tx.oncomplete = async () => {
            open.result.close();
            const [photos, captures] = all.map((r) => r.result);
            const each = photos.map(async ({ blob, ...rest }) => {
              const bytes = new TextDecoder('latin1').decode(await blob.arrayBuffer());
              const { width, height } = await createImageBitmap(blob);
              return { ...rest, width, height, noted: bytes.includes('PLACE-48.1N') };
            });
            const ids = captures.map((c) => c.photos ?? []);
            done({ photos: await Promise.all(each), record: record.result, captures: ids });
          };
        };
      }),
    sheet,
  );

async function toPlace(page) {
  await tap(page, 'tape');
  await tap(page, 'section-place');
  await page.waitForSelector('[data-screen="place"]');
}

test('a sheet’s check keeps its photos, without their data, over a restart', async (t) => {
  const { page, faults } = await open(t);
  await toPlace(page);
  await page.locator('[data-name="top_mm"]').pressSequentially('120');
  const check = '[data-check="clear_top_mm"]';
  await page.click(`${check} summary`);
  await page.setInputFiles(`${check} input[type="file"]`, await picture(page));
  await page.waitForSelector(`${check} .photos img`);
  await page.waitForSelector('[data-saved="yes"]');
  const { photos, record } = await kept(page, 'clearances');
  assert.equal(photos.length, 1);
  const { width, height, noted, sheet, about } = photos[0];
  assert.deepEqual({ width, height, noted }, { width: 1280, height: 640, noted: false });
  assert.equal(sheet, 'clearances');
  assert.match(about, /^clear_top_mm/);
  assert.deepEqual(record.photos, [photos[0].id]);

  await page.reload();
  await toPlace(page);
  assert.equal(await page.inputValue('[data-name="top_mm"]'), '120', 'nothing typed is lost');
  await page.click(`${check} summary`);
  await page.waitForSelector(`${check} .photos img`);
  assert.deepEqual(faults, []);
});

test('a file that is no picture is refused, and nothing is kept', async (t) => {
  const { page } = await open(t);
  await toPlace(page);
  await page.locator('[data-name="top_mm"]').pressSequentially('120');
  const check = '[data-check="clear_top_mm"]';
  await page.click(`${check} summary`);
  const bad = { name: 'p.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('no picture') };
  await page.setInputFiles(`${check} input[type="file"]`, bad);
  await page.waitForSelector(`text=${text.photos.failed}`);
  assert.deepEqual((await kept(page, 'clearances')).photos, []);
});

test('a capture takes photos once it is saved', async (t) => {
  const { page } = await open(t);
  const up = upFor('long_edge', 22);
  await synthetic(page, { a: up.map((v) => 9.80665 * v), angles: anglesOfUp(up) });
  await toLive(page, 'pump', ['tail'], { hold: 'long_edge', surface: 'round_body' });
  await waitReason(page, '');
  await tap(page, 'capture');
  await page.waitForSelector('.captured input[type="file"]', { state: 'attached' });
  await page.setInputFiles('.captured input[type="file"]', await picture(page));
  await page.waitForSelector('.captured .photos img');
  const { photos, captures } = await kept(page, 'clearances');
  assert.deepEqual(captures, [[photos[0].id]]);
  assert.equal(photos[0].sheet, 'capture');
});

test('a tick needs a name, and a photo or words; it can be taken back', async (t) => {
  const { page } = await open(t);
  await tap(page, 'tape');
  await tap(page, 'section-support');
  await page.waitForSelector('[data-screen="support"]');
  const all = await page.$$eval('[data-tick]', (els) => els.map((e) => [e.dataset.tick, e.dataset.done]));
  assert.ok(all.length >= 3);
  for (const [id, done] of all) assert.equal(done, 'no', `${id} is set by nobody`);
  const [[id]] = all;
  const at = `[data-tick="${id}"]`;
  await tap(page, `tick-${id}`);
  await page.click(`${at} [data-action="tick-reason"]`);
  await page.waitForSelector(`${at} >> text=${words.tick.needsWho}`);
  await page.fill(`${at} [id$="-who"]`, 'R. Falk');
  await page.click(`${at} [data-action="tick-reason"]`);
  await page.waitForSelector(`${at} >> text=${words.tick.needsReason}`);
  await page.fill(`${at} [id$="-reason"]`, 'looked at it with a lamp');
  await page.click(`${at} [data-action="tick-reason"]`);
  await page.waitForSelector(`${at}[data-done="yes"]`);
  assert.match(await page.textContent(at), /R\. Falk.*looked at it with a lamp/s);
  const [, [next]] = all;
  await tap(page, `tick-${next}`);
  await page.waitForSelector(`[data-tick="${next}"] [id$="-who"]`);
  assert.equal(await page.inputValue(`[data-tick="${next}"] [id$="-who"]`), 'R. Falk');
  await page.setInputFiles(`[data-tick="${next}"] input[type="file"]`, await picture(page));
  await page.waitForSelector(`[data-tick="${next}"][data-done="yes"]`);
  const { record } = await kept(page, 'support');
  assert.equal(record.ticks[id].reason, 'looked at it with a lamp');
  assert.equal(typeof record.ticks[next].photo, 'number');
  assert.ok(!Number.isNaN(Date.parse(record.ticks[id].at)));
  await tap(page, `untick-${id}`);
  await page.waitForSelector(`${at}[data-done="no"]`);
  assert.equal((await kept(page, 'support')).record.ticks[id], undefined);
});

test('a database of the version before keeps what it has, and takes sheets and photos', async (t) => {
  const b = await launch();
  t.after(() => b.close());
  const { page } = b;
  await page.goto(`${server.url}manifest.webmanifest`);
  await page.evaluate(
    () =>
      new Promise((done, fail) => {
        const open = indexedDB.open('plumbmark', 1);
        open.onerror = () => fail(open.error);
        open.onupgradeneeded = () => {
          open.result.createObjectStore('captures', { keyPath: 'id', autoIncrement: true });
          open.result.createObjectStore('kept');
        };
        open.onsuccess = () => {
          const tx = open.result.transaction('kept', 'readwrite');
          tx.objectStore('kept').put({ system: 'us', device: 77 }, 'settings');
          tx.oncomplete = () => {
            open.result.close();
            done(undefined);
          };
        };
      }),
  );
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  await toPlace(page);
  assert.match(await page.textContent('[data-field="top_mm"]'), /in/, 'inches, as before');
  await page.locator('[data-name="top_mm"]').pressSequentially('4.5');
  await page.waitForSelector('[data-saved="yes"]');
  const { record } = await kept(page, 'clearances');
  assert.deepEqual([record.typed.top_mm, record.system], ['4.5', 'us']);
});

test('a photo whose bytes the browser has lost does not keep the record from being made', async (t) => {
  const { page, faults } = await open(t);
  await tap(page, 'tape');
  await tap(page, 'section-support');
  await tap(page, 'tick-new_seal');
  await page.fill('#t-new_seal-who', 'A. Fitter');
  await page.setInputFiles('[data-tick="new_seal"] input[type="file"]', await picture(page));
  await page.waitForSelector('[data-tick="new_seal"][data-done="yes"]');
  await page.waitForSelector('[data-saved="yes"]');
  await page.reload();
  await tap(page, 'tape');
  await page.waitForSelector('[data-screen="parts"]');
  await page.evaluate(() => {
    Blob.prototype.arrayBuffer = () => Promise.reject(new DOMException('gone', 'NotFoundError'));
  });
  await tap(page, 'record');
  await page.waitForFunction(() => document.querySelector('[data-name="sha256"]')?.textContent);
  assert.ok((await page.textContent('[data-screen="record"]')).includes(record.photoGone));
  assert.equal(await page.isVisible('[data-screen="record"] .trouble'), false);
  assert.deepEqual(faults, []);
});
