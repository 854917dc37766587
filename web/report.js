// A capture's numbers, back as the report that core means: read in the order that wasm's report.rs
// writes them, names by their places in the catalogue.

/** @typedef {import('./types.js').Report} Report */
/** @typedef {import('./types.js').Catalogue} Catalogue */

/**
 * @param {Float64Array} numbers
 * @param {Catalogue} catalogue
 * @param {import('./types.js').LimitLine[]} lines limits in force, for their sources
 * @returns {Report}
 */
export function readReport(numbers, catalogue, lines) {
  let at = 0;
  const number = () => numbers[at++];
  /** @returns {number | null} */
  const option = () => {
    const found = number();
    return Number.isNaN(found) ? null : found;
  };
  const flag = () => number() === 1;
  /** @template T @param {readonly T[]} list */
  const named = (list) => list[number()];
  const three = () => [number(), number(), number()];
  /** @template T @param {() => T} item @returns {T[]} */
  const list = (item) => Array.from({ length: number() }, item);
  const deg = (/** @type {readonly string[]} */ names) =>
    Object.fromEntries(names.map((name) => [name, option()]));

  const check = () => {
    const { id } = named(catalogue.checks);
    return {
      id,
      value: option(),
      u: option(),
      unit: 'deg',
      k: option(),
      limit: flag() ? deg(LIMIT) : null,
      basis: named(catalogue.bases),
      source: lines.find((line) => line.check === id)?.source ?? '',
      verdict: named(catalogue.verdicts),
      why: named(catalogue.whys),
      margin_deg: option(),
      probability: option(),
      end_told: catalogue.ends[option() ?? -1] ?? null,
      in_preferred: [false, true][option() ?? -1] ?? null,
      contributions: catalogue.sources.map((name) => ({ name, u_deg: number() })),
      dominant: named(catalogue.sources),
      advice: { kind: named(catalogue.advices), ...deg(ADVICE) },
    };
  };
  const working = () => {
    const slope_deg = option();
    return slope_deg === null ? null : { slope_deg, takes_deg: option(), decides: flag() };
  };
  const vehicle = () => {
    const told = {
      level_up: three(),
      level_age_s: number(),
      terms: deg(Object.keys(catalogue.vehicle)),
      pointing: named(catalogue.pointings),
      refused: named(catalogue.level_refusals),
      checks: list(check),
    };
    return { ...told, working: told.checks.map(working) };
  };
  const report = {
    format: 'plumbmark-report',
    version: 1,
    part: named(catalogue.parts).id,
    hold: named(catalogue.holds),
    surface: named(catalogue.surfaces),
    channel: named(catalogue.channels),
    sign: number(),
    step_m_s2: number(),
    rate_hz: number(),
    samples: number(),
    zero_by: named(catalogue.zeros),
    up: three(),
    pitch_deg: number(),
    roll_deg: option(),
    checks: list(check),
    vehicle: flag() ? vehicle() : null,
  };
  return /** @type {Report} */ (/** @type {unknown} */ (report));
}

const LIMIT = ['low_deg', 'high_deg', 'preferred_low_deg', 'preferred_high_deg', 'allowance_deg'];
const ADVICE = ['turn_deg', 'rise_mm', 'over_mm'];
