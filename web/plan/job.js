// What must be known before anything is cut: facts that no number settles.

import { h } from '../dom.js';
import { frame } from '../screens/frame.js';
import { facts, words } from '../words/job.js';
import { tick } from './ticks.js';

/** @param {import('../context.js').Context} ctx */
export function job(ctx) {
  const kept = ctx.plan.keptOf('job');
  const ticks = Object.entries(facts).map(([id, statement]) => tick(ctx, kept, id, statement));
  return frame(ctx, 'job', words.title, [h('p', {}, words.why), ...ticks], []);
}
