// The tape-measure half by sections, in the order of the work: which sheets, in whose words; which
// facts must have been seen, and with which record they are kept.

import { words as cut } from '../words/cut.js';
import { sheets as demand } from '../words/demand-sheets.js';
import { sheets as ductSheets, words as ducts } from '../words/ducts.js';
import { words as fit } from '../words/fit.js';
import { words as flue } from '../words/flue.js';
import { sheets as flueSheets } from '../words/flue-sheets.js';
import { words as fuel } from '../words/fuel.js';
import { sheets as fuelSheets } from '../words/fuel-sheets.js';
import { facts } from '../words/job.js';
import { words as place } from '../words/place.js';
import { words as supply } from '../words/supply.js';
import { sheets as supplySheets } from '../words/supply-sheets.js';
import { words as start } from '../words/start.js';
import { sheets as startSheets } from '../words/start-sheets.js';
import { sheets as supportSheets, words as support } from '../words/support.js';
import { startItems } from './start-items.js';

/**
 * @typedef {object} Section
 * @property {Record<string, import('./sheet.js').SheetWords>} sheets by core's names
 * @property {Record<string, Record<string, string>>} ticks statements, by the record that keeps them
 * @property {Record<string, (ctx: Context) => boolean>} [only] by sheet or record: whether it has a
 *   place in this job
 * @property {(ctx: Context) => import('./state.js').Item[]} [own] lines of its own
 */

/** @typedef {import('../context.js').Context} Context */

/** Whether the pipes are told to be a boat's. @param {Context} ctx */
export const isBoat = (ctx) => ctx.plan.keptOf('exhaust').record.typed.boat === '1';

/** @type {Record<string, Section>} */
export const SECTIONS = {
  job: { sheets: {}, ticks: { job: facts } },
  demand: { sheets: demand, ticks: {} },
  place: {
    sheets: { clearances: place.clearances, fit: fit.fit, cut_plan: cut.cut },
    ticks: { clearances: place.tick, cut_plan: cut.tick },
  },
  support: { sheets: supportSheets, ticks: { support: support.tick } },
  ducts: { sheets: ductSheets, ticks: { ducts: ducts.tick } },
  fuel: { sheets: fuelSheets, ticks: { fuel_run: fuel.tick } },
  flue: { sheets: flueSheets, ticks: flue.tick, only: { boat_outlet: isBoat } },
  supply: { sheets: supplySheets, ticks: supply.tick },
  start_up: { sheets: startSheets, ticks: { job: start.tick }, own: startItems },
};
