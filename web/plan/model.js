// The sheets of the core by name: what they are made of, and one worked out. Looks up and passes
// on; it decides nothing.

import lists from '../pkg/sheets.js';

/**
 * @typedef {object} FieldEntry
 * @property {string} name
 * @property {string} unit
 * @property {number} low
 * @property {number} high
 * @property {number} half_width assumed where none is told ...
 * @property {number} half_share ... and this share of the value
 * @property {boolean} optional
 *
 * @typedef {object} CheckedEntry
 * @property {number} output
 * @property {string} bound
 * @property {boolean} only_beyond
 * @property {boolean} alternative one of several ways: the chosen one has a check of its own
 * @property {boolean} partial that it finds nothing says nothing
 *
 * @typedef {object} SheetEntry
 * @property {string} name
 * @property {FieldEntry[]} inputs
 * @property {FieldEntry[]} row
 * @property {{ name: string, unit: string }[]} outputs
 * @property {{ name: string, unit: string }[]} row_outputs
 * @property {CheckedEntry[]} checks
 * @property {CheckedEntry[]} row_checks
 *
 * @typedef {import('../types.js').Verdict} Verdict
 * @typedef {import('../types.js').BoundLine} BoundLine
 *
 * @typedef {object} Place where a number stands
 * @property {FieldEntry} entry
 * @property {number | null} row
 *
 * @typedef {object} Result
 * @property {string} name
 * @property {string} unit
 * @property {number | null} row
 * @property {number} output place among the results
 * @property {number} value NaN where there is none
 * @property {number} u
 * @property {Place | null} dominant
 *
 * @typedef {object} Answer a result held against its limit
 * @property {Result} result
 * @property {string} bound
 * @property {BoundLine | null} limit
 * @property {boolean} only_beyond
 * @property {boolean} alternative
 * @property {boolean} partial
 * @property {Verdict} verdict
 * @property {string | null} why
 * @property {number} margin
 * @property {number} change
 * @property {number} probability
 *
 * @typedef {{ place: Place, problem: string, slip: string }} Refused
 * @typedef {{ results: Result[], answers: Answer[], refused: null } | { refused: Refused }} Worked
 */

/** @typedef {import('../context.js').Context} Context */

export const catalogue = /** @type {{ sheets: SheetEntry[], bounds: BoundEntry[],
  usage: BoundLine[], law: BoundLine[], problems: string[], slips: string[],
  bound_errors: [string, string][], longest_text: number,
  orientations: OrientationEntry[], materials: [string, number][],
  co_thresholds: { source: string, over_min: number }[] }} */ (/** @type {unknown} */ (lists));

/** @typedef {{ axes: [number, number, number][], allowed: boolean, lay: number }} OrientationEntry */
/** @typedef {{ id: string, section: string, unit: string, low: number, high: number }} BoundEntry */

/** @param {string} name */
export function sheetEntry(name) {
  const at = catalogue.sheets.findIndex((s) => s.name === name);
  if (at < 0) throw new Error(`no sheet ${name}`);
  return { at, entry: catalogue.sheets[at] };
}

/** @param {string} id */
export const boundEntry = (id) =>
  /** @type {BoundEntry} */ (catalogue.bounds.find((b) => b.id === id));

/** Where the number at `place` of those given stands. @param {SheetEntry} sheet @param {number} place
 * @returns {Place} */
function placeOf(sheet, place) {
  const past = place - sheet.inputs.length;
  if (past < 0 || !sheet.row.length) return { entry: sheet.inputs[place], row: null };
  const width = sheet.row.length;
  return { entry: sheet.row[past % width], row: Math.floor(past / width) };
}

/** Number of results before those of the rows, and a row's. @param {SheetEntry} sheet @param {number} rows */
function resultsOf(sheet, rows) {
  const own = sheet.outputs.map((r) => ({ ...r, row: null }));
  const each = Array.from({ length: rows }, (_, row) =>
    sheet.row_outputs.map((r) => ({ ...r, row })),
  );
  return [...own, ...each.flat()];
}

