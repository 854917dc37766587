// The one-minute turn on a table: two placements end for end, or four by quarters, find this
// phone's zero.

import { button, h, say } from '../dom.js';
import { tablePicture } from '../drawings/table.js';
import { formatAngle, formatU } from '../units.js';
import { frame } from './frame.js';
import { words as t } from '../words/turn.js';
import { Watch } from './watch.js';

/** @typedef {import('../context.js').Context} Context */

/** @param {Context} ctx @param {{ hold: string }} params */
export function turn(ctx, { hold }) {
  const { engine } = ctx;
  let wanted = 2;
  let told = false;
  const picture = h('div', {});
  const count = h('b', { class: 'count' });
  const step = h('span', {});
  const trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
  const result = h('div', { role: 'status' });
  const watch = new Watch(ctx, t.keep, 'keep', () => keep());
  const turned = button(t.turned, 'turned', () => {
    engine.call((l) => l.tell_turned());
    told = true;
    tick();
  });
  const four = button(
    t.four,
    'four',
    () => {
      wanted = 6 - wanted;
      show();
    },
    'lesser',
  );
  const over = button(
    t.over,
    'over',
    () => {
      engine.call((l) => l.forget_placements());
      complain('');
      show();
    },
    'lesser',
  );
  const again = button(
    t.again,
    'again',
    () => {
      result.replaceChildren();
      show();
    },
    'lesser',
  );
  const done = button(t.done, 'done', () => history.back());

  /** @param {string} words */
  const complain = (words) => {
    say(trouble, words);
    trouble.hidden = words === '';
  };
  const placed = () => engine.call((l) => l.placements()) ?? 0;

  const show = () => {
    const n = placed();
    const quarters = 4 / wanted;
    const found = result.hasChildNodes();
    picture.replaceChildren(
      tablePicture(
        engine.rotationOf(hold),
        { topEdge: ctx.text.hold.topEdge, edge: t.edge },
        n,
        quarters,
      ),
    );
    say(count, t.count(n + 1, wanted));
    say(step, n === 0 ? t.lay : quarters === 2 ? t.half : t.quarter);
    say(four, wanted === 2 ? t.four : t.two);
    for (const el of [step, count, watch.hint, watch.progress]) el.hidden = found;
    picture.hidden = found;
    again.hidden = done.hidden = !found;
    four.hidden = found || n > 0;
    over.hidden = found || n === 0;
    watch.take.hidden = turned.hidden = found;
    tick();
  };

  const keep = () => {
    const { value, refusal } = engine.attempt((l) => l.keep_placement());
    const errors = /** @type {Record<string, string>} */ (t.errors);
    complain(refusal && (errors[refusal] ?? watch.words(refusal)[1]));
    if (refusal === 'turn_too_old') engine.call((l) => l.forget_placements());
    if (!refusal) told = false;
    if (value === wanted) find();
    show();
  };

  const find = () => {
    const { value, refusal } = engine.attempt((_, border) => border.findZero());
    if (!value) return complain(/** @type {Record<string, string>} */ (t.errors)[refusal]);
    ctx.keepFindings();
    const [along, uAlong, across, uAcross] = value;
    const part = (/** @type {number} */ deg, /** @type {number} */ u, /** @type {string} */ way) =>
      h(
        'p',
        { class: 'number' },
        h('span', { class: 'value' }, formatAngle(Math.abs(deg))),
        h('span', { class: 'u' }, ` ± ${formatU(deg, u)}`),
        h('br'),
        `${deg < 0 ? t.low : t.high} ${way}`,
      );
    result.replaceChildren(
      h('p', { class: 'lead' }, t.found),
      part(along, uAlong, t.lengthwise),
      part(across, uAcross, t.crosswise),
      h('p', { class: 'does' }, t.takenOff(Date.now())),
    );
  };

  const tick = () => {
    if (result.hasChildNodes()) return;
    const reason = watch.tick();
    el.dataset.reason = reason ?? '';
    // Where the browser can't say that the phone was turned, somebody must.
    const ask = placed() > 0 && !told && !engine.call((l) => l.knows_heading());
    turned.hidden = !ask;
    if (ask) watch.take.hidden = true;
  };

  const el = frame(
    ctx,
    'turn',
    `${t.title}: ${/** @type {Record<string, string>} */ (ctx.text.holds)[hold]}`,
    [
      picture,
      h('p', { class: 'lead' }, count, ' ', step),
      trouble,
      result,
      watch.hint,
      watch.progress,
    ],
    [four, over, again, watch.ask, turned, watch.take, done],
  );
  engine.selectFace(hold, 'metal_face');
  show();
  return watch.follow(el, tick);
}
