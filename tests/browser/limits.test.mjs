// The limit set typed, copied out, brought in; and what a reading then says, in every unit.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { text } from '../../web/text.js';
import { words as limitWords } from '../../web/words/limit-lines.js';
import { GOOD, REFUSED } from './refused-files.mjs';
import { anglesOfUp, launch, served, synthetic, tap, toLive, upFor, waitReason } from './harness.mjs';

const G = 9.80665;
const t = limitWords;
const server = served();

/** A browser on the first screen. */
async function open(test) {
  const b = await launch();
  test.after(() => b.close());
  b.page.setDefaultTimeout(8000);
  await start(b.page);
  return b;
}

async function start(page) {
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
}

async function openLimits(page) {
  await tap(page, 'limits');
  await page.waitForSelector('[data-screen="limits"]');
}

/** A pump on the live screen. */
async function pump(page, deg = 22) {
  const up = upFor('long_edge', deg);
  await synthetic(page, { a: up.map((v) => G * v), angles: anglesOfUp(up) });
  await toLive(page, 'pump', ['tail'], { hold: 'long_edge', surface: 'round_body' });
  await waitReason(page, '');
}

const at = (field) => `#f-${field.replaceAll('.', '-')}`;
const fits = (said, words) => (words instanceof RegExp ? words.test(said) : said === words);

/** Types as a person does. */
async function type(page, field, words) {
  const input = page.locator(at(field));
  await input.fill('');
  await input.pressSequentially(words);
}

const STATUS = '.limits [role="status"]';
const said = (page, words) =>
  page.waitForFunction(([s, w]) => document.querySelector(s).textContent === w, [STATUS, words]);

/** What the status line says to what was done with typed fields. */
const answer = (page) => page.locator(STATUS).filter({ hasNotText: t.unsaved }).textContent();

async function save(page) {
  await tap(page, 'save-limits');
  await said(page, t.saved);
}

/** Everything in the form, by field. */
const form = (page) =>
  page.$$eval('.limits [data-field]', (all) =>
    Object.fromEntries(all.map((e) => [e.dataset.field, e.type === 'checkbox' ? e.checked : e.value])),
  );

/** Goes through all rows, then tells every one that went wrong. */
async function each(rows, run) {
  const wrong = [];
  for (const row of rows) await run(row).catch((error) => wrong.push(`${row[0]}: ${error.message}`));
  assert.equal(wrong.length, 0, `${wrong.length} of ${rows.length}:\n${wrong.join('\n')}`);
}

/** What the database holds, or null. */
const kept = (page) =>
  page.evaluate(
    () =>
      new Promise((done) => {
        const open = indexedDB.open('plumbmark');
        open.onsuccess = () => {
          const get = open.result.transaction('jobs').objectStore('jobs').get(1);
          get.onsuccess = () => done(get.result.limits);
        };
      }),
  );
const lineOf = (set, check) => set.lines.find((l) => l.check === check);

async function copyOut(page) {
  const [download] = await Promise.all([page.waitForEvent('download'), tap(page, 'copy-out')]);
  assert.equal(download.suggestedFilename(), 'plumbmark-limits.json');
  return readFileSync(await download.path(), 'utf8');
}

const bringIn = (page, content) =>
  page.setInputFiles('.limits input[type="file"]', {
    name: 'set.json',
    mimeType: 'application/json',
    buffer: Buffer.from(content),
  });

test('a limit from the manual is kept, and named at the reading', async (test) => {
  const b = await open(test);
  const { page } = b;
  await openLimits(page);
  await type(page, 'pump_outlet.low_deg', '20');
  await said(page, t.unsaved);
  await page.selectOption(at('pump_outlet.basis'), 'manual');
  await type(page, 'pump_outlet.source', 'Fitting sheet, page 12');
  await save(page);
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  await openLimits(page);
  const fields = await form(page);
  assert.equal(fields['pump_outlet.low_deg'], '20');
  assert.equal(fields['pump_outlet.basis'], 'manual');
  assert.equal(fields['pump_outlet.source'], 'Fitting sheet, page 12');
  await page.goBack();
  await pump(page);
  assert.equal(await page.getAttribute('.slot .verdict', 'data-basis'), 'manual');
  assert.equal(await page.getAttribute('.slot .verdict', 'data-verdict'), 'within');
  assert.equal(await page.textContent('.slot .note'), '');
  const source = await page.textContent('.live .source');
  assert.ok(source.startsWith(text.basisLine.manual('Fitting sheet, page 12')), source);
  assert.doesNotMatch(await page.textContent('.live'), /common practice|trade usage/);
  await tap(page, 'capture');
  await page.waitForSelector('.saved:not([data-saved="no"])');
  assert.doesNotMatch(await page.textContent('.captured'), /common practice|trade usage/);
  assert.deepEqual(b.faults, []);
});

test('a comma is a decimal sign', async (test) => {
  const { page } = await open(test);
  await openLimits(page);
  await type(page, 'pump_outlet.low_deg', '17,5');
  await save(page);
  assert.equal(lineOf(await kept(page), 'pump_outlet').low_deg, 17.5);
});

