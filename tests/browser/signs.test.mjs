// Engines that send the opposite sign, or do not round: synthetic events, since the browser here
// does neither. Each enters where real events enter.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { anglesOfUp, launch, served, synthetic, toLive, upFor, waitReason } from './harness.mjs';

const G = 9.80665;
const server = served();

for (const sign of [1, -1])
  test(`unrounded values with sign ${sign} are read the right way up`, async () => {
    const b = await launch();
    await b.page.goto(server.url);
    await b.page.waitForSelector('[data-screen="start"]');
    const up = upFor('long_edge', 27.3);
    await synthetic(b.page, { a: up.map((v) => sign * G * v), angles: anglesOfUp(up) });
    await toLive(b.page, 'pump', ['tail'], { hold: 'long_edge', surface: 'round_body' });
    await waitReason(b.page, '');
    const value = Number((await b.page.textContent('.value')).replace('°', ''));
    assert.ok(Math.abs(value - 27.3) < 0.2, `${value}`);
    assert.equal(await b.page.getAttribute('.slot .verdict', 'data-verdict'), 'within');
    await b.close();
  });

test('a sign that turns over stops the reading until it is learnt again', async () => {
  const b = await launch();
  await b.page.goto(server.url);
  await b.page.waitForSelector('[data-screen="start"]');
  const up = upFor('long_edge', 27.3);
  const feed = (sign) => synthetic(b.page, { a: up.map((v) => sign * G * v), angles: anglesOfUp(up) });
  await feed(1);
  await toLive(b.page, 'pump', ['tail'], { hold: 'long_edge', surface: 'round_body' });
  await waitReason(b.page, '');
  await feed(-1);
  await waitReason(b.page, 'sign_flipped');
  assert.equal(await b.page.textContent('.value'), '');
  await b.page.click('[data-action="sign"]');
  await waitReason(b.page, '');
  await b.close();
});

test('a core that traps shows no reading and is built anew', async () => {
  const b = await launch();
  // The module's own glue, with one call that traps once.
  await b.context.route('**/pkg/plumbmark_phone.js', async (route) => {
    const answer = await route.fetch();
    const glue = await answer.text();
    const trapping = glue.replace(
      /return (\w+\.tick\()/,
      "if (globalThis.trapNow) { globalThis.trapNow = false; throw new WebAssembly.RuntimeError('unreachable'); } return $1",
    );
    assert.notEqual(trapping, glue, 'the glue has a tick');
    await route.fulfill({ response: answer, body: trapping });
  });
  await b.page.goto(server.url);
  await b.page.waitForSelector('[data-screen="start"]');
  const up = upFor('long_edge', 27.3);
  await synthetic(b.page, { a: up.map((v) => G * v), angles: anglesOfUp(up) });
  await toLive(b.page, 'pump', ['tail'], { hold: 'long_edge', surface: 'round_body' });
  await waitReason(b.page, '');
  const shown = b.page.evaluate(
    () =>
      new Promise((done) => {
        const screen = document.querySelector('[data-screen="live"]');
        new MutationObserver(() => {
          if (screen.dataset.reason)
            done([screen.dataset.reason, screen.querySelector('.value').textContent]);
        }).observe(screen, { attributes: true });
        globalThis.trapNow = true;
      }),
  );
  assert.deepEqual(await shown, ['trapped', '']);
  await waitReason(b.page, '');
  assert.equal(await b.page.getAttribute('.slot .verdict', 'data-verdict'), 'within');
  await b.close();
});
