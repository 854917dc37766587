// Captures that a gauge took, taken in: shown line by line, refused by name, recognised, kept, in
// the record. The lines are those of the gauge's way in a native program.

import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import Ajv from 'ajv/dist/2020.js';
import { schema } from '../../web/record/schema.js';
import { words } from '../../web/words/gauge.js';
import { told } from './gauge-told.mjs';
import { axe, serve, tap } from './harness.mjs';
import { openAll, tooWide } from './plan-page.mjs';
import { handedOut, home, openStart } from './record-page.mjs';

const valid = new Ajv({ allErrors: true, allowUnionTypes: true }).compile(schema);
const SHOTS = new URL('./shots/latest/', import.meta.url).pathname;
let server;
/** Cases that were answered by every job's limits, one for each part first. @type {any[]} */
let cases;
before(async () => {
  server = await serve();
  const all = [];
  for await (const c of told(800, 4)) if (c.line && c.job === 0) all.push(c);
  const firsts = ['heater', 'pump', 'filter', 'pipe'].map((part) => all.find((c) => c.part === part));
  cases = [...firsts, ...all.filter((c) => !firsts.includes(c))].slice(0, 6);
  assert.equal(cases.length, 6);
});
after(() => server.kill());

const field = '[data-name="gauge_lines"]';
const cards = (page) => page.locator('[data-line]');
const takeable = (page, n) =>
  page.waitForFunction(
    (label) => document.querySelector('[data-action="take-lines"]')?.textContent === label,
    words.take(n),
  );

async function toGauge(page) {
  await tap(page, 'captures');
  await tap(page, 'from-gauge');
  await page.waitForSelector('[data-screen="gauge"]');
}

/** What stands on a line's card, by whose limits. */
const verdictsOf = (card, by) =>
  card.locator(`[data-by="${by}"] .verdict`).evaluateAll((all) => all.map((v) => v.dataset.verdict));

const kept = (page) =>
  page.evaluate(
    () =>
      new Promise((done) => {
        const open = indexedDB.open('plumbmark');
        open.onsuccess = () => {
          const all = open.result.transaction('captures').objectStore('captures').getAll();
          all.onsuccess = () => {
            open.result.close();
            done(all.result);
          };
        };
      }),
  );

test('lines are shown before they are taken in, bad ones by name, and none twice', async (t) => {
  const { page, faults } = await openStart(t, server);
  await toGauge(page);
  assert.equal(await page.isDisabled('[data-action="take-lines"]'), true);
  const [one, two, three] = cases.map((c) => c.line.trim());
  const bad = [
    two.replace('0.1.0', '0.1.9'),
    'AT+OK',
    two.replace('gauge 1 ', 'gauge 2 '),
    two.slice(0, -30),
  ];
  await page.fill(field, [one, '', ...bad, `${two}\r`, one, three].join('\n'));
  await takeable(page, 3);
  assert.equal(await cards(page).count(), 3);
  assert.deepEqual(await page.locator('.refused .trouble').allTextContents(), [
    words.bad(3, words.refusals.damaged),
    words.bad(4, words.refusals.not_a_line),
    words.bad(5, words.refusals.other_version),
    words.bad(6, words.refusals.damaged),
  ]);
  for (const [i, c] of cases.slice(0, 3).entries()) {
    const card = cards(page).nth(i);
    assert.deepEqual(
      await verdictsOf(card, 'gauge'),
      c.gauge.map((g) => g.verdict),
    );
    assert.deepEqual(
      await verdictsOf(card, 'job'),
      c.answers.map((a) => a.verdict),
    );
  }
  assert.equal(await tooWide(page), 0);
  assert.deepEqual(await axe(page), []);
  await page.screenshot({ path: `${SHOTS}gauge.png`, fullPage: true });
  await cards(page).nth(1).locator('input').uncheck();
  await takeable(page, 2);
  await tap(page, 'take-lines');
  await page.waitForFunction(
    (said) => document.querySelector('[role="status"]').textContent === said,
    words.taken(2),
  );
  await takeable(page, 0);
  assert.equal((await kept(page)).length, 2);
  assert.deepEqual(await page.locator('[data-line] .saved').allTextContents(), [words.here, words.here]);
  // After a restart they are known, and the one left out can still come.
  await home(page);
  await toGauge(page);
  await page.fill(field, [one, two, three].join('\n'));
  await takeable(page, 1);
  await tap(page, 'take-lines');
  await takeable(page, 0);
  const captures = await kept(page);
  assert.deepEqual(
    captures.map((c) => c.gauge.count).sort(),
    cases
      .slice(0, 3)
      .map((c) => Number(c.line.split(' ')[3]))
      .sort(),
  );
  assert.equal(new Set(captures.map((c) => c.taken_at)).size, 3, 'each has a time of its own');
  await tap(page, 'to-captures');
  const rows = page.locator('[data-capture]');
  assert.equal(await rows.count(), 3);
  assert.match(await rows.first().textContent(), /, taken in \d\d:\d\d/);
  assert.match(await rows.first().textContent(), /By gauge 00C0FFEE, its capture \d+, software 0\.1\.0/);
  assert.deepEqual(await axe(page), []);
  await page.screenshot({ path: `${SHOTS}gauge-captures.png`, fullPage: true });
  await rows.first().locator('button').click();
  await page.waitForSelector('[data-screen="details"]');
  assert.match(await page.textContent('[data-screen="details"] .summary'), /of the gauge|edge/);
  await page.screenshot({ path: `${SHOTS}gauge-details.png`, fullPage: true });
  assert.deepEqual(faults, []);
});

