// Results without a limit that somebody asks the sheet for: a line each, above what is judged.

import { h } from '../dom.js';
import { withU } from './units.js';

/** @typedef {import('./model.js').Worked} Worked */

/** @param {import('./sheet.js').SheetForm} form @param {string[]} names in their order */
export function toldLines(form, names) {
  const el = h('div', { class: 'sums', role: 'status' });
  /** @param {Worked | null} worked */
  const show = (worked) => {
    const results = worked && !worked.refused ? worked.results : [];
    const lines = names.flatMap((name) => {
      const r = results.find((result) => result.name === name);
      if (!r || Number.isNaN(r.value)) return [];
      return `${form.words.results[name]}: ${withU(r, form.ctx.settings.system)}`;
    });
    // What is told already is not told again.
    if (el.dataset.said === lines.join()) return;
    el.dataset.said = lines.join();
    el.replaceChildren(...lines.map((line) => h('p', { class: 'summary' }, line)));
  };
  return { el, show };
}
