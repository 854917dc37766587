// What is kept of the first start beside its sheets: who did or skipped each step and when, stops,
// timers, baselines. What the steps are worth is core's answer.

import { play } from '../sound.js';
import { workedOf } from './fields.js';
import { sheetEntry, work } from './model.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('./model.js').Worked} Worked */

/**
 * @typedef {object} Mark
 * @property {string} who
 * @property {string} at ISO 8601
 * @property {string} reason
 * @property {number | null} photo
 * @property {boolean} [before_stop]
 *
 * @typedef {object} WentOn
 * @property {string} who
 * @property {string} why
 * @property {string} found
 * @property {string} at
 *
 * @typedef {object} Stop
 * @property {string} what a reason's name; empty until it is told
 * @property {boolean} auto found by a reading
 * @property {string} at
 * @property {Record<string, Mark>} done steps done until then
 * @property {Record<string, import('./start-timer.js').TimerKept>} timers
 * @property {{ co: import('./record.js').Row[], started: Record<string, string> } | null} readings
 * @property {WentOn | null} went_on
 *
 * @typedef {object} Baseline
 * @property {string} who
 * @property {string} at
 * @property {{ name: string, value: number, u: number, unit: string }[]} lines
 *
 * @typedef {object} More
 * @property {Record<string, Mark>} ticks
 * @property {Record<string, Mark>} skipped
 * @property {Stop[]} stops
 * @property {Record<string, import('./start-timer.js').TimerKept>} timers
 * @property {Baseline[]} baselines
 * @typedef {import('./record.js').SheetRecord & More} StartRecord
 */

/** The steps by core's names, in their order. */
export const STEPS = sheetEntry('first_start')
  .entry.outputs.filter((o) => o.unit === 'choice')
  .map((o) => o.name);

/** What core asks beside the steps: the verdict on a result.
 * @type {Record<string, [string, string]>} */
const BORNE_OUT = {
  start_voltage: ['started', 'heater_glow_v'],
  outlet_air: ['started', 'outlet_celsius'],
  after_run_time: ['started', 'after_run_min'],
  co_rise: ['co_check', 'rise_ppm'],
  co_time: ['co_check', 'spare_test_min'],
};

/** Limits that stop the work by themselves when a reading is beyond.
 * @type {Record<string, [string, string]>} */
const STOPS = { co: ['co_check', 'co_rise_ppm'], starts: ['started', 'starts_in_a_row'] };

/** Codes of core's: what was told of a step. */
const TOLD = { open: 0, done: 1, skipped: 2, before_stop: 3 };

/** Whole days from today to a date, by the calendar; NaN where it is none.
 * @param {string} date @param {string} [known] a time that has been: a clock set back makes no
 *   alarm younger */
function daysLeft(date, known) {
  const now = new Date(Math.max(Date.now(), known ? Date.parse(known) : 0));
  const today = Date.UTC(now.getFullYear(), now.getMonth(), now.getDate());
  return Math.round((Date.parse(date) - today) / 86_400_000);
}

export class Start {
  /** @param {Context} ctx */
  constructor(ctx) {
    this.ctx = ctx;
    /** @type {import('./record.js').Kept} */ this.kept = ctx.plan.keptOf('start');
    const blank = { skipped: {}, stops: [], timers: {}, baselines: [] };
    this.kept.record = Object.assign(blank, this.kept.record);
  }

  get record() {
    return /** @type {StartRecord} */ (this.kept.record);
  }

  /** The stop that is on, if any. */
  get stop() {
    return this.record.stops.find((s) => !s.went_on) ?? null;
  }

  /** Whether a rise can be told: clean air outdoors was read. */
  get knowsOutdoors() {
    return Boolean(this.ctx.plan.keptOf('co_check').record.typed.outdoor_ppm);
  }

  /** @param {string} sheet @returns {Worked | null} */
  worked(sheet) {
    return workedOf(this.ctx, sheet, this.ctx.plan.keptOf(sheet).record);
  }

  /** @param {string} id */
  told(id) {
    const { ticks, skipped } = this.record;
    if (skipped[id]) return TOLD.skipped;
    if (!ticks[id]) return TOLD.open;
    return ticks[id].before_stop ? TOLD.before_stop : TOLD.done;
  }

