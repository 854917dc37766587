// The tape-measure half of the page, loaded when it is first wanted: its screens, its words, what
// was typed into its sheets.

import { again } from '../record/again.js';
import { jobCard } from '../record/job-card.js';
import { jobs } from '../record/jobs.js';
import { record } from '../record/record.js';
import { limits } from '../screens/limits.js';
import { words } from '../words/plan.js';
import { Core } from './core.js';
import { catalogue } from './model.js';
import { demand } from './demand.js';
import { demandSheet } from './demand-sheets.js';
import { ducts } from './ducts.js';
import { flue } from './flue.js';
import { boatOutlet, pipeEnds } from './flue-ends.js';
import { pipeScreen } from './flue-pipe.js';
import { fuel } from './fuel.js';
import { fuelSheet } from './fuel-sheets.js';
import { cut } from './cut.js';
import { fit } from './fit.js';
import { guide } from './guide.js';
import { job } from './job.js';
import { entered } from './limit-set.js';
import { place } from './place.js';
import { Kept } from './record.js';
import { itemsOf } from './state.js';
import { SUPPLY, supply, supplySheet } from './supply.js';
import { startCard } from './start-card.js';
import { startCo } from './start-co.js';
import { startUp } from './start-up.js';
import { startValues } from './start-values.js';
import { support } from './support.js';
import { unchecked } from './unchecked.js';

/** @typedef {import('../context.js').Context} Context */

/** The sheets that take the loss, each with a screen of its own. */
const DEMAND = ['heater_size', 'warm_up', 'night'];
/** The fuel's sheets, each with a screen of its own. */
const FUEL = ['tank', 'fuel_run', 'fuel_pressure', 'prime', 'burn'];

/** What is kept beside the sheets: facts of the whole job, steps of the first start,
 * signatures. */
const RECORDS = ['job', 'start', 'signatures'];

/** What the context has while this half is loaded. */
export class Plan {
  words = words;
  screens = {
    guide,
    job,
    jobs,
    job_card: jobCard,
    record,
    again,
    unchecked,
    limits,
    demand,
    ...Object.fromEntries(DEMAND.map((name) => [`demand_${name}`, demandSheet(name)])),
    place,
    cut,
    fit,
    support,
    ducts,
    fuel,
    flue,
    flue_exhaust: pipeScreen('exhaust'),
    flue_air_pipe: pipeScreen('air_pipe'),
    flue_pipe_ends: pipeEnds,
    flue_boat_outlet: boatOutlet,
    start_up: startUp,
    start_co: startCo,
    start_values: startValues,
    start_card: startCard,
    ...Object.fromEntries(FUEL.map((name) => [`fuel_${name}`, fuelSheet(name)])),
    supply,
    ...Object.fromEntries(SUPPLY.map((name) => [`supply_${name}`, supplySheet(name)])),
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

  /** Everything that was typed or ticked, as it is on the screen. */
  get records() {
    return [...this.#kept.values()].map(({ record }) => record);
  }

  /** Whether anything was typed or ticked. */
  get touched() {
    return this.records.some(({ changed_at }) => changed_at !== '');
  }

  /** The job as it stands. @param {Context} ctx */
  stateOf(ctx) {
    return { items: itemsOf(ctx), ...entered(ctx) };
  }
}