test('a file of lines, and what the record says of them', async (t) => {
  const { page, faults } = await openStart(t, server);
  await toGauge(page);
  const file = `# saved by a terminal\n${cases.map((c) => c.line).join('')}`;
  await page
    .locator('[data-screen="gauge"] input[type="file"]')
    .setInputFiles({ name: 'lines.txt', mimeType: 'text/plain', buffer: Buffer.from(file) });
  await takeable(page, 6);
  assert.deepEqual(await page.locator('.refused .trouble').allTextContents(), [
    words.bad(1, words.refusals.not_a_line),
  ]);
  await tap(page, 'take-lines');
  await takeable(page, 0);
  await home(page);
  const { bytes } = await handedOut(page);
  const record = JSON.parse(bytes);
  assert.ok(valid(record), JSON.stringify(valid.errors?.slice(0, 3)));
  assert.equal(record.version, 2, 'a page that knows of no gauge says that it is newer');
  assert.equal(record.captures.length, 6);
  const how = record.checks.filter((c) => c.how.includes('by gauge'));
  assert.ok(
    how.length > 3 && how.every((c) => c.how.endsWith('by gauge 00C0FFEE, software 0.1.0, at: taken in')),
  );
  const { bytes: table } = await handedOut(page, 'record-csv');
  assert.match(table.toString(), /by gauge 00C0FFEE, software 0\.1\.0/);
  await tap(page, 'tape');
  await tap(page, 'record');
  await page.waitForSelector('.record-paper', { state: 'attached' });
  const paper = await page.textContent('.record-paper');
  assert.match(paper, /6 captures by phone and gauge \(6 by gauge\)/);
  assert.match(paper, /By gauge 00C0FFEE, software 0\.1\.0: it has no clock/);
  // Out, in again, and the same lines are known there.
  await home(page);
  await tap(page, 'jobs');
  await page
    .locator('[data-screen="jobs"] input[type="file"]')
    .setInputFiles({ name: 'r.json', mimeType: 'application/json', buffer: bytes });
  await page.waitForSelector('[data-screen="job_card"]');
  await home(page);
  await toGauge(page);
  await page.fill(field, file);
  await page.waitForFunction((n) => document.querySelectorAll('[data-line] .saved').length === n, 6);
  assert.deepEqual(faults, []);
});

test('what cannot be kept stays on the screen', async (t) => {
  const { page } = await openStart(t, server);
  await toGauge(page);
  await page.fill(field, cases.map((c) => c.line).join(''));
  await takeable(page, 6);
  await page.evaluate(() => {
    const { add } = IDBObjectStore.prototype;
    let left = 2;
    IDBObjectStore.prototype.add = function (...what) {
      if (this.name === 'captures' && left-- <= 0) throw new DOMException('full', 'QuotaExceededError');
      return add.apply(this, what);
    };
  });
  await tap(page, 'take-lines');
  await page.waitForSelector('[data-screen="gauge"] > .body > .trouble:visible');
  await takeable(page, 4);
  assert.equal(await page.textContent('[data-screen="gauge"] [role="status"]'), words.taken(2));
  assert.equal((await kept(page)).length, 2);
});

test('by cable: asked for by a tap alone, line by line as pieces come, until it is unplugged', async (t) => {
  const { page, faults } = await openStart(t, server);
  await page.addInitScript(() => {
    const cable = { asked: 0, closed: 0, open: null, gone: false };
    const port = {
      async open({ baudRate }) {
        cable.open = baudRate;
        const stream = new ReadableStream({ start: (control) => (cable.control = control) });
        port.readable = stream;
      },
      async close() {
        cable.closed += 1;
      },
    };
    cable.write = (words) => cable.control.enqueue(new TextEncoder().encode(words));
    window.cable = cable;
    Object.defineProperty(Navigator.prototype, 'serial', {
      configurable: true,
      get: () => ({
        async requestPort() {
          cable.asked += 1;
          if (cable.gone) throw new DOMException('none', 'NotFoundError');
          return port;
        },
      }),
    });
  });
  await home(page);
  await toGauge(page);
  assert.equal(await page.evaluate(() => window.cable.asked), 0);
  await tap(page, 'listen');
  await page.waitForFunction(
    (said) => document.querySelector('[role="status"]').textContent === said,
    words.listening,
  );
  assert.equal(await page.evaluate(() => window.cable.open), 115_200);
  const [one, two] = cases.map((c) => c.line);
  const write = (piece) => page.evaluate((w) => window.cable.write(w), piece);
  await write(one.slice(0, 100));
  await write(one.slice(100) + two.slice(0, 50));
  await takeable(page, 1);
  assert.equal(await page.locator('.refused .trouble').count(), 0, 'half a line is not judged');
  await write(two.slice(50));
  await takeable(page, 2);
  await page.evaluate(() => window.cable.control.error(new DOMException('lost', 'NetworkError')));
  await page.waitForFunction(
    (said) => document.querySelector('[data-screen="gauge"] > .body > .trouble').textContent === said,
    words.unplugged,
  );
  await takeable(page, 2);
  await page.evaluate(() => (window.cable.gone = true));
  await tap(page, 'listen');
  await page.waitForFunction(
    (said) => document.querySelector('[data-screen="gauge"] > .body > .trouble').textContent === said,
    words.noPort,
  );
  // Leaving the screen lets go of the cable.
  await page.evaluate(() => (window.cable.gone = false));
  await tap(page, 'listen');
  await page.waitForFunction(
    (said) => document.querySelector('[role="status"]').textContent === said,
    words.listening,
  );
  const closed = await page.evaluate(() => window.cable.closed);
  await tap(page, 'to-captures');
  await page.waitForFunction((n) => window.cable.closed === n + 1, closed);
  await openAll(page);
  assert.deepEqual(faults, []);
});
