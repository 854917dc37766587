// The measuring screen. Its slots stand still: only texts and drawings inside them change.

import { button, h, say } from '../dom.js';
import { AngleDrawing, Scale } from '../drawings/angle.js';
import {
  uText,
  valueText,
  verdictNote,
  verdictWord,
  viewsOfLive,
  whatToDo,
  whoseLimit,
  worstFirst,
} from '../sentences.js';
import { formatAngle } from '../units.js';
import { play } from '../sound.js';
import { frame } from './frame.js';

/** @typedef {import('../app.js').Context} Context */
/** @typedef {import('../sentences.js').CheckView} CheckView */

const TICK_MS = 120;

/** One check's slot: drawing, number, verdict, scale. */
class Slot {
  /** @param {Context} ctx @param {string} id */
  constructor(ctx, id) {
    this.ctx = ctx;
    this.id = id;
    const check = ctx.engine.catalogue.checks.find((c) => c.id === id);
    if (!check) throw new Error(id);
    this.drawing = new AngleDrawing(check, ctx.text.live);
    this.scale = new Scale(check);
    this.name = h(
      'span',
      { class: 'name' },
      /** @type {Record<string, string>} */ (ctx.text.checks)[id],
    );
    this.value = h('span', { class: 'value' });
    this.u = h('span', { class: 'u' });
    this.verdict = h('strong', { class: 'verdict' });
    this.note = h('span', { class: 'note' });
    this.el = h(
      'div',
      { class: 'slot', 'data-check': id },
      this.drawing.el,
      h(
        'div',
        { class: 'says' },
        this.name,
        h('p', { class: 'number' }, this.value, ' ', this.u),
        this.verdict,
        this.note,
        this.scale.el,
      ),
    );
  }

  /** @param {CheckView | null} view @param {string} reason the word when there is no reading */
  show(view, reason) {
    const shown = view ?? this.#nothing();
    this.drawing.draw({ ...shown, label: formatAngle });
    this.scale.draw({ ...shown, label: formatAngle });
    say(this.value, view ? valueText(this.ctx, view) : '');
    say(this.u, view ? uText(this.ctx, view) : '');
    say(this.verdict, view ? verdictWord(this.ctx, view) : reason);
    say(this.note, view ? verdictNote(this.ctx, view) : '');
    this.verdict.dataset.verdict = view ? view.verdict : 'lost';
    this.verdict.dataset.basis = view?.basis ?? '';
  }

  /** No reading: no number; the limit stays drawn. */
  #nothing() {
    const line = this.ctx.limits.lines.find((l) => l.check === this.id);
    return {
      value: NaN,
      u: NaN,
      low: line?.low_deg ?? NaN,
      high: line?.high_deg ?? NaN,
      preferredLow: line?.preferred_low_deg ?? NaN,
      preferredHigh: line?.preferred_high_deg ?? NaN,
      verdict: /** @type {const} */ ('none'),
    };
  }
}

