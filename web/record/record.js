// The record: what it holds, its checksum, and the ways to hand it over.

import { button, h, say } from '../dom.js';
import { handOut } from '../exchange.js';
import { frame } from '../screens/frame.js';
import { count } from '../screens/standing.js';
import { itemsOf } from '../plan/state.js';
import { day } from '../units.js';
import { words } from '../words/record.js';
import { buildRecord, bytesOf } from './build.js';
import { short } from './canonical.js';
import { csvOf } from './csv.js';
import { nameOf } from './jobs.js';

/** @typedef {import('../context.js').Context} Context */

/** A file's name without what file systems dislike. @param {Context} ctx @param {string} end */
function fileName(ctx, end) {
  const name = nameOf(ctx.job)
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 40);
  return `${name}-${day(ctx.job.changed_at)}.${end}`;
}

/** @param {Context} ctx */
export function record(ctx) {
  const sum = h('code', { class: 'sum', 'data-name': 'sha256' });
  const trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
  /** @param {(record: Awaited<ReturnType<typeof buildRecord>>) => void} use */
  const withRecord = async (use) => {
    try {
      trouble.hidden = true;
      const built = await buildRecord(ctx);
      say(sum, short(built.sha256));
      use(built);
    } catch (error) {
      trouble.textContent = ctx.storeWords(error);
      trouble.hidden = false;
    }
  };
  withRecord(() => {});
  const json = () =>
    withRecord((r) => handOut(fileName(ctx, 'json'), 'application/json', bytesOf(r)));
  const table = () => withRecord((r) => handOut(fileName(ctx, 'csv'), 'text/csv', csvOf(r)));
  return frame(
    ctx,
    'record',
    words.title,
    [
      h('p', { class: 'summary' }, ctx.text.parts.summary(count(itemsOf(ctx)))),
      ...words.claims.slice(0, 2).map((c) => h('p', { class: 'source' }, c)),
      trouble,
      h('p', {}, `${words.sum}: `, sum),
      h('p', { class: 'source' }, words.claims[4]),
      button(words.table, 'record-csv', table, 'row'),
    ],
    [button(words.handOver, 'record-json', json)],
  );
}
