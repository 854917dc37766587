// What every browser test stands on: a server that can be killed, Chromium, sensors fed through
// the browser's own overrides so that its own rounding applies.

import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { after, afterEach, before } from 'node:test';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';

const here = dirname(fileURLToPath(import.meta.url));
export const DIST = join(here, '../../web/dist');
export const REFERENCE = join(here, '../reference');
const CHROMIUM = process.env.PLUMBMARK_CHROMIUM ?? '/usr/bin/chromium';
export const FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--autoplay-policy=no-user-gesture-required',
];
const PHONE = { width: 360, height: 740 };

async function freePort() {
  const probe = createServer();
  await new Promise((done) => probe.listen(0, '127.0.0.1', () => done(undefined)));
  const { port } = probe.address();
  await new Promise((done) => probe.close(() => done(undefined)));
  return port;
}

/** The page's server as a process of its own. */
export async function serve({ dist = DIST, port } = {}) {
  const used = port ?? (await freePort());
  const child = spawn(process.execPath, [join(here, '../../web/serve.mjs')], {
    env: { ...process.env, PORT: String(used), PLUMBMARK_DIST: dist },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  await new Promise((done, fail) => {
    child.stdout.once('data', done);
    child.once('exit', () => fail(new Error('the server did not start')));
  });
  return {
    port: used,
    url: `http://localhost:${used}/`,
    async kill() {
      if (child.exitCode !== null || child.signalCode !== null) return;
      const gone = new Promise((done) => child.once('exit', done));
      child.kill('SIGKILL');
      await gone;
    },
  };
}

/** A server for all tests of a file. */
export function served() {
  let server;
  before(async () => {
    server = await serve();
  });
  after(() => server.kill());
  return {
    get url() {
      return server.url;
    },
  };
}

/** Browsers of the test that runs; a failed test must not leave one behind. */
const open = new Set();
afterEach(() => Promise.all([...open].map((browser) => browser.close())));

/** A browser with a profile of its own, kept between two launches where `profile` is given. */
export async function launch({
  profile,
  viewport = PHONE,
  colorScheme = 'light',
  // Of a country with metres, so that nothing is converted unasked.
  locale = 'en-GB',
  ...more
} = {}) {
  const folder = profile ?? mkdtempSync(join(tmpdir(), 'plumbmark-'));
  const context = await chromium.launchPersistentContext(folder, {
    executablePath: CHROMIUM,
    args: FLAGS,
    viewport,
    colorScheme,
    locale,
    ...more,
  });
  const page = context.pages()[0] ?? (await context.newPage());
  const faults = [];
  page.on('pageerror', (error) => faults.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  const browser = {
    context,
    page,
    profile: folder,
    /** Errors the page has thrown or logged. */
    faults,
    async close() {
      if (!open.delete(browser)) return;
      await context.close();
      if (!profile) rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
    },
  };
  open.add(browser);
  return browser;
}

const ALL = ['accelerometer', 'linear-acceleration', 'gyroscope', 'relative-orientation'];

/** Quaternion of W3C angles (Z-X'-Y''), degrees. */
function quaternion(alpha, beta, gamma) {
  const half = (deg) => (deg * Math.PI) / 360;
  const [a, b, g] = [half(alpha), half(beta), half(gamma)];
  const { sin: S, cos: C } = Math;
  return {
    w: C(b) * C(g) * C(a) - S(b) * S(g) * S(a),
    x: S(b) * C(g) * C(a) - C(b) * S(g) * S(a),
    y: C(b) * S(g) * C(a) + S(b) * C(g) * S(a),
    z: C(b) * C(g) * S(a) + S(b) * S(g) * C(a),
  };
}

/** β, γ of an up vector in the device frame. Independent of the page's own. */
export function anglesOfUp([x, y, z]) {
  const beta = (Math.atan2(y, Math.hypot(x, z)) * 180) / Math.PI;
  const gamma = (Math.atan2(-x, z) * 180) / Math.PI;
  return [beta, gamma];
}

/** Sensors over the browser's own overrides. Enable before the page listens. */
export async function sensors(browser, types = ALL) {
  const cdp = await browser.context.newCDPSession(browser.page);
  const metadata = { available: true, minimumFrequency: 1, maximumFrequency: 60 };
  for (const type of types) {
    await cdp.send('Emulation.setSensorOverrideEnabled', { enabled: true, type, metadata });
  }
  for (const type of ALL.filter((t) => !types.includes(t))) {
    await cdp.send('Emulation.setSensorOverrideEnabled', {
      enabled: true,
      type,
      metadata: { ...metadata, available: false },
    });
  }
  const put = (type, reading) =>
    cdp.send('Emulation.setSensorOverrideReadings', { type, reading }).catch(() => {});
  let pump;
  const feed = {
    /** One pose: up vector in the device frame; `extra` is added to the acceleration. */
    async pose(up, { g = 9.80665, extra = [0, 0, 0], fused = up, alpha = 0 } = {}) {
      const [x, y, z] = up.map((v, i) => g * v + extra[i]);
      const wanted = [];
      if (types.includes('accelerometer')) wanted.push(put('accelerometer', { xyz: { x, y, z } }));
      if (types.includes('linear-acceleration'))
        wanted.push(put('linear-acceleration', { xyz: { x: 0, y: 0, z: 0 } }));
      if (types.includes('gyroscope')) wanted.push(put('gyroscope', { xyz: { x: 0, y: 0, z: 0 } }));
      if (types.includes('relative-orientation')) {
        const [beta, gamma] = anglesOfUp(fused);
        wanted.push(put('relative-orientation', { quaternion: quaternion(alpha, beta, gamma) }));
      }
      await Promise.all(wanted);
    },
    /** Keeps feeding `pose(t_s)` about 60 times a second until stopped. */
    keep(pose) {
      feed.stop();
      const start = performance.now();
      let busy = false;
      pump = setInterval(async () => {
        if (busy) return;
        busy = true;
        const next = pose((performance.now() - start) / 1000);
        await feed.pose(next.up, next);
        busy = false;
      }, 16).unref();
    },
    stop() {
      clearInterval(pump);
      pump = undefined;
    },
    /** The sensors vanish while the page listens. */
    async lose() {
      feed.stop();
      for (const type of types)
        await cdp.send('Emulation.setSensorOverrideEnabled', { enabled: false, type });
    },
  };
  return feed;
}

/** Up in the device frame for a hold, with the part's head end raised by `deg` and rolled.
 * Written from the words of the holds, not from the core's matrices. */
export function upFor(hold, deg, rollDeg = 0) {
  const [s, c] = [Math.sin((deg * Math.PI) / 180), Math.cos((deg * Math.PI) / 180)];
  const [sr, cr] = [Math.sin((rollDeg * Math.PI) / 180), Math.cos((rollDeg * Math.PI) / 180)];
  // Back: top edge to the head end, screen up; left side of the phone is body y.
  if (hold === 'back') return [-c * sr, s, c * cr];
  // Right long edge down: the phone's left side looks up.
  if (hold === 'long_edge') return [-c * cr, s, -c * sr];
  // Bottom edge down: the phone stands, right side to the head end.
  return [s, c * cr, -c * sr];
}

/** The same phone turned by half about the normal of what it lies on: a half turn keeps what lies
 * along the axis and turns the rest round. */
export function endForEnd(hold, up) {
  const along = { back: 2, long_edge: 0, short_edge: 1 }[hold];
  return up.map((v, i) => (i === along ? v : -v));
}

/** Synthetic events with any precision and sign, as an engine that does not round would send. */
export async function synthetic(page, { a, angles = null, alpha = 0, hz = 60 }) {
  await page.evaluate(
    ({ a, angles, alpha, hz }) => {
      clearInterval(window.syntheticPump);
      if (!a) return;
      window.syntheticPump = setInterval(() => {
        if (angles)
          dispatchEvent(
            new DeviceOrientationEvent('deviceorientation', { alpha, beta: angles[0], gamma: angles[1] }),
          );
        const n = () => 0.01 * (Math.random() + Math.random() + Math.random() - 1.5);
        const [x, y, z] = a.map((v) => (v === null ? null : v + n()));
        dispatchEvent(
          new DeviceMotionEvent('devicemotion', {
            accelerationIncludingGravity: { x, y, z },
            interval: 1 / hz,
          }),
        );
      }, 1000 / hz);
    },
    { a, angles, alpha, hz },
  );
}

/** Every request the browser makes. */
export function collectRequests(context) {
  const urls = [];
  context.on('request', (request) => urls.push(request.url()));
  return urls;
}

const axeSource = readFileSync(join(here, 'node_modules/axe-core/axe.min.js'), 'utf8');

/** axe at AA, with AAA's contrast; returns readable violations. */
export async function axe(page) {
  await page.evaluate(axeSource);
  return page.evaluate(async () => {
    // A bar that stays in sight lies over what can be scrolled from under it; axe takes that for a
    // target too small.
    const bars = document.querySelectorAll('footer');
    for (const bar of bars) bar.style.position = 'static';
    const found = await window.axe.run(document, {
      runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] },
      rules: { 'color-contrast-enhanced': { enabled: true } },
    });
    for (const bar of bars) bar.style.position = '';
    return found.violations.map(
      (v) => `${v.id}: ${v.nodes.map((n) => `${n.target} ${n.failureSummary}`).join('; ')}`,
    );
  });
}

/** Taps what carries the action. */
export const tap = (page, action) => page.click(`[data-action="${action}"]:visible`);

/** Waits until the live screen, or another one, has a reading, or a named reason for none. */
export const waitReason = (page, reason, { timeout = 15_000, screen = 'live' } = {}) =>
  page.waitForSelector(`[data-screen="${screen}"][data-reason="${reason}"]`, { timeout });

/** Moves the page's wall clock on, by ms; from then on, over reloads too. */
export async function later(page, ms) {
  const shift = (by) => {
    const now = Date.now;
    Date.now = () => now() + by;
  };
  await page.addInitScript(shift, ms);
  await page.evaluate(shift, ms);
}

/** From the first screen to the live one. `answers` in the order of the questions. */
export async function toLive(page, part, answers, { hold, surface } = {}) {
  if (await page.$('[data-screen="start"]')) await tap(page, 'allow');
  await page.waitForSelector('[data-screen="parts"], [data-screen="hold"]');
  if (await page.$('[data-screen="parts"]')) await tap(page, `part-${part}`);
  if (hold) {
    await tap(page, 'other-holds');
    await tap(page, `hold-${hold}-${surface}`);
    // With the level read, which way the part points is asked with the hold.
    await page.waitForSelector('[data-screen="ends"], [data-screen="live"], [data-action="hold-next"]');
    if (await page.$('[data-action="hold-next"]')) await tap(page, 'hold-next');
  } else await tap(page, 'hold-next');
  for (const answer of answers) {
    await page.waitForSelector('[data-screen="ends"]');
    await tap(page, `end-${answer}`);
  }
  await page.waitForSelector('[data-screen="live"]');
}
