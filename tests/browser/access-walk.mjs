// Every screen of the page, and every state of one that looks different, as a list of ways there:
// through the try-out and its invented job, so that each screen has something to show. The names of
// the screens come from the code, so that a new one cannot be forgotten.

import { readFileSync } from 'node:fs';
import { launch, sensors, tap, upFor, waitReason } from './harness.mjs';
import { openAll } from './plan-page.mjs';
import { toParts } from './rig.mjs';

const source = (path) => readFileSync(new URL(`../../web/${path}`, import.meta.url), 'utf8');

/** Names in a table of screens: `name`, `name: f` and `prefix_${name}` of a list of constants. */
function namesIn(block, lists) {
  const made = [...block.matchAll(/fromEntries\((\w+)\.map\(\(name\) => \[`(\w+)\$\{name\}`/g)];
  const plain = block.replace(/\.\.\.Object[^\n]*/g, '');
  return [
    ...[...plain.matchAll(/^ +(\w+)(?=[,:])/gm)].map(([, name]) => name),
    ...made.flatMap(([, list, prefix]) => lists[list].map((name) => prefix + name)),
  ];
}

/** Every screen that the code knows. */
export async function screenNames() {
  const plan = source('plan/index.js');
  const constants = [...plan.matchAll(/const (\w+) = \[([^\]]*)\];/g)];
  const lists = Object.fromEntries(
    constants.map(([, name, words]) => [name, [...words.matchAll(/'(\w+)'/g)].map(([, w]) => w)]),
  );
  const { words: supply } = await import('../../web/words/supply.js');
  lists.SUPPLY = Object.keys(supply.sheets);
  const [, first] = source('app.js').match(/SCREENS = \{([^}]*)\}/);
  const [, later] = plan.match(/\n {2}screens = \{\n([\s\S]*?)\n {2}\};/);
  return [...namesIn(first, {}), ...namesIn(later, lists)];
}

/** Taps one after the other. */
const by =
  (...actions) =>
  async (page) => {
    for (const action of actions) await page.locator(`[data-action="${action}"]:visible`).first().click();
  };
/** The same, with everything a tap deeper open. */
const opened =
  (...actions) =>
  async (page) => {
    await by(...actions)(page);
    await page.waitForTimeout(60);
    await openAll(page);
    await page.waitForTimeout(120);
  };
const inSection = (section, sheet) => opened(`section-${section}`, `sheet-${sheet}`);

/** To the live screen of a part, its ends answered. */
const live =
  (part, ...ends) =>
  async (page) => {
    await by(`part-${part}`, 'hold-next')(page);
    for (const end of ends) await tap(page, `end-${end}`);
    await waitReason(page, '');
  };
const pump = live('pump', 'tail');

async function captured(page) {
  await pump(page);
  await tap(page, 'capture');
  await page.waitForSelector('.saved:not([data-saved="no"])');
}

async function overruledAsked(page) {
  await captured(page);
  await tap(page, 'where');
  await page.waitForSelector('[data-screen="details"]');
  await openAll(page);
}

async function wrongNumber(page) {
  await by('section-place')(page);
  await page.locator('[data-name="top_mm"]').first().fill('7o');
  await page.waitForSelector('[data-field="top_mm"] .trouble:not([hidden])');
}

/** Of the kind "the store refused": as the page tells of it. */
async function refused(page) {
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await page.locator('[data-name="top_mm"]').first().fill('92');
  await page.waitForSelector('.notice:not([hidden])');
}

async function stepWith(page, step, action) {
  await by('section-start_up')(page);
  await page.locator(`[data-action="step-${step}"]`).click();
  if (action) await tap(page, action);
  await page.waitForTimeout(80);
}

/** Ways from the job's list, by name; what stands before a "." is the screen's name. */
export const WAYS = {
  parts: async () => {},
  'parts.angles': async (page) => page.click('input[name="path"][value="angles"]'),
  'parts.whole': async (page) => page.click('input[name="path"][value="whole"]'),
  phone: by('phone'),
  turn: by('phone', 'turn'),
  poses: by('phone', 'poses'),
  level: by('level'),
  vehicle: by('level', 'vehicle'),
  hold: by('part-pump'),
  'hold.others': by('part-heater', 'other-holds'),
  ends: by('part-pump', 'hold-next'),
  'ends.photo': by('part-pump', 'hold-next', 'end-cant'),
  live: pump,
  'live.two': live('heater', 'tail', 'tail'),
  'live.blind': async (page) => {
    await pump(page);
    await tap(page, 'blind');
  },
  'live.turning': async (page) => {
    await pump(page);
    await tap(page, 'turn-part');
  },
  captured,
  details: overruledAsked,
  captures: by('captures'),
  gauge: by('captures', 'from-gauge'),
  limits: by('limits'),
  guide: opened('limits', 'guide'),
  jobs: by('jobs'),
  job_card: async (page) => {
    await tap(page, 'jobs');
    await page.locator('[data-job] button').first().click();
  },
  'job_card.delete': async (page) => {
    await WAYS.job_card(page);
    await tap(page, 'delete');
  },
  minutes: by('minutes'),
  plus_minus: by('minutes', 'plus-minus'),
  record: opened('record'),
  unchecked: opened('unchecked'),
  job: opened('section-job'),
  demand: opened('section-demand'),
  demand_heater_size: inSection('demand', 'heater_size'),
  demand_warm_up: inSection('demand', 'warm_up'),
  demand_night: inSection('demand', 'night'),
  place: opened('section-place'),
  'place.wrong': wrongNumber,
  cut: inSection('place', 'cut_plan'),
  fit: inSection('place', 'fit'),
  support: opened('section-support'),
  'support.tick': opened('section-support', 'tick-new_seal'),
  ducts: opened('section-ducts'),
  fuel: opened('section-fuel'),
  fuel_tank: inSection('fuel', 'tank'),
  fuel_fuel_run: inSection('fuel', 'fuel_run'),
  fuel_fuel_pressure: inSection('fuel', 'fuel_pressure'),
  fuel_prime: inSection('fuel', 'prime'),
  fuel_burn: inSection('fuel', 'burn'),
  flue: opened('section-flue'),
  flue_exhaust: inSection('flue', 'exhaust'),
  flue_air_pipe: inSection('flue', 'air_pipe'),
  flue_pipe_ends: inSection('flue', 'pipe_ends'),
  supply: opened('section-supply'),
  supply_bank: inSection('supply', 'bank'),
  supply_cable: inSection('supply', 'cable'),
  supply_fuse: inSection('supply', 'fuse'),
  supply_battery: inSection('supply', 'battery'),
  start_up: opened('section-start_up'),
  'start_up.timer': (page) => stepWith(page, 'after_run'),
  'start_up.skip': (page) => stepWith(page, 'ignition', 'skip'),
  'start_up.voltage': (page) => stepWith(page, 'voltage'),
  start_co: opened('section-start_up', 'to-start_co'),
  start_values: opened('section-start_up', 'to-start_values'),
  start_card: opened('section-start_up', 'to-start_card'),
  again: async (page) => {
    await WAYS.job_card(page);
    await tap(page, 'check-again');
    await page.waitForSelector('[data-screen="again"]');
    await openAll(page);
  },
  flue_boat_outlet: async (page) => {
    await inSection('flue', 'exhaust')(page);
    await page.locator('[data-name="boat"]').selectOption('1');
    await toParts(page);
    await inSection('flue', 'boat_outlet')(page);
  },
  'start_up.stopped': async (page) => {
    await tap(page, 'section-start_up');
    await tap(page, 'stop');
  },
  'place.not_kept': async (page) => {
    await tap(page, 'section-place');
    await refused(page);
  },
};
/** From the first screen, before there is a job. */
export const FIRST = { start: async () => {}, settings: by('settings') };

export const screenOf = (name) => name.split('.')[0];

/** Goes every way, and calls `look(name)` at its end. */
export async function walk(page, look, { only = () => true } = {}) {
  for (const [name, go] of Object.entries(FIRST)) {
    if (!only(name)) continue;
    await go(page);
    await page.waitForSelector(`[data-screen="${screenOf(name)}"]`);
    await look(name);
    if (name !== 'start') await page.goBack();
  }
  await tap(page, 'tryout');
  await tap(page, 'demo');
  await page.waitForSelector('.parts .caution');
  // The foot stays in sight, as it does outside the try-out.
  await page.evaluate(() => document.body.classList.remove('trying'));
  for (const [name, go] of Object.entries(WAYS)) {
    if (!only(name)) continue;
    try {
      await go(page);
      await page.waitForSelector(`[data-screen="${screenOf(name)}"]`);
    } catch (error) {
      throw new Error(`no way to ${name}`, { cause: error });
    }
    await look(name);
    await toParts(page);
  }
}

/** A browser on the first screen. */
export async function open(t, server, options = {}) {
  const b = await launch(options);
  t.after(() => b.close());
  b.page.setDefaultTimeout(8000);
  await b.page.goto(server.url);
  await b.page.waitForSelector('[data-screen="start"]');
  return b;
}

/** A browser whose phone lies on its back, head end raised; `pose.deg` may change, with its noise. */
export async function measuring(t, server, options = {}) {
  const b = await launch(options);
  b.page.setDefaultTimeout(12_000);
  const feed = await sensors(b);
  t.after(async () => {
    feed.stop();
    await b.close();
  });
  const pose = { deg: 25, noise: 0.02 };
  const noise = () => [0, 0, 0].map(() => pose.noise * (Math.random() + Math.random() - 1));
  feed.keep(() => ({ up: upFor('back', pose.deg), extra: noise() }));
  await b.page.goto(server.url);
  await b.page.waitForSelector('[data-screen="start"]');
  return { ...b, feed, pose };
}
