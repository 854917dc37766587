// After one visit the page needs nobody; a new version waits until nothing is measured and the user
// says so.

import assert from 'node:assert/strict';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { text } from '../../web/text.js';
import { words as limitWords } from '../../web/words/limit-lines.js';
import { DIST, launch, sensors, serve, tap, toLive, upFor, waitReason } from './harness.mjs';
import { toSection, type } from './plan-page.mjs';

const still = () => [0, 0, 0].map(() => 0.02 * (Math.random() + Math.random() - 1));
const PUMP = ['pump', ['tail'], { hold: 'long_edge', surface: 'round_body' }];

/** A server and a browser; both end with the test, whatever its end. */
async function visited(t, { dist, profile } = {}) {
  const server = await serve({ dist });
  t.after(() => server.kill());
  const browser = await launch({ profile });
  t.after(() => browser.close());
  await browser.page.goto(server.url);
  await browser.page.waitForSelector('[data-screen="start"]');
  await workerReady(browser.page);
  return { server, ...browser };
}

/** Worker active, and every file of its list in the cache. */
async function workerReady(page) {
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => {}));
  await page.waitForFunction(async () => (await navigator.serviceWorker.ready).active.state === 'activated');
  const kept = await page.evaluate(async () => {
    const [name] = await caches.keys();
    return (await (await caches.open(name)).keys()).length;
  });
  const [, list] = readFileSync(join(DIST, 'sw.js'), 'utf8').match(/const FILES = (\[[^\]]*\])/);
  assert.equal(kept, JSON.parse(list).length, 'files in the cache');
}

/** Sensors for the browser's present page, at `pose.deg` in the pump's hold. */
async function feed(t, browser, pose) {
  const feeding = await sensors(browser);
  feeding.keep(() => ({ up: upFor('long_edge', pose.deg), extra: still() }));
  t.after(() => feeding.stop());
  return feeding;
}

const near = (page, deg) =>
  page.waitForFunction((want) => {
    const text = document.querySelector('[data-check="pump_outlet"] .value')?.textContent ?? '';
    return text !== '' && Math.abs(Number(text.replace('−', '-').replace('°', '')) - want) < 0.8;
  }, deg);

/** The screen shows the first twelve digits of the hash. */
const shownOf = (version) => version.slice(0, version.indexOf('+') + 13);
const versionShown = (page) => page.textContent('[data-screen="start"] .source');

test('one visit, then the server is gone: a new page measures and keeps a capture', async (t) => {
  const b = await visited(t);
  const { context, server } = b;
  await server.kill();
  await assert.rejects(fetch(server.url), 'the server is gone');
  const page = await context.newPage();
  await b.page.close();
  const faults = [];
  page.on('pageerror', (error) => faults.push(String(error)));
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
  await feed(t, { context, page }, { deg: 22 });
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  await toLive(page, ...PUMP);
  await waitReason(page, '');
  await near(page, 22);
  await tap(page, 'capture');
  await page.waitForSelector('.saved:not([data-saved="no"])');
  const cores = await page.evaluate(() => {
    const files = performance.getEntriesByType('resource');
    return files.filter((e) => e.name.endsWith('_phone_bg.wasm') && e.workerStart > 0).length;
  });
  assert.equal(cores, 1, 'the core came through the worker');
  assert.deepEqual(faults, [], 'the page logged no error');
});

test('a reload without a server keeps the captures and opens every screen', async (t) => {
  const b = await visited(t);
  const { page } = b;
  await feed(t, b, { deg: 22 });
  await toLive(page, ...PUMP);
  await waitReason(page, '');
  await tap(page, 'capture');
  await page.waitForSelector('.saved:not([data-saved="no"])');
  await b.server.kill();
  await page.reload();
  for (const name of ['limits', 'settings', 'captures']) {
    await page.waitForSelector('[data-screen="start"]');
    await tap(page, name);
    await page.waitForSelector(`[data-screen="${name}"]`);
    if (name === 'captures') assert.equal(await page.locator('[data-capture]').count(), 1);
    await page.goBack();
  }
  // The try-out is loaded when asked for: it too must be in the cache.
  await tap(page, 'tryout');
  await page.waitForSelector('[data-screen="parts"]');
  await page.reload();
  await page.waitForSelector('[data-screen="start"]');
});

