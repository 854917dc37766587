// The page is closed: nothing leaves its origin, no text becomes code, nothing is missing when offline,
// and a browser agrees that it can be installed.

import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { join, relative, sep } from 'node:path';
import { describe, test } from 'node:test';
import { PAGE_POLICY } from '../../web/serve.mjs';
import { ATTEMPTS_AT_CODE, prepareAttempts, tryInPage } from './attempts.mjs';
import {
  collectRequests,
  DIST,
  launch,
  sensors,
  served,
  tap,
  toLive,
  upFor,
  waitReason,
} from './harness.mjs';

const still = () => [0, 0, 0].map(() => 0.02 * (Math.random() + Math.random() - 1));
const server = served();

/** A browser on the first screen; closed when the test ends, whatever its end. */
async function open(t, { feeding = false } = {}) {
  const browser = await launch();
  const requests = collectRequests(browser.context);
  let feed;
  t.after(async () => {
    feed?.stop();
    await browser.close();
  });
  if (feeding) {
    feed = await sensors(browser);
    feed.keep(() => ({ up: upFor('long_edge', 22), extra: still() }));
  }
  await browser.page.goto(server.url);
  await browser.page.waitForSelector('[data-screen="start"]');
  return { ...browser, requests };
}

const workerActive = (page) =>
  page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    if (active.state === 'activated') return;
    await new Promise((done) => {
      active.addEventListener('statechange', () => active.state === 'activated' && done());
    });
  });

describe('headers', () => {
  test('the policy in the page is the policy that the server sends', async () => {
    for (const file of [join(DIST, 'index.html'), join(DIST, '../index.html')]) {
      const meta = readFileSync(file, 'utf8').match(/http-equiv="Content-Security-Policy" content="([^"]*)"/);
      assert.equal(meta?.[1], PAGE_POLICY, file);
    }
    const { headers } = await fetch(server.url);
    assert.equal(headers.get('content-security-policy'), `${PAGE_POLICY}; frame-ancestors 'none'`);
  });

  test('the sensors are allowed to the page alone, and nothing is said of the magnetometer', async () => {
    const sent = (await fetch(server.url)).headers.get('permissions-policy');
    const words = sent.split(',').map((word) => word.trim());
    assert.ok(words.includes('accelerometer=(self)'), sent);
    assert.ok(words.includes('gyroscope=(self)'), sent);
    assert.doesNotMatch(sent, /magnetometer/i);
  });
});

test('a whole flow asks its own origin and nobody else', async (t) => {
  const { page, requests, faults } = await open(t, { feeding: true });
  await toLive(page, 'pump', ['tail'], { hold: 'long_edge', surface: 'round_body' });
  await waitReason(page, '');
  await tap(page, 'capture');
  await page.waitForSelector('.saved:not([data-saved="no"])');
  await tap(page, 'where');
  await page.waitForSelector('[data-screen="details"]');
  await tap(page, 'details-back');
  while (!(await page.$('[data-screen="parts"]'))) await page.goBack();
  await tap(page, 'captures');
  await page.waitForSelector('[data-screen="captures"] [data-capture]');
  while (!(await page.$('[data-screen="start"]'))) await page.goBack();
  for (const name of ['limits', 'settings']) {
    await tap(page, name);
    await page.waitForSelector(`[data-screen="${name}"]`);
    await page.goBack();
    await page.waitForSelector('[data-screen="start"]');
  }
  await workerActive(page);
  const seen = await page.evaluate(() => performance.getEntriesByType('resource').map((e) => e.name));
  const origin = new URL(server.url).origin;
  const foreign = [...requests, ...seen].filter(
    (url) => !/^(blob|data):/.test(url) && new URL(url).origin !== origin,
  );
  assert.deepEqual(foreign, []);
  assert.ok(requests.includes(`${server.url}pkg/plumbmark_phone_bg.wasm`), 'requests were seen at all');
  assert.deepEqual(faults, [], 'the page logged no error');
});

describe('text never becomes code', () => {
  async function prepared(t) {
    const browser = await open(t);
    await prepareAttempts(browser.page);
    return browser;
  }

  for (const attempt of ATTEMPTS_AT_CODE) {
    test(attempt, async (t) => {
      const { page } = await prepared(t);
      const got = await tryInPage(page, attempt);
      assert.equal(got.ran, undefined, 'nothing ran');
      assert.ok(got.violated.length > 0, JSON.stringify(got));
      if (!['inline', 'handler'].includes(attempt)) assert.ok(got.threw, JSON.stringify(got));
    });
  }

  test('fetch, image and beacon to another origin never arrive', async (t) => {
    let arrived = 0;
    const other = createServer((_, response) => {
      arrived += 1;
      response.writeHead(200, { 'Access-Control-Allow-Origin': '*' }).end();
    });
    await new Promise((done) => other.listen(0, '127.0.0.1', () => done()));
    t.after(() => other.close());
    const { page } = await prepared(t);
    const url = `http://localhost:${other.address().port}/x.png`;
    const blocked = { fetch: 'connect-src', image: 'img-src', beacon: 'connect-src' };
    for (const [attempt, directive] of Object.entries(blocked)) {
      const got = await tryInPage(page, attempt, url);
      assert.ok(got.violated.includes(directive), `${attempt}: ${JSON.stringify(got)}`);
      if (attempt !== 'beacon') assert.equal(got.threw, 'TypeError');
    }
    assert.equal(arrived, 0);
  });
});

