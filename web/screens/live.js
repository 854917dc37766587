// The measuring screen, plain or blind; from here the phone can be turned end for end on the part.

import { button, h, say } from '../dom.js';
import { holdPicture } from '../drawings/hold.js';
import {
  allViews,
  mostPressing,
  viewsOfLive,
  whatToDo,
  whoseLimit,
  zeroWords,
} from '../sentences.js';
import { play } from '../sound.js';
import { frame } from './frame.js';
import { Slot } from './slot.js';
import { Watch } from './watch.js';

/** @typedef {import('../context.js').Context} Context */

/** @param {Context} ctx @param {{ part: import('../types.js').PartId, blind?: boolean }} params */
export function live(ctx, { part, blind }) {
  const t = ctx.text;
  const { engine } = ctx;
  const withVehicle = Boolean(engine.call((l) => l.level_taken_ms()));
  const slots = (ctx.placement?.checks ?? []).map((id) => new Slot(ctx, id, withVehicle));
  const whose = h('p', { class: 'source' });
  const spoken = h('p', { class: 'sr', 'aria-live': 'polite' });
  const watch = new Watch(ctx, t.live.capture, 'capture', () => ctx.capture(false));
  const turning = new PartTurn(ctx, part, watch);
  const phoneState = h(
    'button',
    {
      type: 'button',
      class: 'phone-state',
      'data-action': 'check-phone',
      click: () => ctx.go('turn', { hold: ctx.placement?.hold }),
    },
    t.parts.phone,
  );
  /** @type {import('../plan/spoken.js').Told | undefined} */ let told;
  ctx.loadPlan().then(({ spoken: { Told } }) => {
    told = new Told(ctx, spoken);
  });

  /** @param {string | null} reason */
  const show = (reason) => {
    const views = reason ? [] : viewsOfLive(ctx);
    const refused = engine.call((l) => l.level_refusal()) ?? 0;
    const why = engine.catalogue.level_refusals[refused];
    const [word] = watch.words(reason);
    slots.forEach((slot, i) => {
      slot.show(views[i] ?? null, word, why ? of(t.levelRefusals, why) : '');
    });
    const all = allViews(views);
    const worst = mostPressing(all);
    if (worst) {
      const named = [
        slots.length > 1 && of(t.checks, worst.id),
        views.some((v) => v.inVehicle === worst) && t.level.inVehicle,
      ].filter(Boolean);
      const led = named.length ? `${named.join(', ')}: ` : '';
      say(watch.hint, led + whatToDo(ctx, worst));
      const by = engine.catalogue.zeros[engine.call((l) => l.zero_by()) ?? 0];
      const known = zeroWords(ctx, by, engine.foundAt(ctx.placement?.hold ?? ''));
      say(phoneState, known);
      phoneState.dataset.zero = by;
      say(whose, `${whoseLimit(ctx, worst)} ${known}.`);
    } else say(whose, '');
    told?.show(reason ? watch.words(reason) : null, all);
    slots.forEach((slot, i) => {
      told?.describe(slot.drawing.el, views[i]?.parked, word);
    });
  };

  const tick = () => {
    const reason = watch.tick();
    el.dataset.reason = reason ?? '';
    turning.show(reason);
    show(reason);
    if (blind) followBlind();
  };

  const followBlind = () => {
    const state = engine.call((l) => l.blind()) ?? 0;
    el.dataset.blind = String(state);
    say(heading, state < 2 ? t.blind.armed : t.blind.moved);
    if (state === 3) ctx.capture(true);
  };

  const heading = h('h2', { class: 'blind-state', 'aria-live': 'polite' });
  const all = h(
    'div',
    { class: `slots n${slots.length}`, hidden: blind },
    ...slots.map((s) => s.el),
  );
  if (!blind) turning.instead = all;
  const body = blind
    ? [heading, steps(ctx), all]
    : [all, turning.el, watch.hint, whose, watch.progress, spoken];
  const toBlind = button(
    t.live.blind,
    'blind',
    () => ctx.go('live', { part, blind: true }),
    'lesser',
  );
  turning.others = [toBlind];
  const foot = blind
    ? [
        button(t.blind.hear, 'hear', () => hearAll(), 'lesser'),
        button(t.blind.stop, 'stop', () => history.back()),
      ]
    : [toBlind, ...turning.foot, watch.ask, watch.take];
  const el = frame(
    ctx,
    'live',
    blind ? t.blind.title : t.parts[part],
    body,
    foot,
    blind ? undefined : phoneState,
  );
  if (blind) el.classList.add('blind');
  const { enter, leave } = watch.follow(el, tick);
  return Object.assign(el, {
    enter() {
      engine.backToPart();
      if (blind) engine.call((l) => l.arm(performance.now()));
      else engine.call((l) => l.disarm());
      enter();
    },
    leave() {
      leave();
      engine.call((l) => l.disarm());
    },
  });
}

/** The turn end for end on the part: one placement kept, then the reading is of both. */
class PartTurn {
  #told = false;
  /** Whether there has been a reading of both: the numbers stay in their place then. */
  #read = false;
  /** What gives way to the picture. @type {HTMLElement | null} */ instead = null;
  /** Buttons that give way to "Cancel". @type {HTMLElement[]} */ others = [];

  /** @param {Context} ctx @param {import('../types.js').PartId} part @param {Watch} watch */
  constructor(ctx, part, watch) {
    this.ctx = ctx;
    this.watch = watch;
    const t = ctx.text;
    const words = { topEdge: t.hold.topEdge, head: t.headEnd[part] };
    const { engine } = ctx;
    this.el = h(
      'div',
      { class: 'turning', hidden: true },
      ctx.placement && holdPicture(part, ctx.placement, words, 2),
      h('p', { class: 'lead' }, t.live.turnHow),
    );
    this.begin = button(
      t.live.turn,
      'turn-part',
      () => {
        const { refusal } = engine.attempt((l) => l.keep_placement());
        if (refusal) say(watch.hint, watch.words(refusal)[1]);
        [this.#told, this.#read] = [false, false];
      },
      'lesser',
    );
    this.cancel = button(
      t.live.cancelTurn,
      'cancel-turn',
      () => engine.call((l) => l.forget_placements()),
      'lesser',
    );
    this.turned = button(t.live.isTurned, 'turned', () => {
      engine.call((l) => l.tell_turned());
      this.#told = true;
    });
    this.foot = [this.begin, this.cancel, this.turned];
  }

  /** @param {string | null} reason */
  show(reason) {
    const { engine } = this.ctx;
    const on = (engine.call((l) => l.placements()) ?? 0) > 0;
    if (on && !reason) this.#read = true;
    const pictured = on && !(this.#read && reason !== 'not_turned');
    const ask = on && !this.#told && !engine.call((l) => l.knows_heading());
    this.el.hidden = !pictured;
    if (this.instead) this.instead.hidden = pictured;
    for (const el of [...this.others, this.begin]) el.hidden = on;
    this.begin.disabled = reason !== null;
    this.cancel.hidden = !on;
    this.turned.hidden = !ask;
    // Nothing to wait for: it is the phone that must be turned.
    if (reason === 'not_turned') {
      say(this.watch.take, this.ctx.text.live.turnNow);
      this.watch.progress.value = 0;
    }
    if (ask) this.watch.take.hidden = true;
  }
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
