// Words that every sheet shares. With ../text.js and the sections' files beside this one they are
// the catalogue.

/** @type {Record<string, (low: string, high: string, slip?: string) => string>} */
const problems = {
  missing: () => 'Enter a number.',
  out_of_range: (low, high) => `This can’t be: enter ${low} to ${high}.`,
  other_unit: (low, high, slip) => `Typed in ${slip}? Here it goes from ${low} to ${high}.`,
  not_whole: () => 'Enter a whole number.',
  half_width: () => 'Its ± must be 0 or more.',
  contradiction: () => 'This contradicts another field. Look at both.',
  beyond_formula: () => 'Outside what the formulas are for: no answer from here.',
  too_many: () => 'More rows than one sheet takes. Take some away.',
};

/** @type {Record<string, string>} */
const slips = {
  millimetres: 'millimetres',
  centimetres: 'centimetres',
  metres: 'metres',
  inches: 'inches',
  feet: 'feet',
};

export const words = {
  problems,
  slips,
  notANumber: 'Enter a number, such as 120 or 12,5, or leave it empty.',
  seeField: 'No verdict: see the field that is marked.',
  /** @param {string} label */
  missing: (label) => `No verdict yet. Still to enter: ${label}.`,
  /** @param {string} names */
  notMeasured: (names) => `Not measured: ${names}.`,
  halves: 'How well these numbers are known',
  halvesWhy:
    'Half a width: the true number lies surely within it. What is grey is assumed; type over it when you know better.',
  undo: 'Put it back',
  remove: 'Take away',
  more: 'Where ± comes from, photos',
  working: 'Working',
  /** @param {string} label */
  mostly: (label) => `± comes mostly from: ${label}. Measure that better.`,
  onlyBeyond: 'This way of measuring can find it wrong, never right.',
  unbounded:
    'So near to where the formulas end that nothing bounds it: see the first lines of the working.',
  tooNarrow: 'The limits lie closer together than this can tell.',
  /** @param {string} by @param {boolean} more */
  change: (by, more) => `${by} ${more ? 'more' : 'less'} would prove it.`,
  /** @param {string} limit */
  atLeast: (limit) => `At least ${limit}`,
  /** @param {string} limit */
  atMost: (limit) => `At most ${limit}`,
  /** @param {string} vehicles */
  lawFor: (vehicles) => `For ${vehicles}.`,
  /** @param {string} reason */
  looserBecause: (reason) => `Looser than law or usage: ${reason}.`,
  tick: {
    tick: 'Seen it',
    open: 'not seen yet',
    seen: 'seen',
    who: 'Your name',
    reason: 'Or how you know, in words',
    byPhoto: 'With a photo',
    byReason: 'With these words',
    needsWho: 'Enter your name.',
    needsReason: 'Take a photo, or say how you know.',
    takeBack: 'Take it back',
    /** @param {string} who @param {string} time @param {string} reason */
    by: (who, time, reason) => `${who}, ${time}, ${reason || 'with a photo'}`,
  },
};
