// The page as one file, opened from the disk with the network off: a whole job, its record into a
// page from a host, and that nothing gets into it or out of it.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { describe, test } from 'node:test';
import Ajv from 'ajv/dist/2020.js';
import { pageAsFile } from '../../web/pack-file.mjs';
import { page } from '../../web/pack-languages.mjs';
import { schema } from '../../web/record/schema.js';
import { ATTEMPTS_AT_CODE, prepareAttempts, tryInPage } from './attempts.mjs';
import { DIST, launch, sensors, served, tap, toLive, upFor, waitReason } from './harness.mjs';
import { FILE, FROM_DISK, filingSays, handedOut, open, PUMP, through } from './single-page.mjs';
import { wholeJob } from './whole-start.mjs';

const valid = new Ajv({ allErrors: true, allowUnionTypes: true }).compile(schema);
const server = served();

test('built twice it is the same file, and names nothing outside of itself', async () => {
  const read = (path) => readFileSync(join(DIST, path), 'utf8');
  const [version] = read('sw.js').match(/\d+\.\d+\.\d+\+[0-9a-f]{64}/);
  const again = await pageAsFile({ page, sheet: read('styles.css'), version });
  assert.ok(again === readFileSync(FILE, 'utf8'), 'the same bytes');
  const markup = again.replace(/<(script|style)[^>]*>[\s\S]*?<\/\1>/g, '');
  const named = [...markup.matchAll(/(?:src|href)="([^"]*)"/g)].map((found) => found[1]);
  assert.deepEqual([...new Set(named.map((url) => url.slice(0, 5)))], ['data:']);
});

test('a host hands it out to be taken away, and no page from a host keeps it', async () => {
  const answer = await fetch(`${server.url}plumbmark.html`);
  assert.equal(answer.headers.get('content-disposition'), 'attachment');
  assert.doesNotMatch(
    readFileSync(join(DIST, 'sw.js'), 'utf8').match(/FILES = \[.*\]/)[0],
    /plumbmark\.html/,
  );
});

test('a whole job without a network; its record is the same on a page from a host', {
  timeout: 300_000,
}, async (t) => {
  const { page } = await open(t);
  await wholeJob(page);
  const bytes = await handedOut(page, 'file-job');
  const record = JSON.parse(bytes);
  assert.ok(valid(record), JSON.stringify(valid.errors?.slice(0, 4)));
  assert.equal(record.job.vehicle, 'Ladder truck 4');
  assert.equal(record.captures.length, 4);
  const of = (id) => record.checks.find((c) => c.id === id);
  // As in the whole job of a page from a host: 38.97 mΩ · 10.5 A, and a pump laid at 25°.
  assert.ok(Math.abs(of('cable.start_drop_v').value - 0.409) < 0.002);
  assert.ok(Math.abs(of('pump_outlet').value - 25) < 0.3);
  await filingSays(page, 'Nothing changed');
  const host = await launch();
  t.after(() => host.close());
  await host.page.goto(server.url);
  await host.page.waitForSelector('[data-screen="start"]');
  assert.ok((await through(host.page, bytes)).equals(bytes), 'the same bytes');
  assert.deepEqual(host.faults, []);
});

test('a browser’s own sensors reach it, and a core that traps is built anew', async (t) => {
  const b = await launch();
  t.after(() => b.close());
  const { page } = b;
  // As the module itself would: one call of each instance can be made to trap.
  await page.addInitScript(() => {
    const { instantiate } = WebAssembly;
    window.loaded = 0;
    WebAssembly.instantiate = async (...given) => {
      const { instance, module } = await instantiate(...given);
      const { tick } = instance.exports;
      window.loaded += 1;
      const trapping = (...now) => {
        if (!window.trapNow) return tick(...now);
        window.trapNow = false;
        throw new WebAssembly.RuntimeError('unreachable');
      };
      return { module, instance: { exports: { ...instance.exports, tick: trapping } } };
    };
  });
  await b.context.setOffline(true);
  const feed = await sensors(b);
  t.after(() => feed.stop());
  const still = () => [0, 0, 0].map(() => 0.02 * (Math.random() + Math.random() - 1));
  feed.keep(() => ({ up: upFor('long_edge', 22), extra: still() }));
  await page.goto(FROM_DISK);
  await page.waitForSelector('[data-screen="start"]');
  assert.equal(await page.evaluate(() => window.isSecureContext), true);
  await toLive(page, ...PUMP);
  await waitReason(page, '');
  const loaded = await page.evaluate(() => window.loaded);
  const shown = await page.evaluate(
    () =>
      new Promise((done) => {
        const screen = document.querySelector('[data-screen="live"]');
        new MutationObserver(() => {
          if (screen.dataset.reason)
            done([screen.dataset.reason, screen.querySelector('.value').textContent]);
        }).observe(screen, { attributes: true });
        window.trapNow = true;
      }),
  );
  assert.deepEqual(shown, ['trapped', '']);
  await waitReason(page, '');
  assert.equal(await page.evaluate(() => window.loaded), loaded + 1, 'a fresh one');
  const value = Number((await page.textContent('[data-check="pump_outlet"] .value')).replace('°', ''));
  assert.ok(Math.abs(value - 22) < 0.8, `${value}`);
  assert.deepEqual(b.faults, []);
});

test('the try-out is inside, and the invented job too', async (t) => {
  const { page } = await open(t);
  await tap(page, 'tryout');
  await page.waitForSelector('aside.tryout');
  await tap(page, 'demo');
  await page.waitForSelector('[data-screen="parts"] .caution');
  assert.equal(await page.locator('[data-name="filing"]').count(), 0, 'a try-out is nobody’s job');
  await Promise.all([page.waitForEvent('load'), tap(page, 'try-leave')]);
  await page.waitForSelector('[data-screen="start"]');
});

describe('nothing gets in or out', () => {
  for (const attempt of ATTEMPTS_AT_CODE)
    test(attempt, async (t) => {
      const b = await open(t);
      await prepareAttempts(b.page);
      const got = await tryInPage(b.page, attempt);
      assert.equal(got.ran, undefined, 'nothing ran');
      assert.ok(got.violated.length > 0, JSON.stringify(got));
      // The policy's own complaints are what was wanted.
      b.faults.length = 0;
    });

  test('fetch, image and beacon never arrive, with the network on', async (t) => {
    let arrived = 0;
    const other = createServer((_, response) => {
      arrived += 1;
      response.writeHead(200, { 'Access-Control-Allow-Origin': '*' }).end();
    });
    await new Promise((done) => other.listen(0, '127.0.0.1', () => done()));
    t.after(() => other.close());
    const b = await launch();
    t.after(() => b.close());
    await b.page.goto(FROM_DISK);
    await b.page.waitForSelector('[data-screen="start"]');
    await prepareAttempts(b.page);
    const url = `http://localhost:${other.address().port}/x.png`;
    const blocked = { fetch: 'connect-src', image: 'img-src', beacon: 'connect-src' };
    for (const [attempt, directive] of Object.entries(blocked)) {
      const got = await tryInPage(b.page, attempt, url);
      assert.ok(got.violated.includes(directive), `${attempt}: ${JSON.stringify(got)}`);
    }
    assert.equal(arrived, 0);
    // The same from a page without a policy arrives: the counter counts.
    await fetch(url);
    assert.equal(arrived, 1);
  });
});
