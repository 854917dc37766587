// Units, and what the browser says about keeping things.

import { button, h } from '../dom.js';
import { frame, pick } from './frame.js';

/** @typedef {import('../context.js').Context} Context */

/** @param {Context} ctx */
export function settings(ctx) {
  const t = ctx.text.settings;
  const now = ctx.settings;
  const kept = now.persisted === null ? t.kept.unknown : now.persisted ? t.kept.yes : t.kept.no;
  return frame(
    ctx,
    'settings',
    t.title,
    [
      pick(t.angle, 'angle_unit', Object.entries(t.units), now.angle_unit, (v) =>
        ctx.keep({ angle_unit: /** @type {typeof now.angle_unit} */ (v) }),
      ),
      pick(t.system, 'system', Object.entries(t.systems), now.system, (v) =>
        ctx.keep({ system: /** @type {typeof now.system} */ (v) }),
      ),
      button(
        t.sign,
        'forget-sign',
        () => {
          ctx.engine.setSign(0);
          ctx.keep({ sign: 0 });
        },
        'row',
      ),
      h('p', { class: 'source' }, kept),
    ],
    [button(t.done, 'done', () => history.back())],
  );
}
