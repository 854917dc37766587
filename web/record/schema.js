// The record's schema: JSON Schema (2020-12), published beside the page, and what the page itself
// checks a record by that comes in. What is derived from it (checks, facts) is described and not
// taken in: it is worked out anew.

import lists from '../pkg/catalogue.js';
import { UNIT_NAMES } from '../plan/units.js';

/** @typedef {Record<string, any>} Schema */

/** A signature is the longest. */
const LONGEST_TEXT = 8000;
/** @param {number} [longest] @returns {Schema} */
const text = (longest = LONGEST_TEXT) => ({ type: 'string', maxLength: longest });
/** As the page writes it; empty where nothing was typed yet. */
const when = {
  type: 'string',
  pattern: '^([0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}([.][0-9]{1,3})?Z)?$',
};
const number = { type: 'number' };
/** A half-width, or U. */
const width = { type: 'number', minimum: 0 };
const whole = { type: 'integer', minimum: 0 };
const eightDigits = { type: 'string', pattern: '^[0-9A-F]{8}$' };
const flag = { type: 'boolean' };
/** @param {Schema} schema @returns {Schema} */
const orNull = (schema) => ({ ...schema, type: [schema.type, 'null'] });
/** @param {Schema} items @param {number} maxItems @returns {Schema} */
const list = (items, maxItems) => ({ type: 'array', items, maxItems });
/** Of core's own lists, so that no page meets a name that it has no word for. @param {readonly string[]} names */
const named = (names) => ({ enum: [...names] });
/** Every one of these and no other, but for those that may be left out.
 * @param {Record<string, Schema>} properties @param {Record<string, Schema>} [optional]
 * @returns {Schema} */
const object = (properties, optional = {}) => ({
  type: 'object',
  required: Object.keys(properties),
  properties: { ...properties, ...optional },
  additionalProperties: false,
});
/** Anything by name. @param {Schema} values @returns {Schema} */
const map = (values) => ({ type: 'object', additionalProperties: values, maxProperties: 400 });

