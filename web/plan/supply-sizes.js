// The sizes of both lists in place of the one that is there: core's answer for each, the first that
// is within.

import { h, say } from '../dom.js';
import { verdictFrame } from '../screens/frame.js';
import { worstFirst } from '../sentences.js';
import { bounds } from '../words/limits.js';
import { words } from '../words/supply.js';
import { withUnit } from './units.js';

/** @typedef {import('./sheet.js').SheetForm} SheetForm */
/** @typedef {import('./model.js').Answer} Answer */
/** @typedef {import('./model.js').Worked} Worked */

const t = words.sizes;

/** The sheet's rows are all sizes, in core's order. Nobody adds or takes away. @param {SheetForm} form */
export function listSizes(form) {
  form.kept.record.rows = (form.words.choices?.size ?? []).map((_, i) => ({
    typed: { size: String(i) },
    half: {},
  }));
}

/** @param {Answer} a */
const isEntered = ({ limit }) => limit !== null && (limit.low !== null || limit.high !== null);

/** @param {SheetForm} form @param {string} name @param {Answer[]} answers of one size */
function line(form, name, answers) {
  const { ctx } = form;
  const cells = ['size_start_drop_v', 'size_heater_start_v'].map((of) => {
    const result = answers.find((a) => a.result.name === of)?.result;
    const isTold = result && !Number.isNaN(result.value);
    return h('td', {}, isTold ? withUnit(result.value, result.unit, ctx.settings.system) : '–');
  });
  const [worst] = worstFirst(answers.filter(isEntered));
  const verdict = worst?.verdict ?? 'none';
  const frame =
    verdict === 'none'
      ? '–'
      : verdictFrame(verdict, ctx.text.verdicts[verdict], worst.limit?.basis ?? '');
  const el = h(
    'tr',
    { 'data-size': name, 'data-answer': verdict },
    h('th', { scope: 'row' }, name),
    ...cells,
    h('td', {}, frame),
  );
  return { el, name, isWithin: verdict === 'within' };
}

/** One list. @param {string} title @param {ReturnType<typeof line>[]} lines */
function list(title, lines) {
  const first = lines.find((l) => l.isWithin);
  first?.el.classList.add('first');
  const told = first ? t.first(first.name) : t.none;
  return h(
    'section',
    { 'data-list': title },
    h('h3', {}, title),
    h('p', { class: 'summary', 'data-first': first?.name ?? '' }, told),
    h(
      'table',
      { class: 'sizes' },
      h('thead', {}, h('tr', {}, ...t.head.map((word) => h('th', { scope: 'col' }, word)))),
      h('tbody', {}, ...lines.map((l) => l.el)),
    ),
  );
}

/** @param {SheetForm} form */
export function sizesTable(form) {
  const uncounted = h('p', { class: 'missing' });
  const body = h('div', {});
  const why = h('p', { class: 'source' }, t.why);
  const el = h('details', {}, h('summary', {}, t.title), why, uncounted, body);
  /** @param {Worked | null} worked */
  const show = (worked) => {
    const answers = worked && !worked.refused ? worked.answers.filter((a) => a.alternative) : [];
    el.hidden = answers.length === 0;
    const open = answers.filter((a) => !isEntered(a)).map((a) => bounds[a.bound].label);
    say(uncounted, open.length ? t.uncounted([...new Set(open)].join(', ')) : '');
    const names = form.words.choices?.size ?? [];
    const lines = names.map((name, i) =>
      line(
        form,
        name,
        answers.filter((a) => a.result.row === i),
      ),
    );
    const areas = lines.filter(({ name }) => name.endsWith('mm²'));
    const gauges = lines.filter((l) => !areas.includes(l));
    body.replaceChildren(list(t.area, areas), list(t.gauge, gauges));
  };
  return { el, show };
}
