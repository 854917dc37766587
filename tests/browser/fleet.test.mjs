// Record tables as a fleet reads them: loaded into DuckDB and SQLite, and asked for the jobs with
// anything beyond or not proven, by vehicle, over years. What is right is counted from the records.

import assert from 'node:assert/strict';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { csvOf } from '../../web/record/csv.js';
import { asked, lastTimes, madeOften, shown } from './fleet-made.mjs';
import { served } from './harness.mjs';
import { fillJob, handedOut, openStart } from './record-page.mjs';

const server = served();

function temporary(t) {
  const folder = mkdtempSync(join(tmpdir(), 'fleet-'));
  t.after(() => rmSync(folder, { recursive: true }));
  return folder;
}

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

/** The question answered by counting records, without any table. */
function counted(records) {
  const groups = new Map();
  for (const { job, checks, facts } of lastTimes(records)) {
    const vehicle = shown(job.vehicle);
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
  const records = madeOften(240);
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
