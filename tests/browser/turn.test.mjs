// This phone: not yet checked, turned on a table, checked for an hour on that side and in that case;
// turned end for end on a part; calibrated in any pose.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { text } from '../../web/text.js';
import { words as phoneWords } from '../../web/words/phone.js';
import { words as turnWords } from '../../web/words/turn.js';
import { words as poseWords } from '../../web/words/poses.js';
import {
  anglesOfUp,
  endForEnd,
  later,
  launch,
  served,
  synthetic,
  tap,
  toLive,
  upFor,
  waitReason,
} from './harness.mjs';
import { keep, numberIn, onBack, rig, toParts } from './rig.mjs';

const G = 9.80665;
const ZERO_DEG = 0.7;
/** A table that is not level. */
const TABLE = onBack(0.8, -0.5);
const HEATER = onBack(-12);

const server = served();

const outlet = async (page) => {
  await waitReason(page, '');
  const slot = '[data-check="heater_outlet"]';
  return {
    value: numberIn(await page.textContent(`${slot} .value`)),
    u: numberIn(await page.textContent(`${slot} .u`)),
    zero: await page.getAttribute('.phone-state', 'data-zero'),
    source: await page.textContent('.live .source'),
  };
};
const toHeater = (page) => toLive(page, 'heater', ['head', 'head']);
const found = async (page) =>
  (await page.$$eval('.turn [role="status"] .number', (all) => all.map((p) => p.textContent))).map(
    (words) => {
      const [value, u] = words.match(/[\d.]+/g).map(Number);
      return { value: words.includes(turnWords.low) ? -value : value, u, words };
    },
  );

/** Two placements on the table; ends on the result. */
async function turnOnTable(r) {
  await r.lay(TABLE);
  await keep(r.page);
  assert.match(await r.page.textContent('.turn .lead'), /^2 of 2/);
  await r.turnEnd('back');
  await keep(r.page);
  await r.page.waitForSelector('.turn [data-action="done"]:visible');
}

test('a minute on a table makes ± smaller, for an hour, on that side and in that case', async () => {
  const r = await rig(server, { zeroDeg: ZERO_DEG });
  const { page } = r;
  await r.lay(HEATER);
  await toHeater(page);
  const first = await outlet(page);
  assert.equal(first.zero, 'assumed');
  assert.ok(first.source.includes(text.live.unchecked), first.source);
  await tap(page, 'check-phone');
  await turnOnTable(r);
  const [along, across] = await found(page);
  assert.ok(Math.abs(along.value - ZERO_DEG) <= along.u && along.u <= 0.3, along.words);
  assert.ok(Math.abs(across.value) <= across.u, across.words);
  await tap(page, 'done');
  await r.lay(HEATER);
  const second = await outlet(page);
  assert.equal(second.zero, 'found');
  assert.match(second.source, /Phone checked \d\d:\d\d/);
  assert.ok(second.u < first.u - 0.2, `${second.u} after ${first.u}`);
  assert.ok(Math.abs(first.value - (-12 + ZERO_DEG)) < 0.2 && Math.abs(second.value + 12) < 0.3);
  await tap(page, 'capture');
  await page.waitForSelector('.saved:not([data-saved="no"])');
  assert.match(await page.textContent('.captured'), /Phone checked \d\d:\d\d/);
  await tap(page, 'where');
  assert.match(await page.textContent('.details'), /Phone checked \d\d:\d\d/);

  const side = (hold) => page.textContent(`[data-side="${hold}"]`);
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await tap(page, 'allow');
  await tap(page, 'phone');
  assert.match(await side('back'), /^checked \d\d:\d\d, counts until/);
  assert.equal(await side('long_edge'), phoneWords.unchecked);
  await page.check('input[value="bare"]');
  assert.equal(await side('back'), phoneWords.unchecked);
  await toParts(page);
  await toHeater(page);
  assert.equal((await outlet(page)).zero, 'assumed');
  await toParts(page);
  await tap(page, 'phone');
  await page.check('input[value="case"]');
  await toParts(page);
  await toHeater(page);
  assert.equal((await outlet(page)).zero, 'found', 'kept over the reload');
  await later(page, 3_500_000);
  await page.waitForTimeout(300);
  assert.equal((await outlet(page)).zero, 'found', 'within the hour');
  await later(page, 200_000);
  await page.waitForSelector('.phone-state[data-zero="assumed"]');
  await toParts(page);
  await tap(page, 'phone');
  assert.match(await side('back'), /counts no more/);
  await r.end();
});

