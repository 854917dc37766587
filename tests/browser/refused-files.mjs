// Limit sets from outside that must be refused, each with what the refusal names.

import { words as limitWords } from '../../web/words/limit-lines.js';

const t = limitWords;
const LINE = {
  check: 'pump_outlet',
  low_deg: 12,
  basis: 'assumed',
  source: '',
  reason: 'this pump may',
  at_limit_allowed: false,
};
const BOUND = { id: 'duct_loss_pa', low: null, high: 250, basis: 'manual', source: 'H-7, p. 30' };
const SURFACE = { surface: 'round_body', hold_deg: 0.4, align_deg: 1 };
const BASE = {
  format: 'plumbmark-limits',
  version: 1,
  name: 'from outside',
  lines: [LINE],
  surfaces: [SURFACE],
  bounds: [BOUND],
};
const withSet = (patch) => JSON.stringify({ ...BASE, ...patch });
const withLine = (patch) => withSet({ lines: [{ ...LINE, ...patch }] });
const withBound = (patch) => withSet({ bounds: [{ ...BOUND, ...patch }] });
const withSurface = (patch) => withSet({ surfaces: [{ ...SURFACE, ...patch }] });
/** A file that is taken. */
export const GOOD = withSet({});
/** What a file holds, and what the refusal must name. */
export const REFUSED = [
  ['no JSON', 'low_deg = 12', t.notJson],
  ['nothing', '', t.notJson],
  ['a truncated set', GOOD.slice(0, -20), t.notJson],
  ['NaN', GOOD.replace('12', 'NaN'), t.notJson],
  ['more than 256 kB', withSet({ name: 'x'.repeat(300_000) }), t.tooLarge],
  ['more than 256 kB of blanks', GOOD + ' '.repeat(256 * 1024), t.tooLarge],
  ['null', 'null', /object/],
  ['a newer version', withSet({ version: 3 }), /version/],
  ['another format', withSet({ format: 'plumbmark-report' }), /format/],
  ['an unknown field', withSet({ extra: 1 }), /extra/],
  ['an unknown field in a line', withLine({ extra: 1 }), /lines\.extra/],
  ['a __proto__ key', GOOD.replace('{', '{"__proto__":{"name":"x"},'), /__proto__/],
  ['a __proto__ key in a line', GOOD.replace('[{', '[{"__proto__":{"low_deg":1},'), /__proto__/],
  ['a check named __proto__', withLine({ check: '__proto__' }), /lines\.check.*__proto__/],
  ['a basis that can’t be a text', withLine({ basis: { toString: 1 } }), /pump_outlet\.basis.*object/],
  ['constructor in a bound', withBound({ constructor: {} }), /duct_loss_pa\.constructor/],
  ['a bound’s __proto__', GOOD.replace('[{"id"', '[{"__proto__":{},"id"'), /duct_loss_pa\.__proto__/],
  ['a name twice', GOOD.replace('"lines"', '"name":"","lines"'), t.twice],
  ['wrong UTF-8', Buffer.concat([Buffer.from(GOOD), Buffer.from([0xff])]), t.notJson],
  ['an exponent of ten digits', GOOD.replace('250', '1e9999999999'), /duct_loss_pa\.high/],
  ['many brackets', '['.repeat(200_000), t.notJson],
  ['an unknown basis', withLine({ basis: 'hearsay' }), /pump_outlet\.basis/],
  ['"NaN" for an angle', withLine({ low_deg: 'NaN' }), /pump_outlet\.low_deg/],
  ['an angle in text', withLine({ low_deg: '12' }), /pump_outlet\.low_deg/],
  ['an angle of 1e9', withLine({ low_deg: 1e9 }), /pump_outlet\.low_deg/],
  ['an angle beyond numbers', GOOD.replace('12', '1e999'), /pump_outlet\.low_deg/],
  ['a source too long', withLine({ source: 'x'.repeat(121) }), /pump_outlet\.source/],
  ['a manual without page', withLine({ basis: 'manual' }), /pump_outlet\.source/],
  ['two lines of a check', withSet({ lines: [LINE, LINE] }), /pump_outlet\.check/],
  ['many lines', withSet({ lines: Array(1000).fill(LINE) }), /pump_outlet\.check/],
  ['a name that is no text', withSet({ name: 5 }), /name/],
  ['"NaN" for a surface', withSurface({ hold_deg: 'NaN' }), /hold_deg/],
  ['a surface out of range', withSurface({ hold_deg: 1e9 }), /hold_deg/],
  ['an unknown surface', withSurface({ surface: 'toString' }), /surfaces\.surface/],
  ['a surface in text', withSurface({ hold_deg: '0.4' }), /hold_deg/],
  ['two of a surface', withSet({ surfaces: [SURFACE, SURFACE] }), /surface/],
  ['surfaces that are no list', withSet({ surfaces: {} }), /^Refused: surfaces/],
  ['looser than usage, without a reason', withLine({ reason: '' }), /pump_outlet\.reason/],
  ['a reason that is no text', withLine({ reason: 5 }), /pump_outlet\.reason/],
  ['bounds that are no list', withSet({ bounds: {} }), /^Refused: bounds/],
  ['a bound that is no object', withSet({ bounds: [7] }), /bounds\.object/],
  ['an unknown bound', withBound({ id: 'duct_loss' }), /bounds\.id.*duct_loss/],
  ['a bound named __proto__', withBound({ id: '__proto__' }), /bounds\.id/],
  ['an unknown field in a bound', withBound({ extra: 1 }), /duct_loss_pa\.extra/],
  ['a bound in text', withBound({ high: '250' }), /duct_loss_pa\.high/],
  ['a bound that can’t be', withBound({ high: 1e6 }), /duct_loss_pa\.high/],
  ['a bound upside down', withBound({ low: 300 }), /duct_loss_pa\.high/],
  ['a bound without page', withBound({ source: ' ' }), /duct_loss_pa\.source/],
  ['a law for nobody', withBound({ basis: 'law' }), /duct_loss_pa\.vehicles/],
  ['a bound of an unknown basis', withBound({ basis: 'hearsay' }), /duct_loss_pa\.basis/],
  ['a bore of any size between', withBound({ id: 'fuel_bore_mm', low: 2, high: 4 }), /fuel_bore_mm\.high/],
  ['a bore without its other end', withBound({ id: 'fuel_bore_mm', high: 4 }), /fuel_bore_mm\.high/],
  ['two bounds of one thing', withSet({ bounds: [BOUND, BOUND] }), /duct_loss_pa\.id/],
  [
    'a bound looser than law, without a reason',
    withBound({ id: 'exhaust_to_combustible_mm', low: 200, high: null }),
    /exhaust_to_combustible_mm\.reason/,
  ],
  ['a flag in text', withLine({ at_limit_allowed: 'yes' }), /at_limit_allowed/],
  ['another flag in text', withLine({ holds_in_operation: 1 }), /holds_in_operation/],
];
