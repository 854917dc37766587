// A signature drawn with a finger: kept as strokes, shown and printed as a line. Who cannot draw
// types the name.

import { button, h, s, set } from '../dom.js';
import { clock } from '../units.js';
import { words } from '../words/record.js';

/** @typedef {import('../context.js').Context} Context */

const [WIDTH, HEIGHT] = [320, 110];
/** Points nearer than this to the last add nothing that can be seen. */
const APART = 3;
/** Longer than a signature is: what is drawn beyond is not kept. */
const LONGEST = 6000;

/** A signature as it was drawn. @param {string} strokes @param {string} label */
export const signed = (strokes, label) =>
  s(
    'svg',
    { viewBox: `0 0 ${WIDTH} ${HEIGHT}`, class: 'signature', role: 'img', 'aria-label': label },
    s('path', { d: strokes }),
  );

/** A field to sign in. @param {Context} ctx @param {'installer' | 'customer'} who
 * @param {() => void} onSigned the record is another now */
export function signatureField(ctx, who, onSigned) {
  const kept = ctx.plan.keptOf('signatures');
  const { typed } = kept.record;
  const t = words.sign;
  const path = s('path', { d: typed[who] ?? '' });
  const pad = s(
    'svg',
    {
      viewBox: `0 0 ${WIDTH} ${HEIGHT}`,
      class: 'signature pad',
      role: 'img',
      'aria-label': t[who],
    },
    path,
  );
  const when = h('p', { class: 'source' });
  const [name, at] = [`${who}_name`, `${who}_at`];
  let isTouched = false;
  const show = () => {
    // What is not signed is not “saved” by the other’s signature.
    const mark = typed[at] || isTouched ? [' ', kept.mark()] : [];
    when.replaceChildren(typed[at] ? t.at(clock(typed[at])) : t.empty, ...mark);
  };
  /** @param {string} field @param {string} value @param {boolean} now */
  const keep = (field, value, now) => {
    if (value) [typed[field], typed[at]] = [value, new Date().toISOString()];
    else delete typed[field];
    if (!typed[who] && !typed[name]) delete typed[at];
    isTouched = true;
    kept.changed(now);
    show();
    if (now) onSigned();
  };
  draw(pad, path, (strokes) => keep(who, strokes, true));
  const input = h('input', {
    type: 'text',
    id: `s-${who}`,
    'data-name': name,
    value: typed[name] ?? '',
    maxlength: 80,
    autocomplete: 'off',
    input: () => keep(name, input.value.trim(), false),
    change: () => keep(name, input.value.trim(), true),
  });
  const byName = h('div', { class: 'field' }, h('label', { for: input.id }, t.byName), input);
  const clear = button(
    t.clear,
    `clear-${who}`,
    () => {
      set(path, { d: '' });
      input.value = '';
      for (const field of [who, name]) keep(field, '', true);
    },
    'lesser',
  );
  show();
  const card = { class: 'card', 'data-signature': who };
  return h(
    'div',
    card,
    h('h3', {}, t[who]),
    h('p', { class: 'source' }, t.here),
    pad,
    byName,
    when,
    clear,
  );
}

/** @param {SVGSVGElement} pad @param {SVGPathElement} path @param {(strokes: string) => void} keep */
function draw(pad, path, keep) {
  /** @type {[number, number] | null} */ let last = null;
  /** @param {PointerEvent} e @returns {[number, number]} */
  const at = (e) => {
    const box = pad.getBoundingClientRect();
    const [x, y] = [(e.clientX - box.left) / box.width, (e.clientY - box.top) / box.height];
    return [Math.round(x * WIDTH), Math.round(y * HEIGHT)];
  };
  /** @param {'M' | 'L'} how @param {[number, number]} point */
  const add = (how, point) => {
    const strokes = `${path.getAttribute('d') ?? ''}${how}${point.join(' ')}`;
    if (strokes.length > LONGEST) return;
    set(path, { d: strokes });
    last = point;
  };
  pad.addEventListener('pointerdown', (e) => {
    pad.setPointerCapture(e.pointerId);
    add('M', at(e));
  });
  pad.addEventListener('pointermove', (e) => {
    if (!last) return;
    const point = at(e);
    if (Math.hypot(point[0] - last[0], point[1] - last[1]) >= APART) add('L', point);
  });
  for (const end of ['pointerup', 'pointercancel'])
    pad.addEventListener(end, () => {
      if (!last) return;
      last = null;
      keep(path.getAttribute('d') ?? '');
    });
}
