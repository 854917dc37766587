// Takes the pictures of "Five minutes" from the built page, anew: node guide-pictures.mjs LANGUAGE

import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { GUIDE_PICTURE } from '../../web/guide/minutes.js';
import { steps } from '../../web/words/guide-steps.js';
import { inFewColours } from './guide-colours.mjs';
import { walk } from './guide-walk.mjs';
import { launch, serve } from './harness.mjs';

const GUIDE = fileURLToPath(new URL('../../web/guide/', import.meta.url));

/** Of the try-out's strip its words alone, always in sight; or all of it where it belongs. */
const band = (page, alone) =>
  page.evaluate((alone) => {
    const strip = document.querySelector('#strip');
    Object.assign(strip.style, alone ? { position: 'sticky', bottom: 0 } : { position: '', bottom: '' });
    for (const nav of strip.querySelectorAll('nav')) nav.style.display = alone ? 'none' : '';
  }, alone);

const language = process.argv[2] ?? 'en';
const folder = join(GUIDE, language);
mkdirSync(folder, { recursive: true });
const server = await serve();
const b = await launch({ viewport: GUIDE_PICTURE, locale: language, reducedMotion: 'reduce' });
b.page.setDefaultTimeout(12_000);
// Pictures by address are forbidden in the page itself: they are redrawn in an empty one.
const empty = await b.page.context().newPage();
await b.page.bringToFront();
const taken = [];
/** @param {string} id of a step @param {string} [from] what is to stand at the top */
async function take(id, from = '') {
  await band(b.page, true);
  await b.page.evaluate((from) => {
    const top = from ? document.querySelector(from).getBoundingClientRect().top : 0;
    scrollTo(0, from ? top + scrollY - 4 : 0);
  }, from);
  const png = await b.page.screenshot();
  await band(b.page, false);
  const webp = await inFewColours(empty, png);
  writeFileSync(join(folder, `${id}.webp`), webp);
  taken.push(id);
  console.log(`${language}/${id}.webp ${(webp.length / 1000).toFixed(1)} kB`);
}
try {
  await b.page.goto(server.url);
  await walk(b.page, take);
} finally {
  await b.close();
  await server.kill();
}
for (const file of readdirSync(folder))
  if (!taken.includes(file.replace('.webp', ''))) rmSync(join(folder, file));
const left = steps.map((s) => s.id).filter((id) => !taken.includes(id));
if (left.length) console.error(`No picture of: ${left.join(', ')}`);
process.exitCode = left.length ? 1 : 0;
