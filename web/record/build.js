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

/** Numbers of photos as the record has them: in the order that they were taken.
 * @param {Photo[]} photos @param {number} [from] */
function numbered(photos, from = 0) {
  const ids = new Map(photos.map((p, i) => [p.id, from + i + 1]));
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
 * @param {Context} ctx @returns {Promise<Photo[]>} */
async function picturesOf({ store, job, photosTaken }) {
  const photos = await orNone(store?.photosOf(job.id));
  const ids = new Set(photos.map((p) => p.id));
  return [...photos, ...photosTaken.filter((p) => !ids.has(p.id))];
}

/** @param {Context} ctx */
export async function buildRecord(ctx) {
  const { job } = ctx;
  const [entries, photos] = await Promise.all([entriesOf(ctx), picturesOf(ctx)]);
  const { captures } = ctx;
  const back = clockWentBack(job, captures, entries);
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
    // A page that knows of no gauge reads what has none.
    version: captures.some((c) => c.gauge) ? VERSION : 1,
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
    captures: captures.map((c, i) => captureOf(c, i + 1, photo, endOf(c))),
    entries: entries.map((e) => entryOf(e, photo)),
    checks: checkRows(ctx),
    facts: factRows(ctx).map((f) => withPhoto(f, photo)),
    cautions: text.start.cautions,
    does_not_claim: back ? [...words.claims, words.clockBack] : words.claims,
    photos: await Promise.all(pictures),
  };
  return { ...record, sha256: await checksum(record) };
}

/** Its bytes: the canonical form, so that the same record is the same file.
 * @param {Awaited<ReturnType<typeof buildRecord>>} record */
export const bytesOf = (record) => `${canonical(record)}\n`;
