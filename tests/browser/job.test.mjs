// The job at a glance: every check counted, in the order of the work; the worst first; what is open
// is said, what is not needed is said by whom and why; never one answer for all.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { text } from '../../web/text.js';
import { facts } from '../../web/words/job.js';
import { axe, launch, served, tap } from './harness.mjs';
import { saved, tooWide, type } from './plan-page.mjs';

const server = served();

async function openJob(t, options = {}) {
  const b = await launch(options);
  t.after(() => b.close());
  b.page.setDefaultTimeout(8000);
  await b.page.goto(server.url);
  await b.page.waitForSelector('[data-screen="start"]');
  await tap(b.page, 'tape');
  await told(b.page);
  return b;
}

/** Waits until the tape-measure half has answered. */
const told = (page) =>
  page.waitForFunction(() => document.querySelector('.parts .summary')?.textContent !== '');

async function back(page) {
  await page.goBack();
  await page.waitForSelector('[data-screen="parts"]');
  await told(page);
}

/** Numbers before words in the summary. */
async function counts(page) {
  const said = await page.textContent('.parts .summary');
  const number = (words) => Number(said.match(new RegExp(`(\\d+) ${words}`))?.[1] ?? 0);
  return {
    said,
    open: number('not checked'),
    beyond: number('beyond'),
    not_proven: number('not proven'),
    within: number('within'),
    seen: number('seen'),
    not_needed: number('not needed'),
  };
}

const state = (page, name) => page.getAttribute(`[data-part="${name}"] .verdict`, 'data-verdict');
const sub = (page, name) => page.textContent(`[data-part="${name}"] small`);

test('an untouched job says only how much is not checked, and begins with the first questions', async (t) => {
  const { page, faults } = await openJob(t);
  const n = await counts(page);
  assert.match(n.said, /^\d+ not checked$/);
  assert.ok(n.open > 40, n.said);
  assert.equal(await page.textContent('[data-action="next"]'), text.parts.next(text.sections.job[0]));
  await tap(page, 'next');
  await page.waitForSelector('[data-screen="job"]');
  assert.equal(await page.locator('.tick[data-done="no"]').count(), Object.keys(facts).length);
  assert.deepEqual(faults, []);
});

test('each check counts, the worst stands for its section, and what is beyond comes first', async (t) => {
  const { page } = await openJob(t);
  const before_ = await counts(page);
  await tap(page, 'section-place');
  await page.waitForSelector('[data-screen="place"]');
  // Trade usage permits 101.6 mm and more beyond the warm-air end, 50.8 mm above.
  await type(page, { outlet_end_mm: '300', top_mm: '52' });
  await saved(page);
  await back(page);
  const some = await counts(page);
  assert.equal(some.within, 1);
  assert.equal(some.not_proven, 1);
  assert.equal(some.open, before_.open - 2);
  assert.match(some.said, /1 of them only trade usage/);
  assert.match(some.said, /^nothing beyond/);
  assert.equal(await state(page, 'place'), 'not_proven');
  assert.match(await sub(page, 'place'), /Above/);
  // Beyond further down the list is still what comes next.
  await tap(page, 'section-support');
  await type(page, { long_mm: '180', short_mm: '120', straightedge_mm: '300', straightness_mm: '0.02' });
  await tap(page, 'six-lines');
  await type(page, { goes_mm: '1.6', stays_mm: '1.7' }, '[data-row="0"]');
  await saved(page);
  await back(page);
  assert.equal((await counts(page)).beyond, 1);
  assert.equal(await state(page, 'support'), 'beyond');
  assert.equal(await page.textContent('[data-action="next"]'), text.parts.next(text.sections.support[0]));
});

