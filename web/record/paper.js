// The record on paper: one to two pages, A4 or Letter, readable in black and white. Hidden on the
// screen. It says what the record says and nothing more.

import { h } from '../dom.js';
import { language } from '../locale.js';
import { ORDER } from '../order.js';
import { verdictFrame } from '../screens/frame.js';
import { asRead } from '../own-words.js';
import { limitWithUnit, valueAndU } from '../plan/units.js';
import { day, stamp } from '../units.js';
import { words } from '../words/record.js';
import { words as start } from '../words/start.js';
import { short } from './canonical.js';
import { nameOf } from './jobs.js';
import { isStop } from './rows.js';
import { signed } from './signature.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {Awaited<ReturnType<typeof import('./build.js').buildRecord>>} Record_ */
/** @typedef {import('./rows.js').CheckRow} CheckRow */

const t = words.paper;

/** @template T @param {T[]} all @param {(one: T) => string} key @returns {[string, T[]][]} */
function grouped(all, key) {
  /** @type {Map<string, T[]>} */ const groups = new Map();
  for (const one of all) groups.set(key(one), [...(groups.get(key(one)) ?? []), one]);
  return [...groups];
}

const SECTIONS = Object.values(ORDER).flat();
/** Checks and facts come one after the other; on paper they stand in the order of the work.
 * @param {{ section: string }} a @param {{ section: string }} b */
const inOrder = (a, b) => SECTIONS.indexOf(a.section) - SECTIONS.indexOf(b.section);

/** What a section or a part is called. @param {Context} ctx @param {string} section */
function nameOfSection(ctx, section) {
  const named = /** @type {Record<string, any>} */ (ctx.text.sections)[section];
  return named ? named[0] : /** @type {Record<string, any>} */ (ctx.text.parts)[section];
}

/** On whose word a limit stands, in one line. @param {Context} ctx @param {CheckRow} row */
function whoseOf(ctx, { low, high, basis, source, vehicles, reason }) {
  if (low === null && high === null) return '';
  const word = /** @type {Record<string, string>} */ (ctx.text.bases)[basis] ?? '';
  return [word, asRead(source), asRead(vehicles), reason].filter(Boolean).join(', ');
}

/** @param {Context} ctx @param {CheckRow} row */
function verdictOf(ctx, row) {
  const { verdict, basis } = row;
  if (row.only_beyond && !row.partial && verdict === 'not_proven' && !row.why)
    return ctx.text.parts.notFound;
  const shown = verdict === 'not_checked' || verdict === 'not_needed' ? 'none' : verdict;
  return verdictFrame(shown, ctx.text.verdicts[shown], /** @type {any} */ (basis));
}

/** What a verdict rests on where no document does: a frame alone does not tell that on paper.
 * @param {Context} ctx @param {CheckRow} row */
const restsOn = (ctx, { verdict, basis }) =>
  verdict === 'within' && ['trade_usage', 'assumed'].includes(basis)
    ? ` ${/** @type {Record<string, string>} */ (ctx.text.bases)[basis]}`
    : '';

/** @param {Context} ctx @param {CheckRow} row @param {string[]} sources all of them, to be told by
 * their numbers @param {string} told the time above the table: it is not said again */
function line(ctx, row, sources, told) {
  const { system } = ctx.settings;
  const shown = valueAndU(row.value ?? NaN, row.u ?? Infinity, row.unit, system, [
    row.low ?? NaN,
    row.high ?? NaN,
  ]);
  const ends = [
    row.low === null ? '' : `≥ ${limitWithUnit(row.low, row.unit, system)}`,
    row.high === null ? '' : `≤ ${limitWithUnit(row.high, row.unit, system)}`,
  ].filter(Boolean);
  const whose = whoseOf(ctx, row);
  const missing = row.why === 'limit_not_entered' && ends.length === 0;
  const why = missing ? '' : /** @type {Record<string, string>} */ (ctx.text.whys)[row.why ?? ''];
  const at = row.how !== 'entered' && row.at ? stamp(row.at) : told;
  const when = at === told ? '' : `, ${at}`;
  return h(
    'tr',
    { 'data-check': row.id },
    h('th', { scope: 'row' }, row.what, when),
    h('td', {}, row.value === null ? '' : `${shown.value} ${shown.u}`),
    h(
      'td',
      {},
      missing ? t.noLimit : ends.join(', '),
      whose && h('span', { class: 'whose' }, ` [${sources.indexOf(whose) + 1}]`),
    ),
    h('td', {}, verdictOf(ctx, row), restsOn(ctx, row), why ? ` ${why}` : ''),
  );
}

/** What was measured, a table for each section, and on whose word its limits stand.
 * @param {Context} ctx @param {CheckRow[]} rows */
function measured(ctx, rows) {
  const sources = [...new Set(rows.map((row) => whoseOf(ctx, row)).filter(Boolean))];
  const head = () => h('tr', {}, ...t.columns.map((name) => h('th', { scope: 'col' }, name)));
  const tables = grouped(rows, (r) => r.section).map(([section, own]) => {
    const last = own
      .map((r) => r.at ?? '')
      .sort()
      .at(-1);
    const told = last ? stamp(last) : '';
    const caption = [nameOfSection(ctx, section), told].filter(Boolean).join(', ');
    return h(
      'table',
      { class: 'checks' },
      h('caption', {}, caption),
      h('thead', {}, head()),
      h('tbody', {}, ...own.map((row) => line(ctx, row, sources, told))),
    );
  });
  return [
    h('div', { class: 'columns' }, ...tables),
    h('h3', {}, t.whose),
    h('ol', { class: 'columns' }, ...sources.map((whose) => h('li', {}, whose))),
  ];
}

/** Names of a list, section by section. @param {Context} ctx
 * @param {{ section: string, what: string }[]} rows */
