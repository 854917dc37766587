// The first start as lines of the job: each step by what it is worth, a stop that is on.

import { stamp } from '../units.js';
import { steps, words } from '../words/start.js';
import { Start, STEPS } from './start-record.js';
import { reasonOf, wentOn } from './start-stop.js';

/** What a step is worth, by core's codes, as a line's state. A skipped step was not checked.
 * @type {import('./state.js').Item['state'][]} */
const STATES = ['open', 'seen', 'open', 'not_proven'];

/** @param {import('../context.js').Context} ctx @returns {import('./state.js').Item[]} */
export function startItems(ctx) {
  const start = new Start(ctx);
  const found = start.evaluate();
  const { ticks, skipped, stops } = start.record;
  /** @param {string} id @param {string} title @param {import('./state.js').Item['state']} state
   * @param {import('./record.js').Tick | null} mark */
  const line = (id, title, state, mark) => ({
    section: 'start_up',
    group: `start.${id}`,
    title,
    state,
    basis: /** @type {''} */ (''),
    fact: `start.${id}`,
    mark,
  });
  const lines = STEPS.map((id) => {
    const worth = found?.values[id] ?? 0;
    const { title } = steps[id];
    const told =
      { 2: words.skipped(title, skipped[id]?.reason), 3: words.notProven(title) }[worth] ?? title;
    return line(id, told, STATES[worth], skipped[id] ?? ticks[id] ?? null);
  });
  const told = stops.map((stop, i) => {
    const { went_on, what, at } = stop;
    const title = what ? words.stop.line(reasonOf(what), stamp(at)) : stamp(at);
    const mark = went_on && { who: went_on.who, at: went_on.at, photo: null };
    return mark
      ? line(`stop_${i + 1}`, title, 'stopped', { ...mark, reason: wentOn(stop) })
      : line('stop', words.stop.isOn(title), 'beyond', null);
  });
  return [...told, ...lines];
}
