// What is beyond is not to be looked for: on its sheet, before the first start, on the driver's card,
// beside the signatures, on paper.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { words } from '../../web/words/start.js';
import { served, tap } from './harness.mjs';
import { openSection, saved, type } from './plan-page.mjs';

const server = served();

test('what is beyond stands before the first step, first on its sheet, on card, record and paper', async (t) => {
  const { page, faults } = await openSection(t, server, 'place');
  await type(page, { outlet_end_mm: '150', top_mm: '90', left_mm: '20' });
  assert.equal(await page.locator('.answers .check').first().getAttribute('data-result'), 'left_mm');
  await saved(page);
  await page.goBack();
  await tap(page, 'section-start_up');
  assert.equal(await page.textContent('.screen > .body > .trouble'), words.beyondFirst(1));
  await tap(page, 'to-start_card');
  assert.match(await page.textContent('.driver-card .unfinished'), /NOT FINISHED.*: 1\./);
  await page.goBack();
  await page.goBack();
  await tap(page, 'record');
  assert.match(await page.textContent('.beyond-list'), /Left/);
  await page.waitForSelector('.record-paper', { state: 'attached' });
  assert.match(await page.textContent('.record-paper'), /Beyond the limit.*Left.*Measured/);
  // Signed on the screen, printed by the browser's own menu.
  await page.fill('[data-name="customer_name"]', 'Ada Lorne');
  await page.locator('[data-name="customer_name"]').blur();
  await page.waitForFunction(() =>
    document.querySelector('.record-paper .signatures')?.textContent?.includes('Ada Lorne'),
  );
  assert.deepEqual(faults, []);
});
