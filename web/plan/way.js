// The way from a section to one of its sheets, with what that sheet has come to.

import { h } from '../dom.js';
import { standing } from '../screens/standing.js';
import { itemsOfSheet } from './state.js';

/**
 * @param {import('../context.js').Context} ctx
 * @param {string} section @param {string} sheet
 * @param {string[]} words title, and what it is about
 * @param {string} screen
 */
export function way(ctx, section, sheet, [title, sub], screen) {
  const items = itemsOfSheet(ctx, section, sheet);
  return h(
    'li',
    {},
    h(
      'button',
      {
        type: 'button',
        class: 'row',
        'data-action': `sheet-${sheet}`,
        click: () => ctx.go(screen),
      },
      h('span', { class: 'words' }, h('b', {}, title), h('small', {}, sub)),
      // What is held against no limit has nothing to tell.
      items.length ? standing(ctx, items) : null,
    ),
  );
}
