// STOP: out, ventilate, find the cause; going on takes words that stay in the record.

import { button, h } from '../dom.js';
import { frame, pick } from '../screens/frame.js';
import { clock } from '../units.js';
import { words } from '../words/start.js';

/** @typedef {import('./start-record.js').Start} Start */

const t = words.stop;
/** @param {string} what */
export const reasonOf = (what) => /** @type {Record<string, string>} */ (t.reasons)[what] ?? what;

/** A text to type. @param {string} label @param {string} id @param {string} value */
export function textField(label, id, value) {
  const input = h('input', { type: 'text', id, value, maxlength: 160, autocomplete: 'off' });
  const el = h('div', { class: 'field' }, h('label', { for: id }, label), input);
  return { el, input, value: () => input.value.trim() };
}

/** What to do at once. @param {...import('../dom.js').Child} more */
export const stopNow = (...more) =>
  h(
    'div',
    { class: 'stop-now', role: 'alert' },
    h('ol', {}, ...t.does.map((line) => h('li', {}, line))),
    h('p', {}, h('b', {}, t.fire)),
    ...t.more.map((line) => h('p', {}, line)),
    ...more,
  );

/** @param {Start} start @param {() => void} onGoOn */
export function stopScreen(start, onGoOn) {
  const { ctx } = start;
  const stop = /** @type {import('./start-record.js').Stop} */ (start.stop);
  const who = textField(words.who, 'stop-who', ctx.settings.who ?? '');
  const why = textField(t.why, 'stop-why', '');
  const found = textField(t.found, 'stop-found', '');
  const trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
  const what = pick(t.what, 'stop-what', Object.entries(t.reasons), stop.what, (value) => {
    stop.what = value;
    start.kept.changed(true);
  });
  const resume = () => {
    const told = { who: who.value(), why: why.value(), found: found.value() };
    const whole = stop.what && Object.values(told).every((word) => word !== '');
    trouble.hidden = Boolean(whole);
    trouble.textContent = whole ? '' : t.needs;
    if (!whole) return trouble.scrollIntoView({ block: 'center' });
    start.goOn(stop.what, told);
    onGoOn();
  };
  return frame(
    ctx,
    'start_up',
    t.title,
    [
      stopNow(stop.auto && h('p', {}, t.auto[stop.what])),
      what,
      h('h2', {}, t.goOn),
      who.el,
      why.el,
      found.el,
      h('p', { class: 'source' }, t.anew, ' ', start.kept.mark()),
      trouble,
      button(t.resume, 'resume', resume, 'row'),
    ],
    // Nothing under the thumb: what is to be done now is not on the phone.
    [],
  );
}

/** What was read until a stop, in words. @param {import('./start-record.js').Stop} stop */
function readingsOf({ readings }) {
  const rows = readings?.co.map((row) => row.typed.ppm).filter(Boolean) ?? [];
  const starts = readings?.started.starts;
  const told = [rows.length && `${rows.join(' · ')} ppm`, starts && t.starts(starts)];
  const line = told.filter(Boolean).join('; ');
  return line && t.readings(line);
}

/** Why it went on, what was found, what was read until then.
 * @param {import('./start-record.js').Stop} stop */
export const wentOn = (stop) =>
  stop.went_on
    ? [t.wentOn(stop.went_on.why, stop.went_on.found), readingsOf(stop)].filter(Boolean).join('. ')
    : '';

/** The stops that there were. @param {Start} start */
export function pastStops(start) {
  const stops = start.record.stops.filter((s) => s.went_on);
  if (!stops.length) return null;
  const line = (/** @type {import('./start-record.js').Stop} */ s) => {
    const on = /** @type {import('./start-record.js').WentOn} */ (s.went_on);
    return h(
      'li',
      { class: 'card', 'data-stop': s.what },
      h('b', {}, t.line(reasonOf(s.what), clock(s.at))),
      h('p', {}, t.resumed(on.who, clock(on.at), wentOn(s))),
    );
  };
  return h(
    'section',
    {},
    h('h2', {}, t.past),
    h('ul', { class: 'rows' }, ...stops.map((s) => line(s))),
  );
}