test('the service worker lists what the folder holds', () => {
  const list = readFileSync(join(DIST, 'sw.js'), 'utf8').match(/const FILES = (\[[^\]]*\])/);
  const listed = JSON.parse(list[1]);
  const held = readdirSync(DIST, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(DIST, join(entry.parentPath, entry.name)).split(sep).join('/'))
    // The page as one file is for taking away, the sums for checking a copy.
    .filter((path) => !['sw.js', 'index.html', 'plumbmark.html', 'SHA256SUMS'].includes(path));
  assert.deepEqual(listed.toSorted(), ['./', ...held].toSorted());
});

test('what is told of security names tests that there are', () => {
  const told = readFileSync(join(DIST, '../SECURITY.md'), 'utf8');
  const named = [...told.matchAll(/`([\w-]+\.test\.mjs|(?:tests|web)\/[\w./-]+)`/g)].map(([, path]) => path);
  assert.ok(named.length > 20);
  for (const path of named.filter((path) => !path.startsWith('web/dist')))
    assert.ok(existsSync(join(DIST, '../..', path.includes('/') ? path : `tests/browser/${path}`)), path);
});

describe('what is shipped', () => {
  const sha256 = (content) => createHash('sha256').update(content).digest('hex');
  const file = (path) => readFileSync(join(DIST, path));
  const sums = file('SHA256SUMS').toString();
  const lines = sums
    .trim()
    .split('\n')
    .map((line) => line.split('  '));

  test('every file stands in SHA256SUMS with its sum', () => {
    const held = readdirSync(DIST, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => relative(DIST, join(entry.parentPath, entry.name)).split(sep).join('/'))
      .filter((path) => path !== 'SHA256SUMS');
    assert.deepEqual(
      lines.map(([, path]) => path),
      held.toSorted(),
    );
    for (const [sum, path] of lines) assert.equal(sha256(file(path)), sum, path);
  });

  test('the version is the sum of all that, as it is without one; the page shows it whole', async (t) => {
    const { page } = await open(t);
    await tap(page, 'settings');
    const [version] = (await page.textContent('[data-name="version"]')).match(/\d+\.\d+\.\d+\+[0-9a-f]{64}/);
    const script = /(?<=<script type="module">)[\s\S]*?(?=<\/script>)/;
    const known = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
    const without = ([, path]) => {
      const content = file(path);
      if (!/\.(js|html)$/.test(path)) return sha256(content);
      const text = content.toString().replaceAll(version, 'unbuilt');
      if (path !== 'plumbmark.html') return sha256(text);
      // The policy in it knows the script by its hash.
      return sha256(text.replace(known(content.toString().match(script)[0]), known(text.match(script)[0])));
    };
    const all = lines.map((line) => `${without(line)}  ${line[1]}\n`).join('');
    assert.equal(version.split('+')[1], sha256(all));
    await page.goBack();
    await page.waitForSelector('[data-screen="start"]');
    assert.ok((await page.textContent('[data-screen="start"]')).includes(version.slice(0, -52)));
  });
});

describe('installing', () => {
  const manifest = JSON.parse(readFileSync(join(DIST, 'manifest.webmanifest'), 'utf8'));

  test('the manifest says where the page starts and how it shows', () => {
    assert.equal(manifest.start_url, './');
    assert.equal(manifest.scope, './');
    assert.equal(manifest.display, 'standalone');
    assert.ok(manifest.name && manifest.short_name);
  });

  test('every icon is there, in the size that is promised, one of them maskable', () => {
    const touch = readFileSync(join(DIST, 'index.html'), 'utf8').match(/apple-touch-icon" href="([^"]*)"/)[1];
    const icons = [...manifest.icons, { src: touch, sizes: '180x180', type: 'image/png' }];
    for (const { src, sizes, type } of icons) {
      assert.ok(existsSync(join(DIST, src)), `${src} is missing`);
      if (type !== 'image/png') continue;
      const bytes = readFileSync(join(DIST, src));
      assert.equal(bytes.toString('latin1', 1, 4), 'PNG', src);
      assert.equal(bytes.toString('latin1', 12, 16), 'IHDR', src);
      assert.equal(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`, sizes, src);
    }
    assert.ok(manifest.icons.some((icon) => icon.purpose?.split(' ').includes('maskable')));
  });

  test('the browser finds nothing against installing', async (t) => {
    const { context, page } = await open(t);
    await workerActive(page);
    await page.reload();
    await page.waitForSelector('[data-screen="start"]');
    const cdp = await context.newCDPSession(page);
    const { errors } = await cdp.send('Page.getAppManifest');
    assert.deepEqual(errors, []);
    const { installabilityErrors } = await cdp.send('Page.getInstallabilityErrors');
    const found = installabilityErrors.filter((e) => e.errorId !== 'in-incognito');
    assert.deepEqual(found, []);
  });
});
