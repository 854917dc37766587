// The vehicle's own level, read on the rail or cab floor that the part is bolted to.

import { button, h, say } from '../dom.js';
import { tablePicture } from '../drawings/table.js';
import { clock, formatAngle, formatU } from '../units.js';
import { frame, pick } from './frame.js';
import { Watch } from './watch.js';

/** @typedef {import('../context.js').Context} Context */

/** What is known of the level, in words. @param {Context} ctx */
export function levelState(ctx) {
  const t = ctx.text.level;
  const taken_ms = ctx.engine.call((l) => l.level_taken_ms());
  if (!taken_ms) return t.unread;
  return ctx.engine.levelCounts() ? t.read(taken_ms) : t.over(clock(taken_ms));
}

/** The slope under the phone: two numbers. @param {Context} ctx */
export class SlopeReadout {
  /** @param {Context} ctx */
  constructor(ctx) {
    this.ctx = ctx;
    const t = ctx.text.level;
    this.numbers = [t.lengthwise, t.crosswise].map((name) => ({
      name,
      value: h('span', { class: 'value' }),
      u: h('span', { class: 'u' }),
    }));
    this.el = h(
      'div',
      { class: 'slopes' },
      ...this.numbers.map(({ name, value, u }) =>
        h('p', { class: 'number' }, h('span', { class: 'name' }, name), value, ' ', u),
      ),
    );
  }

  /** @param {boolean} rests */
  show(rests) {
    this.numbers.forEach(({ value, u }, i) => {
      const [deg, deg_u] = this.now(i);
      const lost = !rests || Number.isNaN(deg);
      say(value, lost ? '–' : formatAngle(deg));
      say(u, lost ? '' : `± ${formatU(deg, deg_u)}`);
    });
  }

  /** Slope and its U, degrees. @param {number} i @returns {[number, number]} */
  now(i) {
    return this.ctx.engine.call((l) => [l.face_slope_deg(i), l.face_u_deg(i)]) ?? [NaN, NaN];
  }
}

/** @param {Context} ctx */
export function level(ctx) {
  const t = ctx.text.level;
  const { engine } = ctx;
  const state = h('p', { class: 'lead', role: 'status' });
  const trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
  const slopes = new SlopeReadout(ctx);
  const watch = new Watch(ctx, t.keep, 'keep-level', () => keep());
  const done = button(t.done, 'done', () => history.back());
  const again = button(t.again, 'again', () => finish(false), 'lesser');
  const forget = button(
    t.forget,
    'forget-level',
    () => {
      engine.call((l) => l.forget_level());
      complain('');
      finish(false);
    },
    'lesser',
  );
  let finished = false;

  /** @param {string} words */
  const complain = (words) => {
    say(trouble, words);
    trouble.hidden = words === '';
  };
  /** @param {boolean} now */
  const finish = (now) => {
    finished = now;
    done.hidden = again.hidden = !now;
    forget.hidden = now || !engine.call((l) => l.level_taken_ms());
    watch.take.hidden = now;
    say(state, `${t.title}: ${levelState(ctx)}`);
  };
  const keep = () => {
    const before_ms = engine.call((l) => l.level_taken_ms()) ?? NaN;
    // Another face leans its own way: that says nothing of the vehicle.
    const other = ctx.levelReadOn !== ctx.levelSurface && !Number.isNaN(slopes.now(0)[0]);
    if (other) engine.call((l) => l.forget_level());
    const { value, refusal } = engine.attempt((l) => l.keep_level());
    if (refusal) {
      const why = /** @type {Record<string, string>} */ (ctx.text.levelRefusals)[refusal];
      return complain(why ?? watch.words(refusal)[1]);
    }
    ctx.levelReadOn = ctx.levelSurface;
    const moved = value === 2;
    ctx.keepLevel(moved);
    complain(moved ? t.moved(clock(before_ms)) : '');
    if (moved) scrollTo(0, 0);
    finish(true);
    if (value === 1) say(state, `${t.asBefore} ${t.title}: ${levelState(ctx)}`);
  };
  const el = frame(
    ctx,
    'level',
    t.title,
    [
      trouble,
      h('p', {}, t.how),
      tablePicture(engine.rotationOf('back'), { topEdge: ctx.text.hold.topEdge, edge: t.how }),
      pick(t.where, 'where', Object.entries(t.surfaces), ctx.levelSurface, (v) => {
        ctx.levelSurface = v;
        engine.selectFace('back', v);
      }),
      slopes.el,
      state,
      watch.hint,
      watch.progress,
      button(t.terms, 'vehicle', () => ctx.go('vehicle'), 'row'),
    ],
    [forget, again, watch.ask, watch.take, done],
  );
  engine.selectFace('back', ctx.levelSurface);
  finish(false);
  return watch.follow(el, () => {
    const reason = watch.tick();
    if (finished) watch.take.hidden = true;
    el.dataset.reason = reason ?? '';
    slopes.show(reason === null);
  });
}
