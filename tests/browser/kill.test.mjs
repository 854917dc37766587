// A killed browser loses at most the field being typed, and nothing that was shown as saved: sheets,
// ticks, limits, the job's fields, steps of the first start, captures, photos.

import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { setTimeout as wait } from 'node:timers/promises';
import { served, tap } from './harness.mjs';
import { launchToKill, randomOf, ROUNDS, SEED, stored } from './kill.mjs';
import { JOB_FIELDS, observe, SHEETS, Typist } from './kill-typist.mjs';

const server = served();

/** The whole store, by what the test's side knows things by. */
async function storeOf(page) {
  const [jobs, entries, captures, photos] = await Promise.all(
    ['jobs', 'entries', 'captures', 'photos'].map((name) => stored(page, 'plumbmark', name)),
  );
  const of = (key) => entries.find((e) => e.key === key);
  const [job] = jobs;
  const fields = new Map();
  for (const { key, fields: names } of Object.values(SHEETS))
    for (const name of names) fields.set(`${key}.${name}`, of(key)?.typed[name] ?? '');
  for (const name of JOB_FIELDS) fields.set(`job.${name}`, job[name]);
  const line = job.limits?.lines.find((l) => l.check === 'pump_outlet');
  return { job, entries, of, captures, photos, fields, limit: line?.low_deg ?? null };
}

/** What must be there because it was shown as saved. */
class Log {
  /** Field to the place in its history that was shown. */ fields = new Map();
  ticks = new Map();
  steps = new Map();
  captures = new Map();
  limit = null;
  photos = 0;
  count = 0;

  /** @param {Typist} typist */
  constructor(typist) {
    this.typist = typist;
  }

  take({ screen, kept, mark, typed, ticks, steps, limit, capture, photos }) {
    this.count += 1;
    const told = (id, value) => {
      const at = (this.typist.typed.get(id) ?? ['']).lastIndexOf(value);
      if (at > (this.fields.get(id) ?? 0)) this.fields.set(id, at);
    };
    const sheet = Object.values(SHEETS).find(({ key }) => key === kept);
    if (sheet) for (const name of sheet.fields) if (name in typed) told(`${kept}.${name}`, typed[name]);
    if (kept) for (const [id, by] of ticks) this.ticks.set(`${kept}.${id}`, by);
    if (kept === 'start') for (const [id, by] of steps) this.steps.set(id, by);
    if (screen === 'job_card') for (const name of JOB_FIELDS) told(`job.${name}`, typed[name]);
    if (screen === 'limits') this.limit = Number(limit);
    if (screen === 'captured') this.captures.set(Number(mark), capture);
    this.photos += photos;
  }

  /** What of it is not in the store. */
  lost({ of, captures, fields, limit }) {
    const lost = [];
    for (const [id, at] of this.fields) {
      const later = this.typist.typed
        .get(id)
        .slice(at)
        .map((text) => text.trim());
      if (!later.includes(fields.get(id))) lost.push(`${id}: ${fields.get(id)}, not ${later[0]}`);
    }
    for (const id of this.ticks.keys()) {
      const [key, tick] = id.split('.');
      if (!of(key)?.ticks[tick]) lost.push(`tick ${id}`);
    }
    for (const [id, by] of this.steps)
      if (!by.includes(of('start')?.ticks[id]?.reason ?? '\0')) lost.push(`step ${id}: ${by}`);
    for (const [id, value] of this.captures) {
      const check = captures.find((c) => c.id === id)?.report.checks.find((c) => c.id === 'pump_outlet');
      if (!check || `${check.value.toFixed(1)}°` !== value) lost.push(`capture ${id}`);
    }
    if (this.limit !== null) {
      const later = this.typist.typed.get('limit').map(Number);
      if (!later.slice(later.lastIndexOf(this.limit)).includes(limit)) lost.push(`limit ${limit}`);
    }
    return lost;
  }
}

/** What the store has by halves: a photo of nothing, something of a photo that is not there. */
function halves({ job, entries, captures, photos }) {
  const odd = [];
  for (const name of ['vehicle', 'heater', 'customer', 'installer', 'created_at', 'changed_at'])
    if (typeof job?.[name] !== 'string') odd.push(`job.${name}`);
  const used = [
    ...captures.flatMap((c) => c.photos ?? []),
    ...entries.flatMap((e) => [...e.photos, ...Object.values(e.ticks).map((t) => t.photo)]),
  ].filter((id) => id !== null);
  for (const id of used) if (!photos.some((p) => p.id === id)) odd.push(`no photo ${id}`);
  for (const { id, blob } of photos) {
    if (!used.includes(id)) odd.push(`photo ${id} of nothing`);
    if (!blob) odd.push(`photo ${id} is empty`);
  }
  for (const e of entries) if (e.job_id !== job.id || !e.changed_at) odd.push(`entry ${e.key}`);
  return odd;
}