  /** @param {string} id */
  isOpen(id) {
    return this.told(id) === TOLD.open;
  }

  /** @param {string} id */
  isBeforeStop(id) {
    return this.told(id) === TOLD.before_stop;
  }

  /** @param {string} name what core asks beside the steps */
  #borneOut(name) {
    if (name.endsWith('_timer')) return this.record.timers[name.replace('_timer', '')]?.state ?? 0;
    const [sheet, result] = BORNE_OUT[name];
    const worked = this.worked(sheet);
    if (!worked || worked.refused) return NaN;
    const answer = worked.answers.find((a) => a.result.name === result && a.result.row === null);
    if (!answer || Number.isNaN(answer.result.value)) return NaN;
    return this.ctx.engine.catalogue.verdicts.indexOf(answer.verdict);
  }

  /** What each step is worth, which is next, how many are what; what each alarm is worth. Nothing
   * while the core is built anew. */
  evaluate() {
    const { inputs } = sheetEntry('first_start').entry;
    const x = inputs.map(({ name }) =>
      STEPS.includes(name) ? this.told(name) : this.#borneOut(name),
    );
    const known = this.ctx.plan.keptOf('job').record.typed.clock_from;
    const days = this.record.rows.map((row) => daysLeft(row.typed.expires ?? '', known));
    const all = [...x, ...days];
    const worked = work(
      this.ctx,
      'first_start',
      all,
      all.map(() => NaN),
    );
    if (!worked || worked.refused) return null;
    const own = worked.results.filter((r) => r.row === null);
    const values = Object.fromEntries(own.map((r) => [r.name, r.value]));
    return {
      values,
      next: /** @type {string | undefined} */ (STEPS[values.next]),
      alarms: worked.results.filter((r) => r.row !== null).map((r) => r.value),
    };
  }

  /** @param {string} id @param {string} who @param {string} reason @param {'ticks' | 'skipped'} how */
  mark(id, who, reason, how) {
    this.takeBack(id);
    this.record[how][id] = { who, at: new Date().toISOString(), reason, photo: null };
    this.ctx.keep({ who });
    this.kept.changed(true);
  }

  /** @param {string} id */
  takeBack(id) {
    delete this.record.ticks[id];
    delete this.record.skipped[id];
    this.kept.changed(true);
  }

  /** The reason for which a reading stops the work, if any. */
  stopByReading() {
    const beyond = ([sheet, bound] = ['', '']) => {
      const worked = this.worked(sheet);
      if (!worked || worked.refused) return false;
      return worked.answers.some((a) => a.bound === bound && a.verdict === 'beyond');
    };
    return Object.keys(STOPS).find((what) => beyond(STOPS[what])) ?? null;
  }

  /** Stops the work; what was done until then is to be done again.
   * @param {string} what a reason's name, or nothing yet @param {boolean} auto */
  raise(what, auto) {
    if (this.stop) return;
    const { ticks, timers, stops } = this.record;
    stops.push({
      what,
      auto,
      at: new Date().toISOString(),
      done: structuredClone(ticks),
      timers,
      readings: null,
      went_on: null,
    });
    for (const mark of Object.values(ticks)) mark.before_stop = true;
    this.record.timers = {};
    this.kept.changed(true);
    play('beyond');
  }

  /** What is read anew: it stays with the stop, and its fields are empty again. @param {Stop} stop */
  #takeReadings(stop) {
    const co = this.ctx.plan.keptOf('co_check');
    const started = this.ctx.plan.keptOf('started');
    stop.readings = { co: co.record.rows, started: started.record.typed };
    // First: a page that dies in between must not have emptied what nothing else keeps.
    this.kept.changed(true);
    co.record.rows = [];
    delete co.record.typed.outdoor_ppm;
    started.record.typed = {};
    co.changed(true);
    started.changed(true);
  }

  /** @param {string} what @param {Omit<WentOn, 'at'>} words */
  goOn(what, words) {
    const { stop } = this;
    if (!stop) return;
    stop.what = what;
    stop.went_on = { ...words, at: new Date().toISOString() };
    this.#takeReadings(stop);
    this.ctx.keep({ who: words.who });
  }
}
