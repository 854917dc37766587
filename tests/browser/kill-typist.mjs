// Works through a job as a person does, on and on, until the browser dies: types, ticks, edits
// limits, does steps of the first start, captures, takes photos. What it typed is remembered here,
// outside the browser; what the page shows as saved is told by the observer.

import { anglesOfUp, synthetic, tap, upFor, waitReason } from './harness.mjs';

const G = 9.80665;
export const SHEETS = {
  place: { key: 'clearances', fields: ['top_mm', 'bottom_mm', 'left_mm', 'right_mm'] },
  support: { key: 'support', fields: ['long_mm', 'short_mm', 'straightedge_mm'] },
};
const TICKS = { place: ['nothing_stored', 'no_fuel', 'reach'], support: ['plate', 'new_seal', 'light_leak'] };
export const JOB_FIELDS = ['vehicle', 'heater', 'customer'];

/** In the page: tells the test's side each time that something is shown as saved, and what. */
export function observe() {
  const told = new Map();
  const values = (selector, name) =>
    Object.fromEntries([...document.querySelectorAll(selector)].map((e) => [name(e), e.value]));
  const seen = () => {
    const screen = document.querySelector('[data-screen]')?.dataset.screen;
    const what = { screen };
    what.typed = values('main input[data-name]', (e) => e.dataset.name);
    what.ticks = [...document.querySelectorAll('[data-tick][data-done="yes"]')].map((e) => [
      e.dataset.tick,
      e.querySelector('.source').firstChild.textContent,
    ]);
    what.steps = [...document.querySelectorAll('[data-step]')]
      .map((e) => [e.dataset.step, e.querySelector('small').textContent])
      .filter(([, by]) => by);
    what.limit = document.querySelector('[id="f-pump_outlet-low_deg"]')?.value;
    what.capture = document.querySelector('[data-check="pump_outlet"] .value')?.textContent;
    what.photos = document.querySelectorAll('.photos img').length;
    return what;
  };
  const look = () => {
    for (const el of document.querySelectorAll('.saved, .limits [role="status"]')) {
      const said = `${el.dataset.saved ?? ''}/${el.textContent}`;
      if (told.get(el) === said) continue;
      told.set(el, said);
      if (el.textContent !== 'saved') continue;
      window.shownAsSaved({ ...seen(), kept: el.dataset.kept, mark: el.dataset.saved });
    }
  };
  new MutationObserver(look).observe(document, {
    subtree: true,
    childList: true,
    attributes: true,
    characterData: true,
  });
}

export class Typist {
  /** Every state of every field, in the order typed. @type {Map<string, string[]>} */ typed = new Map();
  /** Fields in the order in which they were begun. */ fields = [];
  strokes = 0;

  /** @param {() => number} random @param {(strokes: number) => Promise<void>} onStroke */
  constructor(random, onStroke) {
    this.random = random;
    this.onStroke = onStroke;
    this.round = 0;
  }

  pick(list) {
    return list[Math.floor(this.random() * list.length)];
  }

  number(least, most) {
    return String(Math.round((least + this.random() * (most - least)) * 10) / 10);
  }

  /** Empties a field and types into it, letter by letter. */
  async type(locator, id, text) {
    this.fields.push(id);
    const states = this.typed.get(id) ?? [''];
    this.typed.set(id, states);
    await locator.scrollIntoViewIfNeeded();
    states.push('');
    await locator.fill('');
    for (let n = 1; n <= text.length; n += 1) {
      states.push(text.slice(0, n));
      await this.page.keyboard.press(text[n - 1] === ' ' ? 'Space' : text[n - 1]);
      this.strokes += 1;
      await this.onStroke(this.strokes);
    }
    if (this.random() < 0.7) await this.page.keyboard.press('Tab');
  }

  async home() {
    const { page } = this;
    const screen = () => page.getAttribute('[data-screen]', 'data-screen');
    while ((await screen()) !== 'parts') {
      // Until the screen is another one: a step too many would leave the page.
      await page.evaluate(() => {
        document.querySelector('[data-screen]').dataset.left = '';
        history.back();
      });
      await page.waitForSelector('[data-screen]:not([data-left])');
      if ((await screen()) === 'start') await tap(page, 'tape');
    }
  }

