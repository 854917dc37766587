// Renders the PNG icons from mark.svg; run by hand when the mark changes:
//   node web/icons/render.mjs   (needs the packages of tests/browser and Chromium)
// The maskable one keeps the mark inside the inner 80 % that every mask leaves (W3C App Manifest).

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const require = createRequire(new URL('../../tests/browser/', import.meta.url));
const { chromium } = require('playwright-core');
const svg = readFileSync(new URL('mark.svg', import.meta.url)).toString('base64');
const ICONS = [
  { name: 'mark-180.png', size: 180, share: 0.9 },
  { name: 'mark-192.png', size: 192, share: 0.9 },
  { name: 'mark-512.png', size: 512, share: 0.9 },
  { name: 'mark-maskable-512.png', size: 512, share: 0.62 },
];

const browser = await chromium.launch({
  executablePath: process.env.PLUMBMARK_CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox'],
});
const page = await browser.newPage();
for (const { name, size, share } of ICONS) {
  await page.setViewportSize({ width: size, height: size });
  await page.setContent(
    `<body style="margin:0;display:grid;place-items:center;height:100vh;background:#fbfaf5">
     <img style="width:${share * 100}%" src="data:image/svg+xml;base64,${svg}"></body>`,
  );
  await page.screenshot({ path: new URL(name, import.meta.url).pathname });
}
await browser.close();
