// A whole job at once: put in, measured, removed for good. All of it, or nothing.

import { blankJob } from '../database.js';

/** @typedef {import('../store.js').Store} Store */

/** Every store that holds something of a job. @type {import('../store.js').Name[]} */
const ALL = ['jobs', 'captures', 'entries', 'photos'];

/** Puts in a job. Numbers of photos and captures are those of the parts until the store gives its
 * own.
 * @param {Store} store
 * @param {{ job: any, captures: any[], entries: any[], photos: any[] }} parts
 * @returns {Promise<number>} the job's number */
export async function putJob(store, { job, captures, entries, photos }) {
  let job_id = 0;
  await store.transact(ALL, 'readwrite', (tx) => {
    tx.objectStore('jobs').add({ ...blankJob(''), ...job }).onsuccess = (e) => {
      job_id = /** @type {IDBRequest<number>} */ (e.target).result;
      putIn(tx, job_id, { captures, entries, photos, tryout: store.tryout });
    };
  });
  return job_id;
}

/** Captures first, since photos are of them; then photos, since entries name them.
 * @param {IDBTransaction} tx @param {number} job_id
 * @param {{ captures: any[], entries: any[], photos: any[], tryout: boolean }} parts */
function putIn(tx, job_id, { captures, entries, photos, tryout }) {
  const [photoStore, captureStore] = [tx.objectStore('photos'), tx.objectStore('captures')];
  /** @type {Map<number, number>} */ const photoIds = new Map();
  const photo = (/** @type {number | null} */ id) => (id === null ? null : photoIds.get(id));
  const kept = photos.filter((p) => p.sheet !== 'lower_end');
  const blobOf = (/** @type {number | null} */ id) => photos.find((p) => p.id === id)?.blob ?? null;
  let left = kept.length;
  const rest = () => {
    for (const { id: _, ...capture } of captures) {
      const own = { ...capture, job_id, tryout, photo: blobOf(capture.photo) };
      const add = captureStore.add({ ...own, photos: capture.photos.map(photo) });
      add.onsuccess = () => {
        for (const id of capture.photos) {
          const { blob, at } = kept.find((p) => p.id === id);
          const mine = { job_id, sheet: 'capture', about: String(add.result), at, blob };
          photoStore.put({ ...mine, id: photo(id) });
        }
      };
    }
    for (const entry of entries)
      tx.objectStore('entries').put({
        ...entry,
        job_id,
        photos: entry.photos.map(photo),
        ticks: Object.fromEntries(
          Object.entries(entry.ticks).map(([id, tick]) => [
            id,
            { .../** @type {any} */ (tick), photo: photo(/** @type {any} */ (tick).photo) },
          ]),
        ),
      });
  };
  if (left === 0) rest();
  for (const { id, ...own } of kept)
    photoStore.add({ ...own, job_id }).onsuccess = (e) => {
      photoIds.set(id, /** @type {IDBRequest<number>} */ (e.target).result);
      left -= 1;
      if (left === 0) rest();
    };
}

/** Removes a job with its captures, numbers and photos. @param {Store} store @param {number} id */
export async function removeJob(store, id) {
  await store.transact(ALL, 'readwrite', (tx) => {
    tx.objectStore('jobs').delete(id);
    tx.objectStore('entries').delete(IDBKeyRange.bound([id], [id, []]));
    for (const name of ['captures', 'photos']) {
      const keys = tx.objectStore(name).index('job_id').getAllKeys(id);
      keys.onsuccess = () => {
        for (const key of keys.result) tx.objectStore(name).delete(key);
      };
    }
  });
}

/** What a job holds, and roughly how much room it takes. @param {Store} store @param {number} id */
export async function contentOf(store, id) {
  const [captures, entries, photos] = await Promise.all([
    store.captures(id),
    store.entries(id),
    store.photosOf(id),
  ]);
  const blobs = [...captures.map((c) => c.photo), ...photos.map((p) => p.blob)];
  const bytes = blobs.reduce((sum, blob) => sum + (blob?.size ?? 0), 0);
  return {
    captures: captures.length,
    entries: entries.length,
    photos: blobs.filter(Boolean).length,
    bytes: bytes + JSON.stringify([captures, entries]).length,
  };
}
