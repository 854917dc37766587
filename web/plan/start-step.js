// What one step of the first start shows: what to do, its timer, its fields, its answers.

import { button, h, say } from '../dom.js';
import { words, steps } from '../words/start.js';
import { sheets } from '../words/start-sheets.js';
import { alarmRows } from './start-alarms.js';
import { Answers } from './answers.js';
import { SheetForm } from './sheet.js';
import { timerPanel, timersOf } from './start-timer.js';

/** @typedef {import('./start-record.js').Start} Start */

/** What is measured in a step: fields of the sheet, and the results that answer for them.
 * @type {Record<string, [string[], string[]]>} */
const MEASURED = {
  ignition: [['flame_min', 'starts'], ['starts']],
  voltage: [
    ['battery_glow_v', 'heater_glow_v', 'glow_a', 'battery_run_v', 'heater_run_v', 'run_a'],
    ['heater_glow_v', 'heater_run_v', 'drop_glow_v', 'drop_run_v'],
  ],
  outlet: [['intake_celsius', 'outlet_celsius'], ['outlet_celsius']],
  low: [['low_a', 'outlet_low_celsius'], ['outlet_low_celsius']],
  after_run: [['after_run_min'], ['after_run_min']],
};

/** Where it is said that no rise can be told yet: from the meter on, while it can still be had. */
const OUTDOORS = ['meter', 'closed', 'leaks_cold', 'prime', 'ignition', 'co_test'];

/** Where the test for carbon monoxide is typed or timed. */
const WITH_CO = ['meter', 'closed', 'ignition', 'voltage', 'outlet', 'low', 'co_test'];
const TIMED_CO = WITH_CO.slice(2);

/** Seconds that something takes at least, as core tells it: with its ±, so that the time proves it.
 * @param {Start} start @param {string} sheet @param {string} name @param {number} per_s */
function dueOf(start, sheet, name, per_s) {
  const worked = start.worked(sheet);
  const found = worked && !worked.refused && worked.results.find((r) => r.name === name);
  const due = found ? (found.value + found.u) * per_s : NaN;
  return Number.isFinite(due) ? due : null;
}

/** @param {Start} start @param {string} id */
function timersIn(start, id) {
  const timers = timersOf(start);
  const t = words.timer;
  if (id === 'prime')
    return [
      timerPanel(timers, 'prime', {
        due_s: dueOf(start, 'prime', 'prime_s', 1),
        missing: t.noPrime,
      }),
    ];
  if (id === 'after_run') return [timerPanel(timers, 'after_run', { due_s: null })];
  if (!TIMED_CO.includes(id)) return [];
  const due_s = dueOf(start, 'co_check', 'needed_min', 60);
  // Without a time of its own it would never come to an end.
  if (due_s === null) return [{ el: h('p', { class: 'missing' }, t.noCo), update: () => {} }];
  return [timerPanel(timers, 'co', { due_s })];
}

/** What a step measured beyond its limit. @param {Start} start @param {string} id */
export function beyondIn(start, id) {
  const worked = MEASURED[id] && start.worked('started');
  const answers = worked && !worked.refused ? worked.answers : [];
  return answers
    .filter((a) => a.verdict === 'beyond' && MEASURED[id][1].includes(a.result.name))
    .map((a) => sheets.started.results[a.result.name]);
}

/** The fields of a step and what came of them. @param {Start} start @param {string} id
 * @param {() => void} onWorked */
function measured(start, id, onWorked) {
  if (!MEASURED[id]) return [];
  const [names, results] = MEASURED[id];
  const form = new SheetForm(start.ctx, 'started', sheets.started);
  const answers = new Answers(form);
  form.onWorked = (worked) => {
    const told = worked && !worked.refused ? worked.answers : [];
    answers.show(
      told.filter((a) => results.includes(a.result.name) && !Number.isNaN(a.result.value)),
    );
    onWorked();
  };
  form.start();
  return [form.group('', names), form.state, answers.el];
}

/** @param {Start} start @param {string} screen */
function wayTo(start, screen) {
  const [title, sub] = /** @type {Record<string, string[]>} */ (words.ways)[screen];
  const { ctx } = start;
  const label = h('span', { class: 'words' }, h('b', {}, title), h('small', {}, sub));
  const el = button('', `to-${screen}`, () => ctx.go(screen), 'row');
  el.append(label);
  return el;
}

/** The ways beside the list. @param {Start} start */
export const ways = (start) =>
  ['start_co', 'start_values', 'start_card'].map((screen) => wayTo(start, screen));

/** The body of a step. @param {Start} start @param {string} id @param {() => void} onChange */
export function stepBody(start, id, onChange) {
  const timers = timersIn(start, id);
  const update = () => {
    for (const timer of timers) timer.update();
  };
  update();
  const to = [
    ...(WITH_CO.includes(id) ? ['start_co'] : []),
    ...(id === 'prime' ? ['fuel_prime'] : []),
    ...(id === 'driver' ? ['start_card'] : []),
  ];
  const nodes = [
    h('p', { class: 'lead' }, steps[id].does),
    OUTDOORS.includes(id) &&
      !start.knowsOutdoors &&
      h('p', { class: 'missing' }, words.co.noOutdoors),
    ...timers.map((timer) => timer.el),
    ...measured(start, id, onChange),
    ...(id === 'alarms' ? [alarmRows(start, onChange)] : []),
    ...to.map((screen) => wayTo(start, screen)),
  ];
  return { nodes, update };
}

/** A line that says how a step stands, for its card. @param {HTMLElement} el @param {string} text */
export const tell = (el, text) => {
  say(el, text);
  el.hidden = text === '';
};