/** Fields that were left, and whose last letter is not in the store. */
function behind(typist, { fields }) {
  const last = new Map([...typist.typed].map(([id, states]) => [id, states.at(-1).trim()]));
  last.delete('limit');
  return [...last].filter(([id, text]) => fields.get(id) !== text).map(([id]) => id);
}

/** The job is there to go on with: its view, its record. */
async function opens(page) {
  await tap(page, 'tape');
  await page.waitForFunction(() => document.querySelector('[data-screen="parts"] .summary')?.textContent);
  await tap(page, 'record');
  await page.waitForFunction(() => document.querySelector('[data-name="sha256"]')?.textContent);
  assert.equal(await page.locator('.notice:visible').count(), 0);
}

const patience = { timeout: 120_000 + ROUNDS * 60_000 };
test(`${ROUNDS} killed browsers lose at most the field being typed`, patience, async (t) => {
  const random = randomOf(SEED);
  const profile = mkdtempSync(join(tmpdir(), 'plumbmark-kill-'));
  let running;
  let killed = Promise.resolve();
  t.after(async () => {
    await running?.kill();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  });
  let plan = { stroke: 0, wait_ms: 0 };
  const die = () => {
    killed = running.kill();
    return killed;
  };
  const typist = new Typist(random, async (strokes) => {
    if (strokes !== plan.stroke) return;
    await wait(plan.wait_ms);
    await die();
  });
  const log = new Log(typist);
  const lost = [];
  const open = async () => {
    running = await launchToKill(profile);
    const { page } = running;
    await page.exposeFunction('shownAsSaved', (what) => log.take(what));
    await page.addInitScript(observe);
    await page.goto(server.url);
    await page.waitForSelector('[data-screen="start"]');
    return page;
  };
  const look = async (page, round) => {
    const store = await storeOf(page);
    for (const what of [...log.lost(store), ...halves(store)]) lost.push(`round ${round}: ${what}`);
    const own = behind(typist, store);
    // The one under the thumb; the one just left, while the store was still busy with it.
    const typing = new Set(typist.fields.slice(-2));
    for (const id of own) if (!typing.has(id)) lost.push(`round ${round}: ${id} was left and is lost`);
    // From here on what is there is what was typed.
    for (const [id, states] of typist.typed) if (id !== 'limit') states.push(store.fields.get(id));
    await opens(page);
    return own.length;
  };
  console.log(`kill test: seed ${SEED}`);
  // A browser that dies while it makes its store.
  running = await launchToKill(profile);
  running.page.goto(server.url).catch(() => {});
  await wait(random() * 600);
  await running.kill();
  let missed = 0;
  let page = await open();
  for (let round = 1; round <= ROUNDS; round += 1) {
    // Between a letter and its way to the store, or whenever it comes.
    const soon = round % 2 === 1;
    const first = typist.strokes;
    plan = { stroke: soon ? first + 1 + Math.floor(random() * 25) : 0, wait_ms: random() * 30 };
    const [dead, worked] = [random() * 8000, typist.work(page).catch((error) => error)];
    if (!soon) {
      await Promise.race([wait(dead), worked]);
      await die();
    }
    const error = await worked;
    await killed;
    assert.match(String(error), /closed|crashed|Target|disconnected/i, `round ${round}: ${error?.stack}`);
    page = await open();
    missed += await look(page, round);
    await page.goto(server.url);
    await page.waitForSelector('[data-screen="start"]');
  }
  const { captures, photos } = await storeOf(page);
  const kinds = `${log.fields.size} fields, ${log.ticks.size} ticks, ${log.steps.size} steps, ${captures.length} captures, ${photos.length} photos`;
  console.log(
    `kill test: ${ROUNDS} rounds, ${typist.strokes} letters, shown as saved ${log.count} times (${kinds}), ${lost.length} lost; ${missed} times the field being typed`,
  );
  assert.ok(log.count > 0, 'something was shown as saved');
  assert.deepEqual(lost, []);
});
