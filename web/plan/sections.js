// The tape-measure half by sections, in the order of the work: which sheets, in whose words; which
// facts must have been seen, and with which record they are kept.

import { words as cut } from '../words/cut.js';
import { sheets as ducts } from '../words/ducts.js';
import { words as fit } from '../words/fit.js';
import { words as fuel } from '../words/fuel.js';
import { sheets as fuelSheets } from '../words/fuel-sheets.js';
import { facts } from '../words/job.js';
import { words as place } from '../words/place.js';
import { words as supply } from '../words/supply.js';
import { sheets as supplySheets } from '../words/supply-sheets.js';
import { sheets as startSheets } from '../words/start-sheets.js';
import { sheets as supportSheets, words as support } from '../words/support.js';
import { startItems } from './start-items.js';

/**
 * @typedef {object} Section
 * @property {Record<string, import('./sheet.js').SheetWords>} sheets by core's names
 * @property {Record<string, Record<string, string>>} ticks statements, by the record that keeps them
 * @property {(ctx: import('../context.js').Context) => import('./state.js').Item[]} [own] lines of its own
 */

/** @type {Record<string, Section>} */
export const SECTIONS = {
  job: { sheets: {}, ticks: { job: facts } },
  place: {
    sheets: { clearances: place.clearances, fit: fit.fit, cut_plan: cut.cut },
    ticks: { cut_plan: cut.tick },
  },
  support: { sheets: supportSheets, ticks: { support: support.tick } },
  ducts: { sheets: ducts, ticks: {} },
  fuel: { sheets: fuelSheets, ticks: { fuel_run: fuel.tick } },
  supply: { sheets: supplySheets, ticks: supply.tick },
  start_up: { sheets: startSheets, ticks: {}, own: startItems },
};
