// Calibration in any pose: the phone leant in many ways, fitted as soon as core has enough.

import { button, h, say } from '../dom.js';
import { frame } from './frame.js';
import { words as t } from '../words/poses.js';
import { Watch } from './watch.js';

/** @param {import('../context.js').Context} ctx */
export function poses(ctx) {
  const { engine } = ctx;
  let kept = 0;
  const count = h('p', { class: 'lead', role: 'status' });
  const state = h('p', { class: 'does' });
  const trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
  const watch = new Watch(ctx, t.keep, 'keep-pose', () => add());
  /** @param {string} name @returns {string} */
  const refused = (name) =>
    /** @type {Record<string, string>} */ (t.refusals)[name] ?? watch.words(name)[1];

  const add = () => {
    const added = engine.attempt((l) => l.add_pose());
    say(trouble, added.refusal && refused(added.refusal));
    trouble.hidden = !added.refusal;
    if (added.refusal) return;
    kept = added.value ?? 0;
    fit();
  };
  const fit = () => {
    say(count, t.count(kept));
    const { value, refusal } = engine.attempt((l) => l.calibrate());
    say(state, refusal ? refused(refusal) : value ? t.both : t.one);
    state.dataset.found = String(!refusal);
    if (!refusal) ctx.keepFindings();
  };
  const forget = () => {
    engine.call((l) => l.forget_poses());
    kept = 0;
    trouble.hidden = true;
    fit();
  };
  const el = frame(
    ctx,
    'poses',
    t.title,
    [
      h('p', { class: 'source' }, t.why),
      count,
      state,
      trouble,
      h('ul', { class: 'ways' }, ...t.ways.map((way) => h('li', {}, way))),
      watch.hint,
      watch.progress,
    ],
    [button(t.over, 'forget-poses', forget, 'lesser'), watch.ask, watch.take],
  );
  engine.selectFace('back', 'metal_face');
  forget();
  return watch.follow(el, () => {
    el.dataset.reason = watch.tick() ?? '';
  });
}