/** @param {SheetEntry} sheet @param {number} rows @returns {CheckedEntry[]} */
function checksOf(sheet, rows) {
  const width = sheet.row_outputs.length;
  const each = Array.from({ length: rows }, (_, row) =>
    sheet.row_checks.map((c) => ({ ...c, output: sheet.outputs.length + row * width + c.output })),
  );
  return [...sheet.checks, ...each.flat()];
}

/** The limit in force. @param {Context} ctx @param {string} bound @returns {BoundLine | null} */
export function limitOf(ctx, bound) {
  return ctx.limits.bounds?.find((b) => b.id === bound) ?? null;
}

/** Numbers of a sheet that nobody types: they are copied from limits.
 * @type {Record<string, Record<string, string>>} */
const COPIED = {
  fit: {
    outlet_end_mm: 'clear_outlet_end_mm',
    intake_end_mm: 'clear_intake_end_mm',
    top_mm: 'clear_top_mm',
    bottom_mm: 'clear_bottom_mm',
    left_mm: 'clear_left_mm',
    right_mm: 'clear_right_mm',
  },
};

/** The limit that a number is copied from. @param {string} sheet @param {string} field */
export const copiedFrom = (sheet, field) => COPIED[sheet]?.[field];

/** On whose word a sheet stands whose own limit needs none, but that copies others: the weakest.
 * @param {Context} ctx @param {string} sheet @returns {BoundLine | null} */
function restsOn(ctx, sheet) {
  const { bases } = ctx.engine.catalogue;
  const lines = Object.values(COPIED[sheet] ?? {}).flatMap((id) => limitOf(ctx, id) ?? []);
  const weakest = (/** @type {BoundLine} */ a, /** @type {BoundLine} */ b) =>
    bases.indexOf(b.basis) > bases.indexOf(a.basis) ? b : a;
  return lines.length ? { ...lines.reduce(weakest), low: null, high: null } : null;
}

/**
 * Works a sheet out.
 * @param {Context} ctx @param {string} name
 * @param {number[]} x inputs, then rows; NaN where not entered
 * @param {number[]} half half-widths; NaN where assumed
 * @returns {Worked | undefined} nothing while the core is built anew
 */
export function work(ctx, name, x, half) {
  const { at, entry } = sheetEntry(name);
  const rows = entry.row.length ? (x.length - entry.inputs.length) / entry.row.length : 0;
  const checks = checksOf(entry, rows);
  const limits = checks.flatMap(({ bound }) => {
    const limit = limitOf(ctx, bound);
    return [limit?.low ?? NaN, limit?.high ?? NaN];
  });
  const out = ctx.plan.core.work(at, x, half, limits);
  if (!out) return undefined;
  if (out[0] === 1)
    return {
      refused: {
        place: placeOf(entry, out[1]),
        problem: catalogue.problems[out[2]],
        slip: catalogue.slips[out[3]],
      },
    };
  const results = resultsOf(entry, rows).map((r, output) => {
    const [value, u, dominant] = out.slice(1 + 3 * output, 4 + 3 * output);
    return {
      ...r,
      output,
      value,
      u,
      dominant: Number.isNaN(dominant) ? null : placeOf(entry, dominant),
    };
  });
  const answers = checks.map(({ output, bound, only_beyond, alternative, partial }, i) => {
    const from = 1 + 3 * results.length + 5 * i;
    const [verdict, why, margin, change, probability] = out.slice(from, from + 5);
    const { verdicts, whys } = ctx.engine.catalogue;
    const limit = limitOf(ctx, bound) ?? restsOn(ctx, name);
    return {
      result: results[output],
      bound,
      limit,
      only_beyond,
      alternative,
      partial,
      verdict: verdicts[verdict],
      why: whys[why],
      margin,
      change,
      probability,
    };
  });
  return { results, answers, refused: null };
}

/** What each number given adds to the uncertainty of a result, largest first.
 * @param {Context} ctx @param {string} name @param {number[]} x @param {number[]} half
 * @param {number} output */
export function contributions(ctx, name, x, half, output) {
  const { at, entry } = sheetEntry(name);
  const parts = ctx.plan.core.parts(at, x, half, output);
  return [...parts]
    .map((u, place) => ({ u, ...placeOf(entry, place) }))
    .filter(({ u }) => u > 0)
    .sort((a, b) => b.u - a.u);
}
