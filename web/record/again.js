// A heater that was measured before, checked again: what has moved beyond the uncertainty of both
// readings, what was not read again, and what servicing asks for.

import { button, h } from '../dom.js';
import { valueAndU, widthWithUnit } from '../plan/units.js';
import { tick } from '../plan/ticks.js';
import { frame } from '../screens/frame.js';
import { stamp } from '../units.js';
import { service, words } from '../words/again.js';
import { checkRows } from './rows.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../types.js').BeforeRow} BeforeRow */

/** @param {Context} ctx @param {BeforeRow} before
 * @param {import('./rows.js').CheckRow | undefined} now */
function line(ctx, before, now) {
  const { system } = ctx.settings;
  /** @param {number} value @param {number} u */
  const shown = (value, u) => {
    const { value: v, u: w } = valueAndU(value, u, before.unit, system);
    return `${v} ${w}`;
  };
  /** @param {string} [verdict] */
  const said = (verdict) =>
    /** @type {Record<string, string>} */ (ctx.text.verdicts)[verdict ?? ''];
  const then = words.earlier(
    [shown(before.value, before.u), said(before.verdict), before.at && stamp(before.at)]
      .filter(Boolean)
      .join(', '),
  );
  const title = h('h2', {}, before.what);
  if (!now || now.value === null || now.u === null)
    return h(
      'article',
      {
        class: 'check',
        'data-again': before.id,
        'data-moved': before.verdict === 'beyond' ? 'beyond' : 'open',
      },
      title,
      h('p', {}, then),
      h('p', { class: 'missing' }, words.open),
    );
  const change = ctx.plan.core.moved([before.value, before.u], [now.value, now.u]);
  const by = change ? widthWithUnit(change.by, before.unit, system) : '';
  return h(
    'article',
    {
      class: 'check',
      'data-again': before.id,
      'data-moved': change?.shown ? 'yes' : 'no',
    },
    title,
    h('p', {}, then),
    h('p', {}, words.now(`${shown(now.value, now.u)}, ${said(now.verdict)}`)),
    h(
      'strong',
      {},
      change?.shown
        ? words.moved(by, change.by > 0)
        : words.still(widthWithUnit(change?.u ?? NaN, before.unit, system)),
    ),
  );
}

/** @param {Context} ctx */
export function again(ctx) {
  const { before } = ctx.job;
  const kept = ctx.plan.keptOf('job');
  const rows = checkRows(ctx);
  const lines = (before?.checks ?? []).map((b) =>
    line(
      ctx,
      b,
      rows.find((row) => row.id === b.id),
    ),
  );
  // What has moved is looked at first, then what was beyond.
  const order = ['yes', 'beyond', 'open', 'no'];
  const of = (/** @type {HTMLElement} */ el) => order.indexOf(el.dataset.moved ?? '');
  lines.sort((a, b) => of(a) - of(b));
  return frame(
    ctx,
    'again',
    words.title,
    [
      h('p', {}, before ? words.why : words.none),
      ...(before?.stops?.length ? [h('h2', {}, words.stops)] : []),
      ...(before?.stops ?? []).map((stop) => h('p', { class: 'trouble' }, stop)),
      ...lines,
      h('h2', {}, words.service),
      ...Object.entries(service).map(([id, statement]) => tick(ctx, kept, id, statement)),
    ],
    // Back leads to the earlier job's card: what is read now belongs to this one.
    before ? [button(words.read, 'read-parts', () => ctx.go('parts'))] : [],
  );
}