test('a browser started anew without a server opens the page from its profile', async (t) => {
  const profile = mkdtempSync(join(tmpdir(), 'plumbmark-'));
  t.after(() => rmSync(profile, { recursive: true, force: true }));
  const first = await visited(t, { profile });
  await first.server.kill();
  await first.close();
  const second = await launch({ profile });
  t.after(() => second.close());
  await second.page.goto(first.server.url);
  await second.page.waitForSelector('[data-screen="start"]');
});

/** A copy of the page, visited twice so that its worker answers; `renew` puts a new version there. */
async function controlled(t) {
  const dist = mkdtempSync(join(tmpdir(), 'plumbmark-dist-'));
  t.after(() => rmSync(dist, { recursive: true, force: true }));
  cpSync(DIST, dist, { recursive: true });
  const b = await visited(t, { dist });
  await b.page.reload();
  await b.page.waitForSelector('[data-screen="start"]');
  assert.ok(await b.page.evaluate(() => navigator.serviceWorker.controller !== null));
  const read = (file) => readFileSync(join(dist, file), 'utf8');
  const [old] = read('sw.js').match(/\d+\.\d+\.\d+\+[0-9a-f]{64}/);
  const fresh = old.replace(/[0-9a-f]{64}$/, 'f'.repeat(64));
  const scripts = readdirSync(dist).filter((file) => file.endsWith('.js') && read(file).includes(old));
  assert.ok(scripts.length > 1, 'the version stands in the worker and in the page');
  const renew = () => {
    for (const file of scripts) writeFileSync(join(dist, file), read(file).replace(old, fresh));
  };
  const script = scripts.find((file) => file !== 'sw.js');
  return { ...b, dist, old, fresh, renew, script };
}

const waits = (page) =>
  page.waitForFunction(async () => (await navigator.serviceWorker.getRegistration()).waiting !== null);

/** After the tap: reloaded, and only the new version in the cache and on the screen. */
async function inForce(page, fresh, script) {
  await page.waitForFunction(
    () => window.mark === undefined && document.querySelector('[data-screen="start"]'),
  );
  await page.waitForFunction(async () => (await caches.keys()).length === 1);
  assert.deepEqual(await page.evaluate(() => caches.keys()), [`plumbmark-${fresh}`]);
  assert.ok((await page.evaluate(async (file) => (await fetch(file)).text(), script)).includes(fresh));
  assert.ok((await versionShown(page)).includes(shownOf(fresh)));
  assert.ok(await page.isHidden('.update'), 'nothing is offered any more');
}

test('a new version says nothing while measuring, then waits for the tap', async (t) => {
  const b = await controlled(t);
  const { page, old, fresh, script } = b;
  const pose = { deg: 22 };
  await feed(t, b, pose);
  await toLive(page, ...PUMP);
  await waitReason(page, '');
  await page.evaluate(() => {
    window.mark = 1;
    // Every moment in which the offer shows, however short.
    window.offered = 0;
    const look = () => {
      const el = document.querySelector('.update');
      if (el && !el.hidden) window.offered += 1;
      requestAnimationFrame(look);
    };
    look();
  });
  b.renew();
  await page.evaluate(async () => {
    await (await navigator.serviceWorker.getRegistration()).update();
  });
  await waits(page);
  for (const deg of [18, 25]) {
    pose.deg = deg;
    await near(page, deg);
    await waitReason(page, '');
  }
  // The old version answers until the user says so: no file of the new one gets in.
  assert.ok((await page.evaluate(async (file) => (await fetch(file)).text(), script)).includes(old));
  await tap(page, 'capture');
  await page.waitForSelector('.saved:not([data-saved="no"])');
  assert.ok(await page.isHidden('.update'));
  assert.equal(await page.evaluate(() => window.offered), 0, 'never shown while measuring');
  while (!(await page.$('[data-screen="parts"]'))) await page.goBack();
  await page.waitForSelector('.update:visible');
  await page.waitForTimeout(1000);
  assert.equal(await page.evaluate(() => window.mark), 1, 'nothing reloaded by itself');
  // Measuring again hides it again.
  await toLive(page, ...PUMP);
  assert.ok(await page.isHidden('.update'));
  while (!(await page.$('[data-screen="start"]'))) await page.goBack();
  assert.ok((await versionShown(page)).includes(shownOf(old)));
  await tap(page, 'update');
  await inForce(page, fresh, script);
  await tap(page, 'captures');
  assert.equal(await page.locator('[data-capture]').count(), 1, 'the capture outlives the update');
});

