// The test for carbon monoxide: meter, space, readings; what they tell and how blind they are.

import { button, h } from '../dom.js';
import { frame } from '../screens/frame.js';
import { words as start } from '../words/start.js';
import { sheets } from '../words/start-sheets.js';
import { catalogue } from './model.js';
import { SheetForm } from './sheet.js';
import { Start } from './start-record.js';
import { stopNow } from './start-stop.js';
import { timersOf } from './start-timer.js';
import { toldLines } from './told.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('./model.js').Worked} Worked */

const t = start.co;
/** The advice to read on. */
const GOES_ON = '[data-result="spare_test_min"] .does';

/** @param {Worked | null} worked @param {string} name */
function resultOf(worked, name) {
  if (!worked || worked.refused) return NaN;
  return worked.results.find((r) => r.name === name && r.row === null)?.value ?? NaN;
}

/** How urgent the highest reading is; nothing while there is none. @param {Worked | null} worked */
function urgency(worked) {
  const reached = resultOf(worked, 'urgency');
  if (Number.isNaN(reached)) return '';
  const highest = catalogue.co_thresholds[reached - 1];
  return highest ? t.reaches(highest.source, highest.over_min) : t.reachesNone;
}

/** A new reading begins at the minute that the timer says, and where the last one was.
 * @param {SheetForm} form @param {Start} kept */
function add(form, kept) {
  const minutes = timersOf(kept).minutes('co');
  const last = form.kept.record.rows.at(-1)?.typed;
  /** @type {Record<string, string>} */
  const told = last ? { place: last.place ?? '', power: last.power ?? '' } : {};
  if (minutes !== null) told.minutes = String(minutes);
  form.addRow(told);
}

/** What depends on the readings: how urgent, STOP. @param {Context} ctx
 * @param {SheetForm} form @param {Start} kept @param {HTMLElement} more */
function told(ctx, form, kept, more) {
  const stop = h('div', {});
  const toTop = button(start.stop.now, 'stop-now', () => scrollTo(0, 0));
  toTop.hidden = true;
  const alarm = h('p', { class: 'caution', hidden: true }, t.alarm);
  const urgent = h('section', { class: 'urgent', hidden: true });
  const least = toldLines(form, ['needed_min']);
  const outdoors = button(t.outdoorsFirst, 'outdoors-first', () => {
    form.field('outdoor_ppm').el.scrollIntoView({ block: 'center' });
    form.field('outdoor_ppm').el.querySelector('input')?.focus({ preventScroll: true });
  });
  const blind = h('p', { class: 'trouble', role: 'alert', hidden: true }, t.noOutdoors);
  form.onWorked = (worked) => {
    least.show(worked);
    alarm.hidden = form.kept.record.typed.device !== '1';
    const words = urgency(worked);
    urgent.hidden = words === '';
    if (words)
      urgent.replaceChildren(h('h2', {}, t.urgent), h('p', {}, words), h('p', {}, t.urgentWhy));
    const stopped = kept.stop !== null || kept.stopByReading() === 'co';
    const compared = kept.knowsOutdoors;
    more.hidden = stopped || !compared;
    outdoors.hidden = stopped || compared;
    blind.hidden = compared || !form.kept.record.rows.length;
    toTop.hidden = !stopped;
    // Nothing goes on beside a stop.
    if (stopped) for (const el of form.answers.el.querySelectorAll(GOES_ON)) el.remove();
    if (stopped === stop.hasChildNodes()) return;
    const on = button(t.toStop, 'to-stop', () => ctx.go('start_up'));
    stop.replaceChildren(...(stopped ? [stopNow(on)] : []));
  };
  return { stop, toTop, alarm, urgent, least: least.el, outdoors, blind };
}

/** @param {Context} ctx */
export function startCo(ctx) {
  const kept = new Start(ctx);
  timersOf(kept);
  const form = new SheetForm(ctx, 'co_check', sheets.co_check);
  const more = button(sheets.co_check.addRow ?? '', 'add-co_check', () => add(form, kept));
  const { stop, toTop, alarm, urgent, least, outdoors, blind } = told(ctx, form, kept, more);
  const meter = form.entry.inputs.map((i) => i.name).slice(0, 6);
  const body = [
    stop,
    h('p', {}, t.lead),
    form.group(t.meter, meter),
    alarm,
    form.group(t.space, ['volume_m3', 'air_least_per_h', 'air_most_per_h'], t.spaceWhy),
    least,
    form.group(t.run, ['powers']),
    form.rowsEl,
    blind,
    urgent,
    ...form.outcome(),
  ];
  const el = frame(ctx, 'start_co', t.title, body, [outdoors, more, toTop]);
  form.start();
  // A number that is half typed stops nothing; one that was left does, and that is kept.
  el.addEventListener('change', () => {
    if (kept.stopByReading() !== 'co') return;
    kept.raise('co', true);
    // After the next field has had its look.
    requestAnimationFrame(() => scrollTo(0, 0));
  });
  return el;
}
