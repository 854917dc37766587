// What a screen reader gets: a verdict said once it stands still, in words, without chatter; names,
// roles and states in the browser's own accessibility tree.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { measuring, open } from './access-walk.mjs';
import { served, tap, toLive, waitReason } from './harness.mjs';
import { toSection } from './plan-page.mjs';

const server = served();

const AT_REST = ['pump', ['tail']];

/** Everything that live regions say from now on. */
const listen = (page) =>
  page.evaluate(() => {
    window.said = [];
    const region = '[aria-live], [role="status"], [role="alert"]';
    new MutationObserver((changes) => {
      const regions = new Set(
        changes.map(({ target }) => (target.closest ? target : target.parentElement)?.closest(region)),
      );
      for (const el of regions)
        if (el?.checkVisibility() && el.textContent.trim()) window.said.push(el.textContent);
    }).observe(document.body, { childList: true, subtree: true, characterData: true });
  });
const said = (page) => page.evaluate(() => window.said);

/** The accessibility tree as lines of role, name and states. */
async function tree(b) {
  const cdp = await b.context.newCDPSession(b.page);
  const { nodes } = await cdp.send('Accessibility.getFullAXTree');
  await cdp.detach();
  return nodes
    .filter((n) => !n.ignored)
    .map((n) => ({
      role: n.role?.value,
      name: n.name?.value ?? '',
      description: n.description?.value ?? '',
      ...Object.fromEntries((n.properties ?? []).map((p) => [p.name, p.value.value])),
    }));
}
const find = (nodes, role, name) => nodes.find((n) => n.role === role && name.test(n.name));

/** Controls and pictures without a name. */
const nameless = (nodes) =>
  nodes.filter(
    (n) => /^(button|link|textbox|combobox|checkbox|radio|img|image|progressbar)$/.test(n.role) && !n.name,
  );

test('ten seconds of a noisy reading are said at most twice, in words', async (t) => {
  const b = await measuring(t, server);
  const { page, pose } = b;
  pose.noise = 0.08;
  await toLive(page, ...AT_REST);
  await listen(page);
  await waitReason(page, '');
  await page.waitForTimeout(10_000);
  const heard = await said(page);
  assert.ok(heard.length >= 1 && heard.length <= 2, JSON.stringify(heard));
  const last = heard.at(-1);
  assert.match(last, /^Pump outlet.*: within/, last);
  assert.match(last, /2[45]\.\d degrees, plus or minus \d\.\d degrees/, last);
  assert.doesNotMatch(last, /[°±−]/, last);
  assert.ok(last.length > 60, `what to do is said too: ${last}`);
});

test('a reading on the limit does not chatter; a new verdict is said; a reason once', async (t) => {
  const b = await measuring(t, server);
  const { page, pose } = b;
  await toLive(page, ...AT_REST);
  await waitReason(page, '');
  await page.waitForTimeout(2500);
  await listen(page);
  pose.deg = 6;
  await page.waitForFunction(() => window.said.some((words) => words.includes('beyond')), null, {
    timeout: 12_000,
  });
  for (let i = 0; i < 3; i += 1) {
    pose.noise = 6;
    await page.waitForSelector('[data-screen="live"]:not([data-reason=""])');
    await page.waitForTimeout(2200);
    pose.noise = 0.02;
    await waitReason(page, '');
    await page.waitForTimeout(300);
  }
  const heard = await said(page);
  const reasons = heard.filter((words) => !/within|beyond|not proven|no verdict/.test(words));
  assert.equal(new Set(reasons).size, reasons.length, JSON.stringify(heard));
});

test('live: one heading, the drawing says verdict and angle, the button its state', async (t) => {
  const b = await measuring(t, server);
  await toLive(b.page, ...AT_REST);
  await waitReason(b.page, '');
  await b.page.waitForTimeout(600);
  const nodes = await tree(b);
  assert.deepEqual(nameless(nodes), []);
  assert.equal(nodes.filter((n) => n.role === 'heading' && n.level === 1).length, 1);
  assert.ok(find(nodes, 'main', /.*/), 'a main landmark');
  const drawing = find(nodes, 'image', /Pump outlet/) ?? find(nodes, 'img', /Pump outlet/);
  assert.match(drawing?.name ?? '', /2[45]\.\d degrees, plus or minus .* degrees, within/);
  assert.ok(!find(nodes, 'button', /^Capture$/).disabled);
  assert.ok(find(nodes, 'button', /Back/i), 'the way back has a name');
});

test('captured: said after its heading; names and levels', async (t) => {
  const b = await measuring(t, server);
  const { page } = b;
  await toLive(page, ...AT_REST);
  await waitReason(page, '');
  await tap(page, 'capture');
  await page.waitForSelector('[data-screen="captured"]');
  await page.waitForFunction(() => /degrees/.test(document.querySelector('.sr[aria-live]')?.textContent));
  assert.match(await page.textContent('.sr[aria-live]'), /within.*plus or minus/);
  const nodes = await tree(b);
  assert.deepEqual(nameless(nodes), []);
  assert.ok(find(nodes, 'heading', /Pump outlet/));
});

test('the job: each row says its part and how it stands; radios their state', async (t) => {
  const b = await open(t, server);
  await tap(b.page, 'tryout');
  await tap(b.page, 'demo');
  await b.page.waitForSelector('.parts .caution');
  await b.page.waitForFunction(() => !document.querySelector('.parts .summary')?.textContent.match(/^$/));
  const nodes = await tree(b);
  assert.deepEqual(nameless(nodes), []);
  assert.match(find(nodes, 'button', /^Place/)?.name ?? '', /within|not proven|beyond|not checked/);
  assert.equal(nodes.filter((n) => n.role === 'radio' && n.checked === 'true').length, 1);
});

test('a picture of the tape-measure half is described by what came of it', async (t) => {
  const b = await open(t, server);
  await tap(b.page, 'tryout');
  await tap(b.page, 'demo');
  await b.page.waitForSelector('.parts .caution');
  await tap(b.page, 'section-place');
  await b.page.waitForSelector('.check');
  const picture = (await tree(b)).find((n) => /^ima?ge?$/.test(n.role));
  assert.match(picture.description, /within|not proven|beyond/);
  assert.match(picture.description, /plus or minus/);
});

test('a number that is none: the field says so, and why', async (t) => {
  const b = await open(t, server);
  await toSection(b.page, 'place');
  await b.page.locator('[data-name="top_mm"]').first().fill('7o');
  await b.page.waitForSelector('[data-field="top_mm"] .trouble:not([hidden])');
  const nodes = await tree(b);
  const field = nodes.find((n) => n.role === 'textbox' && n.invalid === 'true');
  assert.ok(field, 'it is marked as wrong');
  assert.match(field.description, /number/i);
});
