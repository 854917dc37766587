// The first screen's note: what a page opened as a file cannot do. Closed by a tap until the page is
// opened again, and opened by one.

import { button, h } from '../dom.js';
import { copyOut } from '../exchange.js';
import limitsSchema from '../pkg/schema.json';
import { schema as recordSchema } from '../record/schema.js';
import { words as t } from '../words/file.js';
import { isForgetting } from './forgetting.js';

let closed = false;

const schemas = () =>
  h(
    'details',
    {},
    h('summary', {}, t.schemas),
    h(
      'nav',
      { class: 'row' },
      button(
        t.limitsSchema,
        'schema-limits',
        () => copyOut('limits.schema.json', limitsSchema),
        'lesser',
      ),
      button(
        t.recordSchema,
        'schema-record',
        () => copyOut('record.schema.json', recordSchema),
        'lesser',
      ),
    ),
  );

/** A line that no tap takes away. */
export const forgetsLine = () =>
  isForgetting() ? h('p', { class: 'trouble', role: 'alert' }, t.forgets) : null;

/** @param {import('../context.js').Context} _ctx */
export function opening(_ctx) {
  const note = h(
    'details',
    { open: !closed, 'data-name': 'as-file' },
    h('summary', {}, t.title),
    h('ul', { class: 'points' }, ...t.points.map((point) => h('li', {}, point))),
    schemas(),
  );
  // It does not bubble: the one inside says nothing here.
  note.addEventListener('toggle', () => {
    closed = !note.open;
  });
  return h('div', {}, forgetsLine(), note);
}
