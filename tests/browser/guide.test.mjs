// The limits copied from a manual step by step: typed as a person does, in both unit systems; what
// comes out is a set that an independent validator of the published schema accepts.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import Ajv from 'ajv/dist/2020.js';
import { bounds, guide as t, steps } from '../../web/words/limits.js';
import { axe, DIST, launch, served, tap } from './harness.mjs';

const schema = JSON.parse(readFileSync(join(DIST, 'pkg/schema.json'), 'utf8'));
const valid = new Ajv({ allErrors: true, strict: false }).compile(schema);
const { default: lists } = await import('../../web/pkg/sheets.js');

const server = served();

/** A browser at the first step of the guide. */
async function open(test, { us = false } = {}) {
  const b = await launch();
  test.after(() => b.close());
  const { page } = b;
  page.setDefaultTimeout(8000);
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  if (us) {
    await tap(page, 'settings');
    await page.click('input[value="us"]');
    await tap(page, 'done');
    await page.waitForSelector('[data-screen="start"]');
  }
  await tap(page, 'limits');
  await tap(page, 'guide');
  await step(page, 0);
  await page.click('summary');
  await tap(page, `step-${AT.place}`);
  await step(page, AT.place);
  return b;
}

const at = (field) => `[id="f-${field.replaceAll('.', '-')}"]`;

async function type(page, field, words) {
  await page.locator(at(field)).fill('');
  await page.locator(at(field)).pressSequentially(words);
}

const message = (page, field) => page.locator(`[id="f-${field.replaceAll('.', '-')}-m"]`);

/** The steps' places. */
const AT = Object.fromEntries(steps.map((s, i) => [s.id, i]));

/** The step's own title, once it is there. */
const step = (page, i) => page.waitForSelector(`text=${t.step(i + 1, steps.length)}: ${steps[i].title}`);

/** The limit set that the database holds. */
const kept = (page) =>
  page.evaluate(
    () =>
      new Promise((done, fail) => {
        const open = indexedDB.open('plumbmark');
        open.onerror = () => fail(open.error);
        open.onsuccess = () => {
          const get = open.result.transaction('jobs').objectStore('jobs').get(1);
          get.onsuccess = () => {
            open.result.close();
            done(get.result.limits);
          };
        };
      }),
  );

const line = (set, id) => set.bounds.find((b) => b.id === id);

test('every limit of the sheets is asked once, in the order of the work, and named', async () => {
  const sections = [...new Set(lists.bounds.map((b) => b.section))];
  assert.deepEqual(
    steps.map((s) => s.id),
    sections,
  );
  assert.deepEqual(
    Object.keys(bounds),
    lists.bounds.map((b) => b.id),
  );
  for (const { label, where } of Object.values(bounds)) assert.ok(label.length > 3 && where.length > 3);
});

test('a manual’s numbers go in step by step and come out as a valid set', async (t1) => {
  const { page, faults } = await open(t1);
  await type(page, 'document', 'Unit H-7, mounting instructions, edition 4');
  const state = (id) => page.textContent(`[data-limit="${id}"] [data-entered]`);
  assert.equal(await state('clear_top_mm'), t.example, 'an example is not taken for the manual’s');
  assert.equal(await state('intake_to_exhaust_mm'), t.notEntered);
  await type(page, 'clear_outlet_end_mm.low', '130,5');
  assert.equal(await state('clear_outlet_end_mm'), t.typed);
  await page.focus(at('clear_outlet_end_mm.source'));
  await page.keyboard.type('11');
  await page.click('[data-limit="clear_top_mm"] [data-action="use-trade_usage"]');
  assert.deepEqual(await axe(page), []);
  await tap(page, 'guide-next');
  await step(page, AT.place + 1);
  const set = await kept(page);
  assert.ok(valid(set), JSON.stringify(valid.errors));
  assert.deepEqual(line(set, 'clear_outlet_end_mm'), {
    id: 'clear_outlet_end_mm',
    low: 130.5,
    high: null,
    basis: 'manual',
    source: 'Unit H-7, mounting instructions, edition 4, p. 11',
    vehicles: '',
    reason: '',
  });
  // 2 in of common practice, without a source.
  assert.equal(line(set, 'clear_top_mm').low, 50.8);
  assert.equal(line(set, 'clear_top_mm').basis, 'trade_usage');
  assert.equal(line(set, 'intake_to_exhaust_mm').low, null, 'what is empty is not entered');
  assert.deepEqual(faults, []);
});

