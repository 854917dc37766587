// The driver's card: what is typed and measured of this heater, blank lines for the rest, and what
// holds for every one. On the screen as it comes out of the printer.

import { button, h } from '../dom.js';
import { frame } from '../screens/frame.js';
import { day } from '../units.js';
import { words } from '../words/start-card.js';
import { Start } from './start-record.js';
import { itemsOf } from './state.js';
import { linesTable, measuredNow } from './start-values.js';
import { duration } from './start-timer.js';

/** @typedef {import('../context.js').Context} Context */

const t = words.card;
/** What a driver can use of what was measured. */
const FOR_DRIVER = [
  'heater_glow_v',
  'heater_run_v',
  'outlet_celsius',
  'outlet_low_celsius',
  'flame_min',
  'starts',
  'after_run_min',
];

/** What is typed for the card; until then what the job is named by.
 * @param {Start} start @param {string} name */
function typedFor({ ctx, record }, name) {
  const named = name === 'vehicle' || name === 'heater' ? ctx.job[name] : '';
  return record.typed[name] ?? named;
}

/** What was typed, or lines to write on. @param {Start} start @param {string} name @param {number} [lines] */
function told(start, name, lines = 1) {
  const text = typedFor(start, name).trim();
  if (text) return h('span', { class: 'told', 'data-told': name }, text);
  const blank = Array.from({ length: lines }, () => h('span', { class: 'blank' }));
  return h('span', { class: 'blanks', 'data-told': name }, ...blank);
}

/** @param {Start} start */
function measured(start) {
  const kept = start.record.baselines.at(-1);
  const lines = (kept?.lines ?? measuredNow(start)).filter((l) => FOR_DRIVER.includes(l.name));
  return { lines, at: kept?.at ?? null };
}

/** The card itself. @param {Start} start */
function paper(start) {
  const { lines, at } = measured(start);
  const ran = lines.find((l) => l.name === 'after_run_min');
  const proven = Number(start.evaluate()?.values.co_test === 1);
  const beyond = itemsOf(start.ctx).filter((i) => i.state === 'beyond').length;
  /** @param {string} title @param {...(Node | string | null)} body */
  const part = (title, ...body) => h('section', {}, h('h3', {}, title), ...body);
  /** @param {string} label @param {Node} what */
  const line = (label, what) => h('p', { class: 'line' }, `${label}:`, what);
  return h(
    'article',
    { class: 'driver-card' },
    h('h2', {}, t.title),
    beyond ? h('p', { class: 'unfinished' }, t.beyond(beyond)) : null,
    line(t.vehicle, told(start, 'vehicle')),
    line(t.heater, told(start, 'heater')),
    part(t.on, told(start, 'switch_on', 2)),
    part(
      t.off,
      told(start, 'switch_off'),
      h('p', {}, h('b', {}, t.afterRun), ran ? ` ${t.afterRunTook(duration(60 * ran.value))}` : ''),
    ),
    part(t.never, h('ul', {}, ...t.nevers.map((never) => h('li', {}, never)))),
    h(
      'section',
      { class: 'alarm' },
      h('h3', {}, t.alarm),
      h('ol', {}, ...t.alarms.map((todo) => h('li', {}, todo))),
      line(t.emergency, told(start, 'emergency')),
    ),
    part(t.clear, line(t.exhaust, told(start, 'exhaust')), line(t.vents, told(start, 'vents'))),
    part(
      at ? `${t.measured}, ${t.measuredAt(day(at))}` : t.measured,
      lines.length ? linesTable(start.ctx, lines) : told(start, 'measured', 2),
      h('p', {}, t.co[proven]),
    ),
    line(t.service, told(start, 'service')),
    line(t.fitter, told(start, 'fitter')),
    h('p', { class: 'small' }, t.note),
  );
}

/** @param {Context} ctx */
export function startCard(ctx) {
  const start = new Start(ctx);
  const card = h('div', { class: 'on-a5' });
  const show = () => card.replaceChildren(paper(start));
  /** @param {[string, string]} field */
  const field = ([name, label]) => {
    const id = `card-${name}`;
    const input = h(name.startsWith('switch') ? 'textarea' : 'input', {
      id,
      'data-name': name,
      maxlength: name.startsWith('switch') ? 200 : 60,
      autocomplete: 'off',
      input: (/** @type {any} */ e) => {
        start.record.typed[name] = e.target.value;
        start.kept.changed();
        show();
      },
      change: () => start.kept.changed(true),
    });
    /** @type {HTMLInputElement} */ (input).value = typedFor(start, name);
    return h('div', { class: 'field wide' }, h('label', { for: id }, label), input);
  };
  show();
  return frame(
    ctx,
    'start_card',
    words.title,
    [
      h('p', {}, words.lead),
      ...Object.entries(words.fields).map(field),
      h('p', { class: 'source' }, start.kept.mark()),
      h('p', { class: 'source' }, words.paper),
      card,
    ],
    [button(words.print, 'print', () => print())],
  );
}
