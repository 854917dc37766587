// What is kept: jobs with their limits, captures, entries and photos, in IndexedDB with strict durability. A promise of
// this file resolves when the store says "complete", never before.

import { blankJob, openDatabase, storeError, StoreError } from './database.js';
import { system } from './locale.js';
import lists from './pkg/catalogue.js';

/** The try-out has a database of its own: nothing in it can enter a real job. */
const NAMES = { job: 'plumbmark', tryout: 'plumbmark-tryout' };

/** @type {import('./types.js').Settings} */
export const FIRST_SETTINGS = {
  angle_unit: 'deg',
  hand: 'right',
  system,
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

/** @typedef {'jobs' | 'captures' | 'kept' | 'entries' | 'photos'} Name */
/** @typedef {import('./database.js').StoreCode} StoreCode */

export class Store {
  #db;
  /** Why it is closed, once it is. @type {StoreCode | null} */ lost = null;
  /** Another tab writes to the job that is open here. */ elsewhere = false;
  /** Called when it closes under the page. @type {(code: StoreCode) => void} */ onLost = () => {};
  /** Called when another tab wants it for a newer version: the last moment to write. */
  onLeave = () => {};

  /** @param {IDBDatabase} db @param {boolean} tryout */
  constructor(db, tryout) {
    this.#db = db;
    this.tryout = tryout;
    db.onversionchange = ({ newVersion }) => {
      this.onLeave();
      db.close();
      this.#lose(newVersion === null ? 'evicted' : 'newer');
    };
    // Thrown away, or the disk failed: this event is the only word of it.
    db.onclose = () => this.#lose('evicted');
  }

  /** @param {StoreCode} code */
  #lose(code) {
    this.lost = code;
    this.onLost(code);
  }

  /** Lets go of it. */
  close() {
    this.#db.close();
  }

  /**
   * @template T
   * @param {Name | Name[]} names @param {IDBTransactionMode} mode
   * @param {(tx: IDBTransaction, refuse: (why: StoreError) => void) => T} act
   * @returns {Promise<T>} what `act` gave, once the store says "complete"
   */
  transact(names, mode, act) {
    return new Promise((resolve, reject) => {
      if (this.lost) return reject(new StoreError(this.lost));
      try {
        const tx = this.#db.transaction(names, mode, { durability: 'strict' });
        /** @type {StoreError | null} */ let own = null;
        const given = act(tx, (why) => {
          own = why;
          tx.abort();
        });
        tx.oncomplete = () => resolve(given);
        tx.onabort = () =>
          reject(own ?? (this.lost ? new StoreError(this.lost) : storeError(tx.error)));
      } catch (error) {
        reject(storeError(/** @type {DOMException} */ (error)));
      }
    });
  }

  /**
   * @template T @param {Name} name @param {IDBTransactionMode} mode
   * @param {(store: IDBObjectStore) => IDBRequest<T>} act @returns {Promise<T>}
   */
  async #run(name, mode, act) {
    return (await this.transact(name, mode, (tx) => act(tx.objectStore(name)))).result;
  }

  /** Writes what belongs to a job, where the job is there and no other tab's.
   * @param {Name[]} names @param {number} job_id @param {(tx: IDBTransaction) => void} act */
  async #ofJob(names, job_id, act) {
    if (this.elsewhere) throw new StoreError('elsewhere');
    await this.transact(['jobs', ...names], 'readwrite', (tx, refuse) => {
      const count = tx.objectStore('jobs').count(job_id);
      count.onsuccess = () => {
        if (!count.result) return refuse(new StoreError('gone'));
        try {
          act(tx);
        } catch (error) {
          refuse(storeError(/** @type {DOMException} */ (error)));
        }
      };
    });
  }

  /**
   * @param {import('./types.js').Capture} capture
   * @returns {Promise<import('./types.js').Capture>} with its id
   */
  async saveCapture(capture) {
    if (capture.tryout !== this.tryout) throw new StoreError('wrong_store');
    /** @type {IDBRequest<IDBValidKey> | undefined} */ let added;
    await this.#ofJob(['captures'], capture.job_id, (tx) => {
      added = tx.objectStore('captures').add(capture);
    });
    return { ...capture, id: Number(added?.result) };
  }

  /** @param {number} job_id @returns {Promise<import('./types.js').Capture[]>} newest last */
  captures(job_id) {
    return this.#run('captures', 'readonly', (s) => s.index('job_id').getAll(job_id));
  }

  /** A capture that has changed: a photo came to it. @param {import('./types.js').Capture} capture */
  async updateCapture(capture) {
    // One that was never taken would come in twice.
    if (capture.id === undefined) throw new StoreError('failed');
    await this.#ofJob(['captures'], capture.job_id, (tx) =>
      tx.objectStore('captures').put(capture),
    );
  }

  /** What was typed into the sheets of a job. @param {number} job_id @returns {Promise<import('./plan/record.js').SheetRecord[]>} by key */
  entries(job_id) {
    const all = IDBKeyRange.bound([job_id], [job_id, []]);
    return this.#run('entries', 'readonly', (s) => s.getAll(all));
  }

  /** @param {import('./plan/record.js').SheetRecord} record */
  async saveEntry(record) {
    // As it is now: the store looks for its job first.
    const now = structuredClone(record);
    await this.#ofJob(['entries'], record.job_id, (tx) => tx.objectStore('entries').put(now));
  }

  /** A photo and what it belongs to: both, or neither.
   * @param {import('./types.js').Photo} photo @param {'entries' | 'captures'} name
   * @param {(id: number) => object} withPhoto what it belongs to, as it is with the photo
   * @returns {Promise<number>} the photo's id */
  async savePhoto(photo, name, withPhoto) {
    let id = 0;
    await this.#ofJob(['photos', name], photo.job_id, (tx) => {
      tx.objectStore('photos').add(photo).onsuccess = (e) => {
        id = /** @type {IDBRequest<number>} */ (e.target).result;
        tx.objectStore(name).put(withPhoto(id));
      };
    });
    return id;
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
    await this.#ofJob([], id, (tx) => {
      const jobs = tx.objectStore('jobs');
      const get = jobs.get(id);
      get.onsuccess = () => jobs.put({ ...get.result, changed_at, ...patch });
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

/** @param {{ tryout: boolean }} which */
export async function openStore({ tryout }) {
  return new Store(await openDatabase(tryout ? NAMES.tryout : NAMES.job), tryout);
}

/** Asks the browser not to evict what is kept; its answer, or null where it can't be asked. */
export async function askToKeep() {
  const { storage } = navigator;
  if (!storage?.persist) return null;
  return storage
    .persisted()
    .then((kept) => kept || storage.persist())
    .catch(() => false);
}
