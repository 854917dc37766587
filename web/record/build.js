// The record of a job: everything that was measured, how, when and against whose limits; what was
// not checked; photos. One value, the same for the same job, with its own checksum.

import { text } from '../text.js';
import { words } from '../words/record.js';
import { canonical, checksum } from './canonical.js';
import { clockWentBack } from './clock.js';
import { checkRows, factRows } from './rows.js';
import { FORMAT, VERSION } from './schema.js';

/** @typedef {import('../context.js').Context} Context */
/** @typedef {import('../plan/record.js').SheetRecord} SheetRecord */
/** @typedef {import('../types.js').Photo} Photo */
/** @typedef {(id: number | null) => number | null} Numbers of photos, as the record has them */

/** @param {Blob} blob */
async function base64(blob) {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  let letters = '';
  for (const byte of bytes) letters += String.fromCharCode(byte);
  return btoa(letters);
}

/** Those with their bytes; a browser can keep a photo's row and lose what it shows.
 * @template {object} T @param {T[]} all @param {(one: T) => (Blob | null | undefined)[]} blobsOf where
 * the bytes may still be, the first first @returns {Promise<(T & { jpeg_base64: string })[]>} */
async function readable(all, blobsOf) {
  const read = await Promise.all(
    all.map(async (one) => {
      for (const blob of blobsOf(one)) {
        const jpeg_base64 = blob && (await base64(blob).catch(() => ''));
        if (jpeg_base64) return [{ ...one, jpeg_base64 }];
      }
      return [];
    }),
  );
  return read.flat();
}

/** Numbers of photos as the record has them: in the order that they were taken.
 * @param {Photo[]} photos */
function numbered(photos) {
  const ids = new Map(photos.map((p, i) => [p.id, i + 1]));
  return (/** @type {number | null} */ id) => ids.get(id ?? NaN) ?? null;
}

/** @param {number[]} ids @param {Numbers} photo */
const those = (ids, photo) => ids.map(photo).filter((id) => id !== null);

/** What is known by a photo alone says so where the photo has gone with the store.
 * @template {{ photo: number | null, reason: string }} T @param {T} known @param {Numbers} photo */
function withPhoto(known, photo) {
  const number = photo(known.photo);
  const gone = known.photo !== null && number === null;
  const reason = gone ? known.reason || words.photoGone : known.reason;
  return { ...known, reason, photo: number };
}

/** @param {SheetRecord} entry @param {Numbers} photo */
const entryOf = ({ job_id: _, ...entry }, photo) => ({
  ...entry,
  photos: those(entry.photos, photo),
  ticks: Object.fromEntries(
    Object.entries(entry.ticks).map(([id, tick]) => [id, withPhoto(tick, photo)]),
  ),
});

/** @param {import('../types.js').Capture} capture @param {number} id
 * @param {Numbers} photo @param {number | null} end the photo that shows which end is
 *   lower */
function captureOf(capture, id, photo, end) {
  const { job_id: _, tryout: __, photos = [], ...rest } = capture;
  return { ...rest, id, photos: those(photos, photo), photo: end };
}

/** When anything of the job was last changed: a later record of the same job is told by it.
 * @param {string} job @param {SheetRecord[]} entries @param {Photo[]} photos
 * @param {import('../types.js').Capture[]} captures */
const lastChange = (job, entries, photos, captures) =>
  [
    job,
    ...entries.map((e) => e.changed_at),
    ...photos.map((p) => p.at),
    ...captures.flatMap((c) => [c.taken_at, c.overruled?.at ?? '']),
  ]
    .sort()
    .at(-1) ?? job;

/** What the store gives, or nothing where it gives nothing. @template T @param {Promise<T[]> | undefined} asked */
const orNone = async (asked) => {
  try {
    return (await asked) ?? [];
  } catch {
    return [];
  }
};

/** What was typed: as the store has it, and as it is in memory where the store does not.
 * @param {Context} ctx @returns {Promise<SheetRecord[]>} */
async function entriesOf({ store, job, plan }) {
  const entries = await orNone(store?.entries(job.id));
  const all = new Map(entries.map((e) => [e.key, e]));
  for (const kept of /** @type {import('../plan/record.js').Kept[]} */ (plan.kept)) {
    const { record } = kept;
    const missing = record.changed_at !== '' && !all.has(record.key);
    if (kept.unsaved || missing) all.set(record.key, record);
  }
  return [...all.values()].sort((a, b) => (a.key < b.key ? -1 : 1));
}

/** Photos of the job; those of this visit where the store does not have them.
 * @param {Context} ctx */
async function picturesOf({ store, job, photosTaken }) {
  const photos = await orNone(store?.photosOf(job.id));
  const ids = new Set(photos.map((p) => p.id));
  const all = [...photos, ...photosTaken.filter((p) => !ids.has(p.id))];
  return readable(all, ({ id, blob }) => [blob, photosTaken.find((p) => p.id === id)?.blob]);
}

/** The lowest that can hold it: an older page reads what has nothing newer.
 * @param {import('../types.js').Capture[]} captures @param {import('../types.js').Job} job */
const versionOf = (captures, { before }) =>
  before?.stops ? VERSION : captures.some((c) => c.gauge) ? 2 : 1;

/** @param {Context} ctx */
export async function buildRecord(ctx) {
  const { job } = ctx;
  const [entries, photos] = await Promise.all([entriesOf(ctx), picturesOf(ctx)]);
  const { captures } = ctx;
  const back = clockWentBack(job, captures, entries);
  const photo = numbered(photos);
  const ends = await readable(
    captures.flatMap((c, i) => (c.photo ? [{ i, at: c.taken_at, blob: c.photo }] : [])),
    ({ blob }) => [blob],
  );
  const endOf = (/** @type {number} */ i) => {
    const at = ends.findIndex((end) => end.i === i);
    return at < 0 ? null : photos.length + at + 1;
  };
  const pictures = [
    ...photos.map((p) => ({
      id: photo(Number(p.id)),
      sheet: p.sheet,
      about:
        p.sheet === 'capture'
          ? String(captures.findIndex((c) => String(c.id) === p.about) + 1)
          : p.about,
      at: p.at,
      jpeg_base64: p.jpeg_base64,
    })),
    ...ends.map(({ i, at, jpeg_base64 }) => ({
      id: endOf(i),
      sheet: 'lower_end',
      about: String(i + 1),
      at,
      jpeg_base64,
    })),
  ];
  const record = {
    format: FORMAT,
    version: versionOf(captures, job),
    software: ctx.version,
    job: {
      vehicle: job.vehicle,
      heater: job.heater,
      customer: job.customer,
      installer: job.installer,
      created_at: job.created_at,
      changed_at: lastChange(job.changed_at, entries, photos, captures),
      before: job.before ?? null,
      tryout: ctx.tryout,
    },
    limits: job.limits,
    limits_sha256: await checksum(ctx.limits),
    captures: captures.map((c, i) => captureOf(c, i + 1, photo, endOf(i))),
    entries: entries.map((e) => entryOf(e, photo)),
    checks: checkRows(ctx),
    facts: factRows(ctx).map((f) => withPhoto(f, photo)),
    cautions: text.start.cautions,
    does_not_claim: back ? [...words.claims, words.clockBack] : words.claims,
    photos: pictures,
  };
  return { ...record, sha256: await checksum(record) };
}

/** Its bytes: the canonical form, so that the same record is the same file.
 * @param {Awaited<ReturnType<typeof buildRecord>>} record */
export const bytesOf = (record) => `${canonical(record)}\n`;