function listed(ctx, rows) {
  if (!rows.length) return h('p', {}, t.none);
  return h(
    'ul',
    {},
    ...grouped([...rows].sort(inOrder), (r) => r.section).map(([section, own]) =>
      h(
        'li',
        {},
        h('b', {}, `${nameOfSection(ctx, section)}: `),
        own.map((r) => r.what.replace(/\.$/, '')).join('; '),
      ),
    ),
  );
}

/** @param {import('./rows.js').FactRow} stop */
const stopLine = ({ statement, who, at, reason }) =>
  h(
    'p',
    { class: 'stopped' },
    h('b', {}, statement),
    at && ` ${start.stop.resumed(who, stamp(at), reason)}`,
  );

/** What was seen, by whom and on which day, a line for each section.
 * @param {Context} ctx @param {import('./rows.js').FactRow[]} facts */
function seenBy(ctx, facts) {
  if (!facts.length) return h('p', {}, t.none);
  const by = (/** @type {import('./rows.js').FactRow} */ f) => `${f.who}, ${day(String(f.at))}`;
  const line = (/** @type {import('./rows.js').FactRow} */ { statement, reason }) =>
    `${statement.replace(/\.$/, '')}${reason ? ` (${reason})` : ''}`;
  return h(
    'ul',
    {},
    ...grouped(facts, by).map(([who, own]) =>
      h(
        'li',
        {},
        h('b', {}, who),
        ...grouped(own, (f) => nameOfSection(ctx, f.section)).map(([section, all]) =>
          h('div', {}, h('b', {}, `${section}: `), all.map(line).join('; ')),
        ),
      ),
    ),
  );
}

/** @param {Record_} record */
function head({ job, software, limits_sha256 }) {
  const facts = [
    [t.vehicle, job.vehicle],
    [t.heater, job.heater],
    [t.customer, job.customer],
    [t.installer, job.installer],
    [t.dates, `${day(job.created_at)} – ${day(job.changed_at)}`],
    [t.limits, short(limits_sha256)],
    [t.software, software],
  ];
  return h(
    'dl',
    {},
    ...facts.flatMap(([name, value]) => [h('dt', {}, name), h('dd', {}, value || t.blank)]),
  );
}

/** @param {Context} ctx */
function signatures(ctx) {
  const { typed } = ctx.plan.keptOf('signatures').record;
  return h(
    'div',
    { class: 'signatures' },
    .../** @type {const} */ (['installer', 'customer']).map((who) =>
      h(
        'figure',
        {},
        typed[who]
          ? signed(typed[who], words.sign[who])
          : h('p', { class: 'line' }, typed[`${who}_name`] ?? t.blank),
        h(
          'figcaption',
          {},
          [
            words.sign[who],
            typed[who] && typed[`${who}_name`],
            typed[`${who}_at`] && stamp(typed[`${who}_at`]),
          ]
            .filter(Boolean)
            .join(', '),
        ),
      ),
    ),
  );
}

/** @param {Context} ctx @param {Record_} record @param {Node[]} pictures @param {string} summary */
export function paper(ctx, record, pictures, summary) {
  const told = record.checks.filter((c) => !['not_checked', 'not_needed'].includes(c.verdict));
  const open = record.checks.filter((c) => c.verdict === 'not_checked');
  const beyond = record.checks.filter((c) => c.verdict === 'beyond');
  const stops = record.facts.filter(isStop);
  const seen = record.facts.filter((f) => f.state === 'seen' && !isStop(f));
  const unseen = record.facts.filter((f) => f.state === 'not_seen');
  const repeated = record.captures.length - new Set(record.captures.map((c) => c.report.part)).size;
  const gauges = record.captures.flatMap((c) => c.gauge ?? []);
  const overruled = record.captures.filter((c) => c.overruled);
  const noNeed = [
    ...record.checks.filter((c) => c.verdict === 'not_needed'),
    ...record.facts
      .filter((f) => f.state === 'not_needed')
      .map((f) => ({ section: f.section, what: `${f.statement} (${f.who}: ${f.reason})` })),
  ];
  return h(
    'article',
    { class: 'paper record-paper', lang: language },
    h('h1', {}, `${t.title}: ${nameOf(ctx.job)}`),
    record.job.tryout ? h('p', { class: 'tryout-mark' }, t.tryout) : null,
    head(record),
    h('p', { class: 'summary' }, `${summary}.`),
    ...(stops.length ? [h('h2', {}, t.stops), ...stops.map(stopLine)] : []),
    ...(beyond.length ? [h('h2', {}, t.beyond), listed(ctx, beyond)] : []),
    h('h2', {}, t.measured),
    ...(told.length ? measured(ctx, told) : [h('p', {}, t.none)]),
    ...pictures,
    h('h2', {}, t.open),
    listed(ctx, [...open, ...unseen.map((f) => ({ section: f.section, what: f.statement }))]),
    noNeed.length ? h('h2', {}, t.noNeed) : null,
    noNeed.length ? listed(ctx, noNeed) : null,
    h('h2', {}, t.seen),
    seenBy(ctx, seen.sort(inOrder)),
    h('p', {}, t.captures(record.captures.length, gauges.length, repeated)),
    ...[...new Set(gauges.map((g) => t.gauges(g.number, g.software)))].map((g) => h('p', {}, g)),
    ...overruled.map((c) =>
      h('p', {}, t.overruled(stamp(c.taken_at), c.overruled?.who ?? '', c.overruled?.reason ?? '')),
    ),
    h('h2', {}, t.claims),
    h('ul', {}, ...record.does_not_claim.map((c) => h('li', {}, c))),
    signatures(ctx),
    h('p', { class: 'sum' }, `${words.sum} ${short(record.sha256)}`),
  );
}
