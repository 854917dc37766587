// How to hold the phone to this part, drawn; what that hold gives; the others a tap away.

import { button, h } from '../dom.js';
import { holdPicture } from '../drawings/hold.js';
import { pointingPicture } from '../drawings/table.js';
import { frame, pick } from './frame.js';
import { levelState } from './level.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../types.js').Placement} Placement */

/** @param {Placement} p */
const key = (p) => `${p.hold}/${p.surface}`;

/** @param {Context} ctx @param {{ part: import('../types.js').PartId, other?: boolean }} params */
export function hold(ctx, { part, other }) {
  const t = ctx.text;
  const entry = ctx.engine.catalogue.parts.find((p) => p.id === part);
  if (!entry) return frame(ctx, 'hold', t.hold.title, [], []);
  const kept = ctx.settings.placements[part];
  const chosen = entry.placements.find((p) => key(p) === kept) ?? entry.placements[0];
  /** @param {Placement} p */
  const name = (p) => `${of(t.holds, p.hold)} ${of(t.surfaces, p.surface)}`;
  /** @param {Placement} p */
  const choose = (p) => ctx.keep({ placements: { ...ctx.settings.placements, [part]: key(p) } });
  /** @param {Placement} p */
  const take = (p) => {
    choose(p);
    // Which way the part points is asked with the hold: nothing stands on a guess of it.
    if (other && ctx.engine.levelCounts()) history.back();
    else ctx.place(part, p);
  };
  /** @param {Placement} p */
  const gives = (p) => `${t.hold.gives}: ${p.checks.map((c) => of(t.checks, c)).join(', ')}`;
  const caution = h('p', { class: 'caution' }, t.cautions[part]);
  const words = { topEdge: t.hold.topEdge, head: t.headEnd[part] };
  if (other) {
    const rows = entry.placements.map((p) =>
      h(
        'li',
        {},
        h(
          'button',
          {
            type: 'button',
            class: 'row',
            'data-action': `hold-${p.hold}-${p.surface}`,
            click: () => take(p),
          },
          holdPicture(part, p, words),
          h('span', { class: 'words' }, h('b', {}, name(p)), h('small', {}, gives(p))),
        ),
      ),
    );
    const refused = entry.refused
      .filter((r) => r.why !== 'no_such_surface')
      .map((r) =>
        h(
          'li',
          {},
          `${of(t.holds, r.hold)} ${of(t.surfaces, r.surface)}: ${of(t.refusals, r.why)}`,
        ),
      );
    return frame(
      ctx,
      'hold',
      t.parts[part],
      [
        caution,
        h('ul', { class: 'rows pictures' }, ...rows),
        ...(refused.length
          ? [h('h2', {}, t.hold.refusedTitle), h('ul', { class: 'refused' }, ...refused)]
          : []),
      ],
      [],
    );
  }
  return frame(
    ctx,
    'hold',
    t.parts[part],
    [
      holdPicture(part, chosen, words),
      h(
        'p',
        { class: 'lead' },
        h('b', {}, name(chosen)),
        h('br'),
        `${of(t.hold.how, chosen.hold)} ${t.headEnd[part]}.`,
      ),
      h('p', { class: 'source' }, gives(chosen)),
      caution,
      ctx.engine.levelCounts()
        ? pointing(ctx, part)
        : button(`${t.level.title}: ${levelState(ctx)}`, 'level', () => ctx.go('level'), 'row'),
    ],
    [
      button(t.hold.other, 'other-holds', () => ctx.go('hold', { part, other: true }), 'lesser'),
      button(t.hold.next, 'hold-next', () => take(chosen)),
    ],
  );
}

/** Which way the part points against the phone on the rail.
 * @param {Context} ctx @param {import('../types.js').PartId} part */
function pointing(ctx, part) {
  const t = ctx.text.level;
  const ways = ctx.engine.catalogue.pointings.map(
    (way) => /** @type {const} */ ([way, h('span', {}, pointingPicture(way), t.pointings[way])]),
  );
  return pick(t.points, 'pointing', ways, ctx.pointings[part] ?? ways[0][0], (way) => {
    ctx.pointings[part] = way;
  });
}

/** @param {Record<string, string>} table @param {string} name */
function of(table, name) {
  return table[name];
}
