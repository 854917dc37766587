// The pictures of how to hold the phone, as the page draws them: lying on its back, on its long
// edge, standing on its short edge, each as its words say.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { launch, sensors, serve, tap } from './harness.mjs';

test('every hold is drawn as its words say', async () => {
  const server = await serve();
  const b = await launch();
  await sensors(b);
  await b.page.goto(server.url);
  await tap(b.page, 'allow');
  const seen = new Set();
  for (const part of ['heater', 'pump', 'filter', 'pipe']) {
    await tap(b.page, `part-${part}`);
    await tap(b.page, 'other-holds');
    await b.page.waitForSelector('[data-action^="hold-"] svg');
    const drawn = await b.page.$$eval('[data-action^="hold-"]:has(svg)', (all) =>
      all.map((el) => {
        const boxes = [...el.querySelectorAll('.phone')].map((p) => p.getBBox());
        const span = (a, size) =>
          Math.max(...boxes.map((x) => x[a] + x[size])) - Math.min(...boxes.map((x) => x[a]));
        const glass = el.querySelector('.phone.glass') !== null;
        return { hold: el.dataset.action, width: span('x', 'width'), height: span('y', 'height'), glass };
      }),
    );
    for (const { hold, width, height, glass } of drawn) {
      const words = `${part} ${hold}: ${width.toFixed(0)} × ${height.toFixed(0)}`;
      // The drawn phone is 52 wide, 108 long, 8 thick; depth adds at most 0.34 of itself upwards.
      if (hold.startsWith('hold-back')) {
        assert.ok(width > 100 && height < 40 && glass, `${words}: flat along the part, screen up`);
      } else if (hold.startsWith('hold-long_edge')) {
        assert.ok(width > 100 && height > 48 && height < 70, `${words}: on edge along the part`);
      } else {
        assert.ok(width < 70 && height > 100, `${words}: standing on its short edge`);
      }
      seen.add(hold.split('-')[1]);
    }
    while (!(await b.page.$('[data-screen="parts"]'))) await b.page.goBack();
  }
  assert.deepEqual([...seen].sort(), ['back', 'long_edge', 'short_edge']);
  await b.close();
  await server.kill();
});
