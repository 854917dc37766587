// The invented job of the try-out: every sheet takes its numbers, most of it within, something
// beyond, something not proven, something open; nothing of it outside the try-out.

import assert from 'node:assert/strict';
import { mkdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { after, before, test } from 'node:test';
import { fileURLToPath } from 'node:url';
import Ajv from 'ajv/dist/2020.js';
import { entries } from '../../web/tryout/demo-job.js';
import { words as t } from '../../web/words/demo.js';
import { guide, steps } from '../../web/words/limits.js';
import { axe, DIST, launch, serve, tap } from './harness.mjs';
import { openAll, saved, tooWide, type } from './plan-page.mjs';
import { atJob } from './whole-job.mjs';

const SHOTS = join(dirname(fileURLToPath(import.meta.url)), 'shots/latest');
const schema = JSON.parse(readFileSync(join(DIST, 'pkg/schema.json'), 'utf8'));
const valid = new Ajv({ allErrors: true, strict: false }).compile(schema);
const { default: lists } = await import('../../web/pkg/sheets.js');

/** Worked out from marks and clocks, not from what is typed. */
const UNTYPED = ['first_start', 'timer'];
/** Not in a road vehicle. */
const BOATS = ['boat_outlet'];
/** Where each sheet stands: section, its action there, its screen. */
const SCREENS = {
  demand: ['heat_loss', 'heater_size', 'warm_up', 'night'],
  place: ['clearances', 'fit', 'cut_plan'],
  support: ['support', 'twist'],
  ducts: ['ducts', 'air_flow', 'return_air'],
  fuel: ['bubble', 'fuel_run', 'fuel_pressure', 'prime', 'tank', 'burn'],
  flue: ['exhaust', 'air_pipe', 'pipe_ends'],
  supply: ['bank', 'cable', 'fuse', 'battery'],
  start_up: ['started', 'co_check'],
};
/** Ways beside the list, where a sheet's way is not named after it. */
const WAYS = { started: 'to-start_values', co_check: 'to-start_co' };

let server;
before(async () => {
  mkdirSync(SHOTS, { recursive: true });
  server = await serve();
});
after(() => server.kill());

const told = (page) =>
  page.waitForFunction(() => document.querySelector('.parts .summary')?.textContent !== '');

async function openTryout(test, options = {}) {
  const b = await launch(options);
  test.after(() => b.close());
  b.page.setDefaultTimeout(8000);
  await b.page.goto(server.url);
  await b.page.waitForSelector('[data-screen="start"]');
  await tap(b.page, 'tryout');
  await told(b.page);
  return b;
}

async function fill(page) {
  await tap(page, 'demo');
  await page.waitForSelector(`.caution:has-text("${t.invented}")`);
  await told(page);
}

async function back(page) {
  await page.goBack();
  await page.waitForTimeout(80);
}

/** What a store of a database holds, without what is no JSON. */
const held = (page, database, store) =>
  page.evaluate(
    ([database, store]) =>
      new Promise((done, fail) => {
        const open = indexedDB.open(database);
        open.onerror = () => fail(open.error);
        open.onsuccess = () => {
          const get = open.result.transaction(store).objectStore(store).getAll();
          get.onsuccess = () => {
            open.result.close();
            done(get.result);
          };
        };
      }),
    [database, store],
  );

async function counts(page) {
  const said = await page.textContent('.parts .summary');
  const number = (words) => Number(said.match(new RegExp(`(\\d+) ${words}`))?.[1] ?? 0);
  const [open, beyond] = [number('not checked'), number('beyond')];
  return { said, open, beyond, unproven: number('not proven'), within: number('within') };
}

test('every sheet that is typed has its numbers, and no field is asked that is not there', () => {
  const typed = lists.sheets.map((s) => s.name).filter((n) => ![...UNTYPED, ...BOATS].includes(n));
  assert.deepEqual(Object.keys(entries).sort(), typed.sort());
  assert.deepEqual(Object.values(SCREENS).flat().sort(), typed);
  for (const sheet of lists.sheets) {
    const { typed = {}, rows = [] } = entries[sheet.name] ?? {};
    const fields = (all) => all.map((f) => f.name);
    for (const name of Object.keys(typed)) assert.ok(fields(sheet.inputs).includes(name), name);
    for (const row of rows)
      for (const name of Object.keys(row)) assert.ok(fields(sheet.row).includes(name), name);
  }
});

test('one tap fills the job: most within, something beyond, something not proven, angles open', async (t1) => {
  const { page, faults } = await openTryout(t1);
  await fill(page);
  const n = await counts(page);
  assert.ok(n.beyond >= 1 && n.unproven >= 1 && n.within > 50 && n.open > 20, n.said);
  assert.ok(n.within > 4 * (n.beyond + n.unproven), n.said);
  assert.equal(await page.textContent('h1'), t.header.vehicle);
  const state = (name) => page.getAttribute(`[data-part="${name}"] .verdict`, 'data-verdict');
  assert.equal(await state('flue'), 'beyond');
  assert.equal(await state('place'), 'not_proven');
  for (const part of ['heater', 'pump', 'filter', 'pipe', 'job'])
    assert.equal(await state(part), 'unchecked');
  // Every limit but none that is not there; facts stay with who saw them.
  assert.match(
    await page.textContent('[data-part="limits"] small'),
    new RegExp(`^${lists.bounds.length + 6} of ${lists.bounds.length + 6} `),
  );
  assert.doesNotMatch(n.said, /seen|trade usage/);
  assert.deepEqual(faults, []);
});

test('no sheet is refused, on its own screen, metric or US', async (t1) => {
  for (const us of [false, true]) {
    const { page, faults } = await openTryout(t1);
    await fill(page);
    if (us) await toUs(page);
    for (const [section, sheets] of Object.entries(SCREENS)) {
      await tap(page, `section-${section}`);
      await page.waitForSelector(`[data-screen="${section}"]`);
      const beside = [];
      for (const name of sheets) {
        const own = page.locator(`[data-sheet-state="${name}"]`);
        if (!(await own.count())) beside.push(name);
        else assert.equal(await own.textContent(), '', name);
      }
      for (const name of beside) {
        await page
          .locator(`[data-action="${WAYS[name] ?? `sheet-${name}`}"]`)
          .first()
          .click();
        await page.locator(`[data-sheet-state="${name}"]`).waitFor({ state: 'attached' });
        assert.equal(await page.textContent(`[data-sheet-state="${name}"]`), '', name);
        await back(page);
      }
      await back(page);
      await told(page);
    }
    assert.deepEqual(faults, []);
  }
});

/** Other units, and back to the job. */
async function toUs(page) {
  await back(page);
  await back(page);
  await page.waitForSelector('[data-screen="start"]');
  await tap(page, 'settings');
  await page.click('input[value="us"]');
  await tap(page, 'done');
  await tap(page, 'tape');
  await told(page);
}

test('the limits are a valid set that the guide takes step by step', async (t1) => {
  const { page, faults } = await openTryout(t1);
  await fill(page);
  const [{ limits }] = await held(page, 'plumbmark-tryout', 'jobs');
  assert.ok(valid(limits), JSON.stringify(valid.errors));
  assert.ok([...limits.lines, ...limits.bounds].every((l) => /^invented manual, p\. \d+$/.test(l.source)));
  await tap(page, 'limits');
  await tap(page, 'guide');
  for (let i = 0; i < steps.length; i += 1) {
    await page.waitForSelector(`text=${guide.step(i + 1, steps.length)}: ${steps[i].title}`);
    await tap(page, 'guide-next');
  }
  await atJob(page);
  const [{ limits: after_ }] = await held(page, 'plumbmark-tryout', 'jobs');
  assert.deepEqual(after_.bounds, limits.bounds);
  assert.deepEqual(faults, []);
});

test('it stays in the try-out, over a reload too; what was typed since is asked about first', async (t1) => {
  const { page, faults } = await openTryout(t1);
  await fill(page);
  const { said } = await counts(page);
  await page.waitForTimeout(300);
  assert.deepEqual(await held(page, 'plumbmark', 'entries'), []);
  const [real] = await held(page, 'plumbmark', 'jobs');
  assert.deepEqual([real.vehicle, real.limits], ['', null]);
  assert.equal((await held(page, 'plumbmark-tryout', 'entries')).length, Object.keys(entries).length);
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await tap(page, 'tape');
  await told(page);
  assert.match((await counts(page)).said, /^\d+ not checked$/);
  assert.equal(await page.locator('[data-action="demo"]').count(), 0);
  await back(page);
  await tap(page, 'tryout');
  await page.waitForSelector('.tryout');
  await told(page);
  assert.equal((await counts(page)).said, said, 'limits and numbers are those of before');
  await tap(page, 'section-place');
  await type(page, { top_mm: '3' });
  await saved(page);
  await back(page);
  await told(page);
  assert.equal((await counts(page)).beyond, 2);
  await tap(page, 'demo');
  await tap(page, 'leave-demo');
  assert.equal((await counts(page)).beyond, 2);
  await tap(page, 'demo');
  await tap(page, 'do-demo');
  await page.waitForSelector(`.caution:has-text("${t.invented}")`);
  await told(page);
  assert.equal((await counts(page)).said, said);
  assert.deepEqual(faults, []);
});

test('fits a phone and is clean for axe, by day and by night', async (t1) => {
  for (const colorScheme of ['light', 'dark']) {
    const { page, faults } = await openTryout(t1, { colorScheme });
    assert.deepEqual(await axe(page), []);
    await fill(page);
    await openAll(page);
    assert.equal(await tooWide(page), 0);
    assert.deepEqual(await axe(page), []);
    await page.screenshot({ path: join(SHOTS, `demo-${colorScheme}.png`) });
    await page.screenshot({ path: join(SHOTS, `demo-whole-${colorScheme}.png`), fullPage: true });
    await tap(page, 'demo');
    assert.deepEqual(await axe(page), []);
    assert.deepEqual(faults, []);
  }
});
