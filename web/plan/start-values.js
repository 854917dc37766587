// Everything measured at the first start, and the baseline that is kept of it for service.

import { button, h } from '../dom.js';
import { frame } from '../screens/frame.js';
import { clock } from '../units.js';
import { words } from '../words/start.js';
import { sheets } from '../words/start-sheets.js';
import { SheetForm } from './sheet.js';
import { Start } from './start-record.js';
import { tell } from './start-step.js';
import { textField } from './start-stop.js';
import { valueAndU } from './units.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('./start-record.js').Baseline} Baseline */

const t = words.values;

/** Of the test for carbon monoxide. */
const CO = ['rise_ppm', 'shown_rise_ppm', 'part_rise_ppm', 'alarm_rise_ppm', 'full_min', 'low_min'];

/** @param {string} name */
function labelOf(name) {
  const [own, co] = [sheets.started, sheets.co_check];
  const field = own.fields[name];
  return own.results[name] ?? co.results[name] ?? (Array.isArray(field) ? field[0] : field);
}

/** What is measured now, with its ±. @param {Start} start @returns {Baseline['lines']} */
export function measuredNow(start) {
  const told = (/** @type {string} */ sheet) => {
    const worked = start.worked(sheet);
    return worked && !worked.refused ? worked.results.filter((r) => r.row === null) : [];
  };
  const co = told('co_check').filter((r) => CO.includes(r.name));
  const all = [...told('started'), ...co].filter(
    (r) => Number.isFinite(r.value) && Number.isFinite(r.u),
  );
  return all.map(({ name, value, u, unit }) => ({ name, value, u, unit }));
}

/** Lines of a baseline as a table. @param {Context} ctx @param {Baseline['lines']} lines */
export function linesTable(ctx, lines) {
  const row = (/** @type {Baseline['lines'][0]} */ { name, value, u, unit }) => {
    const shown = valueAndU(value, u, unit, ctx.settings.system);
    return h(
      'tr',
      { 'data-name': name },
      h('th', { scope: 'row' }, labelOf(name)),
      // What was counted has no ±.
      h('td', {}, u ? `${shown.value} ${shown.u}` : shown.value),
    );
  };
  return h('table', { class: 'measured' }, h('tbody', {}, ...lines.map(row)));
}

/** @param {Start} start */
function baselines(start) {
  const kept = [...start.record.baselines].reverse();
  if (!kept.length) return [h('p', {}, t.none)];
  return kept.map((b) =>
    h(
      'section',
      { class: 'card', 'data-baseline': b.at },
      h('b', {}, t.kept(b.who, clock(b.at))),
      linesTable(start.ctx, b.lines),
    ),
  );
}

/** The button that keeps what is measured now, and what it needs. @param {Start} start */
function keeper(start) {
  const { ctx } = start;
  const who = textField(words.who, 'baseline-who', ctx.settings.who ?? '');
  const trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
  const list = h('div', {}, ...baselines(start));
  const keep = () => {
    const lines = measuredNow(start);
    const lacks = who.value() ? (lines.length ? '' : t.nothing) : words.needsWho;
    tell(trouble, lacks);
    if (lacks) return trouble.scrollIntoView({ block: 'center' });
    start.record.baselines.push({ who: who.value(), at: new Date().toISOString(), lines });
    ctx.keep({ who: who.value() });
    start.kept.changed(true);
    list.replaceChildren(...baselines(start));
    list.scrollIntoView();
  };
  const saved = h('p', { class: 'source' }, start.kept.mark());
  return { nodes: [who.el, trouble, list, saved], button: button(t.keep, 'keep-baseline', keep) };
}

/** @param {Context} ctx */
export function startValues(ctx) {
  const form = new SheetForm(ctx, 'started', sheets.started);
  const kept = keeper(new Start(ctx));
  const body = [
    h('p', {}, t.lead),
    form.group(t.glow, ['battery_glow_v', 'heater_glow_v', 'glow_a']),
    form.group(t.running, ['battery_run_v', 'heater_run_v', 'run_a', 'low_a']),
    form.group(t.air, ['intake_celsius', 'outlet_celsius', 'outlet_low_celsius']),
    form.group(t.times, ['flame_min', 'starts', 'after_run_min']),
    ...form.outcome(),
    h('h2', {}, t.baseline),
    h('p', { class: 'source' }, t.baselineWhy),
    ...kept.nodes,
  ];
  const el = frame(ctx, 'start_values', t.title, body, [kept.button]);
  form.start();
  return el;
}
