// Sentences about a check, from what core found. Words and units only.

import { asRead } from './own-words.js';
import { clock, formatAngle, formatLength, formatU, usableUnit } from './units.js';

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
/**
 * A check as parked, and the same in the vehicle where its level counts.
 * @typedef {object} BothViews
 * @property {CheckView} parked
 * @property {CheckView | null} inVehicle
 * @property {boolean} equal whether the limit holds in operation
 * @property {string} working what the vehicle's working slope takes, in words
 */

/** @typedef {import('./context.js').Context} Context */

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

/** Place of the first check in the vehicle among the live getters. */
const IN_VEHICLE = 2;

/** What the core gives of a check, in the order of its `number`. */
const NUMBERS = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9];

/** @param {Context} ctx @param {import('./engine.js').Live} live @param {number} i @param {string} id
 * @returns {CheckView} */
function viewOfLive(ctx, live, i, id) {
  const { catalogue } = ctx.engine;
  const line = ctx.limits.lines.find((l) => l.check === id);
  const [value, u, margin, turn, rise, over, verdict, why, advice, dominant] = NUMBERS.map((what) =>
    live.number(i, what),
  );
  return {
    id,
    value,
    u,
    low: line?.low_deg ?? NaN,
    high: line?.high_deg ?? NaN,
    preferredLow: line?.preferred_low_deg ?? NaN,
    preferredHigh: line?.preferred_high_deg ?? NaN,
    verdict: catalogue.verdicts[verdict],
    why: catalogue.whys[why],
    margin,
    advice: catalogue.advices[advice],
    turn,
    rise,
    over,
    dominant: catalogue.sources[dominant],
    basis: line?.basis ?? 'manual',
    source: line?.source ?? '',
  };
}

/** @param {Context} ctx @returns {BothViews[]} what the core's last tick found */
export function viewsOfLive(ctx) {
  const found = ctx.engine.call((live) => {
    const answered = live.has_level() && live.level_refusal() === 0;
    return (ctx.placement?.checks ?? []).slice(0, live.count()).map((id, i) => ({
      parked: viewOfLive(ctx, live, i, id),
      inVehicle: answered ? viewOfLive(ctx, live, i + IN_VEHICLE, id) : null,
      equal: ctx.limits.lines.some((l) => l.check === id && l.holds_in_operation),
      working: workingWords(ctx, answered ? live.working_takes_deg(i) : NaN),
    }));
  });
  return found ?? [];
}

/** @param {Context} ctx @param {import('./types.js').Capture} capture @returns {BothViews[]} */
export function viewsOfCapture(ctx, capture) {
  const { checks, vehicle } = capture.report;
  return checks.map((c, i) => {
    const working = vehicle?.working[i];
    return {
      parked: viewOfReport(c),
      inVehicle: vehicle?.checks[i] ? viewOfReport(vehicle.checks[i]) : null,
      equal: capture.in_operation?.includes(c.id) ?? false,
      working: workingWords(ctx, working ? (working.takes_deg ?? Infinity) : NaN),
    };
  });
}

/** @param {Context} ctx @param {number} takes_deg */
function workingWords(ctx, takes_deg) {
  const t = ctx.text.level;
  if (Number.isNaN(takes_deg)) return '';
  return takes_deg === Infinity ? t.takesAll : t.takes(formatAngle(takes_deg));
}

/** Every answer of these checks, the vehicle's first where the limit holds in operation.
 * @param {BothViews[]} views */
export function allViews(views) {
  return views.flatMap(({ parked, inVehicle, equal }) => {
    if (!inVehicle) return [parked];
    return equal ? [inVehicle, parked] : [parked, inVehicle];
  });
}

/** Whether the vehicle moved after the level that this capture stands on.
 * @param {Context} ctx @param {import('./types.js').Capture} capture */
export function hasMovedSince(ctx, capture) {
  const { levels } = ctx.settings;
  const at = levels.findIndex((l) => l.at_ms === capture.level_ms);
  return at >= 0 && levels[at + 1]?.moved === true;
}

/** The answers of a capture, as parked and in the vehicle. Those in a vehicle that has moved since
 * are no verdict any more.
 * @param {Context} ctx @param {import('./types.js').Capture} capture
 * @returns {import('./types.js').CheckReport[]} */
export function allChecks(ctx, capture) {
  const { checks, vehicle } = capture.report;
  const inVehicle = vehicle?.checks ?? [];
  if (!hasMovedSince(ctx, capture)) return [...checks, ...inVehicle];
  return [...checks, ...inVehicle.map((c) => ({ ...c, verdict: /** @type {const} */ ('none') }))];
}

/** What is known of the phone's zero. @param {Context} ctx
 * @param {import('./types.js').ZeroBy | undefined} by @param {number | null} found_ms */
export function zeroWords(ctx, by, found_ms) {
  const t = ctx.text.live;
  if (by === 'turn') return t.turned;
  return by === 'found' ? t.checked(found_ms === null ? '' : clock(found_ms)) : t.unchecked;
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
  return ctx.text.basisLine[v.basis](asRead(v.source));
}

const ORDER = { beyond: 0, not_proven: 1, none: 2, within: 3 };

/** Worst first. @template {{ verdict: import('./types.js').Verdict }} T @param {T[]} views */
export function worstFirst(views) {
  return [...views].sort((a, b) => ORDER[a.verdict] - ORDER[b.verdict]);
}

/** The one that words are about: the worst; where all are within, the one with least to spare.
 * @param {CheckView[]} views @returns {CheckView | undefined} */
export function mostPressing(views) {
  const [worst] = worstFirst(views);
  if (worst?.verdict !== 'within') return worst;
  return [...views].sort((a, b) => a.margin - b.margin || 0)[0];
}