test('a new version found by opening the page is offered, and so it is after a reload', async (t) => {
  const { page, fresh, old, renew, script } = await controlled(t);
  renew();
  await page.reload();
  await page.waitForSelector('.update:visible');
  assert.ok((await versionShown(page)).includes(shownOf(old)));
  await page.reload();
  await page.waitForSelector('.update:visible');
  assert.ok((await versionShown(page)).includes(shownOf(old)));
  await page.evaluate(() => {
    window.mark = 1;
  });
  await tap(page, 'update');
  await inForce(page, fresh, script);
});

test('a new version with a job open: what is half typed is not lost, and the old data opens in it', async (t) => {
  const b = await controlled(t);
  const { page, fresh, script, old } = b;
  page.setDefaultTimeout(30_000);
  await toSection(page, 'place');
  await type(page, { top_mm: '61' });
  await tap(page, 'tick-reach');
  await page.fill('#t-reach-who', 'A. Fitter');
  await page.fill('#t-reach-reason', 'half a sent');
  await page.evaluate(() => {
    window.mark = 1;
  });
  b.renew();
  await page.evaluate(async () => {
    await (await navigator.serviceWorker.getRegistration()).update();
  });
  await waits(page);
  await page.locator('input[data-name="left_mm"]').pressSequentially('8');
  await page.waitForTimeout(1000);
  assert.ok(await page.isHidden('.update'), 'not while somebody types');
  assert.equal(await page.evaluate(() => window.mark), 1, 'nothing reloaded by itself');
  assert.equal(await page.inputValue('#t-reach-reason'), 'half a sent');
  await page.click('[data-tick="reach"] [data-action="tick-reason"]');
  await page.waitForSelector('[data-tick="reach"][data-done="yes"]');
  await page.goBack();
  await page.waitForSelector('.update:visible');
  await tap(page, 'limits');
  await page.fill('[id="f-pump_outlet-low_deg"]', '17');
  assert.ok(await page.isHidden('.update'), 'nor where only "Save" keeps it');
  await tap(page, 'save-limits');
  await page.waitForSelector(`[role="status"]:text-is("${limitWords.saved}")`);
  await page.goBack();
  await tap(page, 'section-place');
  // The last letter, and the tap before its pause is over.
  await page.locator('input[data-name="left_mm"]').press('End');
  await page.keyboard.press('0');
  await page.evaluate(() => history.back());
  await tap(page, 'update');
  await inForce(page, fresh, script);
  assert.notEqual(old, fresh);
  await toSection(page, 'place');
  assert.equal(await page.inputValue('input[data-name="top_mm"]'), '61');
  assert.equal(await page.inputValue('input[data-name="left_mm"]'), '80');
  assert.equal(await page.getAttribute('[data-tick="reach"]', 'data-done'), 'yes');
  await page.goBack();
  await tap(page, 'record');
  await page.waitForFunction(() => document.querySelector('[data-name="sha256"]')?.textContent);
});

test('another tab put a new version in force: this one says that a part of it is missing', async (t) => {
  const b = await controlled(t);
  const { page, context, renew, server } = b;
  const other = await context.newPage();
  await other.goto(server.url);
  await other.waitForSelector('[data-screen="start"]');
  // Parts of the new version have other names: the old ones are nowhere any more.
  renew();
  const chunk = readdirSync(b.dist).find((file) => /^plan-.*\.js$/.test(file));
  rmSync(join(b.dist, chunk));
  const worker = join(b.dist, 'sw.js');
  const without = readFileSync(worker, 'utf8').replace(`"${chunk}",`, '').replace(`,"${chunk}"`, '');
  writeFileSync(worker, without);
  await other.evaluate(async () => {
    await (await navigator.serviceWorker.getRegistration()).update();
  });
  await other.waitForSelector('.update:visible');
  await Promise.all([other.waitForEvent('load'), tap(other, 'update')]);
  await tap(page, 'tape');
  await page.waitForSelector(`.notice .trouble:text-is("${text.storeErrors.unloaded}")`);
  await page.waitForSelector('[data-action="reload"]');
});
