// Measures the page as built in Chromium, prints the table of what is promised of it; fails where a
// promise is not kept.

import { median } from './figures.mjs';
import { DIST } from '../browser/harness.mjs';
import { wholeJob } from './job.mjs';
import { anHour, EVENTS } from './memory.mjs';
import { eventToPaint } from './paint.mjs';
import { standing, table } from './rows.mjs';
import { sizes } from './sizes.mjs';
import { firstVisit, offlineStart, READING_MS } from './start.mjs';

const TIMES = 5;
/** A tenth of a byte an event: what the collector leaves differs by less from time to time. */
const NOISE_KB = 20;

/** The median of each over some goes: what somebody may expect, not the best that was seen. */
async function over(go) {
  const all = [];
  for (let i = 0; i < TIMES; i += 1) all.push(await go());
  const entries = Object.keys(all[0]).map((name) => [name, median(all.map((one) => one[name]))]);
  return Object.fromEntries(entries);
}

const ms = (value) => `${value.toFixed(1)} ms`;
const bytes = sizes(DIST);
const hour = await anHour();
const job = await wholeJob();
const paint = await eventToPaint();
const offline = await over(offlineStart);
const visit = await over(firstVisit);
const s = (value_ms) => value_ms / 1000;
const events = EVENTS.toLocaleString('en').replace(',', ' ');

/** @type {import('./rows.mjs').Row[]} */
const rows = [
  ...bytes.cores.map(({ name, kb }) => ({ what: `.wasm, ${name}, compressed`, value: kb, unit: 'kB' })),
  { what: '.wasm, all', value: bytes.cores_kb, unit: 'kB', target: 40, ceiling: 70, also: '20 aimed at' },
  { what: 'first load, compressed, without icons', value: bytes.first_kb, unit: 'kB', target: 80 },
  { what: 'all of it', value: bytes.all_kb, unit: 'kB' },
  {
    what: `heap after ${events} events, grown by`,
    value: hour.heap_bytes / 1000,
    unit: 'kB',
    target: NOISE_KB,
    also: 'all collected before and after',
  },
  { what: "the core's memory, grown by", value: hour.core_bytes / 1000, unit: 'kB', target: 0 },
  {
    what: `whole job answered anew, ${job.lines} lines`,
    value: job.median_ms,
    unit: 'ms',
    target: 1,
    ceiling: 8,
    also: `95th percentile ${ms(job.p95_ms)}`,
  },
  {
    what: 'tap that allows the sensors to first number; no network, CPU 4 times slower',
    value: s(offline.number_ms),
    unit: 's',
    target: 1,
    ceiling: 5,
    also: `${s(READING_MS).toFixed(1)} s of it the second of rest that a reading is made of`,
  },
  { what: '… without that second', value: s(offline.number_ms - READING_MS), unit: 's', target: 1 },
  {
    what: 'second start, no network, CPU 4 times slower: first screen',
    value: s(offline.first_ms),
    unit: 's',
  },
  {
    what: 'first visit, 400 ms away, 400 kbit/s, CPU 4 times slower: first screen',
    value: s(visit.first_ms),
    unit: 's',
    also: `${(visit.first_bytes / 1000).toFixed(0)} kB`,
  },
  {
    what: 'the same: needs no network any more',
    value: s(visit.offline_ms),
    unit: 's',
    also: `${(visit.bytes / 1000).toFixed(0)} kB, icons too`,
  },
  {
    what: 'event to painted number',
    value: paint.median_ms,
    unit: 'ms',
    also: `95th percentile ${ms(paint.p95_ms)}`,
  },
];
console.log(table(rows));
console.log(`\nTimes in s: the median of ${TIMES} goes.`);
const missed = rows.filter((row) => standing(row) === 'missed');
for (const { what } of missed) console.log(`Missed: ${what}`);
const known = rows.filter((row) => standing(row).startsWith('known')).length;
console.log(`${known} known to be missed, not worse than recorded; ${missed.length} missed`);
// The browser's harness belongs to tests and keeps their runner waiting.
process.exit(missed.length ? 1 : 0);