test('all of a section within and one fact open: the section is not within', async (t) => {
  const { page } = await openJob(t);
  await tap(page, 'section-support');
  await type(page, { long_mm: '180', short_mm: '120', straightedge_mm: '300', straightness_mm: '0.02' });
  await tap(page, 'six-lines');
  for (let i = 0; i < 6; i += 1) await type(page, { goes_mm: '0.1', stays_mm: '0.15' }, `[data-row="${i}"]`);
  await saved(page);
  await back(page);
  assert.equal(await state(page, 'support'), 'unchecked');
  assert.match(await page.textContent('[data-part="support"] .verdict'), /not checked/);
});

test('what is not needed is said with a name and a reason, and can be taken back', async (t) => {
  const { page, faults } = await openJob(t);
  const { open } = await counts(page);
  await tap(page, 'unchecked');
  await page.waitForSelector('[data-screen="unchecked"]');
  // The first questions are asked of every job.
  assert.equal(await page.locator('[data-open="job"] details').count(), 0);
  const cut = page.locator('[data-group="cut_plan"]');
  await cut.locator('summary').click();
  await cut.locator('[data-action="tick-no_need:cut_plan"]').click();
  await cut.locator('[data-action="tick-reason"]').click();
  assert.match(await cut.locator('.trouble').last().textContent(), /name/);
  await cut.locator('input[type="text"]').first().fill('R. Okoro');
  await cut.locator('[data-action="tick-reason"]').click();
  assert.match(await cut.locator('.trouble').last().textContent(), /why/);
  await cut.locator('input[type="text"]').last().fill('bolted to a rack, no panel is cut');
  await cut.locator('[data-action="tick-reason"]').click();
  await page.waitForTimeout(300);
  await back(page);
  const n = await counts(page);
  assert.equal(n.open, open - n.not_needed);
  assert.ok(n.not_needed >= 1);
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await tap(page, 'tape');
  await told(page);
  assert.equal((await counts(page)).open, n.open);
  await tap(page, 'unchecked');
  await cut.locator('summary').click();
  assert.match(await cut.textContent(), /R. Okoro, .*no panel is cut/);
  await cut.locator('[data-action="untick-no_need:cut_plan"]').click();
  await page.waitForTimeout(300);
  await back(page);
  assert.equal((await counts(page)).open, open);
  assert.deepEqual(faults, []);
});

test('the short path shows the angles alone and says so, over a reload too', async (t) => {
  const { page } = await openJob(t);
  await page.click('input[value="angles"]');
  await told(page);
  const rows = () => page.$$eval('.parts [data-part]', (all) => all.map((e) => e.dataset.part));
  assert.deepEqual(await rows(), ['limits', 'level', 'heater', 'pump', 'filter', 'pipe']);
  assert.equal((await counts(page)).open, 6);
  assert.match(await page.textContent('.parts .body'), new RegExp(text.parts.anglesOnly));
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await tap(page, 'tape');
  await told(page);
  assert.equal((await rows()).length, 6);
  await page.click('input[value="whole"]');
  await told(page);
  assert.ok((await rows()).length > 9);
});

test('limits on the manual’s word are counted', async (t) => {
  const { page } = await openJob(t);
  assert.match(await sub(page, 'limits'), /^0 of \d+ from the manual/);
});

test('fits a phone and is clean for axe, by day and by night', async (t) => {
  for (const colorScheme of ['light', 'dark']) {
    const { page, faults } = await openJob(t, { colorScheme });
    assert.equal(await tooWide(page), 0);
    assert.deepEqual(await axe(page), []);
    await tap(page, 'unchecked');
    await page.waitForSelector('[data-screen="unchecked"]');
    await page.locator('[data-group="cut_plan"] summary').click();
    assert.equal(await tooWide(page), 0);
    assert.deepEqual(await axe(page), []);
    await back(page);
    await toJobFacts(page);
    assert.equal(await tooWide(page), 0);
    assert.deepEqual(await axe(page), []);
    assert.deepEqual(faults, []);
  }
});

async function toJobFacts(page) {
  await tap(page, 'section-job');
  await page.waitForSelector('[data-screen="job"]');
}
