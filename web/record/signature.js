// A signature drawn with a finger: kept as strokes, shown and printed as a line.

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

/** A field to sign in. @param {Context} ctx @param {'installer' | 'customer'} who */
export function signatureField(ctx, who) {
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
  const show = () => {
    const at = typed[`${who}_at`];
    when.replaceChildren(at ? t.at(clock(at)) : t.empty, ' ', kept.mark());
  };
  const keep = (/** @type {string} */ strokes) => {
    if (strokes) [typed[who], typed[`${who}_at`]] = [strokes, new Date().toISOString()];
    else for (const name of [who, `${who}_at`]) delete typed[name];
    kept.changed(true);
    show();
  };
  draw(pad, path, keep);
  const clear = button(
    t.clear,
    `clear-${who}`,
    () => {
      set(path, { d: '' });
      keep('');
    },
    'lesser',
  );
  show();
  return h('div', { class: 'card', 'data-signature': who }, h('h3', {}, t[who]), pad, when, clear);
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