  async sheet(section) {
    const { page } = this;
    await tap(page, `section-${section}`);
    await page.waitForSelector(`[data-screen="${section}"]`);
    const { key, fields } = SHEETS[section];
    for (let n = 1 + Math.floor(this.random() * 3); n > 0; n -= 1) {
      const name = this.pick(fields);
      await this.type(
        page.locator(`main input[data-name="${name}"]`),
        `${key}.${name}`,
        this.number(40, 400),
      );
    }
    await this.tick(this.pick(TICKS[section]));
  }

  async tick(id) {
    const { page } = this;
    if (await page.$(`[data-action="untick-${id}"]`)) return;
    await tap(page, `tick-${id}`);
    await page.fill(`#t-${id}-who`, 'A. Fitter');
    const at = page.locator(`[data-tick="${id}"]`);
    if (this.random() < 0.4) await at.locator('input[type="file"]').setInputFiles(this.photo);
    else {
      await page.fill(`#t-${id}-reason`, `lamp ${this.round}`);
      await at.locator('[data-action="tick-reason"]').click();
    }
    if (this.random() < 0.6) await page.waitForSelector(`[data-tick="${id}"][data-done="yes"]`);
  }

  async card() {
    const { page } = this;
    await tap(page, 'jobs');
    await page.locator('[data-job="1"] button').click();
    await page.waitForSelector('[data-screen="job_card"]');
    const name = this.pick(JOB_FIELDS);
    await this.type(
      page.locator(`main input[data-name="${name}"]`),
      `job.${name}`,
      `${name} ${this.number(1, 99)}`,
    );
  }

  async limits() {
    const { page } = this;
    await tap(page, 'limits');
    const field = page.locator('[id="f-pump_outlet-low_deg"]');
    await this.type(field, 'limit', this.number(16, 22));
    await tap(page, 'save-limits');
    if (this.random() < 0.6) await page.waitForSelector('[role="status"]:text-is("saved")');
  }

  async start() {
    const { page } = this;
    await tap(page, 'section-start_up');
    await page.waitForSelector('[data-screen="start_up"]');
    for (let n = 1 + Math.floor(this.random() * 3); n > 0; n -= 1) {
      if (!(await page.$('#step-who'))) return;
      await page.fill('#step-who', 'Ada');
      await page.fill('#step-reason', `round ${this.round}`);
      await tap(page, 'done');
    }
  }

  async capture() {
    const { page } = this;
    await tap(page, 'part-pump');
    await tap(page, 'other-holds');
    await tap(page, 'hold-long_edge-round_body');
    await tap(page, 'end-tail');
    await waitReason(page, '');
    await tap(page, 'capture');
    if (this.random() < 0.5) return;
    await page.setInputFiles('.captured input[type="file"]', this.photo);
    await page.waitForSelector('.captured .photos img');
  }

  /** From the first screen, until the browser dies. */
  async work(page) {
    this.page = page;
    this.round += 1;
    page.setDefaultTimeout(30_000);
    this.photo ??= await picture(page);
    const up = upFor('long_edge', 22);
    await synthetic(page, { a: up.map((v) => G * v), angles: anglesOfUp(up) });
    await tap(page, 'allow');
    const trips = [
      () => this.sheet('place'),
      () => this.sheet('support'),
      () => this.card(),
      () => this.limits(),
      () => this.start(),
      () => this.capture(),
    ];
    while (true) {
      await page.waitForSelector('[data-screen="parts"]');
      await this.pick(trips)();
      await this.home();
    }
  }
}

async function picture(page) {
  const bytes = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(60, 40);
    canvas.getContext('2d').fillRect(0, 0, 30, 30);
    const blob = await canvas.convertToBlob({ type: 'image/jpeg' });
    return [...new Uint8Array(await blob.arrayBuffer())];
  });
  return { name: 'p.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(bytes) };
}
