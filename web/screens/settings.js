// Units, language, and what the browser says about keeping things.

import { button, h } from '../dom.js';
import { choose, LANGUAGES, language, nameOf } from '../locale.js';
import { frame, pick } from './frame.js';
import { words as t } from '../words/settings.js';

/** @typedef {import('../context.js').Context} Context */

/** Words are loaded with the page: another language is there when it is loaded anew.
 * @param {Context} ctx */
function languagePick(ctx) {
  const next = h('div', { role: 'status' });
  const names = LANGUAGES.map((one) => /** @type {const} */ ([one, nameOf(one)]));
  const onPick = (/** @type {string} */ one) => {
    if (!choose(one)) return next.replaceChildren(h('p', { class: 'source' }, t.notChosen));
    const anew = () => ctx.settle().then(() => location.reload());
    next.replaceChildren(
      ...(one === language ? [] : [button(t.loadAnew(nameOf(one)), 'load-anew', anew, 'row')]),
    );
  };
  return h('div', {}, pick(t.language, 'language', names, language, onPick), next);
}

/** @param {Context} ctx */
export function settings(ctx) {
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
      pick(t.hand, 'hand', Object.entries(t.hands), now.hand, (v) =>
        ctx.useHand(/** @type {typeof now.hand} */ (v)),
      ),
      languagePick(ctx),
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
      h(
        'p',
        { class: 'source', 'data-name': 'version' },
        `${ctx.text.start.version} ${ctx.wholeVersion}`,
      ),
    ],
    [button(t.done, 'done', () => history.back())],
  );
}
