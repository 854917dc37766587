// What the page says is saved is saved: through a killed browser, and never where it was refused.

import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, describe, test } from 'node:test';
import { setTimeout as wait } from 'node:timers/promises';
import { text } from '../../web/text.js';
import { words as limitWords } from '../../web/words/limit-lines.js';
import { anglesOfUp, launch, serve, synthetic, tap, toLive, upFor, waitReason } from './harness.mjs';
import { launchToKill, randomOf, ROUNDS, SEED, stored } from './kill.mjs';

const G = 9.80665;

let server;
before(async () => {
  server = await serve();
});
const opened = [];
after(async () => {
  await Promise.all(opened.map((b) => b.close()));
  await server.kill();
});

async function toPump(page) {
  const up = upFor('long_edge', 22);
  await synthetic(page, { a: up.map((v) => G * v), angles: anglesOfUp(up) });
  await toLive(page, 'pump', ['tail'], { hold: 'long_edge', surface: 'round_body' });
  await waitReason(page, '');
}

/** A browser on the first screen, `patch` run before the page. */
async function open(patch, ...arg) {
  const b = await launch();
  opened.push(b);
  if (patch) await b.page.addInitScript(patch, ...arg);
  await b.page.goto(server.url);
  await b.page.waitForSelector('[data-screen="start"]');
  return b;
}

/** Tells the test's side of every capture that is shown as saved, with the number shown. */
function tellSaved() {
  const told = new Set();
  new MutationObserver(() => {
    const state = document.querySelector('.saved[data-saved]:not([data-saved="no"])');
    if (!state || told.has(state.dataset.saved)) return;
    told.add(state.dataset.saved);
    const value = document.querySelector('[data-check="pump_outlet"] .value').textContent;
    window.sawSaved(Number(state.dataset.saved), value, state.textContent);
  }).observe(document, { subtree: true, childList: true, attributes: true });
}

/** Captures as fast as the page lets anybody. */
function captureOnAndOn() {
  setInterval(() => {
    const saved = document.querySelector('.saved:not([data-saved="no"])');
    document.querySelector(saved ? '[data-action="again"]' : '[data-action="capture"]:enabled')?.click();
  }, 30);
}

/** The captured screen must say in words that nothing was kept. */
async function captureNotSaved(page, words) {
  await tap(page, 'capture');
  await page.waitForSelector('[data-screen="captured"] .trouble:not([hidden])');
  assert.equal(await page.textContent('[data-screen="captured"] .trouble'), words);
  assert.equal(await page.getAttribute('.saved', 'data-saved'), 'no');
  assert.equal(await page.textContent('.saved'), '');
  const value = await page.textContent('[data-check="pump_outlet"] .value');
  assert.equal(value, '22.0°', 'to be written down');
}

