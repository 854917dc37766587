// Where ± comes from, one tap deeper.

import { asPrinted } from '../locale.js';
import { button, h } from '../dom.js';
import { hasMovedSince } from '../sentences.js';
import { clock, fixed, formatAngle } from '../units.js';
import { checkWords, timeOf, zeroOf } from './captured.js';
import { frame } from './frame.js';

/** @typedef {import('../context.js').Context} Context */

/** @param {Record<string, string>} table @param {string} name */
const of = (table, name) => table[name];

/** A check's contributions, largest first. @param {Context} ctx @param {import('../types.js').CheckReport} c */
function table(ctx, c) {
  const largest = Math.max(...c.contributions.map((x) => x.u_deg));
  const sorted = c.contributions.filter((x) => x.u_deg).sort((a, b) => b.u_deg - a.u_deg);
  return h(
    'table',
    {},
    ...sorted.map((x) => {
      const bar = h('meter', {
        min: 0,
        max: 1,
        value: largest ? x.u_deg / largest : 0,
        'aria-hidden': 'true',
      });
      return h(
        'tr',
        { 'data-source': x.name },
        h('th', { scope: 'row' }, of(ctx.text.sources, x.name)),
        h('td', {}, `${fixed(x.u_deg, 2)}°`),
        h('td', {}, bar),
      );
    }),
  );
}

/** @param {Context} ctx @param {import('../types.js').Capture} capture @param {number} i */
function budget(ctx, capture, i) {
  const c = capture.report.checks[i];
  const inVehicle = capture.report.vehicle?.checks[i];
  const t = ctx.text.details;
  return h(
    'section',
    { class: 'budget', 'data-check': c.id },
    checkWords(ctx, capture, i),
    table(ctx, c),
    c.k === null ? null : h('p', { class: 'source' }, t.k(fixed(c.k, 2))),
    c.probability === null
      ? null
      : h('p', { class: 'source' }, t.probability(fixed(c.probability, 3))),
    c.end_told === null
      ? null
      : h('p', { class: 'source' }, `${t.endTold}: ${t.endWords[c.end_told]}`),
    ...(inVehicle ? [h('h2', {}, ctx.text.level.inVehicle), table(ctx, inVehicle)] : []),
  );
}

/** Which level the answers in the vehicle stand on. @param {Context} ctx @param {import('../types.js').Capture} capture */
function levelWords(ctx, capture) {
  const { vehicle } = capture.report;
  if (!vehicle || capture.level_ms === null) return null;
  const { details, level } = ctx.text;
  const pointing = `${level.points}: ${level.pointings[vehicle.pointing]}`;
  return h('p', { class: 'source' }, `${details.level(clock(capture.level_ms))}, ${pointing}`);
}

/** Whether it counts: one that does not stays in the record, with the reason.
 * @param {Context} ctx @param {import('../types.js').Capture} capture */
function counts(ctx, capture) {
  const t = ctx.text.overruled;
  const el = h('section', { class: 'card', 'data-counts': '' });
  /** @param {import('../types.js').Capture['overruled']} overruled */
  const keep = async (overruled) => {
    try {
      if (overruled) capture.overruled = overruled;
      else delete capture.overruled;
      await ctx.write((store) => store.updateCapture(capture));
      show();
    } catch (error) {
      el.append(h('p', { class: 'trouble', role: 'alert' }, ctx.storeWords(error)));
    }
  };
  const ask = () => {
    const [who, reason] = [input('who', t.who, ctx.settings.who), input('reason', t.reason, '')];
    const trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
    const done = () => {
      trouble.hidden = Boolean(who.value() && reason.value());
      trouble.textContent = t.needed;
      if (!trouble.hidden) return;
      ctx.keep({ who: who.value() });
      keep({ who: who.value(), reason: reason.value(), at: new Date().toISOString() });
    };
    el.replaceChildren(who.el, reason.el, trouble, button(t.set, 'overrule-set', done, 'row'));
  };
  const show = () => {
    const told = capture.overruled;
    el.replaceChildren(
      told
        ? h('p', {}, t.told(told.who, clock(told.at), told.reason))
        : h('p', { class: 'source' }, t.why),
      told
        ? button(t.takeBack, 'count-again', () => keep(undefined), 'lesser')
        : button(t.ask, 'overrule', ask, 'row'),
    );
  };
  show();
  return el;
}

/** @param {string} name @param {string} label @param {string} value */
function input(name, label, value) {
  const field = h('input', {
    type: 'text',
    value,
    id: `o-${name}`,
    maxlength: 80,
    autocomplete: 'off',
  });
  const el = h('div', { class: 'field' }, h('label', { for: field.id }, label), field);
  return { el, value: () => field.value.trim() };
}

/** @param {Context} ctx @param {{ capture: import('../types.js').Capture }} params */
export function details(ctx, { capture }) {
  const t = ctx.text.details;
  const { report } = capture;
  const photo =
    capture.photo &&
    h('img', { src: URL.createObjectURL(capture.photo), alt: ctx.text.captured.photo });
  return frame(
    ctx,
    'details',
    t.title,
    [
      h(
        'p',
        { class: 'summary' },
        `${ctx.text.parts[report.part]}, ${timeOf(ctx, capture)}, ${of((capture.gauge ? ctx.text.gauge : ctx.text).holds, report.hold)} ${of(ctx.text.surfaces, report.surface)}`,
      ),
      hasMovedSince(ctx, capture) ? h('p', { class: 'trouble' }, ctx.text.level.movedSince) : null,
      ...report.checks.map((_, i) => budget(ctx, capture, i)),
      levelWords(ctx, capture),
      h('p', { class: 'source' }, t.standard),
      button(ctx.text.guides.plusMinus, 'plus-minus', () => ctx.go('plus_minus'), 'row'),
      h(
        'p',
        { class: 'source' },
        `${t.samples(report.samples, report.rate_hz.toFixed(0))}, ${t.channel[report.channel]}${report.step_m_s2 ? `, ${t.step(asPrinted(report.step_m_s2.toPrecision(2)))}` : ''}. ${zeroOf(ctx, capture)}.`,
      ),
      report.roll_deg === null
        ? h('p', { class: 'source' }, ctx.text.hold.no_roll)
        : h(
            'p',
            { class: 'source' },
            `pitch ${formatAngle(report.pitch_deg)}, roll ${formatAngle(report.roll_deg)}`,
          ),
      photo,
      h('p', { class: 'source' }, t.no_claim),
      counts(ctx, capture),
    ],
    [button(t.back, 'details-back', () => history.back())],
  );
}