test('what is no turn is refused by name', async () => {
  const r = await rig(server, { zeroDeg: ZERO_DEG });
  const { page } = r;
  await tap(page, 'allow');
  await tap(page, 'phone');
  await tap(page, 'turn');
  const says = (words) =>
    page.waitForFunction((w) => document.querySelector('.turn .trouble')?.textContent === w, words);
  await r.lay(TABLE);
  await keep(page);
  await keep(page);
  await says(turnWords.errors.not_turned);
  await r.turnUnseen('back');
  await keep(page);
  await says(turnWords.errors.not_turned);
  // Turned, and tipped by as much as no zero explains.
  await r.tip(onBack(16));
  await keep(page);
  await says(turnWords.errors.zero_too_large);
  assert.match(await page.textContent('.turn .lead'), /^1 of 2/);
  // Turned, as the browser says, but sloping the same way in the phone: not the phone's zero.
  await r.lay(onBack(8));
  await keep(page);
  await r.tip(onBack(8));
  await keep(page);
  await says(turnWords.errors.zero_too_large);
  await r.end();
});

test('four placements by quarters find the same zero, at least as well', async () => {
  const r = await rig(server, { zeroDeg: ZERO_DEG });
  const { page } = r;
  await tap(page, 'allow');
  await tap(page, 'phone');
  await tap(page, 'turn');
  await turnOnTable(r);
  const [two] = await found(page);
  await tap(page, 'again');
  await tap(page, 'four');
  for (let i = 0; i < 4; i += 1) {
    await keep(page);
    if (i < 3) await r.turnQuarter();
  }
  await page.waitForSelector('.turn [data-action="done"]:visible');
  const [four] = await found(page);
  assert.ok(Math.abs(four.value - ZERO_DEG) <= four.u && four.u <= two.u, `${four.words}, ${two.words}`);
  await r.end();
});

test('turned end for end on the part, the reading is of both placements', async () => {
  const r = await rig(server, { zeroDeg: ZERO_DEG });
  const { page } = r;
  await r.lay(upFor('long_edge', 22));
  await toLive(page, 'pump', ['tail'], { hold: 'long_edge', surface: 'round_body' });
  const value = async () => numberIn(await page.textContent('.slot .value'));
  const u = async () => numberIn(await page.textContent('.slot .u'));
  await waitReason(page, '');
  const [one, uOne] = [await value(), await u()];
  await tap(page, 'turn-part');
  await waitReason(page, 'not_turned');
  assert.equal(await page.textContent('.slot .value'), '');
  assert.ok(await page.isVisible('.turning svg'));
  assert.ok(await page.isDisabled('[data-action="capture"]'));
  await tap(page, 'cancel-turn');
  await waitReason(page, '');
  assert.equal(await page.getAttribute('.phone-state', 'data-zero'), 'assumed');
  await tap(page, 'turn-part');
  await waitReason(page, 'not_turned');
  await r.turnEnd('long_edge');
  await waitReason(page, '');
  assert.equal(await page.getAttribute('.phone-state', 'data-zero'), 'turn');
  assert.ok(Math.abs(one - 22 - ZERO_DEG) < 0.3 && Math.abs((await value()) - 22) < 0.3);
  assert.ok((await u()) < uOne, `${await u()} after ${uOne}`);
  await tap(page, 'capture');
  await page.waitForSelector('.saved:not([data-saved="no"])');
  assert.ok((await page.textContent('.captured')).includes(text.live.turned));
  await tap(page, 'again');
  await tap(page, 'end-tail');
  await waitReason(page, '');
  assert.equal(
    await page.getAttribute('.phone-state', 'data-zero'),
    'assumed',
    'the next one is plain again',
  );
  await r.end();
});

