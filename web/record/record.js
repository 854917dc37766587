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
import { paper } from './paper.js';
import { pictures } from './pictures.js';
import { signatureField } from './signature.js';

/** @typedef {import('../context.js').Context} Context */

/** A file's name without what file systems dislike. @param {Context} ctx
 * @param {Awaited<ReturnType<typeof buildRecord>>} record @param {string} end */
export function fileName(ctx, { job }, end) {
  const name = nameOf(ctx.job)
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 40);
  return `${name}-${day(job.changed_at)}.${end}`;
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
  const summary = ctx.text.parts.summary(count(itemsOf(ctx)));
  const sheet = h('div', {});
  const lay = (/** @type {Awaited<ReturnType<typeof buildRecord>>} */ r) =>
    sheet.replaceChildren(paper(ctx, r, pictures(ctx), summary));
  withRecord(lay);
  const onPaper = () =>
    withRecord((r) => {
      lay(r);
      print();
    });
  const json = () =>
    withRecord((r) => handOut(fileName(ctx, r, 'json'), 'application/json', bytesOf(r)));
  const table = () => withRecord((r) => handOut(fileName(ctx, r, 'csv'), 'text/csv', csvOf(r)));
  return frame(
    ctx,
    'record',
    words.title,
    [
      h('p', { class: 'summary' }, summary),
      ...words.claims.slice(0, 2).map((c) => h('p', { class: 'source' }, c)),
      trouble,
      h('p', {}, `${words.sum}: `, sum),
      h('p', { class: 'source' }, words.claims[4]),
      h('h2', {}, words.sign.title),
      signatureField(ctx, 'installer'),
      signatureField(ctx, 'customer'),
      button(words.print, 'record-print', onPaper, 'row'),
      button(words.table, 'record-csv', table, 'row'),
      sheet,
    ],
    [button(words.handOver, 'record-json', json)],
  );
}
