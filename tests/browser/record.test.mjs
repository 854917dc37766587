// The record out and back: by a published schema, the same bytes after a round trip; what is
// hostile, cut short or newer is refused by name and changes nothing.

import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { test } from 'node:test';
import Ajv from 'ajv/dist/2020.js';
import { canonical, checksum } from '../../web/record/canonical.js';
import { schema } from '../../web/record/schema.js';
import { shaped } from '../../web/record/shape.js';
import { words } from '../../web/words/record.js';
import { axe, served, tap } from './harness.mjs';
import { tooWide } from './plan-page.mjs';
import { bring, fillJob, handedOut, home, openStart } from './record-page.mjs';

const valid = new Ajv({ allErrors: true, allowUnionTypes: true }).compile(schema);
const server = served();

const jobsCount = (page) =>
  page.evaluate(
    () =>
      new Promise((done) => {
        const open = indexedDB.open('plumbmark');
        open.onsuccess = () => {
          const tx = open.result.transaction(['jobs', 'captures', 'entries', 'photos']);
          const all = ['jobs', 'captures', 'entries', 'photos'].map((n) => tx.objectStore(n).count());
          tx.oncomplete = () => {
            open.result.close();
            done(all.map((r) => r.result));
          };
        };
      }),
  );

test('canonical form and sum, against the standard’s own example and another SHA-256', async () => {
  // RFC 8785 §3.2.2 and §3.2.3: the sorted sample and its numbers and texts.
  const sample = {
    numbers: [Number('333333333.33333329'), 1e30, 4.5, 2e-3, 0.000000000000000000000000001],
    string: '€$\u000f\u000aA\'\u0042\u0022\u005c\\"/',
    literals: [null, true, false],
  };
  assert.equal(
    canonical(sample),
    '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
  );
  const keys = { '€': 1, '\r': 2, '\ufb33': 3, 1: 4, '\u{1f600}': 5, '\u0080': 6, ö: 7 };
  assert.deepEqual(
    [...canonical(keys).matchAll(/:(\d)/g)].map((m) => Number(m[1])),
    [2, 4, 6, 7, 1, 5, 3],
  );
  const other = createHash('sha256').update(canonical(sample)).digest('hex');
  assert.equal(await checksum(sample), other);
});

test('a record is valid by its schema, and the same bytes after a round trip', async (t) => {
  const { page, faults } = await openStart(t, server);
  await fillJob(page);
  const { bytes, name } = await handedOut(page);
  assert.match(name, /^Carrier-12-long-\d{4}-\d\d-\d\d\.json$/);
  const record = JSON.parse(bytes);
  assert.ok(valid(record), JSON.stringify(valid.errors?.slice(0, 3)));
  const { sha256, ...rest } = record;
  assert.equal(sha256, createHash('sha256').update(canonical(rest)).digest('hex'));
  const check = (id) => record.checks.find((c) => c.id === id);
  assert.equal(check('support.unevenness_mm').verdict, 'within');
  assert.ok(check('support.unevenness_mm').contributions.length > 3);
  assert.equal(check('pump_outlet').verdict, 'within');
  assert.ok(Math.abs(check('pump_outlet').value - 22) < 0.1);
  assert.equal(check('cut_plan').verdict, 'not_checked');
  const fact = record.facts.find((f) => f.id === 'support.new_seal');
  assert.deepEqual([fact.state, fact.who, fact.photo], ['seen', 'R. Okoro', 1]);
  assert.equal(record.photos.length, 1);
  assert.ok(record.does_not_claim.length >= 4 && record.cautions.length >= 3);

  const other = await openStart(t, server);
  await bring(other.page, bytes);
  await other.page.waitForSelector('[data-screen="job_card"]');
  assert.match(await other.page.textContent('main'), new RegExp(words.sound));
  assert.equal(await other.page.textContent('h1'), '=Carrier "12", long');
  await home(other.page);
  const again = await handedOut(other.page);
  assert.ok(again.bytes.equals(bytes), 'the same bytes');
  // In the first browser too, beside the job that it came from.
  await bring(page, bytes);
  await page.waitForSelector('[data-screen="job_card"]');
  await home(page);
  assert.ok((await handedOut(page)).bytes.equals(bytes));
  assert.deepEqual(faults, []);
});