test('a browser that knows no heading asks for the tap', async () => {
  const { page, close } = await launch();
  const lie = (up) => synthetic(page, { a: up.map((v) => G * v), angles: anglesOfUp(up), alpha: null });
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  const up = upFor('long_edge', 22);
  await lie(up);
  await toLive(page, 'pump', ['tail'], { hold: 'long_edge', surface: 'round_body' });
  await waitReason(page, '');
  assert.ok(!(await page.isVisible('[data-action="turned"]')));
  await tap(page, 'turn-part');
  await waitReason(page, 'not_turned');
  await lie(endForEnd('long_edge', up));
  await page.waitForTimeout(1800);
  await waitReason(page, 'not_turned');
  await tap(page, 'turned');
  await waitReason(page, '');
  assert.equal(await page.getAttribute('.phone-state', 'data-zero'), 'turn');
  await close();
});

test('any nine poses that look all ways calibrate both channels; fewer or one-sided ones do not', async () => {
  const r = await rig(server, { zeroDeg: ZERO_DEG });
  const { page } = r;
  await tap(page, 'allow');
  await tap(page, 'phone');
  await tap(page, 'poses');
  const state = (words) =>
    page.waitForFunction((w) => document.querySelector('.poses .does').textContent === w, words);
  const poses = [
    ...[-50, -25, 0, 25, 50].map((deg) => onBack(deg)),
    ...[-50, -25, 25, 50].map((deg) => onBack(0, deg)),
    ...[1, 0].flatMap((axis) => [-1, 1].map((side) => [0, 1, 2].map((i) => (i === axis ? side : 0)))),
    [0, 0, -1],
  ];
  for (const [i, up] of poses.entries()) {
    await r.lay(up);
    // Three seconds of rest, so that the fused orientation has its say.
    await page.waitForTimeout(3200);
    await keep(page, 'keep-pose', 'poses');
    await page.waitForFunction(
      (w) => document.querySelector('.poses .lead').textContent === w,
      poseWords.count(i + 1),
    );
    if (i === 0) await state(poseWords.refusals.too_few_poses);
    if (i === 8) await state(poseWords.refusals.one_sided);
  }
  await keep(page, 'keep-pose', 'poses');
  await page.waitForFunction(
    (w) => document.querySelector('.poses .trouble').textContent === w,
    poseWords.refusals.pose_taken,
  );
  await state(poseWords.both);
  await page.goBack();
  await page.waitForSelector('[data-screen="phone"]');
  for (const hold of ['back', 'long_edge', 'short_edge'])
    assert.match(await page.textContent(`[data-side="${hold}"]`), /^checked/);
  await r.end();
});

test('the try-out’s phone is 0.7° too high lengthwise, and its turn shows so', async () => {
  const { page, faults } = await launch();
  await page.goto(server.url);
  await tap(page, 'tryout');
  await tap(page, 'phone');
  await tap(page, 'try-table');
  await tap(page, 'turn');
  await page.waitForTimeout(1500);
  await keep(page);
  await tap(page, 'try-end');
  await page.waitForTimeout(1500);
  await keep(page);
  await page.waitForSelector('.turn [data-action="done"]:visible');
  const [along] = await found(page);
  assert.ok(Math.abs(along.value - ZERO_DEG) <= along.u, along.words);
  await tap(page, 'done');
  assert.match(await page.textContent('[data-side="back"]'), /^checked/);
  assert.deepEqual(faults, []);
});
