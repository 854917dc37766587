// Files that were made to do harm: refused by name with nothing changed, or taken in as what they
// are, texts as texts.

import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { test } from 'node:test';
import Ajv from 'ajv/dist/2020.js';
import { schema } from '../../web/record/schema.js';
import { text } from '../../web/text.js';
import { words as gaugeWords } from '../../web/words/gauge.js';
import { words } from '../../web/words/record.js';
import { mutations, refusedRecords } from './hostile-records.mjs';
import { served, tap } from './harness.mjs';
import { bring, fillJob, handedOut, home, openStart } from './record-page.mjs';

const valid = new Ajv({ allErrors: true, allowUnionTypes: true }).compile(schema);
const MUTATIONS = 120;
/** So many of what was taken in are handed out again. */
const HANDED_OUT = 8;
const TROUBLE = '[data-screen="jobs"] .trouble';
const server = served();

/** Everything that is kept, photos by their bytes. */
async function kept(page) {
  const all = await page.evaluate(async () => {
    const db = await new Promise((done) => {
      indexedDB.open('plumbmark').onsuccess = (e) => done(e.target.result);
    });
    const names = [...db.objectStoreNames];
    const tx = db.transaction(names);
    const asked = names.map((name) => tx.objectStore(name).getAll());
    await new Promise((done) => {
      tx.oncomplete = done;
    });
    db.close();
    const plain = async (value) => {
      if (value instanceof Blob) return [...new Uint8Array(await value.arrayBuffer())].join();
      if (typeof value !== 'object' || value === null) return value;
      if (Array.isArray(value)) return Promise.all(value.map(plain));
      const pairs = Object.entries(value).map(async ([key, inner]) => [key, await plain(inner)]);
      return Promise.all(pairs);
    };
    return JSON.stringify(await Promise.all(asked.map(({ result }) => plain(result))));
  });
  return createHash('sha256').update(all).digest('hex');
}

async function filled(t) {
  const b = await openStart(t, server);
  await fillJob(b.page);
  const { bytes } = await handedOut(b.page);
  return { ...b, json: bytes.toString('utf8') };
}

/** Puts a file into the list of jobs, which is open. @returns {Promise<string>} the refusal, or
 * nothing where it was taken in */
async function given(page, content) {
  await page.locator('[data-screen="jobs"] input[type="file"]').setInputFiles({
    name: 'r.json',
    mimeType: 'application/json',
    buffer: Buffer.from(content),
  });
  const end = await page.waitForSelector(`${TROUBLE}:not([hidden]), [data-screen="job_card"]`);
  return (await end.getAttribute('data-screen')) ? '' : end.textContent();
}

const toJobs = async (page) => {
  await home(page);
  await tap(page, 'jobs');
  await page.waitForSelector('[data-screen="jobs"]');
};

test('records that were made to do harm are refused by name, with nothing changed', async (t) => {
  const { page, json, faults } = await filled(t);
  const held = await kept(page);
  await toJobs(page);
  for (const [what, content, said] of refusedRecords(json)) {
    assert.match(await given(page, content), said, what);
    assert.equal(await kept(page), held, what);
  }
  assert.equal(await page.evaluate(() => ({}).a ?? null), null);
  const large = join(mkdtempSync(join(tmpdir(), 'plumbmark-')), 'large.json');
  t.after(() => rmSync(dirname(large), { recursive: true }));
  writeFileSync(large, Buffer.alloc(64 * 1024 * 1024 + 1, ' '));
  await toJobs(page);
  await page.locator('[data-screen="jobs"] input[type="file"]').setInputFiles(large);
  await page.waitForSelector(`${TROUBLE}:not([hidden])`);
  assert.equal(await page.textContent(TROUBLE), words.tooLarge);
  assert.deepEqual(faults, []);
});

