// A record that comes in from a file: checked for shape and sum, then taken in whole, or refused by
// name with nothing changed. Verdicts are not believed: they are worked out anew from what was typed
// and captured.

import { checkSet } from '../plan/limit-set.js';
import { words } from '../words/record.js';
import { checksum } from './canonical.js';
import { schema, FORMAT, VERSION } from './schema.js';
import { shaped } from './shape.js';
import { putJob } from './whole-job.js';

/** @typedef {import('../context.js').Context} Context */

/** Photos and all. */
const LARGEST_BYTES = 64 * 1024 * 1024;

/** @param {Blob} file @returns {Promise<any>} */
async function parsed(file) {
  if (file.size > LARGEST_BYTES) throw new Error(words.tooLarge);
  const json = await file.text();
  try {
    return JSON.parse(json);
  } catch {
    throw new Error(words.notJson);
  }
}

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

/** Each number of a photo must be one that is there. @param {any} record */
function photosAreThere(record) {
  const ids = new Set(record.photos.map((/** @type {any} */ p) => p.id));
  if (ids.size !== record.photos.length) throw new Error(words.badPhoto);
  const used = [
    ...record.captures.flatMap((/** @type {any} */ c) => [...c.photos, c.photo]),
    ...record.entries.flatMap((/** @type {any} */ e) => [
      ...e.photos,
      ...Object.values(e.ticks).map((t) => /** @type {any} */ (t).photo),
    ]),
  ];
  if (used.some((id) => id !== null && !ids.has(id))) throw new Error(words.badPhoto);
}

/** What a file holds, and whether its sum is right. An error says what is wrong.
 * @param {Context} ctx @param {Blob} file */
export async function readRecord(ctx, file) {
  const record = await parsed(file);
  if (record?.format !== FORMAT) throw new Error(words.notRecord);
  if (record.version > VERSION) throw new Error(words.newer);
  shaped(schema, record, 'record');
  photosAreThere(record);
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
