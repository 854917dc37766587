// Heat wanted: what the space loses, surface by surface and by its air; the ways to the heater, to
// warming up and to a night, which take this loss.

import { h, say } from '../dom.js';
import { frame } from '../screens/frame.js';
import { words } from '../words/demand.js';
import { sheets } from '../words/demand-sheets.js';
import { resultOf } from './copy.js';
import { demandPicture } from './demand-picture.js';
import { Surfaces } from './demand-surfaces.js';
import { follower, lossIn } from './demand-take.js';
import { SheetForm } from './sheet.js';
import { rounded, withU } from './units.js';
import { way } from './way.js';

/** @typedef {import('../context.js').Context} Context */

const SPACE = ['inside_celsius', 'outside_celsius', 'volume_m3', 'changes_per_h', 'altitude_m'];

/** The way to a sheet that takes the loss. @param {Context} ctx @param {string} sheet */
function wayTo(ctx, sheet) {
  const [title, sub] = words.sheets[sheet];
  const told = lossIn(ctx, sheet).isAnother ? words.another : sub;
  return way(ctx, 'demand', sheet, [title, told], `demand_${sheet}`);
}

/** The loss in words, and short for the drawing. @param {import('./model.js').Worked | null} worked
 * @param {'metric' | 'us'} system */
function lossWords(worked, system) {
  const [loss, least] = ['loss_w', 'at_least_w'].map((name) => resultOf(worked, name));
  const open = resultOf(worked, 'open_surfaces')?.value ?? 0;
  if (loss) return { long: words.loses(withU(loss, system)), short: rounded(loss, system) };
  if (!least) return { long: '', short: '' };
  return {
    long: words.losesLeast(withU(least, system), open),
    short: words.atLeast(rounded(least, system)),
  };
}

/** @param {Context} ctx */
export function demand(ctx) {
  const form = new SheetForm(ctx, 'heat_loss', sheets.heat_loss);
  const surfaces = new Surfaces(form);
  const follow = follower(ctx);
  const picture = h('div', {});
  const sum = h('p', { class: 'lead', role: 'status' });
  const ways = h('ul', { class: 'rows' });
  form.onWorked = (worked) => {
    const results = worked && !worked.refused ? worked.results : [];
    const { system } = ctx.settings;
    surfaces.tell(results);
    const { long, short } = lossWords(worked, system);
    say(sum, long);
    // An empty box would look like something that failed to load.
    picture.replaceChildren(results.length ? demandPicture(form, results, short) : '');
    follow();
    ways.replaceChildren(...Object.keys(words.sheets).map((name) => wayTo(ctx, name)));
  };
  const el = frame(
    ctx,
    'demand',
    words.title,
    [
      h('ul', { class: 'cautions' }, ...words.cautions.map((c) => h('li', {}, c))),
      form.group(words.space, SPACE, words.spaceWhy),
      picture,
      sum,
      surfaces.el,
      ...form.outcome(),
      h('h2', {}, words.ways),
      ways,
    ],
    [],
  );
  form.start();
  return el;
}
