// Facts that no number settles: who saw it, when, and a photo or a reason. None is set by default,
// and each is set by itself.

import { button, h } from '../dom.js';
import { camera, keepPhoto } from '../photos.js';
import { clock } from '../units.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('./record.js').Kept} Kept */

/** Words that were typed and not ticked yet: whoever leaves finds them again.
 * @type {WeakMap<Kept, Map<string, string>>} */
const drafts = new WeakMap();

/** @param {Kept} kept */
function draftsOf(kept) {
  const found = drafts.get(kept) ?? new Map();
  drafts.set(kept, found);
  return found;
}

/**
 * @param {Context} ctx @param {Kept} kept where it is kept
 * @param {string} id @param {string} statement what is ticked, as a statement
 * @param {typeof import('../words/plan.js').words.tick} [t]
 */
export function tick(ctx, kept, id, statement, t = ctx.plan.words.tick) {
  const el = h('div', { class: 'tick card', 'data-tick': id });
  /** @param {string} reason @param {number | null} photo @param {string} who */
  const put = (reason, photo, who) => {
    kept.record.ticks[id] = { who, at: new Date().toISOString(), reason, photo };
  };
  /** @param {string} who */
  const done = (who) => {
    draftsOf(kept).delete(id);
    ctx.keep({ who });
    show();
  };
  const takeBack = () => {
    delete kept.record.ticks[id];
    kept.changed(true);
    show();
  };
  const ask = () => {
    const who = input(t.who, ctx.settings.who || ctx.job.installer, `${id}-who`);
    const reason = input(t.reason, draftsOf(kept).get(id) ?? '', `${id}-reason`);
    reason.el.addEventListener('input', () => draftsOf(kept).set(id, reason.value()));
    reason.el.addEventListener('keydown', (e) => e.key === 'Enter' && byReason.click());
    const trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
    const named = () => {
      trouble.textContent = who.value() ? '' : t.needsWho;
      trouble.hidden = trouble.textContent === '';
      return who.value();
    };
    const { parts, ask: photo } = camera(ctx, t.byPhoto, async (blob) => {
      if (!named()) return;
      await keepPhoto(ctx, kept.owner, id, blob, (photo) => {
        put('', photo, who.value());
        return () => delete kept.record.ticks[id];
      });
      done(who.value());
    });
    const byPhoto = button(t.byPhoto, 'tick-photo', () => named() && photo(), 'row');
    const byReason = button(t.byReason, 'tick-reason', () => {
      if (!named()) return;
      if (reason.value()) {
        put(reason.value(), null, who.value());
        kept.changed(true);
        return done(who.value());
      }
      trouble.textContent = t.needsReason;
      trouble.hidden = false;
    });
    el.replaceChildren(
      h('b', {}, statement),
      who.el,
      ...parts,
      byPhoto,
      reason.el,
      byReason,
      trouble,
    );
  };
  const show = () => {
    const seen = kept.record.ticks[id];
    el.dataset.done = seen ? 'yes' : 'no';
    const mark = h(
      'strong',
      { class: 'verdict', 'data-verdict': 'unchecked' },
      seen ? t.seen : t.open,
    );
    const by = seen && t.by(seen.who, clock(seen.at), seen.reason);
    const how = by && h('p', { class: 'source' }, by, ' ', kept.mark());
    const act = seen
      ? button(t.takeBack, `untick-${id}`, takeBack, 'lesser')
      : button(t.tick, `tick-${id}`, ask, 'row');
    el.replaceChildren(h('p', {}, statement), mark, ...(how ? [how] : []), act);
    if (!seen && draftsOf(kept).get(id)) ask();
  };
  show();
  return el;
}

/** A text field. @param {string} label @param {string} value @param {string} id */
function input(label, value, id) {
  const field = h('input', {
    type: 'text',
    value,
    id: `t-${id}`,
    maxlength: 80,
    autocomplete: 'off',
  });
  const el = h('div', { class: 'field' }, h('label', { for: field.id }, label), field);
  return { el, value: () => field.value.trim() };
}
