// A short job by keys alone: every tap is Tab, Enter, Space or an arrow. What has the focus is in
// sight and ringed, the way through a screen follows its looks and ends, and no redrawing loses the
// focus.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { measuring, open } from './access-walk.mjs';
import { served, tap, waitReason } from './harness.mjs';
import { home, openStart } from './record-page.mjs';

const server = served();

/** What has the focus: its names, its ring, whether something lies over it. */
const focused = (page) =>
  page.evaluate(() => {
    const el = document.activeElement;
    const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(el);
    const box = el.getBoundingClientRect();
    const over = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
    const data = el.dataset;
    return {
      name: data.action ?? data.name ?? data.field ?? (el.id || `${el.tagName} ${el.value ?? ''}`.trim()),
      tag: el.tagName,
      ring: outlineStyle === 'none' ? 0 : Number.parseFloat(outlineWidth),
      colour: outlineColor,
      paper: getComputedStyle(document.documentElement).backgroundColor,
      top: box.top + scrollY,
      inFoot: Boolean(el.closest('footer')),
      seen: el.contains(over) || Boolean(over?.closest('label')?.contains(el)),
    };
  });

/** Contrast of two colours as WCAG 2.2 defines it. */
function contrast(a, b) {
  const light = (colour) => {
    const [r, g, bl] = colour.match(/[\d.]+/g).map((v) => {
      const s = Number(v) / 255;
      return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * bl;
  };
  const [high, low] = [light(a), light(b)].sort((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
}

/** Tab by Tab to what is wanted; every stop on the way must be seen, and come in the order of sight. */
async function tabTo(page, wanted, key = 'Tab') {
  const passed = [];
  for (let i = 0; i < 120; i += 1) {
    await page.keyboard.press(key);
    const at = await focused(page);
    // The heading takes the focus of a new screen, but is nothing to act on.
    if (at.tag === 'BODY' || at.tag === 'H1') continue;
    assert.ok(at.ring >= 3, `${at.name}: a ring of ${at.ring} px`);
    assert.ok(contrast(at.colour, at.paper) >= 3, `${at.name}: ${at.colour} on ${at.paper}`);
    assert.ok(at.seen, `${at.name} is covered`);
    const before = passed.at(-1);
    if (before && key === 'Tab' && at.inFoot === before.inFoot && at.name !== 'back')
      assert.ok(at.top >= before.top - 70, `${at.name} stands above ${before.name}`);
    if (at.name === wanted) return;
    passed.push(at);
  }
  assert.fail(`${wanted} is not reached: ${passed.map((p) => p.name).join(', ')}`);
}

/** To a button and on it. */
async function press(page, action, key = 'Enter') {
  await tabTo(page, action);
  await page.keyboard.press(key);
}

/** The new screen's heading has the focus. */
async function arrived(page, screen) {
  await page.waitForSelector(`[data-screen="${screen}"]`);
  const tag = await page.evaluate(() => document.activeElement.tagName);
  assert.equal(tag, 'H1', `${screen}: ${tag} has the focus`);
}

test('a pump captured, a number typed, a fact told, the record signed, by keys alone', async (t) => {
  const b = await measuring(t, server);
  const { page } = b;
  await press(page, 'allow');
  await arrived(page, 'parts');
  await press(page, 'part-pump');
  await arrived(page, 'hold');
  await press(page, 'hold-next');
  await arrived(page, 'ends');
  await press(page, 'end-tail', 'Space');
  await arrived(page, 'live');
  await waitReason(page, '');
  await press(page, 'capture');
  await arrived(page, 'captured');
  await page.waitForSelector('.saved:not([data-saved="no"])');
  // Escape is the way back, from screen to screen.
  await press(page, 'where');
  await arrived(page, 'details');
  await page.keyboard.press('Escape');
  await arrived(page, 'captured');
  for (let i = 0; i < 6 && !(await page.$('[data-screen="parts"]')); i += 1) {
    await page.keyboard.press('Escape');
    await page.waitForTimeout(150);
  }
  await arrived(page, 'parts');
  await press(page, 'section-place');
  await arrived(page, 'place');
  await tabTo(page, 'top_mm');
  await page.keyboard.type('92');
  await tabTo(page, 'bottom_mm');
  assert.equal(await page.inputValue('[data-name="top_mm"]'), '92');
  // A fact: what asks takes the place of the button, and the focus with it.
  await press(page, 'tick-nothing_stored');
  await page.waitForSelector('#t-nothing_stored-who');
  assert.equal((await focused(page)).name, 't-nothing_stored-who');
  await page.keyboard.type('Ada');
  await tabTo(page, 't-nothing_stored-reason');
  await page.keyboard.type('seen from the hatch');
  await press(page, 'tick-reason');
  await page.waitForSelector('[data-tick="nothing_stored"][data-done="yes"]');
  assert.equal((await focused(page)).name, 'untick-nothing_stored');
  await page.keyboard.press('Escape');
  await arrived(page, 'parts');
  await press(page, 'record');
  await arrived(page, 'record');
  await tabTo(page, 'installer_name');
  await page.keyboard.type('Ada Weir');
  await page.keyboard.press('Tab');
  await page.waitForSelector('[data-signature="installer"] .saved[data-saved="yes"]');
  assert.deepEqual(b.faults, []);
});

test('what has the focus keeps it while a list is drawn anew, a button shut, a row removed', async (t) => {
  const b = await open(t, server);
  const { page } = b;
  await press(page, 'tape');
  await press(page, 'section-demand');
  await arrived(page, 'demand');
  await tabTo(page, 'add-wall');
  await page.keyboard.press('Enter');
  await tabTo(page, 'remove-row', 'Shift+Tab');
  await page.keyboard.press('Enter');
  await page.waitForSelector('[data-action="undo-heat_loss"]');
  assert.equal((await focused(page)).name, 'undo-heat_loss');
  await page.keyboard.press('Enter');
  await page.waitForSelector('[data-action="undo-heat_loss"]', { state: 'detached' });
  assert.notEqual((await focused(page)).tag, 'BODY');
  // Radios by arrows.
  await page.keyboard.press('Escape');
  await arrived(page, 'parts');
  await tabTo(page, 'INPUT whole');
  await page.keyboard.press('ArrowDown');
  assert.equal((await focused(page)).name, 'INPUT angles');
  await page.waitForSelector('[data-action="section-place"]', { state: 'detached' });
  assert.equal((await focused(page)).name, 'INPUT angles');
});

test('the button for a capture has the focus again when there is a reading again', async (t) => {
  const b = await measuring(t, server);
  const { page, pose } = b;
  await press(page, 'allow');
  await arrived(page, 'parts');
  await press(page, 'part-pump');
  await arrived(page, 'hold');
  await press(page, 'hold-next');
  await arrived(page, 'ends');
  await press(page, 'end-tail');
  await waitReason(page, '');
  await tabTo(page, 'capture');
  pose.noise = 6;
  await page.waitForSelector('[data-screen="live"]:not([data-reason=""])');
  await page.waitForTimeout(300);
  pose.noise = 0.02;
  await waitReason(page, '');
  await page.waitForTimeout(200);
  assert.equal((await focused(page)).name, 'capture');
});

test('no screen holds the focus: Tab comes to its end and round again', async (t) => {
  const b = await open(t, server);
  const { page } = b;
  for (const action of ['settings', 'jobs', 'limits', 'captures']) {
    await tap(page, action);
    await page.waitForSelector(`[data-screen="${action}"]`);
    await tabTo(page, 'back');
    await page.keyboard.press('Tab');
    await tabTo(page, 'back');
    await page.keyboard.press('Escape');
    await page.waitForSelector('[data-screen="start"]');
  }
});

test('a name typed in place of a signature is kept, and goes with Clear', async (t) => {
  const { page } = await openStart(t, server);
  const toRecord = async () => {
    await tap(page, 'tape');
    await tap(page, 'record');
    await page.waitForSelector('#s-customer');
  };
  await toRecord();
  await page.fill('#s-customer', 'Weir Lane depot');
  await page.press('#s-customer', 'Tab');
  await page.waitForSelector('[data-signature="customer"] .saved[data-saved="yes"]');
  await home(page);
  await toRecord();
  assert.equal(await page.inputValue('#s-customer'), 'Weir Lane depot');
  assert.ok((await page.textContent('.record-paper .signatures')).includes('Weir Lane depot'));
  await tap(page, 'clear-customer');
  assert.equal(await page.inputValue('#s-customer'), '');
  await page.waitForSelector('[data-signature="customer"] .saved[data-saved="yes"]');
  await home(page);
  await toRecord();
  assert.equal(await page.inputValue('#s-customer'), '');
});
