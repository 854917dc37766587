// The vehicle's level: answers in the vehicle for a yard of known slope, how long they count, what a
// moved vehicle does to them, what is told of it, and limits that hold on the slopes it works on.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { text } from '../../web/text.js';
import { words as limitWords } from '../../web/words/limit-lines.js';
import { words as vehicleWords } from '../../web/words/vehicle.js';
import { later, served, tap, toLive, waitReason } from './harness.mjs';
import { keep, numberIn, onBack, PARKED, rig, toParts, upOnPart } from './rig.mjs';

const t = text.level;
const HEADINGS = { same: 0, left: 90, opposite: 180, right: -90 };

const server = served();

/** From the list of parts: reads the level; back on the list. */
async function readLevel(r, { along, across } = PARKED) {
  await tap(r.page, 'level');
  await r.lay(onBack(along, across));
  await keep(r.page, 'keep-level', 'level');
  await r.page.waitForSelector('.level [data-action="done"]:visible');
}

async function open(options) {
  const r = await rig(server, options);
  await tap(r.page, 'allow');
  await r.page.waitForSelector('[data-screen="parts"]');
  return r;
}

const outlet = '[data-check="heater_outlet"]';
async function inVehicle(page, check = outlet) {
  await waitReason(page, '');
  const at = `${check} .in-vehicle`;
  return {
    value: numberIn(await page.textContent(`${at} .value`)),
    u: numberIn(await page.textContent(`${at} .u`)),
    verdict: await page.getAttribute(`${at} .verdict`, 'data-verdict'),
    why: await page.textContent(`${at} .why`),
  };
}
const capture = async (page) => {
  await tap(page, 'capture');
  await page.waitForSelector('.saved:not([data-saved="no"])');
};

for (const pointing of ['same', 'left', 'opposite', 'right'])
  test(`on a slope of 4° and 2° the vehicle's answer is the part's own: ${pointing}`, async () => {
    const r = await open();
    const { page } = r;
    await readLevel(r);
    for (const [i, slope] of [PARKED.along, PARKED.across].entries())
      assert.ok(
        Math.abs(numberIn((await page.locator('.slopes .value').allTextContents())[i]) - slope) < 0.3,
      );
    await tap(page, 'done');
    assert.match(await page.textContent('[data-action="level"]'), /read \d\d:\d\d, counts until/);
    await r.lay(upOnPart(-6, HEADINGS[pointing]));
    await tap(page, 'part-heater');
    await page.check(`input[name="pointing"][value="${pointing}"]`);
    await toLive(page, 'heater', ['head', 'head']);
    const found = await inVehicle(page);
    const parked = numberIn(await page.textContent(`${outlet} .value`));
    const slope = { same: 4, left: -2, opposite: -4, right: 2 }[pointing];
    assert.ok(Math.abs(parked - (-6 + slope)) < 0.35, `as parked ${parked}`);
    assert.ok(Math.abs(found.value + 6) < 0.35, `in the vehicle ${found.value}`);
    // A rake of 1° alone is 2° at 95 %.
    assert.ok(found.u >= 1.9, `± ${found.u}`);
    await capture(page);
    assert.match(await page.textContent(`.captured ${outlet} .in-vehicle`), /in the vehicle.*±.*within/);
    await tap(page, 'where');
    const details = await page.textContent('.details');
    assert.ok(details.includes(t.pointings[pointing]) && details.includes(text.sources.rake), details);
    await r.end();
  });

test('no level: nothing is asked and nothing is shown of a vehicle', async () => {
  const r = await open();
  await r.lay(onBack(-6));
  await tap(r.page, 'part-heater');
  assert.equal(await r.page.locator('input[name="pointing"]').count(), 0);
  await toLive(r.page, 'heater', ['head', 'head']);
  await waitReason(r.page, '');
  assert.equal(await r.page.locator('.in-vehicle').count(), 0);
  await r.end();
});

test('after an hour the level counts no more, and so it does over a reload', async () => {
  const r = await open();
  const { page } = r;
  await readLevel(r);
  await tap(page, 'done');
  await r.lay(upOnPart(-6, 0));
  await toLive(page, 'heater', ['head', 'head']);
  assert.equal((await inVehicle(page)).why, '');
  await later(page, 3_700_000);
  await page.waitForFunction(
    (w) => document.querySelector('.in-vehicle .why').textContent === w,
    text.levelRefusals.stale,
  );
  assert.ok(Number.isNaN((await inVehicle(page)).value));
  await toParts(page);
  assert.match(await page.textContent('[data-action="level"]'), /over an hour ago/);
  await tap(page, 'part-heater');
  assert.equal(await page.locator('input[name="pointing"]').count(), 0);
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await tap(page, 'allow');
  assert.ok((await page.textContent('[data-action="level"]')).includes(t.unread));
  await r.end();
});

