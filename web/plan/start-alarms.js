// Sleeping spaces and the expiry dates of their alarms.

import { button, h, say } from '../dom.js';
import { words } from '../words/start.js';

/** @typedef {import('./start-record.js').Start} Start */

const t = words.alarms;

/** @param {Start} start @param {import('./record.js').Row} row @param {number} i
 * @param {string} name @param {string} type @param {string} label @param {() => void} onChange */
function field(start, row, i, name, type, label, onChange) {
  const id = `alarm-${i}-${name}`;
  const input = h('input', {
    id,
    type,
    'data-name': name,
    value: row.typed[name] ?? '',
    maxlength: type === 'text' ? 40 : null,
    autocomplete: 'off',
    input: (/** @type {any} */ e) => {
      row.typed[name] = e.target.value;
      start.kept.changed();
      onChange();
    },
    change: () => start.kept.changed(true),
  });
  return h('div', { class: 'field wide' }, h('label', { for: id }, h('b', {}, label)), input);
}

/** @param {Start} start @param {() => void} onChange */
export function alarmRows(start, onChange) {
  const el = h('div', {});
  /** What each is worth, as core tells it. @type {HTMLElement[]} */ let states = [];
  const tell = () => {
    const found = start.evaluate()?.alarms ?? [];
    states.forEach((state, i) => {
      say(state, t.states[found[i]] ?? '');
    });
    onChange();
  };
  const show = () => {
    const { rows } = start.record;
    states = rows.map(() => h('p', { class: 'missing', role: 'status' }));
    const lines = rows.map((row, i) =>
      h(
        'li',
        { class: 'card', 'data-row': i },
        field(start, row, i, 'space', 'text', t.space, tell),
        field(start, row, i, 'expires', 'date', t.expires, tell),
        states[i],
        button(t.remove, 'remove-alarm', () => change(() => rows.splice(i, 1)), 'lesser'),
      ),
    );
    const add = () => change(() => rows.push({ typed: {}, half: {} }));
    el.replaceChildren(
      rows.length ? h('ol', { class: 'sheet-rows' }, ...lines) : h('p', {}, t.none),
      button(t.add, 'add-alarm', add, 'row'),
    );
    tell();
  };
  /** @param {() => void} act */
  const change = (act) => {
    act();
    start.kept.changed(true);
    show();
  };
  show();
  return el;
}
