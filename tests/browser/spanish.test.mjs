// The page in another language: chosen by the browser's, or by hand; numbers and lengths as they are
// written there; the same record but for its words.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { said } from '../../web/catalogue.mjs';
import { text } from '../../web/text.js';
import { words as settings } from '../../web/words/settings.js';
import { launch, sensors, served, tap, toLive, upFor, waitReason } from './harness.mjs';
import { type } from './plan-page.mjs';
import { fillJob, home, openStart } from './record-page.mjs';

const server = served();

const inSpanish = (id, path = 'text.js') => said(path, id, 'es');

for (const [locale, language, lead, sign] of [
  ['es-ES', 'es', inSpanish(text.start.allow), ','],
  ['es-MX', 'es', inSpanish(text.start.allow), '.'],
  ['en-GB', 'en', text.start.allow, '.'],
  ['fi-FI', 'en', text.start.allow, '.'],
])
  test(`${locale} reads ${language}, and writes tenths with "${sign}"`, async (t) => {
    const b = await openStart(t, server, { locale });
    const { page } = b;
    const feed = await sensors(b);
    t.after(() => feed.stop());
    feed.keep(() => ({ up: upFor('long_edge', 27.3) }));
    assert.equal(await page.getAttribute('html', 'lang'), language);
    assert.equal(await page.textContent('[data-action="allow"]'), lead);
    await toLive(page, 'pump', ['tail'], { hold: 'long_edge', surface: 'round_body' });
    await waitReason(page, '');
    assert.match(await page.textContent('.value'), new RegExp(`^27\\${sign}\\d+°$`));
    assert.deepEqual(b.faults, []);
  });

test('in the United States lengths begin in inches, and stay as they were chosen', async (t) => {
  for (const [locale, system] of [
    ['en-US', 'us'],
    ['es-US', 'us'],
    ['en-CA', 'metric'],
  ]) {
    const { page } = await openStart(t, server, { locale });
    await tap(page, 'settings');
    assert.ok(await page.isChecked(`input[value="${system}"]`), locale);
    await page.check('input[value="metric"]');
    await page.reload();
    await tap(page, 'settings');
    assert.ok(await page.isChecked('input[value="metric"]'), locale);
  }
});

test('a language chosen by hand comes with the next load and stays', async (t) => {
  const { page } = await openStart(t, server);
  assert.match(await page.textContent('[data-action="settings"]'), /English · español$/);
  await tap(page, 'settings');
  await page.check('input[value="es"]');
  await tap(page, 'load-anew');
  await page.waitForSelector('html[lang="es"]');
  await page.reload();
  assert.equal(await page.textContent('[data-action="allow"]'), inSpanish(text.start.allow));
  await tap(page, 'settings');
  await page.waitForSelector('[data-screen="settings"]');
  assert.equal(await page.textContent('h1'), inSpanish(settings.title, 'words/settings.js'));
  await page.check('input[value="en"]');
  await tap(page, 'load-anew');
  await page.waitForSelector('html[lang="en"]');
});

test('where the browser keeps no choice, it is said', async (t) => {
  const b = await launch();
  t.after(() => b.close());
  await b.page.addInitScript(() =>
    Object.defineProperty(globalThis, 'localStorage', {
      get() {
        throw new DOMException('denied', 'SecurityError');
      },
    }),
  );
  await b.page.goto(server.url);
  await tap(b.page, 'settings');
  await b.page.check('input[value="es"]');
  await b.page.waitForSelector(`text=${settings.notChosen}`);
  assert.deepEqual(b.faults, []);
});

async function handedOut(page) {
  await home(page);
  await tap(page, 'tape');
  await tap(page, 'record');
  await page.waitForSelector('[data-name="sha256"]:not(:empty)');
  const [download] = await Promise.all([page.waitForEvent('download'), tap(page, 'record-json')]);
  return JSON.parse(readFileSync(await download.path(), 'utf8'));
}

test('the same job in both languages is one record, but for the words of its lines', async (t) => {
  const b = await launch({ locale: 'es-ES' });
  t.after(() => b.close());
  const { page } = b;
  page.setDefaultTimeout(8000);
  await page.goto(server.url);
  await fillJob(page);
  const spanish = await handedOut(page);
  assert.equal(await page.getAttribute('.record-paper', 'lang'), 'es');
  await page.evaluate(() => localStorage.setItem('language', 'en'));
  const english = await handedOut(page);
  const worded = ({ checks, facts, ...rest }) => ({
    ...rest,
    ...{ sha256: '', does_not_claim: [], cautions: [] },
    checks: checks.map((c) => ({ ...c, what: '' })),
    facts: facts.map((f) => ({ ...f, statement: '' })),
  });
  assert.deepEqual(worded(spanish), worded(english));
  assert.notEqual(spanish.checks[0].what, english.checks[0].what);
  assert.equal(spanish.does_not_claim.length, english.does_not_claim.length);
});

test('a comma is typed and shown, and its number is the same', async (t) => {
  const { page } = await openStart(t, server, { locale: 'es-ES' });
  await tap(page, 'tape');
  await tap(page, 'section-support');
  await type(page, { long_mm: '180,5', short_mm: '120', straightedge_mm: '300', straightness_mm: '0,02' });
  await tap(page, 'six-lines');
  for (let i = 0; i < 6; i += 1) await type(page, { goes_mm: '0,1', stays_mm: '0,15' }, `[data-row="${i}"]`);
  const answer = await page.locator('.answers, .answer').first().textContent();
  assert.match(answer, /\d,\d/);
  assert.doesNotMatch(answer, /\d\.\d/);
});
