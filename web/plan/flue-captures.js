// Captures of pipe legs, for the legs of a pipe: their value and standard uncertainties as they
// stand in the report, and which of them share a zero.

import { asTyped } from '../locale.js';
import { hasMovedSince } from '../sentences.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../types.js').Capture} Capture */
/** @typedef {import('./record.js').Row} Row */

/** Pipes whose legs take captures. */
const SHEETS = ['exhaust', 'air_pipe'];
/** Fields by the report's sources. @type {Record<string, string>} */
const PARTS = {
  zero_u_deg: 'zero',
  scale_u_deg: 'scale',
  datum_u_deg: 'datum',
  heading_u_deg: 'heading',
  rake_u_deg: 'rake',
};
/** What a captured leg has beyond a typed one. */
const TAKEN = ['taken_at', 'view', 'shares', 'u_deg', 'combined_u_deg', ...Object.keys(PARTS)];
/** Groups of readings that core tells apart. */
const GROUPS = 3;

/** The reading of a capture: in the vehicle where that still counts; nothing where eye and reading
 * disagree about the lower end. @param {Context} ctx @param {Capture} capture */
export function readingOf(ctx, capture) {
  const { checks, vehicle } = capture.report;
  const inVehicle = hasMovedSince(ctx, capture) ? undefined : vehicle?.checks[0];
  const view = inVehicle?.value == null ? 'parked' : 'vehicle';
  const check = view === 'vehicle' ? inVehicle : checks[0];
  const counts =
    check?.value != null && check.u != null && check.k && check.why !== 'ends_disagree';
  return counts ? { check, view, moved: Boolean(vehicle) && view === 'parked' } : null;
}

/** Readings by one phone share its zero, whichever way it was held. A zero that was found belongs to
 * a side of the phone; one that was found anew is another. A gauge has its own, calibrated or not.
 * @param {Capture} capture */
const shares = ({ found_ms, gauge, report }) =>
  gauge ? `gauge/${gauge.number}` : found_ms ? `${report.hold}/${found_ms}` : 'phone';

/** Captures of pipe legs that no leg has taken, oldest first. @param {Context} ctx */
export function left(ctx) {
  const rows = SHEETS.flatMap((name) => ctx.plan.keptOf(name).record.rows);
  const taken = new Set(rows.map((/** @type {Row} */ row) => row.typed.taken_at));
  return ctx.captures.filter(
    (c) => c.report.part === 'pipe' && readingOf(ctx, c) && !taken.has(c.taken_at),
  );
}

/** A number as it is typed. @param {number} v @param {number} digits */
const typed = (v, digits) => asTyped(Number(v.toFixed(digits)));

/** A leg's angle for a line of words; of a capture without the digits that its ± makes idle.
 * @param {Record<string, string>} told */
export function angleWords({ elevation_deg = '', taken_at }) {
  const angle = taken_at ? typed(Number(elevation_deg.replace(',', '.')), 1) : elevation_deg;
  return angle.replace('-', '−');
}

/** Puts a capture into a leg. @param {Context} ctx @param {Row} row @param {Capture} capture */
export function take(ctx, row, capture) {
  const reading = readingOf(ctx, capture);
  if (!reading) return;
  const { value, u, k, contributions } = reading.check;
  Object.assign(row.typed, {
    // Its ± is dozens of times a hundredth; three digits would be taken for thousands where the
    // other sign is that of tenths.
    elevation_deg: typed(Number(value), 2),
    // The report's u is k of the combined ones.
    combined_u_deg: typed(Number(u) / Number(k), 6),
    u_deg: typed(Number(u), 2),
    taken_at: capture.taken_at,
    view: reading.moved ? 'moved' : reading.view,
    shares: shares(capture),
  });
  for (const [field, name] of Object.entries(PARTS)) {
    const part = contributions.find((c) => c.name === name);
    row.typed[field] = typed(part?.u_deg ?? 0, 6);
  }
  // Its uncertainties are its own fields.
  row.half.elevation_deg = '0';
}

/** A leg whose angle was typed over is a typed one. @param {Row} row */
export function forget(row) {
  for (const name of [...TAKEN, 'zero_of']) delete row.typed[name];
  delete row.half.elevation_deg;
}

/** Numbers the groups of readings that share a zero. More than core tells apart join the last:
 * together they are counted as worse, never as better. @param {Row[]} rows */
export function group(rows) {
  const seen = /** @type {string[]} */ ([]);
  for (const { typed: t } of rows) {
    if (!t.taken_at) continue;
    if (!seen.includes(t.shares)) seen.push(t.shares);
    t.zero_of = String(Math.min(GROUPS, seen.indexOf(t.shares) + 1));
  }
}