test('texts stay texts, and what is no picture is drawn as none', async (t) => {
  const { page, json, faults } = await filled(t);
  const record = JSON.parse(json);
  const evil = '<img src=x onerror="window.ran=1">\u202e=HYPERLINK("x")\ud800';
  for (const name of ['vehicle', 'heater', 'customer', 'installer']) record.job[name] = evil;
  for (const entry of record.entries) for (const tick of Object.values(entry.ticks)) tick.who = evil;
  const start = '<script>window.ran=1</script>';
  record.photos[0].jpeg_base64 = Buffer.from(`\xff\xd8${start}`, 'latin1').toString('base64');
  await bring(page, JSON.stringify(record));
  await page.waitForSelector('[data-screen="job_card"]');
  assert.equal(await page.textContent('h1'), evil);
  await home(page);
  await tap(page, 'tape');
  await tap(page, 'section-support');
  await page.waitForSelector('[data-tick="new_seal"]');
  await home(page);
  await tap(page, 'tape');
  await tap(page, 'record');
  await page.waitForSelector('[data-name="sha256"]:not(:empty)');
  assert.ok((await page.textContent('main')).includes('<img src=x'));
  assert.equal(await page.locator('img[src="x"], [onerror]').count(), 0);
  assert.equal(await page.evaluate(() => window.ran), undefined);
  const again = await handedOut(await home(page).then(() => page));
  assert.equal(JSON.parse(again.bytes).job.vehicle, evil);
  assert.deepEqual(faults, []);
});

test('mutations of a record: refused by name with nothing changed, or taken in by the schema', async (t) => {
  const { page, json, faults } = await filled(t);
  const mutated = mutations(json);
  let held = await kept(page);
  let taken = 0;
  await toJobs(page);
  const known = Object.values(words).filter((said) => typeof said === 'string');
  for (let i = 0; i < MUTATIONS; i += 1) {
    const content = mutated.next();
    const said = await given(page, content);
    const now = await kept(page);
    if (said) {
      assert.ok(known.includes(said) || /^[\w.[\]]+: ./.test(said), `${i}: ${said}`);
      assert.equal(now, held, `${i}: ${said}`);
      continue;
    }
    taken += 1;
    held = now;
    const record = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(Buffer.from(content)));
    assert.ok(valid(record), `${i}: ${JSON.stringify(valid.errors?.[0])}`);
    await home(page);
    if (taken <= HANDED_OUT) {
      const out = JSON.parse((await handedOut(page)).bytes);
      for (const name of ['vehicle', 'heater', 'customer', 'installer'])
        assert.equal(out.job[name], record.job[name], `${i}: ${name}`);
      assert.deepEqual(out.limits, record.limits, `${i}`);
      assert.equal(out.captures.length, record.captures.length, `${i}`);
      assert.equal(out.photos.length, record.photos.length, `${i}`);
      held = await kept(page);
    }
    await toJobs(page);
  }
  assert.ok(taken >= MUTATIONS / 20 && taken <= MUTATIONS / 2, `${taken} taken in`);
  assert.deepEqual(faults, []);
});

test('recordings and a gauge’s lines: too large is told, rubbish by its line, and nothing is kept', async (t) => {
  const { page, faults } = await openStart(t, server);
  // Sixteen megabytes on their way into the browser, on a machine that is busy.
  page.setDefaultTimeout(60_000);
  const held = await kept(page);
  const give = (screen, content) =>
    page
      .locator(`${screen} input[type="file"]`)
      .setInputFiles({ name: 'x.txt', mimeType: 'text/plain', buffer: Buffer.from(content) });
  await tap(page, 'captures');
  await tap(page, 'from-gauge');
  const gauge = '[data-screen="gauge"]';
  await page.waitForSelector(gauge);
  await give(gauge, 'x'.repeat(256 * 1024 + 1));
  await page.waitForSelector(`${gauge} > * .trouble:not([hidden])`);
  assert.ok((await page.textContent(gauge)).includes(gaugeWords.tooLarge));
  const rubbish = ['<b>', '__proto__', '\u202e', 'x'.repeat(9000), '1e999,'.repeat(99), '\0'];
  await give(gauge, `${rubbish.join('\n')}\n`);
  await page.waitForSelector('.refused .trouble');
  assert.equal(await page.locator('.refused .trouble').count(), rubbish.length);
  await home(page);
  assert.equal(await kept(page), held);
  await tap(page, 'tryout');
  await page.waitForSelector('[data-screen="parts"]');
  await give('.tryout', Buffer.alloc(16 * 1024 * 1024 + 1, '\n'));
  await page.waitForSelector(`text=${text.tryout.badTrace}`);
  assert.deepEqual(faults, []);
});
