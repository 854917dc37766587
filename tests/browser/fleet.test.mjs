// Record tables as a fleet reads them: loaded into DuckDB and SQLite, and asked for the jobs with
// anything beyond or not proven, by vehicle, over years. What is right is counted from the records.

import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { csvOf } from '../../web/record/csv.js';
import { serve } from './harness.mjs';
import { fillJob, handedOut, openStart } from './record-page.mjs';

const RUN = fileURLToPath(new URL('../fleet/run.sh', import.meta.url));
let server;
before(async () => {
  server = await serve();
});
after(() => server.kill());

function temporary(t) {
  const folder = mkdtempSync(join(tmpdir(), 'fleet-'));
  t.after(() => rmSync(folder, { recursive: true }));
  return folder;
}

/** The answers of both, which are one: `fleet.py` fails where they are not. */
const asked = (folder) =>
  execFileSync('sh', [RUN, folder], { encoding: 'utf8' })
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line));

test('a table for a fleet: every check a row, and no text a formula', async (t) => {
  const { page } = await openStart(t, server);
  await fillJob(page);
  const { bytes } = await handedOut(page, 'record-csv');
  const { bytes: json } = await handedOut(page);
  const record = JSON.parse(json);
  const text = bytes.toString('utf8');
  assert.equal(text.codePointAt(0), 0xfeff);
  assert.ok(text.includes('Düne & Söhne'));
  const lines = text.trim().split('\r\n');
  assert.equal(lines.length, 1 + record.checks.length + record.facts.length);
  for (const line of lines.slice(1)) assert.match(line, /^"'=Carrier ""12"", long",/);

  const folder = temporary(t);
  writeFileSync(join(folder, 'job.csv'), bytes);
  const verdicts = [...record.checks.map((c) => c.verdict), ...record.facts.map((f) => f.state)];
  const any = (...names) => Number(verdicts.some((v) => names.includes(v)));
  assert.deepEqual(asked(folder), [
    {
      vehicle: `'${record.job.vehicle}`,
      year: record.job.created_at.slice(0, 4),
      jobs: 1,
      with_beyond: any('beyond'),
      with_not_proven: any('not_proven', 'none'),
      with_either: any('beyond', 'not_proven', 'none'),
      with_something_not_checked: 1,
    },
  ]);
});

const VERDICTS = ['within', 'within', 'beyond', 'within', 'not_proven', 'none', 'not_checked', 'not_needed'];
const STATES = ['seen', 'not_seen', 'not_needed'];
/** Names that break a careless table. */
const VEHICLES = ['=cmd|A1', '-7', 'Barge "Tern", aft', 'Füße 車\n2', "O'Hara; drop table", '', '+1', ' '];

/** The record of a made-up job as it was the `time`th time that it was handed over. */
function made(n, time, tryout = false) {
  const year = 2019 + (n % 6);
  const spread = (k) => (n * 7 + time * 5 + k * k) % (n % 3 === 0 ? 2 : VERDICTS.length);
  const check = (k) => ({
    section: 's',
    id: `c${k}`,
    what: 'w,"',
    verdict: VERDICTS[spread(k)],
    value: -0.5 * k,
    u: 0.1,
  });
  const fact = (k) => ({
    section: 's',
    id: `f${k}`,
    statement: 'x\r\ny',
    state: STATES[(n + k) % STATES.length],
    who: '@b',
  });
  return {
    software: '0.1.0+000000000000',
    sha256: String((n * 9973 + time * 31) % 99991).padStart(64, '0'),
    limits_sha256: 'f'.repeat(64),
    job: {
      vehicle: VEHICLES[n % VEHICLES.length],
      heater: `H-${n % 40}`,
      customer: '\tC',
      installer: 'R. Okoro',
      created_at: `${year}-03-${10 + (n % 7)}T08:00:00.000Z`,
      changed_at: `${year}-0${4 + time}-01T08:00:00.000Z`,
      tryout,
    },
    checks: Array.from({ length: n % 5 }, (_, k) => check(k)),
    facts: [fact(0), ...(n % 2 ? [fact(1)] : [])],
  };
}

/** The question answered by counting records, without any table. */
function counted(records) {
  const last = new Map();
  for (const record of records.filter((r) => !r.job.tryout)) {
    const { vehicle, heater, created_at, changed_at } = record.job;
    const key = JSON.stringify([vehicle, heater, created_at]);
    if (!last.has(key) || last.get(key).job.changed_at < changed_at) last.set(key, record);
  }
  const groups = new Map();
  for (const { job, checks, facts } of last.values()) {
    const vehicle = /^[=+\-@\t\r]/.test(job.vehicle) ? `'${job.vehicle}` : job.vehicle;
    const year = job.created_at.slice(0, 4);
    const key = JSON.stringify([vehicle, year]);
    const all = [...checks.map((c) => c.verdict), ...facts.map((f) => f.state)];
    const beyond = Number(all.includes('beyond'));
    const not_proven = Number(all.includes('not_proven') || all.includes('none'));
    const open = Number(all.includes('not_checked') || all.includes('not_seen'));
    const group = groups.get(key) ?? {
      vehicle,
      year,
      jobs: 0,
      with_beyond: 0,
      with_not_proven: 0,
      with_either: 0,
      with_something_not_checked: 0,
    };
    group.jobs += 1;
    group.with_beyond += beyond;
    group.with_not_proven += not_proven;
    group.with_either += beyond | not_proven;
    group.with_something_not_checked += open;
    groups.set(key, group);
  }
  return [...groups.values()];
}

test('a fleet’s question over years, answered alike by DuckDB, SQLite and by counting', (t) => {
  const folder = temporary(t);
  const records = [];
  for (let n = 0; n < 240; n += 1)
    for (let time = 0; time <= n % 3; time += 1) records.push(made(n, time, n % 11 === 5));
  records.forEach((record, i) => {
    writeFileSync(join(folder, `${String(i).padStart(4, '0')}.csv`), csvOf(record));
  });
  // The same file twice, under another name, counts once.
  writeFileSync(join(folder, 'copy.csv'), csvOf(records[7]));
  const wanted = counted(records);
  const byName = (a, b) =>
    JSON.stringify([a.vehicle, a.year]) < JSON.stringify([b.vehicle, b.year]) ? -1 : 1;
  const got = asked(folder);
  assert.deepEqual(got.toSorted(byName), wanted.toSorted(byName));
  assert.ok(wanted.length >= 24);
  for (const name of ['with_beyond', 'with_not_proven'])
    assert.ok(wanted.some((g) => g[name] > 0) && wanted.some((g) => g[name] < g.jobs), name);
});
