// Every screen of the page and its states, light and dark: axe with AAA's contrast, one heading,
// what a glove must hit and how far apart, nothing that moves by itself. A screen that the code knows
// and no way leads to fails.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { motionFaults, outlineFaults, targetFaults } from './access-checks.mjs';
import { FIRST, open, screenNames, screenOf, WAYS, walk } from './access-walk.mjs';
import { axe, served } from './harness.mjs';

const server = served();

test('there is a way to every screen that the code knows', async () => {
  const names = await screenNames();
  assert.ok(names.length >= 52, `${names.length} screens`);
  const reached = new Set([...Object.keys(FIRST), ...Object.keys(WAYS)].map(screenOf));
  assert.deepEqual(
    names.filter((name) => !reached.has(name)),
    [],
    'no way in access-walk.mjs',
  );
  assert.deepEqual(
    [...reached].filter((name) => !names.includes(name)),
    [],
    'no such screen',
  );
});

for (const colorScheme of ['light', 'dark'])
  test(`every screen, ${colorScheme}: axe`, async (t) => {
    const { page } = await open(t, server, { colorScheme });
    const faults = [];
    await walk(page, async (name) => faults.push(...(await axe(page)).map((f) => `${name}: ${f}`)));
    assert.deepEqual(faults, []);
  });

test('every screen: targets, headings, nothing moves', async (t) => {
  const b = await open(t, server, { reducedMotion: 'reduce' });
  const faults = [];
  await walk(b.page, async (name) => {
    const found = await targetFaults(b.page, screenOf(name));
    found.push(...(await outlineFaults(b.page)), ...(await motionFaults(b.page)));
    faults.push(...found.map((f) => `${name}: ${f}`));
  });
  assert.deepEqual(faults, []);
  assert.deepEqual(b.faults, []);
});
