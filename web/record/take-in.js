// A record that comes in from a file: checked for shape and sum, then taken in whole, or refused by
// name with nothing changed. Verdicts are not believed: they are worked out anew from what was typed
// and captured.

import { checkSet } from '../plan/limit-set.js';
import { readJson } from '../json.js';
import { text } from '../text.js';
import { words } from '../words/record.js';
import { checksum } from './canonical.js';
import { schema, FORMAT, VERSION } from './schema.js';
import { shaped } from './shape.js';
import { putJob } from './whole-job.js';

/** @typedef {import('../context.js').Context} Context */

/** Photos and all. */
const LARGEST_BYTES = 64 * 1024 * 1024;

/** @param {Blob} file @returns {Promise<any>} */
const parsed = (file) =>
  readJson(file, LARGEST_BYTES, words).catch((said) => {
    throw new Error(said);
  });

/** @param {string} base64 */
function jpeg(base64) {
  let letters;
  try {
    letters = atob(base64);
  } catch {
    throw new Error(words.badPhoto);
  }
  const bytes = Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
  // A picture's first two bytes; what is behind them is drawn by the browser, or not at all.
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) throw new Error(words.badPhoto);
  return new Blob([bytes], { type: 'image/jpeg' });
}

/** Each number of a photo must be that of one that is there, a lower end's where it shows that.
 * @param {any} record */
function photosAreThere({ photos, captures, entries }) {
  const ends = new Map(photos.map((/** @type {any} */ p) => [p.id, p.sheet === 'lower_end']));
  if (ends.size !== photos.length) throw new Error(words.badPhoto);
  const shown = [
    ...captures.flatMap((/** @type {any} */ c) => c.photos),
    ...entries.flatMap((/** @type {any} */ e) => [
      ...e.photos,
      ...Object.values(e.ticks).map((t) => /** @type {any} */ (t).photo),
    ]),
  ];
  /** @param {any[]} ids @param {boolean} end */
  const all = (ids, end) => ids.every((id) => id === null || ends.get(id) === end);
  const lower = captures.map((/** @type {any} */ c) => c.photo);
  if (!all(shown, false) || !all(lower, true)) throw new Error(words.badPhoto);
}

/** What is kept by its key would be lost to the next of the same. @param {any[]} entries */
function entriesOnce(entries) {
  const keys = new Set();
  for (const [i, { key }] of entries.entries()) {
    if (keys.has(key)) throw new Error(`record.entries[${i}].key: ${text.faults.repeated}`);
    keys.add(key);
  }
}

/** What a file holds, and whether its sum is right. An error says what is wrong.
 * @param {Context} ctx @param {Blob} file */
export async function readRecord(ctx, file) {
  const record = await parsed(file);
  if (record?.format !== FORMAT) throw new Error(words.notRecord);
  if (record.version > VERSION) throw new Error(words.newer);
  shaped(schema, record, 'record');
  photosAreThere(record);
  entriesOnce(record.entries);
  if (record.limits !== null) checkSet(ctx, record.limits);
  const { sha256, ...rest } = record;
  return { record, sound: (await checksum(rest)) === sha256 };
}

/** Takes it in as a job of its own. @param {Context} ctx @param {any} record @returns {Promise<number>}
 * the job's number */
export async function takeIn(ctx, record) {
  const store = ctx.stored();
  const { tryout, ...job } = record.job;
  if (tryout !== ctx.tryout) throw new Error(tryout ? words.tryout : words.notTryout);
  const photos = record.photos.map((/** @type {any} */ { jpeg_base64, ...photo }) => ({
    ...photo,
    blob: jpeg(jpeg_base64),
  }));
  return putJob(store, {
    job: { ...job, limits: record.limits },
    captures: record.captures,
    entries: record.entries,
    photos,
  });
}
