// What core tells of each leg of a pipe, put together for its card and its drawing.

import { words } from '../words/flue.js';

/** @typedef {import('./model.js').Result} Result */
/** @typedef {import('../types.js').Verdict} Verdict */

/**
 * @typedef {object} LegTold
 * @property {Result} height where it ends
 * @property {number} along
 * @property {Result} standing
 * @property {number} depth of water where it starts; NaN where none can stand
 * @property {boolean} holds whether that is proven
 * @property {boolean} low whether it starts at a low point
 * @property {boolean} drained whether it starts at a drain
 * @property {Verdict} verdict of what it holds back by itself
 * @property {string} word for it
 * @property {string} remedy what is to be done where it starts
 */

/** @param {import('./model.js').Worked | null} worked @returns {LegTold[]} */
export function legsOf(worked) {
  const { answers = [], results = [] } = worked && !worked.refused ? worked : {};
  const t = words.pipe;
  return results
    .filter((r) => r.name === 'height_mm')
    .map((height) => {
      /** @param {string} name */
      const of = (name) =>
        /** @type {Result} */ (results.find((r) => r.row === height.row && r.name === name));
      /** @param {string} name */
      const verdictOf = (name) =>
        answers.find((a) => a.result.row === height.row && a.result.name === name)?.verdict ??
        'none';
      const [depth, verdict] = [of('depth_mm').value, verdictOf('standing_mm')];
      const wet = verdict === 'within' && !Number.isNaN(depth);
      const remedy = t.remedies[of('remedy').value];
      return {
        height,
        along: of('along_mm').value,
        standing: of('standing_mm'),
        depth,
        holds: verdictOf('depth_mm') === 'beyond',
        low: remedy !== '',
        drained: !Number.isNaN(of('drain_bore_mm').value),
        verdict,
        word: wet ? t.wet : t.state[verdict],
        remedy,
      };
    });
}
