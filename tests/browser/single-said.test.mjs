// What the page as one file says of itself: what it cannot do, how much of a job is in no file, and
// that nothing is kept where nothing is.

import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { pathToFileURL } from 'node:url';
import Ajv from 'ajv/dist/2020.js';
import { schema } from '../../web/record/schema.js';
import { text } from '../../web/text.js';
import { words } from '../../web/words/file.js';
import { axe, DIST, launch, tap } from './harness.mjs';
import { saved, tooWide, type } from './plan-page.mjs';
import {
  backTo,
  filing,
  filingSays,
  handedOut,
  lesserJob,
  open,
  storeless,
  through,
} from './single-page.mjs';
import { atJob, section } from './whole-job.mjs';

const valid = new Ajv({ allErrors: true, allowUnionTypes: true }).compile(schema);
const shot = (name) => new URL(`shots/latest/single-${name}.png`, import.meta.url).pathname;

for (const colorScheme of ['light', 'dark'])
  test(`what it cannot do, on opening, ${colorScheme}`, async (t) => {
    const { page } = await open(t, { colorScheme });
    const note = page.locator('[data-name="as-file"]');
    for (const point of words.points) assert.ok(await note.getByText(point).isVisible());
    assert.equal(await tooWide(page), 0);
    assert.deepEqual(await axe(page), []);
    await page.screenshot({ path: shot(`start-${colorScheme}`), fullPage: true });
    await note.locator('summary').first().click();
    await tap(page, 'settings');
    await page.goBack();
    await page.waitForSelector('[data-screen="start"]');
    assert.equal(await note.getByText(words.points[0]).isVisible(), false, 'closed by a tap');
    await note.locator('summary').first().click();
    assert.ok(await note.getByText(words.points[0]).isVisible(), 'and there by another');
    await note.locator('summary').last().click();
    for (const [action, file] of [
      ['schema-limits', 'pkg/schema.json'],
      ['schema-record', 'pkg/record.schema.json'],
    ]) {
      const own = JSON.parse(await handedOut(page, action));
      assert.deepEqual(own, JSON.parse(readFileSync(join(DIST, file), 'utf8')));
    }
  });

test('a browser started anew still has the job, and other files may have it too', async (t) => {
  const profile = mkdtempSync(join(tmpdir(), 'plumbmark-file-'));
  t.after(() => rmSync(profile, { recursive: true, force: true, maxRetries: 5 }));
  const first = await open(t, { profile });
  await lesserJob(first.page);
  await first.close();
  const second = await open(t, { profile });
  await tap(second.page, 'tape');
  await filingSays(second.page, words.inNoFile(2));
  await second.close();
  // What the note says of privacy: one store for every page from the disk.
  const elsewhere = join(profile, 'another.html');
  writeFileSync(elsewhere, '<!doctype html><title>another</title>');
  const other = await launch({ profile });
  t.after(() => other.close());
  await other.page.goto(pathToFileURL(elsewhere).href);
  const held = () => indexedDB.databases().then((all) => all.map((d) => d.name));
  const names = await other.page.evaluate(held);
  assert.ok(names.includes('plumbmark'), String(names));
});

test('how much of a job is in no file, until it is, and again after a change', async (t) => {
  const { page } = await open(t);
  await tap(page, 'tape');
  await atJob(page);
  assert.ok(await page.isHidden('[data-name="filing"]'), 'nothing to hand over');
  await page.goBack();
  await lesserJob(page);
  await backTo(page, 'parts');
  // A sheet and a capture.
  await filingSays(page, words.inNoFile(2));
  assert.equal(await tooWide(page), 0);
  assert.deepEqual(await axe(page), []);
  await page.evaluate(() => scrollTo(0, 0));
  await page.screenshot({ path: shot('in-no-file') });
  const bytes = await handedOut(page, 'file-job');
  await filingSays(page, 'Nothing changed');
  await page.screenshot({ path: shot('in-a-file') });
  await page.reload();
  await tap(page, 'tape');
  await filingSays(page, 'Nothing changed');
  // A clock that was set back hides no change.
  await page.clock.install({ time: new Date('2020-01-01T08:00:00Z') });
  await page.reload();
  await tap(page, 'tape');
  await section(page, 'place', async () => {
    assert.equal(await page.inputValue('[data-name="top_mm"]'), '61', 'kept');
    await type(page, { left_mm: '80' });
    await page.clock.runFor(1000);
    await saved(page);
  });
  // The sheet, and that the clock was set back.
  await filingSays(page, '2 changes.');
  assert.match(await filing(page), /Not in the record of/);
  // What came in from a file is in one.
  await backTo(page, 'start');
  const again = await through(page, bytes);
  assert.ok(again.equals(bytes), 'opened again: the same bytes');
  await backTo(page, 'parts');
  await filingSays(page, 'Nothing changed');
});

test('where a browser keeps nothing for a file, it says so, and the job still gets out', async (t) => {
  const { page } = await open(t, { url: await storeless(t) });
  const refused = () =>
    new Promise((done) => {
      try {
        indexedDB.open('any').onerror = () => done('later');
      } catch (error) {
        done(error.name);
      }
    });
  assert.equal(await page.evaluate(refused), 'SecurityError');
  assert.equal(await page.textContent('[data-screen="start"] [role="alert"]:visible'), words.forgets);
  assert.deepEqual(await axe(page), []);
  await page.screenshot({ path: shot('forgets') });
  await lesserJob(page);
  assert.equal(await page.textContent('.saved'), words.held);
  assert.notEqual(words.held, text.captured.saved);
  await page.goBack();
  await backTo(page, 'parts');
  await filingSays(page, words.inNoFile(2));
  assert.ok(await page.getByText(words.forgets).isVisible());
  // It asks before what is in no file goes.
  const asked = page.waitForEvent('dialog');
  const leaving = page.reload().catch(() => {});
  const dialog = await asked;
  assert.equal(dialog.type(), 'beforeunload');
  await dialog.dismiss();
  await leaving;
  await filingSays(page, words.inNoFile(2));
  const bytes = await handedOut(page, 'file-job');
  const record = JSON.parse(bytes);
  assert.ok(valid(record), JSON.stringify(valid.errors?.slice(0, 4)));
  assert.equal(record.photos.length, 1);
  await filingSays(page, 'Nothing changed');
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
  assert.ok((await through(page, bytes)).equals(bytes), 'opened again: the same bytes');
});
