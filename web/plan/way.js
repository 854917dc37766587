// The way from a section to one of its sheets, with what that sheet has come to.

import { h } from '../dom.js';
import { standing } from '../screens/standing.js';
import { itemsOfSheet } from './state.js';

/**
 * @param {import('../context.js').Context} ctx
 * @param {string} section @param {string} sheet
 * @param {string[]} words title, and what it is about
 * @param {string} screen @param {boolean} [factsHere] whether its facts stand beside the row: they
 *   speak for themselves then
 */
export function way(ctx, section, sheet, [title, sub], screen, factsHere = false) {
  const items = itemsOfSheet(ctx, section, sheet).filter((i) => !(factsHere && i.fact));
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
