// The ducts: air, runs piece by piece, what they cost; flow, openings and fan a tap deeper.

import { h } from '../dom.js';
import { frame } from '../screens/frame.js';
import { words } from '../words/ducts.js';
import { savedLine } from './answers.js';
import { fanCard, openingsCard, riseCard } from './ducts-cards.js';
import { DuctForm } from './ducts-pieces.js';
import { tick } from './ticks.js';

const AIR = ['flow_m3_per_h', 'power_w', 'inlet_celsius', 'altitude_m', 'other_loss_pa'];

/** @param {import('../context.js').Context} ctx */
export function ducts(ctx) {
  const form = new DuctForm(ctx);
  const fan = fanCard(form);
  form.onWorked = (worked) => {
    form.tell(worked);
    fan.tell(worked);
  };
  const el = frame(
    ctx,
    'ducts',
    words.title,
    [
      h('p', { class: 'caution' }, words.caution),
      form.group(words.air, AIR),
      h('h2', {}, words.pieces),
      h('p', { class: 'source' }, words.piecesWhy),
      form.rowsEl,
      form.adding,
      form.sums,
      form.state,
      form.answers.el,
      form.halfList(),
      form.working.el,
      savedLine(form),
      riseCard(ctx, form),
      openingsCard(ctx, form),
      fan.el,
      h('h2', {}, words.ticks),
      ...Object.entries(words.tick).map(([id, statement]) => tick(ctx, form.kept, id, statement)),
    ],
    [],
  );
  form.start();
  return el;
}
