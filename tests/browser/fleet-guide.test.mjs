// The guide for whoever reads a fleet's tables: its columns and codes are those of the table, its
// five questions give what counting the records gives, in DuckDB and in SQLite.

import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { csvOf } from '../../web/record/csv.js';
import { schema } from '../../web/record/schema.js';
import { asked, lastTimes, madeOften, shown } from './fleet-made.mjs';

const GUIDE = fileURLToPath(new URL('../../web/record/FLEET.md', import.meta.url));
const guide = readFileSync(GUIDE, 'utf8');

test('its list of columns is the table’s, in the table’s order', () => {
  const [header] = csvOf(madeOften(1)[0]).slice(1).split('\r\n');
  const [list] = guide.split('## Columns')[1].split('`verdict` of a check');
  const described = [...list.matchAll(/^\| `(\w+)` \|/gm)].map((found) => found[1]);
  assert.deepEqual(described, header.split(','));
});

test('every code that a table can have is explained', () => {
  const { checks, facts, captures } = schema.properties;
  const check = checks.items.properties;
  const why = captures.items.properties.report.properties.checks.items.properties.why;
  const codes = [check.verdict, check.basis, facts.items.properties.state, why].flatMap((s) => s.enum);
  const named = codes.filter((code) => code);
  assert.ok(named.length > 15);
  for (const code of named) assert.ok(guide.includes(`\`${code}\``), code);
});

/** What a question's answer is made of, job by job. */
const rowsOf = (records) =>
  records.flatMap(({ job, checks, facts }) => {
    const same = { vehicle: shown(job.vehicle), heater: job.heater, job_created_at: job.created_at };
    const all = [...checks, ...facts.map((f) => ({ ...f, verdict: f.state, how: f.who }))];
    return all.map((row) => ({ ...row, ...same, installer: job.installer }));
  });

/** Rows under one key, and what is made of them. */
function grouped(rows, key, make) {
  const groups = new Map();
  for (const row of rows) {
    const name = JSON.stringify(key(row));
    groups.set(name, [...(groups.get(name) ?? []), row]);
  }
  return [...groups].map(([name, members]) => ({ ...JSON.parse(name), ...make(members) }));
}

const job = ({ vehicle, heater, job_created_at }) => ({ vehicle, heater, job_created_at });

/** The five questions, answered by counting. */
function counted(rows) {
  const beyond = rows.filter((r) => r.verdict === 'beyond');
  const open = rows.filter((r) => ['not_checked', 'not_seen'].includes(r.verdict));
  const usage = rows.filter(
    (r) =>
      ['trade_usage', 'assumed'].includes(r.basis) && ['within', 'beyond', 'not_proven'].includes(r.verdict),
  );
  const latest = (members) => ({
    last_read: members
      .map((r) => r.at)
      .toSorted()
      .at(-1),
  });
  const read = grouped(
    rows.filter((r) => r.value !== undefined && r.at),
    job,
    latest,
  );
  const phone = ({ how }) =>
    how.includes(', turn') ? 'turned' : how.includes(', found') ? 'checked' : 'not checked';
  const widths = (members) => {
    const us = members.map((r) => r.u);
    return {
      readings: us.length,
      narrowest_deg: Math.min(...us),
      mean_deg: us.reduce((a, b) => a + b) / us.length,
      widest_deg: Math.max(...us),
    };
  };
  return [
    beyond.map((r) => ({
      ...job(r),
      id: r.id,
      value_number: r.value,
      u_number: r.u,
      unit: r.unit,
      basis: r.basis,
    })),
    grouped(
      open,
      ({ section, id }) => ({ section, id }),
      (members) => ({ jobs: members.length }),
    ),
    usage.map((r) => ({ ...job(r), id: r.id, verdict: r.verdict, basis: r.basis })),
    read.filter((r) => r.last_read < '2023-01-01'),
    grouped(
      rows.filter((r) => r.unit === 'deg' && r.how !== 'entered'),
      (r) => ({ installer: r.installer, phone: phone(r) }),
      widths,
    ),
  ];
}

const inOrder = (rows) => rows.map((row) => JSON.stringify(row)).toSorted();
/** Rounded to the last place of an answer. */
const near = (row) =>
  Object.fromEntries(Object.entries(row).map(([k, v]) => [k, typeof v === 'number' ? v.toFixed(1) : v]));

test('its questions give what counting gives, in DuckDB and in SQLite, loaded as it says', (t) => {
  const folder = mkdtempSync(join(tmpdir(), 'fleet-'));
  t.after(() => rmSync(folder, { recursive: true }));
  const records = madeOften(240);
  records.forEach((record, i) => {
    writeFileSync(join(folder, `${String(i).padStart(4, '0')}.csv`), csvOf(record));
  });
  const [view, ...answers] = asked(folder, GUIDE);
  assert.deepEqual(view, []);
  const wanted = counted(rowsOf(lastTimes(records)));
  assert.equal(answers.length, 5);
  answers.forEach((answer, i) => {
    assert.ok(answer.length > 1, `question ${i + 1} has an answer`);
    assert.deepEqual(inOrder(answer.map(near)), inOrder(wanted[i].map(near)), `question ${i + 1}`);
  });
});
