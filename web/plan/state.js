// The whole job as a list: every check of every section and part with its answer, every fact with
// whether it was seen, what is open. It counts and sorts; the answers are core's.

import { ORDER } from '../order.js';
import { allChecks, worstFirst } from '../sentences.js';
import { bounds } from '../words/limits.js';
import { answersOf } from './fields.js';
import { sheetEntry } from './model.js';
import { SECTIONS } from './sections.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../types.js').Verdict} Verdict */

/**
 * One line of the job.
 * @typedef {object} Item
 * @property {string} section a section or a part
 * @property {string} group what is marked as not needed together: a sheet, a fact, a check
 * @property {string} title
 * @property {Verdict | 'open' | 'seen' | 'not_needed' | 'not_found' | 'stopped'} state not found: looked at in a
 *   way that can find it beyond and never within, and it did not
 * @property {import('../types.js').Basis | ''} basis
 * @property {import('./model.js').Answer} [answer] of a sheet
 * @property {import('../types.js').Capture} [capture] of a part
 * @property {string} [fact] the record that keeps it, and its name there
 * @property {import('./record.js').Tick | null} [mark] who, where it is no tick of that record
 */

/** Sheets whose facts are not needed where the sheet is not. */
const TOGETHER = ['cut_plan'];

/** Where the mark is kept that a group is not needed. @param {string} group */
export const noNeed = (group) => `no_need:${group}`;

/** @param {import('./sheet.js').SheetWords} words @param {string} name of the result
 * @param {string} bound @param {number | null} [row] @param {Record<string, string>} [typed] in it */
function titleOf(words, name, bound, row = null, typed = undefined) {
  const title = words.results[name] ?? bounds[bound]?.label ?? name;
  const led = row === null ? title : `${words.row?.(row + 1, typed) ?? row + 1}: ${title}`;
  return words.named ? `${words.named}: ${led}` : led;
}

/** @param {import('./model.js').Answer} a @returns {Item['state']} */
const stateOf = ({ verdict, why, only_beyond, partial }) =>
  only_beyond && !partial && verdict === 'not_proven' && !why ? 'not_found' : verdict;

/** The checks of a sheet. What can only find it beyond is no check that is missed, and one of
 * several ways to do it is none of its own.
 * @param {Context} ctx @param {string} section @param {string} sheet @returns {Item[]} */
function ofSheet(ctx, section, sheet) {
  const words = SECTIONS[section].sheets[sheet];
  const { record } = ctx.plan.keptOf(sheet);
  const all = answersOf(ctx, sheet, record).filter((a) => !a.alternative);
  const told = all.filter((a) => !Number.isNaN(a.result.value));
  const { checks, outputs } = sheetEntry(sheet).entry;
  const missed = checks.filter(
    ({ output, bound, only_beyond, alternative }) =>
      !only_beyond &&
      !alternative &&
      !told.some((a) => a.bound === bound && a.result.output === output),
  );
  return [
    ...told.map((a) => ({
      section,
      group: sheet,
      title: titleOf(
        words,
        a.result.name,
        a.bound,
        a.result.row,
        record.rows[a.result.row ?? -1]?.typed,
      ),
      state: stateOf(a),
      basis: /** @type {Item['basis']} */ (a.limit?.basis ?? ''),
      answer: a,
    })),
    ...missed.map(({ output, bound }) => ({
      section,
      group: sheet,
      title: titleOf(words, outputs[output].name, bound),
      state: /** @type {'open'} */ ('open'),
      basis: /** @type {''} */ (''),
    })),
  ];
}

/** The facts of a section that are kept with one record.
 * @param {Context} ctx @param {string} section @param {string} record @returns {Item[]} */
function factsOf(ctx, section, record) {
  return Object.entries(SECTIONS[section].ticks[record] ?? {}).map(([id, title]) => ({
    section,
    // Facts about a cut are not needed where none is made.
    group: TOGETHER.includes(record) ? record : `${record}.${id}`,
    fact: `${record}.${id}`,
    title,
    state: ctx.plan.keptOf(record).record.ticks[id] ? 'seen' : 'open',
    basis: /** @type {''} */ (''),
  }));
}

/** What is open and marked as not needed is so. @param {Context} ctx @param {Item[]} items
 * @returns {Item[]} */
function marked(ctx, items) {
  const { ticks } = ctx.plan.keptOf('job').record;
  return items.map((item) =>
    ['open', 'none'].includes(item.state) && ticks[noNeed(item.group)]
      ? { ...item, state: 'not_needed' }
      : item,
  );
}

/** A part that was looked at and found nothing says nothing beside the whole.
 * @param {Item[]} items of one section */
function withoutParts(items) {
  const whole = (/** @type {Item} */ item) =>
    items.some(
      ({ answer }) => answer && !answer.only_beyond && answer.bound === item.answer?.bound,
    );
  return items.filter(
    (item) => !(item.answer?.partial && item.state === 'not_proven' && whole(item)),
  );
}

/** What belongs to one sheet. @param {Context} ctx @param {string} section @param {string} sheet */
export const itemsOfSheet = (ctx, section, sheet) =>
  marked(ctx, [...withoutParts(ofSheet(ctx, section, sheet)), ...factsOf(ctx, section, sheet)]);

/** The worst of a check's latest capture, as parked and in the vehicle; open where there is none.
 * @param {Context} ctx @param {string} part @returns {Item[]} */
function ofPart(ctx, part) {
  const { checks } = ctx.engine.catalogue.parts.find((p) => p.id === part) ?? { checks: [] };
  return checks.map((id) => {
    const last = ctx.captures.findLast(
      (c) => !c.overruled && c.report.checks.some((check) => check.id === id),
    );
    const both = last ? allChecks(ctx, last).filter((c) => c.id === id) : [];
    const worst = worstFirst(both)[0];
    return {
      section: part,
      group: `angle.${id}`,
      title: /** @type {Record<string, string>} */ (ctx.text.checks)[id],
      state: worst?.verdict ?? 'open',
      basis: worst?.basis ?? '',
      capture: last,
    };
  });
}

/** Every line of the job, in the order of the work. @param {Context} ctx @returns {Item[]} */
export function itemsOf(ctx) {
  const sections = Object.entries(SECTIONS).flatMap(([section, parts]) => {
    const { sheets, ticks, own, only = {} } = parts;
    const asked = (/** @type {string} */ name) => only[name]?.(ctx) ?? true;
    return [
      ...withoutParts(
        Object.keys(sheets)
          .filter(asked)
          .flatMap((sheet) => ofSheet(ctx, section, sheet)),
      ),
      ...Object.keys(ticks)
        .filter(asked)
        .flatMap((record) => factsOf(ctx, section, record)),
      ...(own?.(ctx) ?? []),
    ];
  });
  const parts = ctx.engine.catalogue.parts.flatMap(({ id }) => ofPart(ctx, id));
  const order = Object.values(ORDER).flat();
  const at = (/** @type {Item} */ item) => order.indexOf(item.section);
  return marked(ctx, [...sections, ...parts]).sort((a, b) => at(a) - at(b));
}
