// The record: what it holds, its checksum, and the ways to hand it over.

import { button, h, say } from '../dom.js';
import { handOut } from '../exchange.js';
import { frame } from '../screens/frame.js';
import { count } from '../screens/standing.js';
import { itemsOf } from '../plan/state.js';
import { words } from '../words/record.js';
import { buildRecord } from './build.js';
import { short } from './canonical.js';
import { csvOf } from './csv.js';
import { fileName, handOver } from './hand-over.js';
import { paper } from './paper.js';
import { pictures } from './pictures.js';
import { signatureField } from './signature.js';

/** @typedef {import('../context.js').Context} Context */

/** What is signed for with all the rest: what is beyond, and where the work was stopped.
 * @param {import('../plan/state.js').Item[]} items */
function signedFor(items) {
  const stops = items.filter((i) => i.state === 'stopped');
  const beyond = items.filter((i) => i.state === 'beyond');
  return [
    stops.length ? h('h2', {}, words.paper.stops) : null,
    ...stops.map((i) => h('p', {}, h('b', {}, i.title), ` ${i.mark?.reason ?? ''}`)),
    beyond.length ? h('h2', {}, words.paper.beyond) : null,
    beyond.length
      ? h('ul', { class: 'beyond-list' }, ...beyond.map((i) => h('li', {}, i.title)))
      : null,
  ];
}

/** @param {Context} ctx */
export function record(ctx) {
  const sum = h('code', { class: 'sum', 'data-name': 'sha256' });
  const trouble = h('p', { class: 'trouble', role: 'alert', hidden: true });
  /** @param {(record: Awaited<ReturnType<typeof buildRecord>>) => void} use
   * @param {typeof buildRecord} [build] */
  const withRecord = async (use, build = buildRecord) => {
    try {
      trouble.hidden = true;
      const built = await build(ctx);
      say(sum, short(built.sha256));
      use(built);
    } catch (error) {
      trouble.textContent = ctx.storeWords(error);
      trouble.hidden = false;
    }
  };
  const items = itemsOf(ctx);
  const summary = ctx.text.parts.summary(count(items));
  const sheet = h('div', {});
  const lay = (/** @type {Awaited<ReturnType<typeof buildRecord>>} */ r) =>
    sheet.replaceChildren(paper(ctx, r, pictures(ctx), summary));
  withRecord(lay);
  const onPaper = () =>
    withRecord((r) => {
      lay(r);
      print();
    });
  const json = () => withRecord(lay, handOver);
  const table = () => withRecord((r) => handOut(fileName(r, 'csv'), 'text/csv', csvOf(r)));
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
      ...signedFor(items),
      h('h2', {}, words.sign.title),
      // The browser prints by its own menu too: paper and checksum are those of what is signed.
      ...['installer', 'customer'].map((who) =>
        signatureField(ctx, /** @type {'installer' | 'customer'} */ (who), () => withRecord(lay)),
      ),
      button(words.print, 'record-print', onPaper, 'row'),
      button(words.table, 'record-csv', table, 'row'),
      sheet,
    ],
    [button(words.handOver, 'record-json', json)],
  );
}