test('looser than usage needs a reason, a law its vehicles; both are kept', async (t1) => {
  const { page } = await open(t1);
  await type(page, 'clear_left_mm.low', '30');
  await type(page, 'clear_left_mm.source', 'H-7, p. 12');
  await tap(page, 'guide-next');
  await page.waitForSelector(at('clear_left_mm.reason'));
  assert.equal(await message(page, 'clear_left_mm.reason').textContent(), t.problems.reason_missing());
  await type(page, 'clear_left_mm.reason', 'closed side, no air passes');
  await tap(page, 'guide-next');
  await step(page, AT.place + 1);
  assert.equal(line(await kept(page), 'clear_left_mm').reason, 'closed side, no air passes');

  await page.click('summary');
  await tap(page, `step-${AT.flue}`);
  await step(page, AT.flue);
  const law = '[data-limit="exhaust_to_combustible_mm"]';
  await page.click(`${law} [data-action="use-law"]`);
  await type(page, 'exhaust_to_combustible_mm.vehicles', '');
  await page.locator(at('exhaust_to_combustible_mm.vehicles')).fill('');
  await tap(page, 'guide-next');
  assert.equal(
    await message(page, 'exhaust_to_combustible_mm.vehicles').textContent(),
    t.problems.vehicles_missing(),
  );
  await type(page, 'exhaust_to_combustible_mm.vehicles', 'US towing vessels');
  await tap(page, 'guide-next');
  await step(page, AT.flue + 1);
  // 46 CFR 144.415: 450 mm.
  const told = line(await kept(page), 'exhaust_to_combustible_mm');
  assert.deepEqual([told.low, told.basis, told.vehicles], [450, 'law', 'US towing vessels']);
});

test('an angle of the same step goes through core with the rest of its line', async (t1) => {
  const { page } = await open(t1);
  await page.click('summary');
  await tap(page, `step-${AT.fuel}`);
  await step(page, AT.fuel);
  await type(page, 'pump_outlet.low', '12');
  await page.locator(at('pump_outlet.basis')).selectOption('manual');
  await type(page, 'pump_outlet.source', '');
  await tap(page, 'guide-next');
  await page.waitForSelector(`${at('pump_outlet.source')}[aria-invalid="true"]`);
  await type(page, 'pump_outlet.source', 'H-7, p. 20');
  await tap(page, 'guide-next');
  // 12° is looser than the trade's 15°.
  await page.waitForSelector(`${at('pump_outlet.reason')}[aria-invalid="true"]`);
  await type(page, 'pump_outlet.reason', 'this pump may');
  await tap(page, 'guide-next');
  await step(page, AT.fuel + 1);
  const set = await kept(page);
  assert.ok(valid(set), JSON.stringify(valid.errors));
  const pump = set.lines.find((l) => l.check === 'pump_outlet');
  assert.deepEqual([pump.low_deg, pump.reason], [12, 'this pump may']);
});

test('what can’t be is refused at its field, and nothing typed is lost', async (t1) => {
  const { page } = await open(t1);
  await type(page, 'clear_top_mm.source', 'H-7, p. 12');
  for (const bad of ['abc', '-5', '40000', '1.2.3']) {
    await type(page, 'clear_top_mm.low', bad);
    await tap(page, 'guide-next');
    await message(page, 'clear_top_mm.low').waitFor({ state: 'visible' });
    assert.equal(await page.inputValue(at('clear_top_mm.low')), bad);
    assert.equal(await kept(page), null);
  }
  await type(page, 'clear_top_mm.low', '60');
  await tap(page, 'guide-next');
  await step(page, AT.place + 1);
});

test('in inches: what was typed is kept to the digit, and what nobody touched does not drift', async (t1) => {
  const { page } = await open(t1, { us: true });
  await type(page, 'clear_top_mm.low', '3.25');
  await type(page, 'clear_top_mm.source', 'H-7, p. 12');
  await page.click('[data-limit="outlet_to_person_mm"] [data-action="use-trade_usage"]');
  await tap(page, 'guide-next');
  await step(page, AT.place + 1);
  // The international inch is 25.4 mm exactly (NIST SP 811).
  assert.equal(line(await kept(page), 'clear_top_mm').low, 82.55);
  await page.click('summary');
  await tap(page, `step-${AT.place}`);
  await step(page, AT.place);
  assert.equal(await page.inputValue(at('outlet_to_person_mm.low')), '8');
  await tap(page, 'guide-next');
  await step(page, AT.place + 1);
  assert.equal(line(await kept(page), 'outlet_to_person_mm').low, 203.2);
});
