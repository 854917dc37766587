// What every screen has: a head with the way back, a body, a foot with the one thing to do.

import { button, h } from '../dom.js';

/** @typedef {import('../app.js').Context} Context */

/**
 * @param {Context} ctx
 * @param {string} name
 * @param {string} title
 * @param {Node[]} body
 * @param {Node[]} foot lesser actions first, the one thing to do last
 */
export function frame(ctx, name, title, body, foot) {
  const back = button('‹', 'back', () => history.back(), 'lesser');
  back.setAttribute('aria-label', ctx.text.back);
  const heading = h('h1', { tabindex: '-1' }, title);
  return h(
    'section',
    { 'data-screen': name, class: `screen ${name}` },
    h('header', {}, name === 'start' ? null : back, heading),
    h('div', { class: 'body' }, ...body),
    h('footer', {}, ...foot),
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
