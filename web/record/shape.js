// Whether a value has the shape that a schema asks for: the part of JSON Schema that ./schema.js
// uses. An error names the place.

import { shown } from '../border.js';
import { text } from '../text.js';

/** @typedef {import('./schema.js').Schema} Schema */

const { faults } = text;

/** @param {unknown} value */
function typeOf(value) {
  if (value === null) return 'null';
  if (Array.isArray(value)) return 'array';
  if (Number.isInteger(value)) return 'integer';
  // JSON has no infinity; 1e999 becomes one.
  return typeof value === 'number' && !Number.isFinite(value) ? 'no number' : typeof value;
}

/** @param {Schema} schema @param {unknown} value */
function isType(schema, value) {
  if (!schema.type) return true;
  const found = typeOf(value);
  const wanted = [schema.type].flat();
  return wanted.includes(found) || (found === 'integer' && wanted.includes('number'));
}

/** @param {Schema} schema @param {any} value @returns {string} what is wrong with it alone */
function own(schema, value) {
  if (!isType(schema, value)) return faults.expected([schema.type].flat().join(' / '));
  if ('const' in schema && value !== schema.const) return faults.expected(schema.const);
  if (schema.enum && !schema.enum.includes(value)) return faults.strange(shown(value));
  if (typeof value === 'string') {
    if (value.length > (schema.maxLength ?? Infinity)) return faults.tooLong;
    if (schema.pattern && !new RegExp(schema.pattern).test(value)) return faults.otherForm;
  }
  if (value < schema.minimum) return faults.below(schema.minimum);
  if (Array.isArray(value) && value.length > schema.maxItems) return faults.tooMany;
  if (Array.isArray(value) && value.length < schema.minItems) return faults.tooFew;
  return '';
}

/** @param {Schema} schema @param {Record<string, unknown>} value @param {string} at */
function members(schema, value, at) {
  const { properties = {}, required = [], additionalProperties, maxProperties } = schema;
  const keys = Object.keys(value);
  if (keys.length > (maxProperties ?? Infinity)) throw new Error(`${at}: ${faults.tooMany}`);
  for (const key of required)
    if (!Object.hasOwn(value, key)) throw new Error(`${at}.${key}: ${faults.missing}`);
  for (const key of keys) {
    const inner = Object.hasOwn(properties, key) ? properties[key] : additionalProperties;
    const where = `${at}.${key.slice(0, 40)}`;
    if (inner === false || key === '__proto__') throw new Error(`${where}: ${faults.notKnown}`);
    if (inner) shaped(inner, value[key], where);
  }
}

/** @param {Schema} schema @param {any} value @param {string} at throws an error that begins with the
 * place */
export function shaped(schema, value, at) {
  const wrong = own(schema, value);
  if (wrong) throw new Error(`${at}: ${wrong}`);
  if (Array.isArray(value)) {
    if (!schema.items) return;
    for (const [i, item] of value.entries()) shaped(schema.items, item, `${at}[${i}]`);
  } else if (typeof value === 'object' && value !== null) members(schema, value, at);
}