describe('what is kept', () => {
  const patience = { timeout: 30_000 + ROUNDS * 12_000 };
  test(`${ROUNDS} killed browsers lose nothing that was shown as saved`, patience, async (t) => {
    const random = randomOf(SEED);
    const profile = mkdtempSync(join(tmpdir(), 'plumbmark-kill-'));
    const seen = new Map();
    const lost = new Set();
    const odd = [];
    let running;
    t.after(async () => {
      await running?.kill();
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    });
    /** Opens the profile again and looks for everything that was ever shown as saved. */
    const reopen = async (round) => {
      running = await launchToKill(profile);
      const { page } = running;
      await page.exposeFunction('sawSaved', (id, value, word) => {
        // An error thrown here would stay in the page.
        if (word !== text.captured.saved || seen.has(id)) odd.push(`${id}: ${word}`);
        seen.set(id, { value, round });
      });
      await page.addInitScript(tellSaved);
      await page.goto(server.url);
      await page.waitForSelector('[data-screen="start"]');
      const kept = new Map((await stored(page, 'plumbmark')).map((c) => [c.id, c]));
      for (const [id, shown] of seen) {
        const check = kept.get(id)?.report?.checks.find((c) => c.id === 'pump_outlet');
        if (!check || `${check.value.toFixed(1)}°` !== shown.value) lost.add(id);
      }
      return page;
    };
    console.log(`kill test: seed ${SEED}`);
    for (let round = 0; round < ROUNDS; round += 1) {
      const page = await reopen(round);
      await toPump(page);
      const delay = Math.floor(random() * 1500);
      await page.evaluate(captureOnAndOn);
      await wait(delay);
      await running.kill();
    }
    await reopen(ROUNDS);
    const rounds = new Set([...seen.values()].map((s) => s.round)).size;
    const counts = `${seen.size} shown as saved, ${lost.size} lost`;
    console.log(`kill test: ${ROUNDS} rounds (${rounds} with captures), ${counts}`);
    assert.ok(seen.size > 0, 'something was saved');
    assert.deepEqual([...lost], []);
    assert.deepEqual(odd, []);
  });

  for (const late of [false, true])
    test(`full storage, refused ${late ? 'at the end' : 'at once'}: not saved, and why`, async () => {
      const b = await open((late) => {
        const add = IDBObjectStore.prototype.add;
        const full = () => new DOMException('no room', 'QuotaExceededError');
        IDBObjectStore.prototype.add = function (...given) {
          if (!late) throw full();
          const request = add.apply(this, given);
          // Browsers report a full disk on the transaction, after the request went well.
          Object.defineProperty(this.transaction, 'error', { get: full });
          request.addEventListener('success', () => this.transaction.abort());
          return request;
        };
      }, late);
      await toPump(b.page);
      await captureNotSaved(b.page, text.storeErrors.full);
      assert.deepEqual(await stored(b.page, 'plumbmark'), []);
      assert.deepEqual(b.faults, []);
    });

  test('blocked storage is told at the start; measuring works, captures are not saved', async () => {
    const b = await open(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('refused', 'SecurityError');
      };
    });
    assert.equal(await b.page.textContent('.notice[role="alert"] .trouble'), text.storeErrors.blocked);
    await toPump(b.page);
    assert.equal(await b.page.getAttribute('.slot .verdict', 'data-verdict'), 'within');
    await captureNotSaved(b.page, text.storeErrors.blocked);
    assert.equal(await b.page.locator('.notice .trouble').count(), 1, 'told once');
    assert.deepEqual(b.faults, []);
  });

  test('a try-out keeps to its own database', async () => {
    const b = await open();
    const { page } = b;
    await tap(page, 'tryout');
    await page.waitForSelector('aside.tryout');
    await toLive(page, 'pump', ['tail']);
    for (let i = 0; i < 4; i += 1) await tap(page, 'try-up');
    await waitReason(page, '');
    await tap(page, 'capture');
    await page.waitForSelector('.saved:not([data-saved="no"])');
    assert.deepEqual(await stored(page, 'plumbmark'), []);
    const tried = await stored(page, 'plumbmark-tryout');
    assert.deepEqual(
      tried.map((c) => c.tryout),
      [true],
    );
    // The store as its own module, beside the page that has packed it.
    for (const file of ['store.js', 'database.js', 'locale.js', 'pkg/catalogue.js'])
      await page.route(`**/${file}`, (route) =>
        route.fulfill({
          body: readFileSync(new URL(`../../web/${file}`, import.meta.url), 'utf8'),
          contentType: 'text/javascript',
        }),
      );
    const crossed = await page.evaluate(async (capture) => {
      const { openStore } = await import('/store.js');
      const code = async (tryout, capture) => {
        const { id, ...rest } = capture;
        const store = await openStore({ tryout });
        return store.saveCapture(rest).then(
          () => 'saved',
          (error) => error.code,
        );
      };
      return [await code(false, capture), await code(true, { ...capture, tryout: false })];
    }, tried[0]);
    assert.deepEqual(crossed, ['wrong_store', 'wrong_store']);
    await Promise.all([page.waitForEvent('load'), tap(page, 'try-leave')]);
    await page.waitForSelector('[data-screen="start"]');
    assert.equal(await page.locator('aside.tryout').count(), 0);
    await tap(page, 'captures');
    assert.equal(await page.textContent('[data-screen="captures"] .lead'), text.captures.empty);
    assert.deepEqual(await stored(page, 'plumbmark'), []);
    assert.equal((await stored(page, 'plumbmark-tryout')).length, 1);
    assert.deepEqual(b.faults, []);
  });

  test('every write asks for strict durability', async () => {
    const b = await open(() => {
      const transaction = IDBDatabase.prototype.transaction;
      window.writes = [];
      IDBDatabase.prototype.transaction = function (names, mode, options) {
        const tx = transaction.call(this, names, mode, options);
        if (mode === 'readwrite') window.writes.push([names, options?.durability, tx.durability]);
        return tx;
      };
    });
    await tap(b.page, 'limits');
    await tap(b.page, 'save-limits');
    await b.page.waitForSelector(`[role="status"]:text-is("${limitWords.saved}")`);
    await b.page.goBack();
    await toPump(b.page);
    await tap(b.page, 'capture');
    await b.page.waitForSelector('.saved:not([data-saved="no"])');
    const writes = await b.page.evaluate(() => window.writes);
    const names = new Set(writes.flatMap(([names]) => names));
    assert.deepEqual([...names].sort(), ['captures', 'jobs', 'kept']);
    for (const write of writes) assert.deepEqual(write.slice(1), ['strict', 'strict']);
  });
});