test('what is no record is refused by name, and nothing changes', async (t) => {
  const { page } = await openStart(t, server);
  await fillJob(page);
  const { bytes } = await handedOut(page);
  const before_ = await jobsCount(page);
  const sound = JSON.parse(bytes);
  const changed = (patch) => JSON.stringify({ ...sound, ...patch });
  /** @type {[string, RegExp][]} */
  const bad = [
    [bytes.subarray(0, bytes.length / 2), new RegExp(words.notJson)],
    ['', new RegExp(words.notJson)],
    ['[]', new RegExp(words.notRecord)],
    [changed({ version: 4 }), new RegExp(words.newer)],
    [changed({ version: 0 }), /record\.version/],
    [changed({ format: 'something-else' }), new RegExp(words.notRecord)],
    [changed({ photos: [] }), new RegExp(words.badPhoto)],
    [changed({ photos: [{ ...sound.photos[0], jpeg_base64: 'PHN2Zz4=' }] }), new RegExp(words.badPhoto)],
    [changed({ photos: [{ ...sound.photos[0], jpeg_base64: '***' }] }), new RegExp(words.badPhoto)],
    [changed({ extra: 1 }), /record\.extra: this field is not known/],
    [JSON.stringify({ ...sound }).replace('{', '{"__proto__":{"a":1},'), /__proto__/],
    [changed({ entries: [{ ...sound.entries[0], rows: 'x' }] }), /record\.entries\[0\]\.rows/],
    [changed({ job: { ...sound.job, vehicle: 7 } }), /record\.job\.vehicle/],
    [changed({ captures: [{ ...sound.captures[0], report: {} }] }), /record\.captures\[0\]\.report/],
    [changed({ job: { ...sound.job, tryout: true } }), new RegExp(words.tryout)],
    [changed({ limits: { format: 'plumbmark-limits' } }), /version/],
  ];
  for (const [content, wanted] of bad) {
    await bring(page, content);
    await page.waitForSelector('[data-screen="jobs"] .trouble:not([hidden])');
    assert.match(await page.textContent('[data-screen="jobs"] .trouble'), wanted);
    assert.deepEqual(await jobsCount(page), before_, String(wanted));
    await home(page);
  }
});

test('a record that was changed comes in, and that is said', async (t) => {
  const { page } = await openStart(t, server);
  await fillJob(page);
  const record = JSON.parse((await handedOut(page)).bytes);
  record.job.customer = 'Somebody else';
  await bring(page, JSON.stringify(record));
  await page.waitForSelector('[data-screen="job_card"]');
  assert.match(await page.textContent('main'), new RegExp(words.changed));
});

test('10 000 mutations: the page’s own check agrees with an independent one', async (t) => {
  const { page } = await openStart(t, server);
  await fillJob(page);
  const text = (await handedOut(page)).bytes.toString('utf8');
  const whole = JSON.parse(text);
  // Photos are only longer.
  whole.photos = whole.photos.map((p) => ({ ...p, jpeg_base64: '/9g=' }));
  let seed = 11;
  const random = (n) => {
    seed = (Math.imul(seed, 1103515245) + 12345) & 0x7fffffff;
    return seed % n;
  };
  const values = [null, -1, 0, 1.5, 1e9, '', 'x', 'within', [], {}, true, 'y'.repeat(5000)];
  const places = [];
  const walk = (value) => {
    if (typeof value !== 'object' || value === null) return;
    for (const key of Object.keys(value)) {
      places.push([value, key]);
      walk(value[key]);
    }
  };
  walk(whole);
  let refused = 0;
  for (let i = 0; i < 10_000; i += 1) {
    const [parent, key] = places[random(places.length)];
    const old = parent[key];
    const how = random(4);
    if (how === 0 && !Array.isArray(parent)) delete parent[key];
    else parent[how === 1 ? `${key}2` : key] = values[random(values.length)];
    let own = true;
    try {
      shaped(schema, whole, 'record');
    } catch {
      own = false;
    }
    assert.equal(own, valid(whole), `${key}: ${JSON.stringify(valid.errors?.[0])}`);
    refused += own ? 0 : 1;
    delete parent[`${key}2`];
    parent[key] = old;
  }
  assert.ok(refused > 3000 && refused < 10_000, `${refused} refused`);
});

test('the record fits a phone and is clean for axe', async (t) => {
  for (const colorScheme of ['light', 'dark']) {
    const { page, faults } = await openStart(t, server, { colorScheme });
    await tap(page, 'tape');
    await tap(page, 'record');
    await page.waitForSelector('[data-name="sha256"]:not(:empty)');
    assert.equal(await tooWide(page), 0);
    assert.deepEqual(await axe(page), []);
    assert.deepEqual(faults, []);
  }
});
