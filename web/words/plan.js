// Words that every sheet shares. With ../text.js and the sections' files beside this one they are
// the catalogue.

import { t } from '../language.js';

/** @type {Record<string, (low: string, high: string, slip?: string) => string>} */
const problems = {
  missing: () => t`Enter a number.`,
  out_of_range: (low, high) => t`This can’t be: enter ${low} to ${high}.`,
  other_unit: (low, high, slip) => t`Typed in ${slip}? Here it goes from ${low} to ${high}.`,
  not_whole: () => t`Enter a whole number.`,
  half_width: () => t`Its ± must be 0 or more.`,
  contradiction: () => t`This contradicts another field. Look at both.`,
  beyond_formula: () => t`Outside what the formulas are for: no answer from here.`,
  too_many: () => t`More rows than one sheet takes. Take some away.`,
};

/** @type {Record<string, string>} */
const slips = {
  millimetres: t`millimetres`,
  centimetres: t`centimetres`,
  metres: t`metres`,
  inches: t`inches`,
  feet: t`feet`,
  kilowatts: t`kilowatts`,
};

export const words = {
  problems,
  slips,
  notANumber: t`Enter a number, such as 1200 or 12.5, no sign between thousands, or leave it empty.`,
  /** @param {string} label */
  seeField: (label) => t`No verdict: see “${label}”, marked above.`,
  /** @param {string} label */
  missing: (label) => t`Still to enter: ${label}.`,
  /** @param {string} names */
  notMeasured: (names) => t`Not measured: ${names}.`,
  halves: t`How well these numbers are known`,
  halvesWhy: t`Half a width: the true number lies surely within it. What is grey is assumed; type over it when you know better.`,
  undo: t`Put it back`,
  remove: t`Take away`,
  more: t`Where ± comes from, photos`,
  working: t`Working`,
  /** @param {string} label */
  mostly: (label) => t`± comes mostly from: ${label}. Measure that better, and type its own ±.`,
  onlyBeyond: t`This way of measuring can find it wrong, never right.`,
  exact: t`Exactly what the limit names.`,
  unbounded: t`No answer: too near to where the formulas end, nothing bounds its ±. The first lines of the working say where that is.`,
  tooNarrow: t`The limits lie closer together than this can tell.`,
  /** @param {string} by @param {boolean} more */
  change: (by, more) => (more ? t`${by} more would prove it.` : t`${by} less would prove it.`),
  /** @param {string} limit */
  atLeast: (limit) => t`At least ${limit}`,
  /** @param {string} limit both ends of it */
  exactly: (limit) => t`Exactly ${limit}`,
  /** @param {string} limit */
  atMost: (limit) => t`At most ${limit}`,
  /** @param {string} vehicles */
  lawFor: (vehicles) => t`For ${vehicles}.`,
  /** @param {string} reason */
  looserBecause: (reason) => t`Looser than law or usage: ${reason}.`,
  tick: {
    tick: t`Tick it`,
    open: t`not seen yet`,
    seen: t`seen`,
    who: t`Your name`,
    reason: t`Or how you know, in words`,
    byPhoto: t`Tick it with a photo`,
    byReason: t`Tick it with these words`,
    needsWho: t`Enter your name.`,
    needsReason: t`Take a photo, or say how you know.`,
    takeBack: t`Take it back`,
    /** @param {string} who @param {string} time @param {string} reason */
    by: (who, time, reason) =>
      reason ? `${who}, ${time}, ${reason}` : t`${who}, ${time}, with a photo`,
  },
};
