// The tape-measure half in a browser: the way to a section, typing as a person does, what is shown.

import { launch, tap } from './harness.mjs';

/** A browser in a section, metric or US. */
export async function openSection(test, server, section, { us = false, ...options } = {}) {
  const b = await launch(options);
  test.after(() => b.close());
  const { page } = b;
  page.setDefaultTimeout(8000);
  await page.goto(server.url);
  await page.waitForSelector('[data-screen="start"]');
  if (us) {
    await tap(page, 'settings');
    await page.click('input[value="us"]');
    await tap(page, 'done');
    await page.waitForSelector('[data-screen="start"]');
  }
  await toSection(page, section);
  return b;
}

/** From the first screen. */
export async function toSection(page, section) {
  await tap(page, 'tape');
  await tap(page, `section-${section}`);
  await page.waitForSelector(`[data-screen="${section}"]`);
}

/** Types into fields by core's names, or chooses; within `inside`. */
export async function type(page, values, inside = 'main') {
  for (const [name, words] of Object.entries(values)) {
    const field = page.locator(`${inside} [data-name="${name}"]`).first();
    if ((await field.evaluate((e) => e.tagName)) === 'SELECT') await field.selectOption(words);
    else {
      await field.fill('');
      await field.pressSequentially(words);
    }
  }
}

/** The verdict and the words of a check, by the result that it is of. */
export const check = (page, result) =>
  page.locator(`[data-result="${result}"]`).evaluate((el) => ({
    verdict: el.querySelector('.verdict').dataset.verdict,
    does: el.querySelector('.does').textContent,
    value: el.querySelector('.value').textContent,
    u: el.querySelector('.u').textContent,
  }));

/** A line of the working: its number, its ± and its unit. */
export async function worked(page, sheet, name) {
  const line = page.locator(`.working[data-sheet="${sheet}"] [data-name="${name}"] td`).first();
  const said = (await line.textContent()).replaceAll('−', '-').replaceAll('\u00a0', ' ');
  const [, value, u, unit] = said.match(/^(\S+) \(?± (\S+?)(?: ([^)]*))?\)?$/) ?? [said, said];
  return { value: Number(value), u: Number(u), unit };
}

/** The complaint at a field. */
export const complaint = (page, name, inside = 'main') =>
  page.locator(`${inside} [data-field="${name}"] .trouble`).first().textContent();

/** Everything a tap deeper is open. */
export const openAll = (page) =>
  page.evaluate(() => {
    for (const d of document.querySelectorAll('details')) d.open = true;
  });

/** What is wider than the screen. */
export const tooWide = (page) =>
  page.evaluate(() => Math.max(0, document.documentElement.scrollWidth - innerWidth));

/** Waits until everything typed is in the store. */
export const saved = (page) =>
  page.waitForFunction(
    () => document.querySelector('[data-saved="yes"]') && !document.querySelector('[data-saved="saving"]'),
  );
