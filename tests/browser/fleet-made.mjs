// Records of a made-up fleet, and questions asked of their tables.

import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const RUN = fileURLToPath(new URL('../fleet/run.sh', import.meta.url));

/** The answers of DuckDB and SQLite, which are one: `fleet.py` fails where they are not.
 * @param {string[]} what the folder, and a guide */
export const asked = (...what) =>
  execFileSync('sh', [RUN, ...what], { encoding: 'utf8' })
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line));

const VERDICTS = ['within', 'within', 'beyond', 'within', 'not_proven', 'none', 'not_checked', 'not_needed'];
const STATES = ['seen', 'not_seen', 'not_needed'];
const BASES = ['manual', 'law', 'trade_usage', 'assumed'];
const ZEROS = ['assumed', 'found', 'turn'];
/** Names that break a careless table. */
const VEHICLES = ['=cmd|A1', '-7', 'Barge "Tern", aft', 'Füße 車\n2', "O'Hara; drop table", '', '+1', ' '];

/** A text as a table has it. @param {string} text */
export const shown = (text) => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text);

/** What was read: an angle, or a number that was typed. */
const readings = (n, k, at) => ({
  value: -0.5 * k,
  u: 0.1 + ((n * 3 + k) % 9) / 8,
  unit: k % 2 ? 'mm' : 'deg',
  basis: BASES[(n + 2 * k) % 4],
  how: k % 2 ? 'entered' : `back, metal_face, acceleration, ${ZEROS[n % 3]}${n % 5 ? '' : ', blind'}`,
  at,
});

/** The record of a made-up job as it was the `time`th time that it was handed over. */
function made(n, time, tryout) {
  const year = 2019 + (n % 6);
  const spread = (k) => (n * 7 + time * 5 + k * k) % (n % 3 === 0 ? 2 : VERDICTS.length);
  const changed_at = `${year}-0${4 + time}-01T08:00:00.000Z`;
  const check = (k) => {
    const verdict = VERDICTS[spread(k)];
    const read = !['not_checked', 'not_needed'].includes(verdict);
    return { section: 's', id: `c${k}`, what: 'w,"', verdict, ...(read ? readings(n, k, changed_at) : {}) };
  };
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
      installer: n % 2 ? 'R. Okoro' : 'T. Lind',
      created_at: `${year}-03-${10 + (n % 7)}T08:00:00.000Z`,
      changed_at,
      tryout,
    },
    checks: Array.from({ length: n % 5 }, (_, k) => check(k)),
    facts: [fact(0), ...(n % 2 ? [fact(1)] : [])],
  };
}

/** So many jobs, each handed over up to three times, some of them try-outs. @param {number} jobs */
export function madeOften(jobs) {
  const records = [];
  for (let n = 0; n < jobs; n += 1)
    for (let time = 0; time <= n % 3; time += 1) records.push(made(n, time, n % 11 === 5));
  return records;
}

/** What counts of them: each real job as it was the last time. @param {ReturnType<typeof made>[]} records */
export function lastTimes(records) {
  const last = new Map();
  for (const record of records.filter((r) => !r.job.tryout)) {
    const { vehicle, heater, created_at, changed_at } = record.job;
    const key = JSON.stringify([vehicle, heater, created_at]);
    if (!last.has(key) || last.get(key).job.changed_at < changed_at) last.set(key, record);
  }
  return [...last.values()];
}
