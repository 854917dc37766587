// The tape-measure half of the page, loaded when it is first wanted: its screens, its words, what
// was typed into its sheets.

import { limits } from '../screens/limits.js';
import { worstFirst } from '../sentences.js';
import { words as cutWords } from '../words/cut.js';
import { words } from '../words/plan.js';
import { answersOf } from './fields.js';
import { Core } from './core.js';
import { catalogue, sheetEntry } from './model.js';
import { ducts } from './ducts.js';
import { fuel } from './fuel.js';
import { fuelSheet } from './fuel-sheets.js';
import { cut } from './cut.js';
import { fit } from './fit.js';
import { guide } from './guide.js';
import { place } from './place.js';
import { Kept } from './record.js';
import { support } from './support.js';

/** @typedef {import('../app.js').Context} Context */

/** The fuel's sheets, each with a screen of its own. */
const FUEL = ['tank', 'fuel_run', 'fuel_pressure', 'prime', 'burn'];

/** The sheets of each section. @type {Record<string, string[]>} */
const SHEETS = {
  place: ['clearances', 'fit', 'cut_plan'],
  support: ['support', 'twist'],
  ducts: ['ducts', 'air_flow', 'return_air'],
  fuel: FUEL,
};

/** What is kept beside the sheets: facts of the whole job, steps of the first start. */
const RECORDS = ['job', 'start'];

/** What must have been looked for before a sheet's numbers stand for it.
 * @type {Record<string, string[]>} */
const TICKS = { cut_plan: Object.keys(cutWords.tick) };

/** What the context has while this half is loaded. */
export class Plan {
  words = words;
  screens = {
    guide,
    limits,
    place,
    cut,
    fit,
    support,
    ducts,
    fuel,
    ...Object.fromEntries(FUEL.map((name) => [`fuel_${name}`, fuelSheet(name)])),
  };
  /** @type {Map<string, Kept>} */ #kept = new Map();

  /** @param {Core} core */
  constructor(core) {
    this.core = core;
  }

  /** Takes over what the store holds. @param {Context} ctx */
  static async open(ctx) {
    const plan = new Plan(await Core.load());
    const names = [...catalogue.sheets.map((s) => s.name), ...RECORDS];
    for (const name of names) plan.#kept.set(name, await Kept.open(ctx, name));
    return plan;
  }

  /** What was typed into a sheet. @param {string} name */
  keptOf(name) {
    return /** @type {Kept} */ (this.#kept.get(name));
  }

  /** The worst answer of a section, or of one sheet, and how many of its checks nothing was measured
   * for: while there are any, the best of answers does not stand for it.
   * @param {Context} ctx @param {string} section */
  stateOf(ctx, section) {
    const found = /** @type {import('./model.js').Answer[]} */ ([]);
    let open = 0;
    for (const name of SHEETS[section] ?? [section]) {
      const { record } = this.keptOf(name);
      const all = answersOf(ctx, name, record);
      const answers = all.filter((a) => !a.alternative);
      const told = answers.filter((a) => !Number.isNaN(a.result.value));
      found.push(...told);
      // What can only find it beyond is no check that is missed.
      const due = sheetEntry(name).entry.checks.filter(
        (c) => !c.only_beyond && !c.alternative,
      ).length;
      open += (TICKS[name] ?? []).filter((id) => !record.ticks[id]).length;
      open += Math.max(0, due - told.filter((a) => a.result.row === null && !a.only_beyond).length);
    }
    return { worst: worstFirst(found)[0] ?? null, open };
  }
}
