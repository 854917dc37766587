// What is kept: captures, limit set, settings, in IndexedDB with strict durability. A promise of
// this file resolves when the store says "complete", never before.

import lists from './pkg/catalogue.js';

const VERSION = 2;
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
};

export class StoreError extends Error {
  /** @param {'blocked' | 'full' | 'failed' | 'wrong_store'} code @param {unknown} [cause] */
  constructor(code, cause) {
    super(code, { cause });
    this.code = code;
  }
}

/** @param {DOMException | null} error */
function storeError(error) {
  if (error?.name === 'QuotaExceededError') return new StoreError('full', error);
  const refused = ['InvalidStateError', 'SecurityError', 'VersionError'].includes(
    error?.name ?? '',
  );
  return new StoreError(refused ? 'blocked' : 'failed', error);
}

/** @param {string} name @returns {Promise<IDBDatabase>} */
function openDatabase(name) {
  return new Promise((resolve, reject) => {
    let request;
    try {
      request = indexedDB.open(name, VERSION);
    } catch (error) {
      return reject(storeError(/** @type {DOMException} */ (error)));
    }
    request.onupgradeneeded = () => {
      const db = request.result;
      // A database of an earlier version keeps what it has.
      const make = (/** @type {string} */ name, /** @type {IDBObjectStoreParameters} */ key) => {
        if (!db.objectStoreNames.contains(name)) db.createObjectStore(name, key);
      };
      make('captures', { keyPath: 'id', autoIncrement: true });
      make('kept', {});
      make('sheets', { keyPath: 'key' });
      make('photos', { keyPath: 'id', autoIncrement: true });
    };
    request.onblocked = () => reject(new StoreError('blocked'));
    request.onerror = () => reject(storeError(request.error));
    request.onsuccess = () => {
      const db = request.result;
      // Another tab brings a newer version: let go at once, so that it can.
      db.onversionchange = () => db.close();
      resolve(db);
    };
  });
}

export class Store {
  #db;
  /** @param {IDBDatabase} db @param {boolean} tryout */
  constructor(db, tryout) {
    this.#db = db;
    this.tryout = tryout;
  }

  /**
   * @template T
   * @param {'captures' | 'kept' | 'sheets' | 'photos'} name
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

  /** @returns {Promise<import('./types.js').Capture[]>} newest last */
  captures() {
    return this.#run('captures', 'readonly', (s) => s.getAll());
  }

  /** A capture that has changed: a photo came to it. @param {import('./types.js').Capture} capture */
  async updateCapture(capture) {
    await this.#run('captures', 'readwrite', (s) => s.put(capture));
  }

  /** What was typed into a sheet. @param {string} key
   * @returns {Promise<import('./plan/record.js').SheetRecord | null>} */
  async sheet(key) {
    return (await this.#run('sheets', 'readonly', (s) => s.get(key))) ?? null;
  }

  /** @param {import('./plan/record.js').SheetRecord} record */
  async saveSheet(record) {
    await this.#run('sheets', 'readwrite', (s) => s.put(record));
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

  /** @returns {Promise<import('./types.js').LimitSet | null>} */
  async limits() {
    return (await this.#run('kept', 'readonly', (s) => s.get('limits'))) ?? null;
  }

  /** @param {import('./types.js').LimitSet} set */
  async saveLimits(set) {
    await this.#run('kept', 'readwrite', (s) => s.put(set, 'limits'));
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
  const persist = navigator.storage?.persist?.bind(navigator.storage);
  return persist ? persist().catch(() => false) : null;
}