const tick = object(
  { who: text(), at: when, reason: text(), photo: orNull(whole) },
  { before_stop: flag },
);
/** Of the first start, where no photo is taken. */
const mark = object(
  { who: text(), at: when, reason: text(), photo: { type: 'null' } },
  { before_stop: flag },
);
const row = object({ typed: map(text()), half: map(text()) });
/** Of the first start: how long something ran, and what was found of its clock. */
const timer = object({
  due_s: orNull(number),
  started_ms: number,
  last_ms: number,
  clock: whole,
  state: whole,
  seen: whole,
  alone_s: number,
  ran_s: number,
});
const stop = object({
  what: text(40),
  auto: flag,
  at: when,
  done: map(mark),
  timers: map(timer),
  readings: orNull(object({ co: list(row, 200), started: map(text()) })),
  went_on: orNull(object({ who: text(), why: text(), found: text(), at: when })),
});
const unit = named(UNIT_NAMES);
const measured = object({ name: text(120), value: number, u: width, unit });
const baseline = object({ who: text(), at: when, lines: list(measured, 200) });
const entry = object(
  {
    key: text(40),
    system: { enum: ['metric', 'us'] },
    typed: map(text()),
    half: map(text()),
    rows: list(row, 200),
    ticks: map(tick),
    photos: list(whole, 500),
    changed_at: when,
  },
  {
    skipped: map(mark),
    stops: list(stop, 200),
    timers: map(timer),
    baselines: list(baseline, 200),
  },
);
const contribution = object({ name: text(), u: number });
const check = object({
  id: text(120),
  section: text(40),
  what: text(),
  verdict: { enum: ['within', 'beyond', 'not_proven', 'none', 'not_checked', 'not_needed'] },
  value: orNull(number),
  u: orNull(number),
  unit: text(20),
  low: orNull(number),
  high: orNull(number),
  basis: { enum: ['', 'manual', 'law', 'trade_usage', 'assumed'] },
  source: text(),
  vehicles: text(),
  reason: text(),
  only_beyond: flag,
  partial: flag,
  why: orNull(text()),
  margin: orNull(number),
  probability: orNull(number),
  at: orNull(when),
  how: text(),
  contributions: list(contribution, 400),
});
const fact = object({
  id: text(120),
  section: text(40),
  statement: text(),
  state: { enum: ['seen', 'not_seen', 'not_needed'] },
  who: text(),
  at: orNull(when),
  reason: text(),
  photo: orNull(whole),
});
const degrees = map(orNull(number));
const verdicts = named(lists.verdicts);
const bases = named(lists.bases);
const captured = object({
  id: named(lists.checks.map((c) => c.id)),
  value: orNull(number),
  u: orNull(number),
  unit: { const: 'deg' },
  k: orNull(number),
  limit: orNull(degrees),
  basis: bases,
  source: text(),
  verdict: verdicts,
  why: { enum: lists.whys },
  margin_deg: orNull(number),
  probability: orNull(number),
  end_told: { enum: [...lists.ends, null] },
  in_preferred: { type: ['boolean', 'null'] },
  contributions: list(object({ name: named(lists.sources), u_deg: number }), 40),
  dominant: named(lists.sources),
  advice: object({
    kind: named(lists.advices),
    turn_deg: orNull(number),
    rise_mm: orNull(number),
    over_mm: orNull(number),
  }),
});
const three = { ...list(number, 3), minItems: 3 };
const report = object({
  format: { const: 'plumbmark-report' },
  version: { const: 1 },
  part: named(lists.parts.map((p) => p.id)),
  hold: named(lists.holds),
  surface: named(lists.surfaces),
  channel: named(lists.channels),
  sign: number,
  step_m_s2: number,
  rate_hz: number,
  samples: number,
  zero_by: named(lists.zeros),
  up: three,
  pitch_deg: number,
  roll_deg: orNull(number),
  checks: list(captured, 10),
  vehicle: orNull(
    object({
      level_up: three,
      level_age_s: number,
      terms: degrees,
      pointing: named(lists.pointings),
      refused: { enum: lists.level_refusals },
      checks: list(captured, 10),
      working: list(
        orNull(object({ slope_deg: number, takes_deg: orNull(number), decides: flag })),
        10,
      ),
    }),
  ),
});
const capture = object(
  {
    id: whole,
    taken_at: when,
    blind: flag,
    app_version: text(60),
    limits_name: text(),
    report,
    in_operation: list(text(40), 20),
    found_ms: orNull(number),
    level_ms: orNull(number),
    photo: orNull(whole),
    photos: list(whole, 500),
  },
  {
    overruled: object({ who: text(), at: when, reason: text() }),
    gauge: object({
      number: eightDigits,
      count: whole,
      software: text(16),
      crc: eightDigits,
    }),
  },
);
const photo = object({
  id: whole,
  sheet: text(40),
  about: text(200),
  at: when,
  jpeg_base64: text(8_000_000),
});
const beforeRow = object(
  { id: text(120), what: text(), value: number, u: width, unit, at: orNull(when) },
  { verdict: text(20) },
);
const before = object(
  { sha256: text(64), checks: list(beforeRow, 4000) },
  { stops: list(text(), 100) },
);
const job = object({
  vehicle: text(),
  heater: text(),
  customer: text(),
  installer: text(),
  created_at: when,
  changed_at: when,
  before: orNull(before),
  tryout: flag,
});

export const FORMAT = 'plumbmark-record';
/** 1: by phone. 2: with captures by gauge. 3: beside a job whose verdicts and stops are told. */
export const VERSION = 3;

export const schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  title: 'Plumbmark record',
  description:
    'What was measured on one heater in one vehicle, how, when and against whose limits. Numbers in the unit beside them; angles in degrees; u is a two-sided 95 % expanded uncertainty; contributions are standard uncertainties. It is neither an approval nor proof that the installation is free of danger.',
  ...object({
    format: { const: FORMAT },
    version: { enum: [1, 2, VERSION] },
    software: text(60),
    job,
    limits: { type: ['object', 'null'] },
    limits_sha256: { type: 'string', pattern: '^[0-9a-f]{64}$' },
    captures: list(capture, 2000),
    entries: list(entry, 200),
    checks: list(check, 4000),
    facts: list(fact, 400),
    cautions: list(text(), 100),
    does_not_claim: list(text(), 20),
    photos: list(photo, 500),
    sha256: { type: 'string', pattern: '^[0-9a-f]{64}$' },
  }),
};
