// What comes in and what goes out as text, without a browser: JSON read strictly, no formula in a
// table, no recording that is none, nothing from the page's address.

import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { readJson } from '../../web/json.js';
import { csvOf } from '../../web/record/csv.js';
import { parseTrace } from '../../web/tryout/replay.js';
import { mutations } from './hostile-records.mjs';

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