test('a vehicle that moved: said at once, and marked at what was captured before', async () => {
  const r = await open();
  const { page } = r;
  await readLevel(r);
  await tap(page, 'done');
  await r.lay(upOnPart(-6, 0));
  await toLive(page, 'heater', ['head', 'head']);
  await waitReason(page, '');
  await capture(page);
  await toParts(page);
  const verdict = () => page.getAttribute('[data-part="heater"] .verdict', 'data-verdict');
  const standing = await verdict();
  await readLevel(r);
  assert.ok((await page.textContent('.level [role="status"]')).startsWith(t.asBefore));
  await tap(page, 'done');
  await tap(page, 'captures');
  assert.equal(await page.locator('.moved').count(), 0);
  await toParts(page);
  await r.lay(upOnPart(25, 0));
  await toLive(page, 'pump', ['tail'], { hold: 'back', surface: 'round_body' });
  await waitReason(page, '');
  await capture(page);
  await toParts(page);
  await readLevel(r, { along: 9, across: -2 });
  assert.match(
    await page.textContent('.level .trouble'),
    /has moved since \d\d:\d\d.*Read those parts again/,
  );
  await tap(page, 'done');
  assert.equal(await verdict(), standing, 'captured before the second level, which said "as before"');
  assert.equal(await page.getAttribute('[data-part="pump"] .verdict', 'data-verdict'), 'none');
  assert.ok((await page.textContent('[data-part="pump"]')).includes(text.parts.lost));
  // Paper says no more than the page.
  await tap(page, 'record');
  const printed = await page.textContent('[data-check="pump_outlet.in_vehicle"]');
  assert.match(printed, /moved afterwards.*no verdict/);
  assert.doesNotMatch(printed, /within/);
  await toParts(page);
  await tap(page, 'captures');
  assert.equal(await page.locator('.moved').count(), 1);
  assert.ok(await page.isVisible('[data-capture]:has-text("Metering pump") .moved'));
  await page.click('[data-capture]:has(.moved) button');
  assert.equal(await page.textContent('.details > .body > .trouble'), t.movedSince);
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await tap(page, 'captures');
  assert.equal(await page.locator('.moved').count(), 1, 'kept over a reload');
  await r.end();
});

test('too steep for a rail, too near plumb for a heading: by name', async () => {
  const r = await open();
  const { page } = r;
  await tap(page, 'level');
  await r.lay(onBack(45));
  await keep(page, 'keep-level', 'level');
  assert.equal(await page.textContent('.level .trouble'), text.levelRefusals.too_steep);
  assert.equal((await page.locator('.slopes .value').allTextContents()).join(), '–,–');
  await page.goBack();
  await readLevel(r);
  // Another face is no moved vehicle.
  await tap(page, 'again');
  await page.check('input[value="sheet"]');
  await r.lay(onBack(0, 3));
  await keep(page, 'keep-level', 'level');
  await page.waitForSelector('.level [data-action="done"]:visible');
  assert.ok(!(await page.isVisible('.level .trouble')));
  await tap(page, 'done');
  await r.lay(onBack(80));
  await toLive(page, 'pump', ['tail'], { hold: 'back', surface: 'round_body' });
  const { why, value } = await inVehicle(page, '[data-check="pump_outlet"]');
  assert.equal(why, text.levelRefusals.no_heading);
  assert.ok(Number.isNaN(value));
  await r.end();
});

test('a wrong term is named at its field; a lean is read where the ground is level', async () => {
  const r = await open();
  const { page } = r;
  await tap(page, 'level');
  await r.lay(onBack(1.5, -1));
  await tap(page, 'vehicle');
  const said = (words) =>
    page.waitForFunction((w) => document.querySelector('.vehicle .summary').textContent === w, words);
  for (const [field, typed] of [
    ['heading_deg', '0,5'],
    ['lean_lengthwise_deg', '16'],
    ['lean_crosswise_deg', '-15,1'],
    ['rake_deg', '0'],
    ['working_lengthwise_deg', '-1'],
    ['working_crosswise_deg', '46'],
  ]) {
    const before = await page.inputValue(`#f-${field}`);
    await page.fill(`#f-${field}`, typed);
    await tap(page, 'save-vehicle');
    await said(vehicleWords.wrongField);
    assert.equal(await page.textContent(`#f-${field}-m`), vehicleWords.wrong[field]);
    assert.equal(await page.evaluate(() => document.activeElement.id), `f-${field}`);
    assert.equal(await page.locator('.vehicle p.trouble:visible').count(), 1);
    await page.fill(`#f-${field}`, before);
  }
  await page.fill('#f-working_crosswise_deg', 'steep');
  await tap(page, 'save-vehicle');
  assert.equal(await page.textContent('#f-working_crosswise_deg-m'), vehicleWords.notANumber);
  await page.fill('#f-working_crosswise_deg', '6,5');
  await keep(page, 'read-here', 'vehicle');
  const lean = Number(await page.inputValue('#f-lean_lengthwise_deg'));
  const rake = Number(await page.inputValue('#f-rake_deg'));
  assert.ok(Math.abs(lean - 1.5) < 0.3, `lean ${lean}`);
  assert.ok(rake >= 0.1 && rake < 1, `rake ${rake}`);
  await tap(page, 'save-vehicle');
  await said(vehicleWords.saved);
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await tap(page, 'allow');
  // Level ground again: the lean that was read is no slope of the yard.
  await readLevel(r, { along: 1.5, across: -1 });
  await tap(page, 'vehicle');
  assert.equal(await page.inputValue('#f-working_crosswise_deg'), '6.5');
  await toParts(page);
  await r.lay(onBack(-6));
  await toLive(page, 'heater', ['head', 'head']);
  const found = await inVehicle(page);
  assert.ok(Math.abs(found.value + 6) < 0.35, `${found.value}`);
  assert.equal(found.why, t.takes('6.5°'));
  await r.end();
});

