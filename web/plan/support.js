// What the heater stands on: the face under the seal by straightedge and feeler gauge, by the phone
// only where it is too uneven; plate, new seal, light and leaks.

import { button, h, say } from '../dom.js';
import { frame } from '../screens/frame.js';
import { sheets, words } from '../words/support.js';
import { savedLine } from './answers.js';
import { SheetForm } from './sheet.js';
import { supportPicture } from './support-picture.js';
import { tick } from './ticks.js';

/** @typedef {import('../context.js').Context} Context */

/** Two tilts instead. @param {Context} ctx */
function byPhone(ctx) {
  const form = new SheetForm(ctx, 'twist', sheets.twist);
  const el = h(
    'details',
    {},
    h('summary', {}, words.phone),
    h('p', {}, words.phoneWhy),
    form.group('', ['first_deg', 'second_deg', 'base_mm']),
    ...form.outcome(),
  );
  form.start();
  return el;
}

/** @param {Context} ctx */
export function support(ctx) {
  const form = new SheetForm(ctx, 'support', sheets.support);
  const { record } = form.kept;
  const picture = h('div', {});
  const open = h('p', { class: 'missing', role: 'status' });
  const six = button(
    words.six,
    'six-lines',
    () => {
      for (const i of form.words.choices?.line.keys() ?? []) form.addRow({ line: String(i) });
      form.rowsEl.scrollIntoView();
    },
    'row',
  );
  form.onWorked = (worked) => {
    six.hidden = record.rows.length > 0;
    picture.replaceChildren(supportPicture(ctx, form, worked));
    const left = worked && !worked.refused && worked.results.find((r) => r.name === 'open_lines');
    say(open, left ? words.open(left.value) : '');
  };
  const el = frame(
    ctx,
    'support',
    words.title,
    [
      h('p', { class: 'caution' }, words.caution),
      h('p', {}, words.sealWhy),
      picture,
      form.group(words.seal, ['long_mm', 'short_mm', 'straightedge_mm', 'straightness_mm']),
      six,
      form.rowList(),
      form.halfList(),
      form.state,
      open,
      form.answers.el,
      h('p', { class: 'source' }, words.plate),
      form.working.el,
      savedLine(form),
      byPhone(ctx),
      h('h2', {}, words.ticks),
      ...Object.entries(words.tick).map(([id, statement]) => tick(ctx, form.kept, id, statement)),
    ],
    [],
  );
  form.start();
  return el;
}
