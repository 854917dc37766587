// What is kept: jobs with their limits, captures, entries and photos, in IndexedDB with strict durability. A promise of
// this file resolves when the store says "complete", never before.

import { blankJob, openDatabase, storeError, StoreError } from './database.js';
import lists from './pkg/catalogue.js';

/** The try-out has a database of its own: nothing in it can enter a real job. */
const NAMES = { job: 'plumbmark', tryout: 'plumbmark-tryout' };

/** @type {import('./types.js').Settings} */
export const FIRST_SETTINGS = {
  angle_unit: 'deg',
  system: 'metric',
  sign: 0,
  placements: {},
  persisted: null,
  device: 0,
  in_case: true,
  findings: [],
  // As core assumes while nothing is told.
  vehicle: lists.vehicle,
  levels: [],
  who: '',
  path: 'whole',
  document: '',
  job: 1,
};

export class Store {
  #db;
  /** @param {IDBDatabase} db @param {boolean} tryout */
  constructor(db, tryout) {
    this.#db = db;
    this.tryout = tryout;
  }

  /**
   * @template T
   * @param {'jobs' | 'captures' | 'kept' | 'entries' | 'photos'} name
   * @param {IDBTransactionMode} mode
   * @param {(store: IDBObjectStore) => IDBRequest<T>} act
   * @returns {Promise<T>}
   */
  #run(name, mode, act) {
    return new Promise((resolve, reject) => {
      try {
        const tx = this.#db.transaction(name, mode, { durability: 'strict' });
        const request = act(tx.objectStore(name));
        tx.oncomplete = () => resolve(request.result);
        tx.onabort = () => reject(storeError(tx.error ?? request.error));
        tx.onerror = () => reject(storeError(tx.error ?? request.error));
      } catch (error) {
        reject(storeError(/** @type {DOMException} */ (error)));
      }
    });
  }

  /**
   * @param {import('./types.js').Capture} capture
   * @returns {Promise<import('./types.js').Capture>} with its id
   */
  async saveCapture(capture) {
    if (capture.tryout !== this.tryout) throw new StoreError('wrong_store');
    const id = await this.#run('captures', 'readwrite', (s) => s.add(capture));
    return { ...capture, id: Number(id) };
  }

  /** @param {number} job_id @returns {Promise<import('./types.js').Capture[]>} newest last */
  captures(job_id) {
    return this.#run('captures', 'readonly', (s) => s.index('job_id').getAll(job_id));
  }

  /** A capture that has changed: a photo came to it. @param {import('./types.js').Capture} capture */
  async updateCapture(capture) {
    await this.#run('captures', 'readwrite', (s) => s.put(capture));
  }

  /** What was typed into a sheet of a job. @param {number} job_id @param {string} key
   * @returns {Promise<import('./plan/record.js').SheetRecord | null>} */
  async entry(job_id, key) {
    return (await this.#run('entries', 'readonly', (s) => s.get([job_id, key]))) ?? null;
  }

  /** @param {number} job_id @returns {Promise<import('./plan/record.js').SheetRecord[]>} by key */
  entries(job_id) {
    const all = IDBKeyRange.bound([job_id], [job_id, []]);
    return this.#run('entries', 'readonly', (s) => s.getAll(all));
  }

  /** @param {import('./plan/record.js').SheetRecord} record */
  async saveEntry(record) {
    await this.#run('entries', 'readwrite', (s) => s.put(record));
  }

  /** @param {import('./types.js').Photo} photo @returns {Promise<number>} its id */
  async savePhoto(photo) {
    return Number(await this.#run('photos', 'readwrite', (s) => s.add(photo)));
  }

  /** @param {number[]} ids @returns {Promise<import('./types.js').Photo[]>} */
  async photos(ids) {
    const all = await Promise.all(
      ids.map((id) => this.#run('photos', 'readonly', (s) => s.get(id))),
    );
    return all.filter((photo) => photo !== undefined);
  }

  /** @param {number} job_id @returns {Promise<import('./types.js').Photo[]>} oldest first */
  photosOf(job_id) {
    return this.#run('photos', 'readonly', (s) => s.index('job_id').getAll(job_id));
  }

  /** Puts in a whole job, or nothing of it. Numbers of photos and captures are those of the parts
   * until the store gives its own.
   * @param {{ job: any, captures: any[], entries: any[], photos: any[] }} parts
   * @returns {Promise<number>} the job's number */
  takeIn({ job, captures, entries, photos }) {
    return new Promise((resolve, reject) => {
      const names = ['jobs', 'captures', 'entries', 'photos'];
      const tx = this.#db.transaction(names, 'readwrite', { durability: 'strict' });
      let job_id = 0;
      tx.oncomplete = () => resolve(job_id);
      tx.onabort = () => reject(storeError(tx.error));
      tx.objectStore('jobs').add({ ...blankJob(''), ...job }).onsuccess = (e) => {
        job_id = /** @type {IDBRequest<number>} */ (e.target).result;
        putIn(tx, job_id, { captures, entries, photos, tryout: this.tryout });
      };
    });
  }

  /** @returns {Promise<import('./types.js').Job[]>} all of them, deleted ones too */
  jobs() {
    return this.#run('jobs', 'readonly', (s) => s.getAll());
  }

  /** @param {Partial<import('./types.js').Job>} like what it begins with
   * @returns {Promise<import('./types.js').Job>} with its id */
  async addJob(like) {
    const job = { ...blankJob(new Date().toISOString()), ...like };
    return { ...job, id: Number(await this.#run('jobs', 'readwrite', (s) => s.add(job))) };
  }

  /** Changes a job; two changes at once do not undo each other.
   * @param {number} id @param {Partial<import('./types.js').Job>} patch */
  async saveJob(id, patch) {
    const changed_at = new Date().toISOString();
    await this.#run('jobs', 'readwrite', (s) => {
      const get = s.get(id);
      get.onsuccess = () => s.put({ ...get.result, id, changed_at, ...patch });
      return get;
    });
  }

  /** @returns {Promise<import('./types.js').Settings>} */
  async settings() {
    const kept = await this.#run('kept', 'readonly', (s) => s.get('settings'));
    return { ...FIRST_SETTINGS, ...kept };
  }

  /** @param {Partial<import('./types.js').Settings>} patch */
  async saveSettings(patch) {
    // Read and written in one transaction: two patches at once must not undo each other.
    await this.#run('kept', 'readwrite', (s) => {
      const get = s.get('settings');
      get.onsuccess = () => s.put({ ...FIRST_SETTINGS, ...get.result, ...patch }, 'settings');
      return get;
    });
  }
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

/** @param {{ tryout: boolean }} which */
export async function openStore({ tryout }) {
  return new Store(await openDatabase(tryout ? NAMES.tryout : NAMES.job), tryout);
}

/** Asks the browser not to evict what is kept; its answer, or null where it can't be asked. */
export async function askToKeep() {
  const persist = navigator.storage?.persist?.bind(navigator.storage);
  return persist ? persist().catch(() => false) : null;
}
