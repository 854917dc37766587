// Every check of the job as one flat row: for the record, the table for a fleet and the paper.

import { workedOf } from '../plan/fields.js';
import { contributions } from '../plan/model.js';
import { itemsOf, noNeed as noNeedOf } from '../plan/state.js';
import { hasMovedSince } from '../sentences.js';
import { words } from '../words/record.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../plan/state.js').Item} Item */

/**
 * @typedef {object} CheckRow
 * @property {string} id sheet, result and row; or an angle's, as parked or in the vehicle
 * @property {string} section
 * @property {string} what
 * @property {'within' | 'beyond' | 'not_proven' | 'none' | 'not_checked' | 'not_needed'} verdict
 * @property {number | null} value
 * @property {number | null} u two-sided 95 %
 * @property {string} unit
 * @property {number | null} low
 * @property {number | null} high
 * @property {string} basis
 * @property {string} source
 * @property {string} vehicles that a law is for
 * @property {string} reason why the limit may be looser than usage or a law
 * @property {boolean} only_beyond read in a way that can find it beyond and never within
 * @property {boolean} partial that it finds nothing says nothing
 * @property {string | null} why what stands behind the verdict, where it is not plain
 * @property {number | null} margin
 * @property {number | null} probability
 * @property {string | null} at ISO 8601
 * @property {string} how
 * @property {{ name: string, u: number }[]} contributions standard uncertainties
 */

/** @param {number} v */
const finite = (v) => (Number.isFinite(v) ? v : null);

/** Nothing told yet. @type {Omit<CheckRow, 'id' | 'section' | 'what' | 'verdict'>} */
const BLANK = {
  value: null,
  u: null,
  unit: '',
  low: null,
  high: null,
  basis: '',
  source: '',
  vehicles: '',
  reason: '',
  only_beyond: false,
  partial: false,
  why: null,
  margin: null,
  probability: null,
  at: null,
  how: '',
  contributions: [],
};

/** @param {Context} ctx @param {Item} item @returns {CheckRow} */
function ofAnswer(ctx, item) {
  const { group: sheet, section, title } = item;
  const answer = /** @type {import('../plan/model.js').Answer} */ (item.answer);
  const { result, limit } = answer;
  const { record } = ctx.plan.keptOf(sheet);
  const worked = workedOf(ctx, sheet, record);
  const parts = worked ? contributions(ctx, sheet, worked.x, worked.half, result.output) : [];
  const place = (/** @type {import('../plan/model.js').Place} */ { entry, row }) =>
    row === null ? entry.name : `${row + 1}.${entry.name}`;
  return {
    id: [sheet, result.row === null ? null : result.row + 1, result.name]
      .filter((p) => p !== null)
      .join('.'),
    section,
    what: title,
    verdict: answer.verdict,
    value: finite(result.value),
    u: finite(result.u),
    unit: result.unit,
    low: limit?.low ?? null,
    high: limit?.high ?? null,
    basis: limit?.basis ?? '',
    source: limit?.source ?? '',
    vehicles: limit?.vehicles ?? '',
    reason: limit?.reason ?? '',
    only_beyond: answer.only_beyond,
    partial: answer.partial,
    why: answer.why,
    margin: finite(answer.margin),
    probability: finite(answer.probability),
    at: record.changed_at || null,
    how: 'entered',
    contributions: parts.map((p) => ({ name: place(p), u: p.u })),
  };
}

/** @param {import('../types.js').Capture} capture */
const howOf = ({ report, blind, gauge }) =>
  [
    ...[report.hold, report.surface, report.channel, report.zero_by],
    ...(blind ? ['blind'] : []),
    ...(gauge ? [`by gauge ${gauge.number}`, `software ${gauge.software}`, 'at: taken in'] : []),
  ].join(', ');

/** What was true of the vehicle as it stood, and is no verdict any more. @param {CheckRow} row
 * @returns {CheckRow} */
const overtaken = (row) => ({
  ...row,
  verdict: 'none',
  what: `${row.what}: ${words.moved}`,
  margin: null,
  probability: null,
});

