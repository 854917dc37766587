// Sentences about a check, from what core found. Words and units only.

import { formatAngle, formatLength, formatU, usableUnit } from './units.js';

/**
 * A check as shown, live or captured.
 * @typedef {object} CheckView
 * @property {string} id
 * @property {number} value NaN where there is none
 * @property {number} u
 * @property {number} low NaN where there is none
 * @property {number} high
 * @property {number} preferredLow
 * @property {number} preferredHigh
 * @property {import('./types.js').Verdict} verdict
 * @property {string | null} why
 * @property {number} margin
 * @property {string} advice
 * @property {number} turn
 * @property {number} rise
 * @property {number} over
 * @property {string} dominant
 * @property {import('./types.js').Basis} basis
 * @property {string} source
 */

/** @typedef {import('./app.js').Context} Context */

/** @param {number | null | undefined} v */
const number = (v) => v ?? NaN;

/** @param {import('./types.js').CheckReport} c @returns {CheckView} */
export function viewOfReport(c) {
  return {
    id: c.id,
    value: number(c.value),
    u: number(c.u),
    low: number(c.limit?.low_deg),
    high: number(c.limit?.high_deg),
    preferredLow: number(c.limit?.preferred_low_deg),
    preferredHigh: number(c.limit?.preferred_high_deg),
    verdict: c.verdict,
    why: c.why,
    margin: number(c.margin_deg),
    advice: c.advice.kind,
    turn: number(c.advice.turn_deg),
    rise: number(c.advice.rise_mm),
    over: number(c.advice.over_mm),
    dominant: c.dominant,
    basis: c.basis,
    source: c.source,
  };
}

/** @param {Context} ctx @returns {CheckView[]} what the core's last tick found */
export function viewsOfLive(ctx) {
  const { catalogue } = ctx.engine;
  const placement = ctx.placement;
  const found = ctx.engine.call((live) =>
    Array.from({ length: live.count }, (_, i) => {
      const id = placement?.checks[i] ?? '';
      const line = ctx.limits.lines.find((l) => l.check === id);
      return {
        id,
        value: live.value_deg(i),
        u: live.u_deg(i),
        low: live.low_deg(i),
        high: live.high_deg(i),
        preferredLow: live.preferred_low_deg(i),
        preferredHigh: live.preferred_high_deg(i),
        verdict: catalogue.verdicts[live.verdict(i)],
        why: catalogue.whys[live.why(i)],
        margin: live.margin_deg(i),
        advice: catalogue.advices[live.advice(i)],
        turn: live.turn_deg(i),
        rise: live.rise_mm(i),
        over: live.over_mm(i),
        dominant: catalogue.sources[live.dominant(i)],
        basis: line?.basis ?? 'manual',
        source: line?.source ?? '',
      };
    }),
  );
  return found ?? [];
}

/** @template T @param {Record<string, T>} table @param {string} key */
const of = (table, key) => table[key];

/** @param {Context} ctx @param {CheckView} v */
export function valueText(ctx, v) {
  if (Number.isNaN(v.value)) return '–';
  return formatAngle(
    v.value,
    angleUnit(ctx, v),
    [v.low, v.high].filter((l) => !Number.isNaN(l)),
  );
}

/** @param {Context} ctx @param {CheckView} v */
export function uText(ctx, v) {
  return Number.isNaN(v.u) ? '' : `± ${formatU(v.value, v.u, angleUnit(ctx, v))}`;
}

/** Slopes have units of slope; a roll or an angle off plumb is an angle.
 * @param {Context} ctx @param {CheckView} v */
function angleUnit(ctx, v) {
  const check = ctx.engine.catalogue.checks.find((c) => c.id === v.id);
  return check?.quantity === 'elevation' ? ctx.settings.angle_unit : 'deg';
}

/** Whether the wanted unit could not be used. @param {Context} ctx @param {CheckView} v */
export function fellBack(ctx, v) {
  const wanted = angleUnit(ctx, v);
  return usableUnit(v.value, wanted) !== wanted;
}

/** The word in the frame. @param {Context} ctx @param {CheckView} v */
export function verdictWord(ctx, v) {
  return of(ctx.text.verdicts, v.verdict);
}

/** The line under it, where a verdict is not plainly the manual's. @param {Context} ctx @param {CheckView} v */
export function verdictNote(ctx, v) {
  if (v.why) return of(ctx.text.whys, v.why);
  if (v.basis === 'manual' || v.basis === 'law') return '';
  return ctx.text.againstUsage[v.basis];
}

/** @param {Context} ctx @param {CheckView} v */
export function whatToDo(ctx, v) {
  const t = ctx.text.live;
  const move = moveText(ctx, v);
  switch (v.advice) {
    case 'move':
      return v.verdict === 'beyond'
        ? `${move} ${t.beyondHow}`
        : `${t.settle(of(ctx.text.sources, v.dominant))} ${move} ${t.beyondHow}`;
    case 'move_to_preferred':
      return `${t.within(formatAngle(v.margin))} ${t.preferred} ${move}`;
    case 'too_narrow':
      return t.tooNarrow;
    case 'enter_limit':
      return t.enterLimit;
    case 'enter_allowance':
      return `${t.enterAllowance} ${move}`;
    case 'check_ends':
      return v.why === 'end_not_told' ? t.endNotTold : t.checkEnds;
    default:
      if (v.why === 'roll_undefined') return t.rollUndefined;
      return Number.isFinite(v.margin) ? t.within(formatAngle(v.margin)) : '';
  }
}

/** @param {Context} ctx @param {CheckView} v */
function moveText(ctx, v) {
  if (Number.isNaN(v.turn)) return '';
  const t = ctx.text.live;
  const angle = formatAngle(Math.abs(v.turn));
  const quantity = ctx.engine.catalogue.checks.find((c) => c.id === v.id)?.quantity;
  if (quantity === 'roll') return t.roll(angle, v.turn > 0);
  if (quantity === 'off_plumb') return v.turn < 0 ? t.upright(angle) : t.fromUpright(angle);
  const { system } = ctx.settings;
  const rise = Number.isNaN(v.rise) ? null : formatLength(Math.abs(v.rise), system);
  const sentence = v.turn > 0 ? t.raise : t.lower;
  return sentence(angle, rise, formatLength(v.over, system)).replace(
    '%s',
    of(ctx.text.moves, v.id),
  );
}

/** @param {Context} ctx @param {CheckView} v */
export function whoseLimit(ctx, v) {
  if (v.why === 'limit_not_entered') return of(ctx.text.whys, v.why);
  return ctx.text.basisLine[v.basis](v.source);
}

const ORDER = { beyond: 0, not_proven: 1, none: 2, within: 3 };

/** Worst first. @template {{ verdict: import('./types.js').Verdict }} T @param {T[]} views */
export function worstFirst(views) {
  return [...views].sort((a, b) => ORDER[a.verdict] - ORDER[b.verdict]);
}
