// Files that were made to do harm: refused by name with nothing changed, or taken in as what they
// are, texts as texts.

import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { after, before, test } from 'node:test';
import Ajv from 'ajv/dist/2020.js';
import { readJson } from '../../web/json.js';
import { csvOf } from '../../web/record/csv.js';
import { schema } from '../../web/record/schema.js';
import { parseTrace } from '../../web/tryout/replay.js';
import { text } from '../../web/text.js';
import { words as gaugeWords } from '../../web/words/gauge.js';
import { words } from '../../web/words/record.js';
import { mutations, refusedRecords } from './hostile-records.mjs';
import { serve, tap } from './harness.mjs';
import { bring, fillJob, handedOut, home, openStart } from './record-page.mjs';

const valid = new Ajv({ allErrors: true, allowUnionTypes: true }).compile(schema);
const MUTATIONS = 120;
/** So many of what was taken in are handed out again. */
const HANDED_OUT = 8;
const TROUBLE = '[data-screen="jobs"] .trouble';
let server;
before(async () => {
  server = await serve();
});
after(() => server.kill());

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
  await page.waitForSelector('.refused li');
  assert.equal(await page.locator('.refused li').count(), rubbish.length);
  await home(page);
  assert.equal(await kept(page), held);
  await tap(page, 'tryout');
  await page.waitForSelector('[data-screen="parts"]');
  await give('.tryout', Buffer.alloc(16 * 1024 * 1024 + 1, '\n'));
  await page.waitForSelector(`text=${text.tryout.badTrace}`);
  assert.deepEqual(faults, []);
});

test('nothing reads what stands behind the page’s address', () => {
  const web = new URL('../../web/', import.meta.url).pathname;
  const modules = readdirSync(web, { recursive: true }).filter(
    (path) => path.endsWith('.js') && !/^(node_modules|dist|pkg)/.test(path),
  );
  assert.ok(modules.length > 100);
  for (const path of modules)
    assert.doesNotMatch(
      readFileSync(join(web, path), 'utf8'),
      /location\.(search|hash|href)|URLSearchParams|document\.(URL|referrer|cookie)|window\.name|innerHTML|document\.write/,
      path,
    );
});

const limits = { tooLarge: 'large', notJson: 'json', twice: 'twice' };
const read = (content) => readJson(new Blob([content]), 1e7, limits).catch((said) => said);
test('JSON is read strictly', async () => {
  const sound = { a: { a: [1, 'a:b', { '"a\\":': '": "', '\\': '\\"' }] }, b: '":' };
  assert.deepEqual(await read(JSON.stringify(sound, null, 1)), sound);
  for (const twice of [
    '{"a":1,"a":1}',
    '[{"a":{"b":1,"b":2}}]',
    '{"a":1,"\\u0061":1}',
    '{"__proto__":1,"__proto__":2}',
  ])
    assert.equal(await read(twice), 'twice', twice);
  assert.equal(await read(Buffer.from([0x22, 0xc3, 0x28, 0x22])), 'json');
  assert.equal(await read(Buffer.from('"\ud83d"', 'utf16le')), 'json');
  assert.equal(await read('"\ufeff'), 'json');
  assert.equal(await read(Buffer.from('\ufeff{"a":1}')).then((v) => v.a), 1);
  assert.equal(await read(' '.repeat(1e7 + 1)), 'large');
  const deep = await read(`${'[{"a":'.repeat(1e5)}1${'}]'.repeat(1e5)}`);
  assert.ok(deep === 'json' || Array.isArray(deep));
});

test('whatever the bytes, they are read or refused', async () => {
  const { next } = mutations(JSON.stringify({ entries: [{ a: 'b', c: [1, { d: 'e' }] }], job: { f: 'g' } }));
  let fine = 0;
  for (let i = 0; i < 5000; i += 1) {
    const got = await read(next());
    if (typeof got === 'string') assert.ok(Object.values(limits).includes(got), got);
    else fine += 1;
  }
  assert.ok(fine > 1000 && fine < 4500, `${fine} read`);
});

test('no cell of a table is a formula, in whatever way a program splits the line', () => {
  const hostile = [
    ...[
      '=1+1',
      '+1',
      '-1',
      '@a',
      '\t=1',
      '\r=1',
      ' =1',
      '＝1',
      'a;=1',
      'a\t=1',
      'a\n=1',
      'a\r\n@b',
      'a;;=1',
      '";=1',
      'a; =1',
    ],
    ...['\u00a0=1', ';\n\t=1', 'x";=cmd|a;"'],
  ];
  const fact = (text) => ({
    statement: text,
    who: text,
    reason: text,
    section: 's',
    id: 'i',
    state: 'seen',
    at: null,
  });
  const job = Object.fromEntries(['vehicle', 'heater', 'customer', 'installer'].map((name) => [name, 'x']));
  for (const text of hostile) {
    const table = csvOf({
      job,
      checks: [],
      facts: [fact(text)],
      software: '',
      sha256: '',
      limits_sha256: '',
    });
    for (const split of [/[,\r\n]/, /[;\r\n]/, /[\t\r\n]/])
      for (const cell of table.split(split))
        assert.doesNotMatch(cell, /^"?\s*[=+\-@＝]/u, `${JSON.stringify(text)} by ${split}`);
  }
  const table = csvOf({
    job,
    checks: [],
    facts: [fact('12 V; from the fuse, 3 m')],
    software: '',
    sha256: '',
    limits_sha256: '',
  });
  assert.ok(table.includes('"12 V; from the fuse, 3 m"'));
});

test('a trace that is none plays nothing', () => {
  const head = 't_ms,ax,ay,az\n';
  const bad = [
    '',
    head,
    `${head}0,1,2,3`,
    `${head}0,1,2,3\n0,1,2,3`,
    `${head}0,,2,3\n1,1,2,3`,
    `${head}0,1,2\n1,1,2,3`,
  ];
  for (const text of [...bad, `${head}0,1e999,2,3\n1,1,2,3`, '__proto__,ax,ay,az\n0,1,2,3\n1,1,2,3'])
    assert.throws(() => parseTrace(text), JSON.stringify(text));
  assert.equal(parseTrace(`${head}0,0,0,9807\n16,0,0,9807`).length, 2);
});
