// Every screen at phone size, upright and across, light and dark: contrast and names by axe, sizes
// of what a glove must hit, nothing that moves or scrolls while measuring. The pictures are for a
// person to look at, in shots/latest.

import assert from 'node:assert/strict';
import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { after, before, test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { targetFaults } from './access-checks.mjs';
import { axe, launch, sensors, serve, tap, upFor, waitReason } from './harness.mjs';
import { keep, toParts } from './rig.mjs';

const SHOTS = join(dirname(fileURLToPath(import.meta.url)), 'shots/latest');

let server;
before(async () => {
  mkdirSync(SHOTS, { recursive: true });
  server = await serve();
});
after(() => server.kill());

/** What sticks out of the screen, px. */
const tooWide = (page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

for (const [width, height] of [
  [360, 740],
  [740, 360],
])
  for (const colorScheme of ['light', 'dark'])
    test(`every screen at ${width}×${height}, ${colorScheme}`, async () => {
      const b = await launch({ viewport: { width, height }, colorScheme });
      const { page } = b;
      const feed = await sensors(b);
      const pose = { deg: -30, roll: 3 };
      const noise = () => [0, 0, 0].map(() => 0.02 * (Math.random() + Math.random() - 1));
      feed.keep(() => ({ up: upFor('back', pose.deg, pose.roll), extra: noise() }));
      const overflow = () => page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
      const look = async (screen, name = screen) => {
        await page.waitForSelector(`[data-screen="${screen}"]`);
        await page.screenshot({ path: join(SHOTS, `${name}-${width}x${height}-${colorScheme}.png`) });
        assert.deepEqual(await axe(page), [], name);
        assert.deepEqual(await targetFaults(page, screen), [], name);
        assert.ok((await tooWide(page)) <= 0, `${name} is wider than the screen`);
      };
      await page.goto(server.url);
      await look('start');
      await tap(page, 'allow');
      await look('parts');
      await tap(page, 'part-heater');
      await look('hold');
      await tap(page, 'hold-next');
      await look('ends');
      await tap(page, 'end-head');
      await tap(page, 'end-head');
      await page.waitForSelector('[data-screen="live"]');
      await waitReason(page, '');
      await look('live', 'live-heater');
      assert.ok((await overflow()) <= 0, `the live screen scrolls by ${await overflow()} px`);
      // Nothing moves while measuring: places stay as the reading comes and goes.
      const places = () =>
        page.evaluate(() =>
          [
            ...document.querySelectorAll(
              '.live button, .live .slot, .live .verdict, .live .does, .live progress',
            ),
          ].map((el) => {
            const { left, top } = el.getBoundingClientRect();
            return `${Math.round(left)} ${Math.round(top)}`;
          }),
        );
      const before = await places();
      feed.keep((t) => ({ up: upFor('back', -30 + 20 * Math.sin(4 * t), 3) }));
      await page.waitForSelector('[data-screen="live"][data-reason="moving"]');
      assert.deepEqual(await places(), before);
      await look('live', 'live-moving');
      feed.keep(() => ({ up: upFor('back', pose.deg, pose.roll), extra: noise() }));
      await waitReason(page, '');
      await tap(page, 'capture');
      await page.waitForSelector('.saved:not([data-saved="no"])');
      await look('captured');
      await tap(page, 'where');
      await look('details');
      await page.goBack();
      await tap(page, 'next');
      for (const [name, deg] of [
        ['live-pump-within', 25],
        ['live-pump-not-proven', 15.4],
        ['live-pump-beyond', 6],
      ]) {
        pose.deg = deg;
        pose.roll = 0;
        if (await page.$('[data-screen="hold"]')) {
          await tap(page, 'hold-next');
          await tap(page, 'end-tail');
        }
        await page.waitForSelector('[data-screen="live"]');
        await page.waitForFunction(
          (deg) =>
            Math.abs(Number.parseFloat(document.querySelector('.value')?.textContent ?? '') - deg) < 0.6,
          deg,
        );
        await look('live', name);
        assert.ok((await overflow()) <= 0, name);
      }
      await tap(page, 'capture');
      await page.waitForSelector('.saved:not([data-saved="no"])');
      await page.reload();
      await tap(page, 'allow');
      await tap(page, 'phone');
      await look('phone');
      await tap(page, 'turn');
      Object.assign(pose, { deg: 1, roll: 1 });
      await keep(page);
      await look('turn', 'turn-second');
      await keep(page);
      await look('turn', 'turn-refused');
      await page.goBack();
      await tap(page, 'poses');
      await keep(page, 'keep-pose', 'poses');
      await look('poses');
      await toParts(page);
      await tap(page, 'level');
      await keep(page, 'keep-level', 'level');
      await look('level');
      await tap(page, 'vehicle');
      await page.fill('#f-working_lengthwise_deg', '10');
      await tap(page, 'save-vehicle');
      await look('vehicle');
      await toParts(page);
      await look('parts', 'parts-level');
      await tap(page, 'part-heater');
      await look('hold', 'hold-pointing');
      pose.deg = -30;
      await tap(page, 'hold-next');
      await tap(page, 'end-head');
      await tap(page, 'end-head');
      await page.waitForSelector('[data-screen="live"]');
      await waitReason(page, '');
      await look('live', 'live-in-vehicle');
      assert.ok((await overflow()) <= 0, `in the vehicle: the live screen scrolls by ${await overflow()} px`);
      await tap(page, 'turn-part');
      await waitReason(page, 'not_turned');
      await look('live', 'live-turning');
      assert.ok((await overflow()) <= 0, `while turning it scrolls by ${await overflow()} px`);
      await tap(page, 'cancel-turn');
      await waitReason(page, '');
      await tap(page, 'capture');
      await page.waitForSelector('.saved:not([data-saved="no"])');
      await look('captured', 'captured-in-vehicle');
      await page.reload();
      for (const action of ['captures', 'limits', 'settings']) {
        await tap(page, action);
        await look(action);
        await page.goBack();
        await page.waitForSelector('[data-screen="start"]');
      }
      feed.stop();
      assert.deepEqual(b.faults, []);
      await b.close();
    });
