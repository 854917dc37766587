// The strip of the try-out: says on every screen that nothing is measured, and moves the
// simulated phone.

import { button, h } from '../dom.js';
import { tryoutLimits } from './limits.js';
import { SimulatedPhone } from './phone.js';
import { parseTrace, replay } from './replay.js';

/** @typedef {import('../context.js').Context} Context */

const STEP_DEG = 4;
/** Hours of a recording. */
const LARGEST_BYTES = 16 * 1024 * 1024;
const PLACES = /** @type {const} */ (['part', 'table', 'rail']);

/** @param {Context} ctx @param {() => void} leave */
export function mountTryout(ctx, leave) {
  const t = ctx.text.tryout;
  const phone = new SimulatedPhone();
  ctx.engine.setSign(0);
  ctx.limits = ctx.job.limits ?? tryoutLimits(ctx.engine.blankLimits());
  ctx.engine.setLimits(ctx.limits);
  // The simulated phone is held as the page says.
  ctx.engine.onHold = (hold) => {
    phone.rotation = ctx.engine.rotationOf(hold);
  };
  const state = h('span', { role: 'status' });
  const file = h('input', {
    type: 'file',
    accept: '.csv,text/csv',
    class: 'sr',
    // The button beside it opens it.
    tabindex: -1,
    'aria-label': t.trace,
    change: async () => {
      const chosen = file.files?.[0];
      if (!chosen) return;
      try {
        if (chosen.size > LARGEST_BYTES) throw new Error('size');
        const rows = parseTrace(await chosen.text());
        phone.stop();
        state.textContent = t.tracePlaying;
        // A recording has no orientation that could tell the sign; its own header says specific force.
        ctx.engine.call((l) => l.orientation(undefined, undefined));
        ctx.engine.setSign(1);
        replay(rows, {
          onRow: (i) => {
            strip.dataset.row = String(i);
          },
          onEnd: () => {
            state.textContent = '';
            phone.start();
          },
        });
      } catch {
        state.textContent = t.badTrace;
      }
      file.value = '';
    },
  });
  /** @param {string} label @param {string} action @param {() => void} act */
  const key = (label, action, act) => button(label, `try-${action}`, act, 'lesser');
  const strip = h(
    'aside',
    { class: 'tryout' },
    h('p', {}, t.band, ' ', state),
    h(
      'nav',
      {},
      key(t.up, 'up', () => {
        phone.pose.elevation = Math.min(90, phone.pose.elevation + STEP_DEG);
      }),
      key(t.down, 'down', () => {
        phone.pose.elevation = Math.max(-90, phone.pose.elevation - STEP_DEG);
      }),
      key(t.end, 'end', () => {
        phone.pose.turn += 180;
      }),
      key(t.quarter, 'quarter', () => {
        phone.pose.turn += 90;
      }),
      ...PLACES.map((place) =>
        key(t[place], place, () => {
          phone.place = place;
        }),
      ),
      key(t.rollLeft, 'roll-left', () => {
        phone.pose.roll -= 3 * STEP_DEG;
      }),
      key(t.rollRight, 'roll-right', () => {
        phone.pose.roll += 3 * STEP_DEG;
      }),
      key(t.knock, 'knock', () => phone.knock()),
      key(t.turn, 'turn', () => {
        phone.pose.elevation = -phone.pose.elevation;
      }),
      key(t.trace, 'trace', () => file.click()),
      key(t.leave, 'leave', leave),
    ),
    file,
  );
  document.getElementById('strip')?.append(strip);
  document.body.classList.add('trying');
  phone.start();
}