/** As parked, and in the vehicle where its level was read; nothing of a vehicle that has moved since.
 * @param {Context} ctx @param {Item} item @returns {CheckRow[]} */
function ofCapture(ctx, { section, title, group, capture }) {
  if (!capture) return [];
  const { report } = capture;
  const id = group.replace('angle.', '');
  const line = ctx.limits.lines.find((l) => l.check === id);
  const { parked, inVehicle } = ctx.text.level;
  /** @param {import('../types.js').CheckReport[]} checks @param {string} suffix
   * @param {string[]} stands how the vehicle stands for it, where both ways are told */
  const rows = (checks, suffix, stands) =>
    checks
      .filter((c) => c.id === id)
      .map((c) => ({
        id: `${id}${suffix}`,
        section,
        what: [title, ...stands].join(', '),
        verdict: c.verdict,
        value: c.value ?? null,
        u: c.u ?? null,
        unit: c.unit,
        low: c.limit?.low_deg ?? null,
        high: c.limit?.high_deg ?? null,
        basis: c.basis,
        source: c.source,
        vehicles: line?.vehicles ?? '',
        reason: line?.reason ?? '',
        only_beyond: false,
        partial: false,
        why: c.why,
        margin: c.margin_deg ?? null,
        probability: c.probability ?? null,
        at: capture.taken_at,
        how: howOf(capture),
        contributions: c.contributions.map((x) => ({ name: x.name, u: x.u_deg })),
      }));
  const level = report.vehicle?.checks ?? [];
  const there = rows(level, '.in_vehicle', [inVehicle]);
  return [
    ...rows(report.checks, '', level.length ? [parked] : []),
    ...(hasMovedSince(ctx, capture) ? there.map(overtaken) : there),
  ];
}

/** @param {Item} item @returns {CheckRow} */
const ofOpen = ({ section, title, group, state }) => ({
  ...BLANK,
  id: group,
  section,
  what: title,
  verdict: state === 'not_needed' ? 'not_needed' : 'not_checked',
});

/** Every check, open ones too, in the order of the work. @param {Context} ctx @returns {CheckRow[]} */
export function checkRows(ctx) {
  return itemsOf(ctx)
    .filter((item) => !item.fact)
    .flatMap((item) => {
      if (item.answer) return [ofAnswer(ctx, item)];
      const captured = ofCapture(ctx, item);
      return captured.length ? captured : [ofOpen(item)];
    });
}

/**
 * A fact that was to be seen.
 * @typedef {object} FactRow
 * @property {string} id
 * @property {string} section
 * @property {string} statement
 * @property {'seen' | 'not_seen' | 'not_needed'} state
 * @property {string} who
 * @property {string | null} at
 * @property {string} reason how it is known, or why it is not needed
 * @property {number | null} photo
 */

/** A stop of the first start: nothing that was seen and is well. @param {FactRow} fact */
export const isStop = ({ id }) => id.startsWith('start.stop');

/** What a line's state is as a fact's. A stop that is on has been seen, whatever else is open.
 * @type {Partial<Record<Item['state'], FactRow['state']>>} */
const STATES = { seen: 'seen', stopped: 'seen', not_needed: 'not_needed', beyond: 'seen' };

/** Every fact, in the order of the work. @param {Context} ctx @returns {FactRow[]} */
export function factRows(ctx) {
  const noNeed = ctx.plan.keptOf('job').record.ticks;
  return itemsOf(ctx).flatMap(({ fact, mark, group, section, title, state }) => {
    if (!fact) return [];
    const [record, id] = fact.split('.');
    const seen = mark ?? ctx.plan.keptOf(record).record.ticks[id];
    const tick = seen ?? noNeed[noNeedOf(group)];
    return [
      {
        id: fact,
        section,
        statement: title,
        state: STATES[state] ?? 'not_seen',
        who: tick?.who ?? '',
        at: tick?.at ?? null,
        reason: tick?.reason ?? '',
        photo: tick?.photo ?? null,
      },
    ];
  });
}