/** What is typed, and the field at which the message must stand. */
const WRONG = [
  ['letters', { 'pump_outlet.low_deg': 'abc' }, 'pump_outlet.low_deg', t.notANumber],
  ['thousands', { 'pipe_fall.length_mm': '1.000,5' }, 'pipe_fall.length_mm', t.notANumber],
  ['an exponent', { 'pump_outlet.low_deg': '1e1' }, 'pump_outlet.low_deg', t.notANumber],
  ['steeper than plumb', { 'pump_outlet.low_deg': '95' }, 'pump_outlet.low_deg', /-90 to 90/],
  [
    'low over high',
    { 'pump_roll.low_deg': '30', 'pump_roll.high_deg': '20' },
    'pump_roll.high_deg',
    /more than/,
  ],
  ['no page', { 'pump_outlet.basis': 'manual', 'pump_outlet.source': '' }, 'pump_outlet.source', /page/],
  ['blanks', { 'pump_outlet.basis': 'law', 'pump_outlet.source': '   ' }, 'pump_outlet.source', /clause/],
  [
    'a law for nobody',
    { 'pump_outlet.basis': 'law', 'pump_outlet.source': 'clause 3' },
    'pump_outlet.vehicles',
    /vehicles/,
  ],
  ['looser than usage', { 'pump_outlet.low_deg': '11' }, 'pump_outlet.reason', /why/],
  ['half a roll', { 'pump_roll.low_deg': '' }, 'pump_roll.high_deg', /both ends/],
  ['preferred outside', { 'pump_outlet.preferred_low_deg': '10' }, 'pump_outlet.preferred_low_deg', /inside/],
  ['allowance of no manual', { 'heater_port.allowance_deg': '2' }, 'heater_port.allowance_deg', /manual/],
  ['a length of nothing', { 'pump_outlet.length_mm': '0' }, 'pump_outlet.length_mm', /10 to 5000/],
  ['a name too long in bytes', { name: 'ä'.repeat(40) }, 'name', /64/],
  ['a surface left empty', { 'round_body.hold_deg': '' }, 'round_body.hold_deg', t.notANumber],
  ['a surface out of range', { 'round_body.hold_deg': '7' }, 'round_body.hold_deg', /0\.02 to 5/],
];
test('wrong fields are told where they stand, and nothing typed is lost', async (test) => {
  const { page } = await open(test);
  await openLimits(page);
  await save(page);
  const before = await kept(page);
  await each(WRONG, async ([, typed, field, words]) => {
    await page.goBack();
    await openLimits(page);
    await type(page, 'filter_upright.source', 'typed elsewhere');
    await type(page, 'heater_outlet.high_deg', '-3,25');
    for (const [name, value] of Object.entries(typed))
      if (name.endsWith('.basis')) await page.selectOption(at(name), value);
      else await type(page, name, value);
    const filled = await form(page);
    await tap(page, 'save-limits');
    const status = await answer(page);
    assert.deepEqual(await form(page), filled);
    assert.deepEqual(await kept(page), before);
    const message = page.locator(`p${at(field)}-m`);
    assert.ok(await message.isVisible(), `no message stands at ${field}; the status says: ${status}`);
    assert.ok(fits(await message.textContent(), words), await message.textContent());
    assert.equal(await page.getAttribute(at(field), 'aria-invalid'), 'true');
    assert.equal(`#${await page.getAttribute(at(field), 'aria-describedby')}`, `${at(field)}-m`);
    assert.equal(`#${await page.evaluate(() => document.activeElement.id)}`, at(field));
    assert.equal(await page.locator('.limits p.trouble:visible').count(), 1);
    assert.equal(status, t.wrongField);
  });
});

test('a set copied out, changed and brought in again is the same set', async (test) => {
  const b = await open(test);
  const { page } = b;
  await openLimits(page);
  await type(page, 'name', 'Möller’s "van" <b>3</b>');
  await type(page, 'pump_outlet.low_deg', '17.3');
  await type(page, 'pump_outlet.length_mm', '123.4');
  await page.selectOption(at('heater_port.basis'), 'law');
  await type(page, 'heater_port.source', 'clause 5.3.1');
  await type(page, 'heater_port.vehicles', 'class M1');
  await type(page, 'heater_port.allowance_deg', '0.7');
  await save(page);
  const before = JSON.parse(await copyOut(page));
  await type(page, 'pump_outlet.low_deg', '30');
  await tap(page, 'examples');
  await save(page);
  assert.notDeepEqual(JSON.parse(await copyOut(page)), before);
  await bringIn(page, JSON.stringify(before));
  await said(page, t.replaced);
  assert.equal(await page.inputValue('#f-name'), 'Möller’s "van" <b>3</b>');
  await save(page);
  assert.deepEqual(JSON.parse(await copyOut(page)), before);
  assert.deepEqual(await kept(page), before);
  assert.deepEqual(b.faults, []);
});

