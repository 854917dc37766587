// A real sensor's recording through the page: rest, movement, rest of BROAD trial 04 (D. Laidig
// et al., Data 6(7):72, 2021, CC BY 4.0), played as events in the try-out after a browser's
// rounding, against the optical reference that came with it.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { launch, REFERENCE, served, tap, toLive } from './harness.mjs';

/** Seconds of the recording: its flag says moving from 53.4 to 78.3. */
const [FROM_MS, TO_MS] = [49_500, 82_500];
/** Core's own allowance for rest that the flag does not know; see recording.rs. */
const ONSET_MS = 500;

const server = served();

test('at rest the reference lies inside, while moved nothing is shown', async () => {
  const csv = readFileSync(join(REFERENCE, 'broad-04-stream.csv'), 'utf8');
  const lines = csv.split('\n').filter((line) => line && !line.startsWith('#'));
  const cells = lines.slice(1).map((line) => line.split(',').map((cell) => (cell ? Number(cell) : null)));
  const part = cells.filter(([t]) => t >= FROM_MS && t <= TO_MS);
  const slice = [lines[0], ...part.map((row) => row.join(','))].join('\n');

  const b = await launch();
  const { page } = b;
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  await tap(page, 'tryout');
  await page.waitForSelector('[data-screen="parts"]');
  await toLive(page, 'heater', ['head', 'head']);
  await page.setInputFiles('.tryout input[type="file"]', {
    name: 'trace.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(slice),
  });
  const seen = await page.evaluate(
    (last) =>
      new Promise((done) => {
        const seen = [];
        const strip = document.querySelector('.tryout');
        const look = () => {
          const row = Number(strip.dataset.row);
          const number = (selector) => {
            const words =
              document.querySelector(`[data-check="heater_outlet"] ${selector}`)?.textContent ?? '';
            return words === '' ? null : Number(words.replace('−', '-').replace(/[^-\d.]/g, ''));
          };
          if (Number.isFinite(row)) seen.push([row, number('.value'), number('.u')]);
          if (row >= last - 1) done(seen);
          else requestAnimationFrame(look);
        };
        look();
      }),
    part.length,
  );
  await b.close();

  const flagFrom = part.find((row) => row[7] === 1)[0];
  let [rest, onset, moving, worst] = [0, 0, 0, 0];
  for (const [row, value, u] of seen) {
    if (value === null) continue;
    const [t, , , , ux, uy, uz, flag] = part[row];
    if (flag === 1 && t - flagFrom > ONSET_MS) moving += 1;
    else if (flag === 1) onset += 1;
    if (ux === null) continue;
    rest += flag === 1 ? 0 : 1;
    // Elevation of the sensor's y axis, which is the phone's long edge.
    const reference = (Math.atan2(uy, Math.hypot(ux, uz)) * 180) / Math.PI;
    const error = Math.abs(value - reference);
    worst = Math.max(worst, error);
    assert.ok(error <= u, `at ${t} ms: ${value}° ± ${u}°, reference ${reference.toFixed(2)}°`);
  }
  console.log(`trace: ${rest} frames at rest, ${onset} at the onset, largest error ${worst.toFixed(2)}°`);
  assert.ok(rest > 60, `${rest} frames with a reading at rest`);
  assert.equal(moving, 0, 'frames with a number while the sensor was moved');
});
