// Heat wanted: what the space loses, surface by surface and by its air; the ways to the heater, to
// warming up and to a night, which take this loss.

import { h, say } from '../dom.js';
import { frame } from '../screens/frame.js';
import { words } from '../words/demand.js';
import { sheets } from '../words/demand-sheets.js';
import { resultOf } from './copy.js';
import { demandPicture } from './demand-picture.js';
import { Surfaces, withU } from './demand-surfaces.js';
import { follower, lossIn } from './demand-take.js';
import { SheetForm } from './sheet.js';
import { way } from './way.js';

/** @typedef {import('../context.js').Context} Context */

const SPACE = ['inside_celsius', 'outside_celsius', 'volume_m3', 'changes_per_h', 'altitude_m'];

/** The way to a sheet that takes the loss. @param {Context} ctx @param {string} sheet */
function wayTo(ctx, sheet) {
  const [title, sub] = words.sheets[sheet];
  const told = lossIn(ctx, sheet).isAnother ? words.another : sub;
  return way(ctx, 'demand', sheet, [title, told], `demand_${sheet}`);
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
    picture.replaceChildren(demandPicture(form, results));
    const [loss, least] = ['loss_w', 'at_least_w'].map((name) => resultOf(worked, name));
    const open = resultOf(worked, 'open_surfaces')?.value ?? 0;
    const told = loss ? words.loses(withU(loss, system)) : '';
    say(sum, least ? words.losesLeast(withU(least, system), open) : told);
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
