// A third language is one more file: a page built with one of made-up words, in which every text is
// its English between brackets. What stands outside of brackets is in no catalogue.

import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { after, before, test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { CATALOGUES, messagesOf, sourceOf } from '../../web/catalogue.mjs';
import { ORDER } from '../../web/order.js';
import { launch, sensors, serve, tap, toLive, upFor, waitReason } from './harness.mjs';
import { atJob } from './whole-job.mjs';

const web = join(dirname(fileURLToPath(import.meta.url)), '../../web');
const quoted = (text) => JSON.stringify(text);
const bracketed = (text) => quoted(`[${text}]`);

/** A language with three forms for numbers, as Polish has them (GNU gettext manual, "Plural forms"). */
function madeUp() {
  const head = [
    'Language: pl\\n',
    'Content-Type: text/plain; charset=utf-8\\n',
    'Plural-Forms: nplurals=3; plural=(n==1 ? 0 : n%10>=2 && n%10<=4 && (n%100<10 || n%100>=20) ? 1 : 2);\\n',
  ];
  const entry = (path, { id, plural }) => [
    `msgctxt ${quoted(path)}`,
    `msgid ${quoted(id)}`,
    ...(plural
      ? [
          `msgid_plural ${quoted(plural)}`,
          `msgstr[0] ${bracketed(id)}`,
          `msgstr[1] ${bracketed(`few ${plural}`)}`,
          `msgstr[2] ${bracketed(`many ${plural}`)}`,
        ]
      : [`msgstr ${bracketed(id)}`]),
    '',
  ];
  const entries = CATALOGUES.flatMap((path) => {
    const messages = new Map(messagesOf(sourceOf(path)).map((message) => [message.id, message]));
    return [...messages.values()].flatMap((message) => entry(path, message));
  });
  return ['msgid ""', 'msgstr ""', ...head.map((line) => `"${line}"`), '', ...entries].join('\n');
}

let folder;
let server;
before(async () => {
  folder = mkdtempSync(join(tmpdir(), 'plumbmark-language-'));
  const copy = join(folder, 'web');
  cpSync(web, copy, { recursive: true, filter: (path) => !/node_modules|\/dist/.test(path) });
  symlinkSync(join(web, 'node_modules'), join(copy, 'node_modules'));
  cpSync(join(web, '../Cargo.toml'), join(folder, 'Cargo.toml'));
  writeFileSync(join(copy, 'languages/pl.po'), madeUp());
  execFileSync(process.execPath, [join(copy, 'pack.mjs')]);
  server = await serve({ dist: join(copy, 'dist') });
});
after(async () => {
  await server?.kill();
  rmSync(folder, { recursive: true, force: true });
});

/** Names, units, codes and what the browser says of itself. */
const NO_WORDS =
  /Plumbmark|\d+\.\d+\.\d+\+[0-9a-f]+|English|español|polski|CO₂?|AWG|WHO( Europe)?|NIOSH|OSHA|REL|PEL|ceiling|[0-9a-f]{4}|mg|kg|ppm|min|kB|MB|mm|cm|Pa|kWh?|kJ|Ah|mL|Hz|h|m|s|W|V|A|K|L|°C|mΩ|JSON|CSV|CFR|U|T|B|D|C/;
const LEFT = new RegExp(`^(${NO_WORDS.source}|[^A-Za-z])*$`);

/** Words on the screen that stand in no catalogue. */
async function strays(page) {
  const texts = await page.evaluate(() => {
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const found = [];
    while (walker.nextNode())
      if (!walker.currentNode.parentElement.closest('noscript')) found.push(walker.currentNode.textContent);
    for (const el of document.querySelectorAll('[aria-label], [title], [placeholder], [alt]'))
      for (const name of ['aria-label', 'title', 'placeholder', 'alt'])
        if (el.hasAttribute(name)) found.push(el.getAttribute(name));
    return found;
  });
  const outside = (text) => {
    let rest = text;
    while (/\[[^[\]]*\]/.test(rest)) rest = rest.replace(/\[[^[\]]*\]/g, ' ');
    return rest.trim();
  };
  return texts.map(outside).filter((rest) => !LEFT.test(rest));
}

async function open(t) {
  const b = await launch({ locale: 'pl-PL' });
  t.after(() => b.close());
  b.page.setDefaultTimeout(8000);
  await b.page.goto(server.url);
  await b.page.waitForSelector('[data-screen="start"]');
  return b;
}

test('with its file alone, the language is there: words, tenths, three forms for numbers', async (t) => {
  const b = await open(t);
  const { page } = b;
  const feed = await sensors(b);
  t.after(() => feed.stop());
  feed.keep(() => ({ up: upFor('long_edge', 27.3) }));
  assert.equal(await page.getAttribute('html', 'lang'), 'pl');
  assert.deepEqual(await strays(page), [], 'start');
  await toLive(page, 'pump', ['tail'], { hold: 'long_edge', surface: 'round_body' });
  await waitReason(page, '');
  assert.match(await page.textContent('.value'), /^27,\d°$/);
  assert.deepEqual(await strays(page), [], 'live');
  await tap(page, 'capture');
  await page.waitForSelector('.saved:not([data-saved="no"])');
  assert.deepEqual(await strays(page), [], 'captured');
  await tap(page, 'where');
  assert.match(await page.textContent('[data-screen="details"]'), /\[(few|many) \d+ samples/);
  assert.deepEqual(await strays(page), [], 'details');
  assert.deepEqual(b.faults, []);
});

test('every section of a filled job says nothing outside of the catalogues', async (t) => {
  const b = await open(t);
  const { page } = b;
  await tap(page, 'tryout');
  await page.waitForSelector('[data-screen="parts"]');
  await tap(page, 'demo');
  await atJob(page);
  assert.deepEqual(await strays(page), [], 'job');
  const sections = [...new Set(Object.values(ORDER).flat())].map((name) => `section-${name}`);
  const opened = [];
  const found = new Set();
  for (const action of [...sections, 'limits', 'record', 'unchecked', 'jobs', 'level']) {
    const button = page.locator(`[data-action="${action}"]:visible`).first();
    if (!(await button.count())) continue;
    await button.click();
    await page.waitForTimeout(150);
    opened.push(action);
    for (const more of await page.$$('summary')) await more.click().catch(() => {});
    for (const stray of await strays(page)) found.add(`${action}: ${stray}`);
    while (!(await page.$('[data-screen="parts"]'))) {
      await page.goBack();
      await page.waitForTimeout(60);
    }
    await atJob(page);
  }
  assert.deepEqual([...found], []);
  assert.ok(opened.length >= 11, opened.join());
  assert.deepEqual(b.faults, []);
});
