// The tape-measure half of the page, loaded when it is first wanted: its screens, its words, what
// was typed into its sheets.

import { limits } from '../screens/limits.js';
import { worstFirst } from '../sentences.js';
import { words } from '../words/plan.js';
import { answersOf } from './fields.js';
import { catalogue } from './model.js';
import { ducts } from './ducts.js';
import { fuel } from './fuel.js';
import { fuelSheet } from './fuel-sheets.js';
import { guide } from './guide.js';
import { place } from './place.js';
import { Kept } from './record.js';
import { support } from './support.js';

/** @typedef {import('../app.js').Context} Context */

/** The fuel's sheets, each with a screen of its own. */
const FUEL = ['tank', 'fuel_run', 'fuel_pressure', 'prime', 'burn'];

/** The sheets of each section. @type {Record<string, string[]>} */
const SHEETS = {
  place: ['clearances'],
  support: ['support', 'twist'],
  ducts: ['ducts', 'air_flow', 'return_air'],
  fuel: FUEL,
};

/** What the context has while this half is loaded. */
export class Plan {
  words = words;
  screens = {
    guide,
    limits,
    place,
    support,
    ducts,
    fuel,
    ...Object.fromEntries(FUEL.map((name) => [`fuel_${name}`, fuelSheet(name)])),
  };
  /** @type {Map<string, Kept>} */ #kept = new Map();

  /** Takes over what the store holds. @param {Context} ctx */
  static async open(ctx) {
    const plan = new Plan();
    for (const { name } of catalogue.sheets) plan.#kept.set(name, await Kept.open(ctx, name));
    return plan;
  }

  /** What was typed into a sheet. @param {string} name */
  keptOf(name) {
    return /** @type {Kept} */ (this.#kept.get(name));
  }

  /** The worst answer of a section; null where nothing was measured.
   * @param {Context} ctx @param {string} section */
  worstOf(ctx, section) {
    const sheets = SHEETS[section] ?? [];
    const answers = sheets.flatMap((name) => answersOf(ctx, name, this.keptOf(name).record));
    return worstFirst(answers.filter((a) => !Number.isNaN(a.result.value)))[0] ?? null;
  }
}
