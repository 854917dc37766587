// The first start as lines of the job: each step by what it is worth, a stop that is on.

import { steps, words } from '../words/start.js';
import { Start, STEPS } from './start-record.js';

/** What a step is worth, by core's codes, as a line's state. A skipped step was not checked.
 * @type {import('./state.js').Item['state'][]} */
const STATES = ['open', 'seen', 'open', 'not_proven'];
const SKIPPED = 2;

/** @param {import('../context.js').Context} ctx @returns {import('./state.js').Item[]} */
export function startItems(ctx) {
  const start = new Start(ctx);
  const found = start.evaluate();
  /** @param {string} id @param {string} title @param {import('./state.js').Item['state']} state */
  const line = (id, title, state) => ({
    section: 'start_up',
    group: `start.${id}`,
    title,
    state,
    basis: /** @type {''} */ (''),
  });
  const lines = STEPS.map((id) => {
    const worth = found?.values[id] ?? 0;
    const { title } = steps[id];
    return line(id, worth === SKIPPED ? words.skipped(title) : title, STATES[worth]);
  });
  return start.stop ? [line('stop', words.stop.on, 'beyond'), ...lines] : lines;
}