/** @param {Context} ctx @param {{ part: import('../types.js').PartId, blind?: boolean }} params */
export function live(ctx, { part, blind }) {
  const t = ctx.text;
  const slots = new Map((ctx.placement?.checks ?? []).map((id) => [id, new Slot(ctx, id)]));
  const does = h('p', { class: 'does' });
  const whose = h('p', { class: 'source' });
  const spoken = h('p', { class: 'sr', 'aria-live': 'polite' });
  const progress = h('progress', { max: 1, value: 0, 'aria-label': t.live.waiting });
  const capture = button(t.live.capture, 'capture', () => ctx.capture(false));
  const ask = button('', 'sign', () => {}, 'main');
  ask.hidden = true;
  let settled = '';

  /** @param {string | null} reason */
  const offerSign = (reason) => {
    const needed = reason === 'sign_unknown' || reason === 'sign_flipped';
    ask.hidden = !needed;
    capture.hidden = needed;
    if (!needed) return;
    say(ask, reason === 'sign_unknown' ? t.faceUp.button : t.learnAgain);
    ask.onclick = () => {
      if (reason === 'sign_flipped') return ctx.engine.setSign(0);
      const sign = ctx.engine.call((l) => l.learn_sign_face_up()) ?? 0;
      if (sign) ctx.keep({ sign });
      else say(does, t.faceUp.again);
    };
  };

  const tick = () => {
    const now = performance.now();
    const code = ctx.engine.call((l) => l.tick(now));
    const reason = code === undefined ? 'trapped' : ctx.engine.catalogue.reasons[code];
    const views = reason ? [] : viewsOfLive(ctx);
    el.dataset.reason = reason ?? '';
    const [word, what] = reason
      ? /** @type {Record<string, string[]>} */ (t.reasons)[reason]
      : ['', ''];
    for (const [id, slot] of slots) slot.show(views.find((v) => v.id === id) ?? null, word);
    const worst = worstFirst(views)[0];
    // A hint that answers a tap stays until the state changes.
    if (worst) say(does, whatToDo(ctx, worst));
    else if (reason !== settled) say(does, what);
    say(whose, worst ? `${whoseLimit(ctx, worst)} ${t.live.unchecked}` : '');
    const state = reason ?? views.map((v) => v.verdict).join();
    if (state !== settled) {
      settled = state;
      say(
        spoken,
        reason
          ? word
          : views.map((v) => `${of(t.checks, v.id)}: ${verdictWord(ctx, v)}`).join('. '),
      );
      offerSign(reason);
    }
    progress.value = reason ? (ctx.engine.call((l) => l.progress) ?? 0) : 1;
    capture.disabled = reason !== null;
    say(capture, reason ? t.live.waiting : t.live.capture);
    if (!reason) ctx.rememberSign();
    if (blind) followBlind();
  };

  const followBlind = () => {
    const state = ctx.engine.call((l) => l.blind) ?? 0;
    el.dataset.blind = String(state);
    say(heading, state < 2 ? t.blind.armed : t.blind.moved);
    if (state === 3) ctx.capture(true);
  };

  const heading = h('h2', { class: 'blind-state', 'aria-live': 'polite' });
  const body = blind
    ? [
        heading,
        steps(ctx),
        h('div', { class: 'slots', hidden: true }, ...[...slots.values()].map((s) => s.el)),
      ]
    : [
        h('div', { class: `slots n${slots.size}` }, ...[...slots.values()].map((s) => s.el)),
        does,
        whose,
        progress,
        spoken,
      ];
  const foot = blind
    ? [
        button(t.blind.hear, 'hear', () => hearAll(), 'lesser'),
        button(t.blind.stop, 'stop', () => history.back()),
      ]
    : [
        button(t.live.blind, 'blind', () => ctx.go('live', { part, blind: true }), 'lesser'),
        ask,
        capture,
      ];
  const el = frame(ctx, 'live', blind ? t.blind.title : t.parts[part], body, foot);
  if (blind) el.classList.add('blind');

  /** @type {ReturnType<typeof setInterval> | undefined} */
  let timer;
  return Object.assign(el, {
    enter() {
      if (blind) ctx.engine.call((l) => l.arm(performance.now()));
      else ctx.engine.call((l) => l.disarm());
      tick();
      timer = setInterval(tick, TICK_MS);
    },
    leave() {
      clearInterval(timer);
      ctx.engine.call((l) => l.disarm());
    },
  });
}

/** @param {Record<string, string>} table @param {string} name */
const of = (table, name) => table[name];

/** @param {Context} ctx */
function steps(ctx) {
  const t = ctx.text.blind;
  const sounds = /** @type {import('../types.js').Verdict[]} */ (Object.keys(t.sounds));
  return h(
    'div',
    {},
    h(
      'ol',
      { class: 'steps' },
      ...t.steps.map(([what, how]) => h('li', {}, h('b', {}, what), h('small', {}, how))),
    ),
    h(
      'ul',
      { class: 'sounds' },
      ...sounds.map((v) =>
        h(
          'li',
          {},
          h('span', { class: 'sound', 'data-verdict': v }),
          h('span', {}, `${t.sounds[v]}: ${ctx.text.verdicts[v]}`),
        ),
      ),
    ),
  );
}

/** The patterns one after the other, for somebody who has not heard them yet. */
function hearAll() {
  const order = /** @type {import('../types.js').Verdict[]} */ ([
    'within',
    'beyond',
    'not_proven',
    'none',
  ]);
  order.forEach((verdict, i) => {
    setTimeout(() => play(verdict), i * 2200);
  });
}
