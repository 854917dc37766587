// The ducts in a line for each layout, and a number for a small place.

import { words } from '../words/ducts.js';
import { kindOf } from './ducts-kinds.js';
import { rounded, withU } from './units.js';

/** Both layouts, and by how much they differ. @param {import('./ducts-pieces.js').DuctForm} form
 * @param {import('./model.js').Result[]} results */
export function sumLines(form, results) {
  const { system } = form.ctx.settings;
  const of = (/** @type {string} */ name) =>
    results.find((r) => r.name === name && r.row === null && !Number.isNaN(r.value));
  const lines = ['a', 'b'].flatMap((layout) => {
    const [loss, dearest] = [of(`loss_${layout}_pa`), of(`dearest_${layout}`)];
    if (!loss || !dearest) return [];
    const row = dearest.value - 1;
    const its = results.find((r) => r.row === row && r.name === `piece_${layout}_pa`);
    const kind = form.words.choices?.kind[kindOf(form.rows[row])];
    return words.dearest(
      form.comparing ? words.layout(layout.toUpperCase()) : '',
      withU(loss, system),
      `${row + 1} ${kind}`,
      its ? rounded(its, system) : '',
    );
  });
  const apart = of('loss_difference_pa');
  if (apart) lines.push(words.apart(withU(apart, system)));
  if (!form.rows.length) return [words.noPieces];
  // What was forgotten costs nothing, and would read well.
  const empty = ['0', '1'].filter((run) => form.rows.every((row) => row.typed.run !== run));
  return [...lines, ...empty.map((run) => words.emptyRun(words.runs[Number(run)]))];
}
