// The tape-measure half of the page, loaded when it is first wanted: its screens, its words, what
// was typed into its sheets.

import { minutes } from '../guide/minutes.js';
import { plusMinus } from '../guide/plus-minus.js';
import { again } from '../record/again.js';
import { jobCard } from '../record/job-card.js';
import { jobs } from '../record/jobs.js';
import { record } from '../record/record.js';
import { copyOut, tryAgain } from '../record/rescue.js';
import { limits } from '../screens/limits.js';
import { phone } from '../screens/phone.js';
import { poses } from '../screens/poses.js';
import { settings } from '../screens/settings.js';
import { turn } from '../screens/turn.js';
import { vehicle } from '../screens/vehicle.js';
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
import { gauge } from './gauge.js';
import { guide } from './guide.js';
import { job } from './job.js';
import { onKey } from './keys.js';
import { entered } from './limit-set.js';
import { place } from './place.js';
import { Kept } from './record.js';
import { itemsOf } from './state.js';
import { SUPPLY, supply, supplySheet } from './supply.js';
import * as spoken from './spoken.js';
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

/** What is in the store of the job that is open. @param {Context} ctx */
async function entriesOf(ctx) {
  try {
    return (await ctx.store?.entries(ctx.job.id)) ?? [];
  } catch (error) {
    // What could not be read is there all the same: a blank sheet must not be written over it.
    ctx.dropStore(/** @type {any} */ (error));
    return [];
  }
}

/** What the context has while this half is loaded. */
export class Plan {
  words = words;
  rescue = { copyOut, tryAgain };
  spoken = spoken;
  onKey = onKey;
  screens = {
    gauge,
    guide,
    job,
    jobs,
    job_card: jobCard,
    record,
    again,
    unchecked,
    limits,
    phone,
    turn,
    poses,
    settings,
    vehicle,
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
    minutes,
    plus_minus: plusMinus,
    supply,
    ...Object.fromEntries(SUPPLY.map((name) => [`supply_${name}`, supplySheet(name)])),
  };
  /** @type {Map<string, Kept>} */ #kept = new Map();
  /** The newest time in the job. */ #newest = '';

  /** @param {Core} core */
  constructor(core) {
    this.core = core;
  }

  /** Takes over what the store holds. @param {Context} ctx */
  static async open(ctx) {
    const plan = new Plan(await Core.load());
    const entries = await entriesOf(ctx);
    const names = [...catalogue.sheets.map((s) => s.name), ...RECORDS];
    for (const name of names) plan.#kept.set(name, Kept.of(ctx, name, entries));
    const times = [...entries.map((e) => e.changed_at), ...ctx.captures.map((c) => c.taken_at)];
    plan.#newest = times.reduce((a, b) => (a > b ? a : b), '');
    return plan;
  }

  get kept() {
    return [...this.#kept.values()];
  }

  /** A time that has been. One before the newest so far says that the clock was set back: that stays
   * in the job. @param {string} at ISO 8601 */
  passed(at) {
    if (at >= this.#newest) {
      this.#newest = at;
      return;
    }
    const job = this.keptOf('job');
    const { typed } = job.record;
    if (this.#newest <= (typed.clock_from ?? '')) return;
    Object.assign(typed, { clock_from: this.#newest, clock_to: at });
    job.changed(true);
  }

  /** Whether something is not in the store. */
  get unsaved() {
    return this.kept.some((kept) => kept.unsaved);
  }

  /** Writes what waits for a pause in typing. */
  flush() {
    return Promise.all(this.kept.map((kept) => kept.flush()));
  }

  /** Writes what the store has not taken. @param {Context} ctx */
  saveAll(ctx) {
    const left = this.kept.filter((kept) => kept.unsaved);
    for (const kept of left) kept.store = ctx.store;
    return Promise.all(left.map((kept) => kept.save()));
  }

  /** What was typed into a sheet. @param {string} name */
  keptOf(name) {
    return /** @type {Kept} */ (this.#kept.get(name));
  }

  /** Whether anything was typed or ticked. */
  get touched() {
    return this.kept.some(({ record }) => record.changed_at !== '');
  }

  /** The job as it stands. @param {Context} ctx */
  stateOf(ctx) {
    return { items: itemsOf(ctx), ...entered(ctx) };
  }
}