test('a number is copied out and shown as it was typed', async (test) => {
  const { page } = await open(test);
  await openLimits(page);
  await type(page, 'pump_outlet.low_deg', '17.3');
  await save(page);
  assert.equal(lineOf(JSON.parse(await copyOut(page)), 'pump_outlet').low_deg, 17.3);
  await page.goBack();
  await openLimits(page);
  assert.equal(await page.inputValue(at('pump_outlet.low_deg')), '17.3');
});

test('saving in inches changes no length that nobody touched', async (test) => {
  const { page } = await open(test);
  await openLimits(page);
  await type(page, 'pump_outlet.length_mm', '125');
  await save(page);
  await page.goBack();
  await pick(page, 'system', 'us');
  await openLimits(page);
  await save(page);
  assert.equal(lineOf(await kept(page), 'pump_outlet').length_mm, 125);
});

test('files that are refused by name, with nothing changed', async (test) => {
  const b = await open(test);
  const { page } = b;
  await openLimits(page);
  await save(page);
  await bringIn(page, GOOD);
  await said(page, t.replaced);
  await each(REFUSED, async ([, content, words]) => {
    await page.goBack();
    await openLimits(page);
    await type(page, 'pump_outlet.low_deg', '13');
    const [before, stored] = [await form(page), await kept(page)];
    await bringIn(page, content);
    const status = await answer(page);
    assert.deepEqual(await form(page), before, `the form is as it was; the status says: ${status}`);
    assert.deepEqual(await kept(page), stored);
    assert.ok(fits(status, words), status);
    assert.equal(await page.evaluate(() => ({}).low_deg ?? {}.name ?? null), null);
  });
  assert.deepEqual(b.faults, []);
});

test('an emptied set: no limit, so nothing is proven, and the reading says why', async (test) => {
  const b = await open(test);
  const { page } = b;
  await openLimits(page);
  await tap(page, 'blank');
  await said(page, t.replaced);
  assert.equal(await page.locator('.limits .missing').count(), 6);
  assert.equal(await page.textContent('.card[data-check="pump_outlet"] .missing'), t.limitMissing);
  await save(page);
  await page.goBack();
  await pump(page);
  assert.equal(await page.textContent('.slot .value'), '22.0°');
  assert.equal(await page.getAttribute('.slot .verdict', 'data-verdict'), 'not_proven');
  assert.equal(await page.textContent('.slot .note'), text.whys.limit_not_entered);
  assert.equal(await page.textContent('.live .does'), text.live.enterLimit);
  await tap(page, 'capture');
  await page.waitForSelector('.saved:not([data-saved="no"])');
  assert.equal(await page.textContent('.captured [data-check] .note'), text.whys.limit_not_entered);
  assert.deepEqual(b.faults, []);
});

/** Picks in the settings, from the first screen and back to it. */
async function pick(page, name, value) {
  await tap(page, 'settings');
  await page.check(`input[name="${name}"][value="${value}"]`);
  await tap(page, 'done');
  await page.waitForSelector('[data-screen="start"]');
}

const SLOPE = Math.tan((22 * Math.PI) / 180);
for (const [unit, shown] of [
  ['deg', '22.0°'],
  ['percent', `${(100 * SLOPE).toFixed(1)} %`],
  ['mm_m', `${(1000 * SLOPE).toFixed(0)} mm/m`],
])
  test(`22° in ${unit} is ${shown}, live, captured and after a reload`, async (test) => {
    const { page } = await open(test);
    await pick(page, 'angle_unit', unit);
    await pump(page);
    assert.equal(await page.textContent('.slot .value'), shown);
    assert.ok((await page.textContent('.slot .u')).endsWith(shown.replace(/^[\d.]+/, '')));
    await tap(page, 'capture');
    await page.waitForSelector('.saved:not([data-saved="no"])');
    assert.equal(await page.textContent('.captured .value'), shown);
    await start(page);
    await tap(page, 'captures');
    assert.ok((await page.textContent('[data-capture]')).includes(` ${shown} ± `));
  });

test('height differences in millimetres and in inches are the same height', async (test) => {
  const { page } = await open(test);
  const height = async () => {
    await pump(page, 8);
    const says = await page.textContent('.live .does');
    const [, rise, over] = says.match(/Raise the outlet end by [\d.]+°: (.+) over (.+)\. Then/) ?? [];
    assert.ok(rise && over, says);
    return { rise, over };
  };
  const metric = await height();
  assert.match(metric.rise, /^[\d.]+ mm$/);
  assert.equal(metric.over, '100 mm');
  await start(page);
  await pick(page, 'system', 'us');
  const us = await height();
  assert.match(us.rise, /^(\d+ )?(\d+\/(2|4|8|16) )?in$/);
  const words = us.rise.match(/\d+\/\d+|\d+/g).map((w) => w.split('/').reduce((a, b) => a / b));
  const inches = words.reduce((sum, w) => sum + Number(w), 0);
  const gap = 25.4 * inches - Number.parseFloat(metric.rise);
  assert.ok(Math.abs(gap) < 25.4 / 32 + 0.7, `${us.rise}, ${metric.rise}`);
  assert.equal(us.over, '3 15/16 in');
});
