// What every screen has: a head with the way back, a body, a foot with the one thing to do.

import { button, h } from '../dom.js';

/** @typedef {import('../context.js').Context} Context */

/**
 * @param {Context} ctx
 * @param {string} name
 * @param {string} title
 * @param {import('../dom.js').Child[]} body
 * @param {Node[]} foot lesser actions first, the one thing to do last; where there is none the way
 *   back, for the thumb
 * @param {Node} [aside] beside the title
 */
export function frame(ctx, name, title, body, foot, aside) {
  const back = button('‹', 'back', () => history.back(), 'lesser');
  back.setAttribute('aria-label', ctx.text.back);
  const onward =
    foot.length || name === 'start'
      ? foot
      : [button(ctx.text.back, 'back-below', () => history.back())];
  const heading = h('h1', { tabindex: '-1' }, title);
  return h(
    'section',
    { 'data-screen': name, class: `screen ${name}` },
    h('header', {}, name === 'start' ? null : back, heading, aside),
    h('div', { class: 'body' }, ...body),
    h('footer', {}, ...onward),
  );
}

/**
 * A verdict in its frame; against a limit that no manual gave it is drawn differently.
 * @param {import('../types.js').Verdict | null} verdict @param {string} word
 * @param {import('../types.js').Basis | ''} [basis]
 */
export function verdictFrame(verdict, word, basis = '') {
  const data = { 'data-verdict': verdict ?? 'unchecked', 'data-basis': basis };
  return h('strong', { class: 'verdict', ...data }, word);
}

/**
 * One of a few, by taps.
 * @param {string} legend @param {string} name
 * @param {(readonly [string, string | Node])[]} choices value and label
 * @param {string} chosen @param {(value: string) => void} onPick
 */
export function pick(legend, name, choices, chosen, onPick) {
  return h(
    'fieldset',
    { class: `pick-${name}` },
    h('legend', {}, legend),
    ...choices.map(([value, label]) =>
      h(
        'label',
        { class: 'pick' },
        h('input', {
          type: 'radio',
          name,
          value,
          checked: value === chosen,
          change: () => onPick(value),
        }),
        label,
      ),
    ),
  );
}
