// The record of a job: everything that was measured, how, when and against whose limits; what was
// not checked; photos. One value, the same for the same job, with its own checksum.

import { text } from '../text.js';
import { words } from '../words/record.js';
import { canonical, checksum } from './canonical.js';
import { checkRows, factRows } from './rows.js';
import { FORMAT, VERSION } from './schema.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../plan/record.js').SheetRecord} SheetRecord */
/** @typedef {import('../types.js').Photo} Photo */

/** @param {Blob} blob */
async function base64(blob) {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  let letters = '';
  for (const byte of bytes) letters += String.fromCharCode(byte);
  return btoa(letters);
}

/** Numbers of photos as the record has them: in the order that they were taken.
 * @param {Photo[]} photos @param {number} [from] */
function numbered(photos, from = 0) {
  const ids = new Map(photos.map((p, i) => [p.id, from + i + 1]));
  return (/** @type {number} */ id) => ids.get(id) ?? 0;
}

/** @param {SheetRecord} entry @param {(id: number) => number} photo */
const entryOf = ({ job_id: _, ...entry }, photo) => ({
  ...entry,
  photos: entry.photos.map(photo),
  ticks: Object.fromEntries(
    Object.entries(entry.ticks).map(([id, tick]) => [
      id,
      { ...tick, photo: tick.photo === null ? null : photo(tick.photo) },
    ]),
  ),
});

/** @param {import('../types.js').Capture} capture @param {number} id
 * @param {(id: number) => number} photo @param {number | null} end the photo that shows which end is
 *   lower */
function captureOf(capture, id, photo, end) {
  const { job_id: _, tryout: __, photos = [], ...rest } = capture;
  return { ...rest, id, photos: photos.map(photo), photo: end };
}

/** When anything of the job was last changed: a later record of the same job is told by it.
 * @param {Pick<Awaited<ReturnType<typeof keptOf>>, 'entries' | 'photos' | 'captures'>} kept
 * @param {string} job */
const lastChange = ({ entries, photos, captures }, job) =>
  [
    job,
    ...entries.map((e) => e.changed_at),
    ...photos.map((p) => p.at),
    ...captures.flatMap((c) => [c.taken_at, c.overruled?.at ?? '']),
  ]
    .sort()
    .at(-1) ?? job;

/** What is kept of the job that is open, as it is in the store. @param {Context} ctx */
async function keptOf(ctx) {
  const { store, job } = ctx;
  if (!store) throw Object.assign(new Error('blocked'), { code: 'blocked' });
  const [entries, photos] = await Promise.all([store.entries(job.id), store.photosOf(job.id)]);
  return { entries, photos, captures: ctx.captures };
}

/** @param {Context} ctx */
export async function buildRecord(ctx) {
  const { job } = ctx;
  const kept = await keptOf(ctx);
  const { entries, photos, captures } = kept;
  const photo = numbered(photos);
  const ends = captures.filter((c) => c.photo);
  const endOf = (/** @type {import('../types.js').Capture} */ c) =>
    c.photo ? photos.length + ends.indexOf(c) + 1 : null;
  const pictures = [
    ...photos.map(async (p) => ({
      id: photo(Number(p.id)),
      sheet: p.sheet,
      about:
        p.sheet === 'capture'
          ? String(captures.findIndex((c) => String(c.id) === p.about) + 1)
          : p.about,
      at: p.at,
      jpeg_base64: await base64(p.blob),
    })),
    ...ends.map(async (c) => ({
      id: endOf(c),
      sheet: 'lower_end',
      about: String(captures.indexOf(c) + 1),
      at: c.taken_at,
      jpeg_base64: await base64(/** @type {Blob} */ (c.photo)),
    })),
  ];
  const record = {
    format: FORMAT,
    version: VERSION,
    software: ctx.version,
    job: {
      vehicle: job.vehicle,
      heater: job.heater,
      customer: job.customer,
      installer: job.installer,
      created_at: job.created_at,
      changed_at: lastChange(kept, job.changed_at),
      before: job.before ?? null,
      tryout: ctx.tryout,
    },
    limits: job.limits,
    limits_sha256: await checksum(ctx.limits),
    captures: captures.map((c, i) => captureOf(c, i + 1, photo, endOf(c))),
    entries: entries.map((e) => entryOf(e, photo)),
    checks: checkRows(ctx),
    facts: factRows(ctx).map((f) => ({ ...f, photo: f.photo === null ? null : photo(f.photo) })),
    cautions: text.start.cautions,
    does_not_claim: words.claims,
    photos: await Promise.all(pictures),
  };
  return { ...record, sha256: await checksum(record) };
}

/** Its bytes: the canonical form, so that the same record is the same file.
 * @param {Awaited<ReturnType<typeof buildRecord>>} record */
export const bytesOf = (record) => `${canonical(record)}\n`;