test('a limit that holds on the slopes of work: the vehicle answers with them, and as large', async () => {
  const r = await open();
  const { page } = r;
  const field = '#f-heater_outlet-holds_in_operation';
  await page.goBack();
  await tap(page, 'limits');
  assert.equal(await page.isChecked(field), false);
  await page.check(field);
  await tap(page, 'save-limits');
  await page.waitForFunction(
    (w) => document.querySelector('.limits [role="status"]').textContent === w,
    limitWords.saved,
  );
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await tap(page, 'limits');
  assert.equal(await page.isChecked(field), true);
  await page.goBack();
  await page.waitForSelector('[data-screen="start"]');
  await tap(page, 'allow');
  await tap(page, 'level');
  await tap(page, 'vehicle');
  await page.fill('#f-working_lengthwise_deg', '10');
  await tap(page, 'save-vehicle');
  await page.waitForFunction(
    (w) => document.querySelector('.vehicle .summary').textContent === w,
    vehicleWords.saved,
  );
  await toParts(page);
  await readLevel(r);
  await tap(page, 'done');
  // Outlet 6° down in the vehicle, at most 0°: within at rest, up to 4° beyond on its slopes.
  await r.lay(upOnPart(-6, 0));
  await toLive(page, 'heater', ['head', 'head']);
  const found = await inVehicle(page);
  assert.equal(await page.getAttribute(`${outlet} .says .verdict`, 'data-verdict'), 'within');
  assert.equal(found.verdict, 'beyond');
  // Said once it stands still.
  const said = `${text.checks.heater_outlet}: beyond`;
  await page.waitForFunction(
    (said) => document.querySelector('.live [aria-live]').textContent.includes(said),
    said,
  );
  const sizes = await page.$$eval(`${outlet} .value`, (all) => all.map((e) => getComputedStyle(e).fontSize));
  assert.equal(new Set(sizes).size, 1, `as large: ${sizes}`);
  assert.ok(await page.$('[data-check="heater_port"]:not(.equal)'));
  await capture(page);
  assert.ok(await page.$(`.captured ${outlet}.equal`));
  await toParts(page);
  assert.equal(await page.getAttribute('[data-part="heater"] .verdict', 'data-verdict'), 'beyond');
  await r.end();
});

test('whoever comes by the list, or after a reload, is not left without sensors', async () => {
  const r = await rig(server);
  const { page } = r;
  await tap(page, 'tape');
  await tap(page, 'level');
  await r.lay(onBack(2, 1));
  await keep(page, 'keep-level', 'level');
  assert.ok(Math.abs(numberIn(await page.textContent('.slopes .value')) - 2) < 0.3);
  await r.end();
});

test('where sensors are asked for in a tap, the measuring screen asks', async () => {
  const r = await rig(server);
  const { page } = r;
  await page.evaluate(() => {
    let tapped = false;
    addEventListener('pointerdown', () => {
      tapped = true;
    });
    for (const name of ['DeviceMotionEvent', 'DeviceOrientationEvent'])
      window[name].requestPermission = () =>
        tapped ? Promise.resolve('granted') : Promise.reject(new Error('no tap'));
    window.untap = () => {
      tapped = false;
    };
  });
  await tap(page, 'tape');
  await page.evaluate(() => window.untap());
  await page.$eval('[data-action="level"]', (el) => el.click());
  await page.waitForSelector(`[data-action="sign"]:visible:has-text("${text.start.allow}")`);
  await tap(page, 'sign');
  await r.lay(onBack(2, 1));
  await keep(page, 'keep-level', 'level');
  await r.end();
});
