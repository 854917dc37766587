// Numbers that several sheets of a section ask are typed once: what is typed on one goes to the
// others. How well each is known stays its own: a bore is a name on one sheet and a real hole on
// another.

import { convertRow } from './fields.js';
import { sheetEntry } from './model.js';

/** @typedef {import('../context.js').Context} Context */

/** Sheets that ask the same numbers. */
const FELLOWS = [
  ['fuel_run', 'fuel_pressure', 'prime', 'bubble', 'burn'],
  ['cable', 'fuse', 'battery'],
];
/** Called otherwise elsewhere. @type {Record<string, string>} */
const SAME = { bore_mm: 'suction_bore_mm' };

/** @param {string} name */
const meaning = (name) => SAME[name] ?? name;

/** A sheet's record, in the system in use. @param {Context} ctx @param {string} sheet */
function keptOf(ctx, sheet) {
  const kept = ctx.plan.keptOf(sheet);
  const { record } = kept;
  const { system } = ctx.settings;
  const { inputs } = sheetEntry(sheet).entry;
  if (record.system !== system) convertRow(record, inputs, record.system, system);
  record.system = system;
  return { kept, record, inputs };
}

/** Fields of the other sheets that mean the same. @param {Context} ctx @param {string} sheet @param {string} name */
function fellows(ctx, sheet, name) {
  const others = FELLOWS.find((all) => all.includes(sheet)) ?? [];
  return others.flatMap((s) => {
    if (s === sheet) return [];
    const { kept, record, inputs } = keptOf(ctx, s);
    const own = inputs.find((i) => meaning(i.name) === meaning(name));
    return own ? [{ kept, record, name: own.name }] : [];
  });
}

/** After a change. @param {Context} ctx @param {import('./sheet.js').SheetForm} form */
export function push(ctx, form) {
  const { typed } = form.kept.record;
  for (const { name } of form.entry.inputs)
    for (const fellow of fellows(ctx, form.name, name)) {
      if ((fellow.record.typed[fellow.name] ?? '') === (typed[name] ?? '')) continue;
      fellow.record.typed[fellow.name] = typed[name] ?? '';
      fellow.kept.changed();
    }
}
