// Legs of a pipe from captures: in the vehicle where its level was read, with the zero they share.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { served, tap, toLive, waitReason } from './harness.mjs';
import { type } from './plan-page.mjs';
import { keep, onBack, PARKED, rig, toParts, upOnPart } from './rig.mjs';

const server = served();

const main = (i) => `.sheet-rows [data-row="${i}"]`;

/** Opens a leg's fields. */
const openLeg = (page, i) =>
  page.evaluate((leg) => {
    for (const d of document.querySelectorAll(`${leg} details`)) d.open = true;
  }, main(i));

/** Captures a pipe leg that falls by so much, from the list of parts; back on it. */
async function captureLeg(r, up) {
  await r.lay(up);
  await toLive(r.page, 'pipe', ['head']);
  await waitReason(r.page, '');
  await tap(r.page, 'capture');
  await r.page.waitForSelector('.saved:not([data-saved="no"])');
  await toParts(r.page);
}

test('captures become legs that share the phone’s zero; in the vehicle where its level was read', async () => {
  const r = await rig(server);
  const { page } = r;
  await tap(page, 'allow');
  await page.waitForSelector('[data-screen="parts"]');
  await captureLeg(r, onBack(-6));
  await tap(page, 'level');
  await r.lay(onBack(PARKED.along, PARKED.across));
  await keep(page, 'keep-level', 'level');
  await page.waitForSelector('.level [data-action="done"]:visible');
  await tap(page, 'done');
  await captureLeg(r, upOnPart(-8, 0));
  await tap(page, 'section-flue');
  await page.waitForSelector('[data-screen="flue"]');
  await tap(page, 'sheet-exhaust');
  await page.waitForSelector('[data-screen="flue_exhaust"]');
  await type(page, { boat: '0' });
  await tap(page, 'take-all');
  for (const i of [0, 1]) {
    await openLeg(page, i);
    await type(page, { length_m: '0.5', bend_deg: '0' }, main(i));
  }
  const angle = async (i) => Number(await page.inputValue(`${main(i)} [data-name="elevation_deg"]`));
  assert.ok(Math.abs((await angle(0)) + 6) < 0.4);
  assert.ok(Math.abs((await angle(1)) + 8) < 0.4);
  const source = (i) => page.locator(`${main(i)} .leg > .source`).textContent();
  assert.match(await source(0), /Captured \d\d:\d\d, as parked, ± [\d.]+°/);
  assert.match(await source(1), /Captured \d\d:\d\d, in the vehicle, ± [\d.]+°/);
  // Rake alone is 1°: the second knows less than the first; together the shared parts add up.
  const u = await page.$$eval('.working [data-name="height_mm"] td', (all) =>
    all.map((e) => Number(e.textContent.match(/± ([\d.]+)/)[1])),
  );
  const told = await page.$$eval('.working [data-name="standing_mm"] td', (all) =>
    all.map((e) => Number(e.textContent.match(/± ([\d.]+)/)[1])),
  );
  assert.ok(u[1] > Math.hypot(...told) * 1.02, `${u[1]}: ${told}`);
  assert.ok(u[1] <= told[0] + told[1] + 0.2, `${u[1]}: ${told}`);
  // Both are used; an angle that is typed over is no capture any more, and that one is free again.
  assert.equal(await page.locator('[data-action="take-all"]').count(), 0);
  await type(page, { elevation_deg: '-7' }, main(0));
  assert.equal(await source(0), '');
  assert.match(await page.textContent('[data-action="take-all"]'), /Take the leg that the phone read/);
  await openLeg(page, 0);
  await page.evaluate((leg) => {
    const d = document.querySelectorAll(`${leg} .leg details`)[0];
    d.open = false;
  }, main(0));
  await page.click(`${main(0)} .leg details summary`);
  await page.click(`${main(0)} [data-action="take-capture"]`);
  assert.ok(Math.abs((await angle(0)) + 6) < 0.4);
  // The way to read one now.
  await tap(page, 'add-exhaust');
  await page.click(`${main(2)} [data-action="read-leg"]`);
  await page.waitForSelector('[data-screen="hold"]');
  assert.match(await page.textContent('.caution'), /Never on a pipe that has been hot/);
  await r.end();
});
