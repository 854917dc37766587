// An invented job of the try-out: a heater for the sleeping box of a flatbed carrier. Numbers as
// somebody would have typed them, metric; none is anybody's.

import { ducts, flue, fuel } from './demo-lines.js';
import { start, supply } from './demo-power.js';
import { demand, place, support } from './demo-space.js';

/** @typedef {Record<string, string>} Typed */
/** @typedef {{ typed: Typed, half?: Typed, rows?: Typed[] }} Entry */

/** What was typed into every sheet, by core's names. @type {Record<string, Entry>} */
export const entries = {
  ...demand,
  ...place,
  ...support,
  ...ducts,
  ...fuel,
  ...flue,
  ...supply,
  ...start,
};
