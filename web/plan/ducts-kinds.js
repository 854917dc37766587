// The kinds of pieces: what each is asked, and how it is told in short.

import { h } from '../dom.js';
import { words } from '../words/ducts.js';
import { unitLabel } from './units.js';

/** @typedef {import('./fields.js').SheetField} SheetField */
/** @typedef {import('./record.js').Row} Row */

/** Core's names of the kinds, in their order, and the fields that each has a use for. */
export const KINDS = /** @type {const} */ ([
  ['straight', ['bore_mm', 'length_m']],
  ['bend', ['bore_mm', 'angle_deg', 'radius_ratio']],
  ['mitre', ['bore_mm', 'angle_deg']],
  ['flexible', ['bore_mm', 'length_m', 'share', 'angle_deg', 'radius_ratio']],
  ['open_end', ['bore_mm', 'share']],
  ['reducer', ['bore_mm', 'second_bore_mm', 'length_m']],
  ['branch', ['bore_mm', 'share', 'angle_deg', 'second_bore_mm']],
]);
export const OPEN_END = 4;
export const REDUCER = 5;
const ROUGH = ['straight', 'bend', 'flexible', 'reducer'];
/** @param {Row} row */
export const kindOf = (row) => Number(row.typed.kind);

/** Fields that a piece's kind has a use for. @param {Row} row @param {SheetField[]} fields */
export function fieldsOf(row, fields) {
  const [kind, used] = KINDS[kindOf(row)];
  const names = [...used, ...(ROUGH.includes(kind) ? ['roughness_mm'] : [])];
  return names.flatMap((name) => fields.filter((f) => f.entry.name === name));
}

/** A piece in short, as it was typed. @param {Row} row @param {SheetField[]} fields
 * @param {'metric' | 'us'} system */
export function inShort(row, fields, system) {
  const [kind] = KINDS[kindOf(row)];
  const told = fieldsOf(row, fields).filter((f) => row.typed[f.entry.name]);
  return told.map((f) => `${row.typed[f.entry.name]}${shortUnit(f, kind, system)}`).join(' · ');
}

/** A diameter for the drawing. @param {string | undefined} typed */
export const boreOf = (typed) => Number.parseFloat((typed ?? '').replace(',', '.')) || 0;

/** @param {SheetField} field @param {string} kind @param {'metric' | 'us'} system */
function shortUnit({ entry }, kind, system) {
  if (entry.unit === 'deg') return '°';
  if (entry.name === 'radius_ratio') return ' D';
  if (entry.name === 'share') return ` ${words.shares[kind]}`;
  return entry.unit === 'ratio' ? '' : ` ${unitLabel(entry.unit, system)}`;
}

/** @param {SheetField} field @param {[string, string]} words */
export function relabel(field, [label, hint]) {
  field.words.label = label;
  const el = /** @type {HTMLElement} */ (field.el.querySelector('label'));
  const [name, unit] = [el.querySelector('b'), el.childNodes[1]];
  if (name) name.textContent = label;
  const plain = unit?.nodeType === Node.TEXT_NODE ? [unit] : [];
  el.replaceChildren(...(name ? [name] : []), ...plain, h('small', {}, hint));
}
