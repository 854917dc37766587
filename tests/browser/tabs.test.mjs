// One job in two tabs: one of them writes to it, the other says so and can take it over; nothing
// that was typed in one is written over by the other.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { text } from '../../web/text.js';
import { axe, launch, served, tap } from './harness.mjs';
import { stored } from './kill.mjs';
import { saved, tooWide, toSection, type } from './plan-page.mjs';

const server = served();

const told = (page) => page.waitForSelector(`.notice .trouble:text-is("${text.storeErrors.elsewhere}")`);
const quiet = (page) => page.waitForSelector('.notice', { state: 'hidden' });
const inert = (page) => page.evaluate(() => document.getElementById('page').inert);

/** The first tab in a section with something typed, the second one just opened. */
async function two(t, patch) {
  const b = await launch();
  t.after(() => b.close());
  const first = b.page;
  await first.goto(server.url);
  await first.waitForSelector('[data-screen="start"]');
  await toSection(first, 'place');
  await type(first, { top_mm: '61' });
  await saved(first);
  const second = await b.context.newPage();
  for (const page of [first, second]) page.setDefaultTimeout(30_000);
  if (patch) await second.addInitScript(patch);
  await second.goto(server.url);
  await told(second);
  return { ...b, first, second };
}

test('the second tab rests, takes over what is half typed, and gives it back when it is closed', async (t) => {
  const { first, second, faults } = await two(t);
  assert.equal(await inert(second), true);
  assert.equal(await inert(first), false);
  assert.equal(await tooWide(second), 0);
  assert.deepEqual(await axe(second), []);
  // The last letter has not waited out its pause.
  await first.locator('input[data-name="left_mm"]').pressSequentially('80');
  await tap(second, 'useHere');
  await quiet(second);
  await told(first);
  assert.equal(await inert(first), true);
  await toSection(second, 'place');
  assert.equal(await second.inputValue('input[data-name="top_mm"]'), '61');
  assert.equal(await second.inputValue('input[data-name="left_mm"]'), '80');
  await type(second, { right_mm: '90' });
  await saved(second);
  await second.close();
  await quiet(first);
  assert.equal(await first.inputValue('input[data-name="right_mm"]'), '90', 'read anew');
  await type(first, { top_mm: '62' });
  await saved(first);
  const [entry] = await stored(first, 'plumbmark', 'entries');
  assert.deepEqual(entry.typed, { top_mm: '62', left_mm: '80', right_mm: '90' });
  assert.deepEqual(faults, []);
});

test('a tab that sleeps loses the job and can write nothing into it', async (t) => {
  const { first, second } = await two(t, () => {
    // Nobody hears that the job is wanted.
    BroadcastChannel.prototype.postMessage = () => {};
  });
  await tap(second, 'useHere');
  await quiet(second);
  await told(first);
  await toSection(second, 'place');
  await type(second, { top_mm: '70' });
  await saved(second);
  // A timer that still ran in the first.
  await first.evaluate(() => {
    document.getElementById('page').inert = false;
  });
  await first.locator('input[data-name="top_mm"]').fill('99');
  await first.waitForSelector(`.saved:text-is("${text.storeErrors.elsewhere}")`);
  const [entry] = await stored(second, 'plumbmark', 'entries');
  assert.equal(entry.typed.top_mm, '70');
});

test('two tabs, two jobs: each writes to its own', async (t) => {
  const { first, second } = await two(t);
  await tap(second, 'useHere');
  await quiet(second);
  await tap(second, 'jobs');
  await tap(second, 'new-job');
  await second.waitForSelector('[data-screen="job_card"]');
  await quiet(first);
  await type(second, { vehicle: 'Carrier 12' });
  await tap(second, 'open-job');
  await tap(second, 'section-place');
  await type(second, { top_mm: '88' });
  await saved(second);
  await type(first, { top_mm: '63' });
  await saved(first);
  const entries = await stored(first, 'plumbmark', 'entries');
  assert.deepEqual(
    entries.map((e) => [e.job_id, e.typed.top_mm]),
    [
      [1, '63'],
      [2, '88'],
    ],
  );
});
