// Facts that no number settles: each section that has some stays open until every one is ticked,
// however good its numbers are.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { words as ducts } from '../../web/words/ducts.js';
import { words as fuel } from '../../web/words/fuel.js';
import { words as place } from '../../web/words/place.js';
import { words as support } from '../../web/words/support.js';
import { served, tap } from './harness.mjs';
import { openSection, saved, toSection, type } from './plan-page.mjs';

const server = served();

async function see(page, id) {
  await tap(page, `tick-${id}`);
  await page.fill(`#t-${id}-who`, 'A. Fitter');
  await page.fill(`#t-${id}-reason`, 'looked at with a lamp');
  await tap(page, 'tick-reason');
}

/** What the list of parts says of a section, after a reload. */
async function stateOf(page, section) {
  await saved(page);
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await tap(page, 'tape');
  const frame = page.locator(`[data-part="${section}"] .verdict`);
  await page.waitForFunction(
    (name) => document.querySelector(`[data-part="${name}"] .verdict`)?.textContent !== '…',
    section,
  );
  const said = { verdict: await frame.getAttribute('data-verdict'), words: await frame.textContent() };
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  return said;
}

test('an even face is open until plate, seal and light were looked at', async (t) => {
  const { page } = await openSection(t, server, 'support');
  await type(page, { long_mm: '180', short_mm: '120', straightedge_mm: '300', straightness_mm: '0.02' });
  await tap(page, 'six-lines');
  for (const i of [0, 1, 2, 3, 4, 5])
    await type(page, { goes_mm: '0.1', stays_mm: '0.2' }, `main [data-row="${i}"]`);
  const ids = Object.keys(support.tick);
  for (const [i, id] of ids.entries()) {
    const { verdict, words } = await stateOf(page, 'support');
    assert.equal(verdict, 'unchecked', id);
    assert.match(words, new RegExp(`\\b${ids.length - i}\\b`));
    await toSection(page, 'support');
    await see(page, id);
  }
  assert.equal((await stateOf(page, 'support')).verdict, 'within');
});

test('place, ducts and fuel have their facts, none ticked by default', async (t) => {
  const { page } = await openSection(t, server, 'place');
  for (const [section, { tick }] of Object.entries({ place, ducts, fuel })) {
    if (section !== 'place') await toSection(page, section);
    const shown = await page.$$eval('.tick', (all) => all.map((e) => [e.dataset.tick, e.dataset.done]));
    assert.deepEqual(
      shown,
      Object.keys(tick).map((id) => [id, 'no']),
      section,
    );
    await page.goto(server.url);
    await page.waitForSelector('[data-screen="start"]');
  }
});

test('a tick of the ducts is kept, and one less is open', async (t) => {
  const { page } = await openSection(t, server, 'ducts');
  // 20 °C and 1 kW into 200 m³/h: about 15 K (handbook); bends of one straight pipe: none.
  const air = { flow_m3_per_h: '200', power_w: '1000', inlet_celsius: '20', altitude_m: '0' };
  await type(page, air);
  await tap(page, 'add-straight');
  await type(page, { bore_mm: '90', length_m: '1' }, 'main [data-row="0"]');
  const before = await stateOf(page, 'ducts');
  await toSection(page, 'ducts');
  await see(page, 'own_way');
  await stateOf(page, 'ducts');
  await toSection(page, 'ducts');
  assert.equal(await page.getAttribute('[data-tick="own_way"]', 'data-done'), 'yes');
  assert.notEqual(before.verdict, 'within');
});

test('words that were typed and not ticked are there again, and tick nothing by themselves', async (t) => {
  const { page } = await openSection(t, server, 'support');
  await tap(page, 'tick-new_seal');
  await page.fill('#t-new_seal-who', 'A. Fitter');
  await page.fill('#t-new_seal-reason', 'from the kit');
  await tap(page, 'back-below');
  await tap(page, 'section-support');
  assert.equal(await page.inputValue('#t-new_seal-reason'), 'from the kit');
  assert.equal(await page.getAttribute('[data-tick="new_seal"]', 'data-done'), 'no');
  await page.fill('#t-new_seal-who', 'A. Fitter');
  await page.press('#t-new_seal-reason', 'Enter');
  await page.waitForSelector('[data-tick="new_seal"][data-done="yes"]');
});
