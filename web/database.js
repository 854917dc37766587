// The database: its stores, and how one of an earlier version becomes this one.

/** 1: captures. 2: sheets and photos. 3: several jobs. */
const VERSION = 3;

/** How long another tab may take to let go of an earlier version, ms. */
const PATIENCE_MS = 1500;

/**
 * Why nothing is kept: the browser allows no store; there is no room; it could not be written; a
 * try-out's capture for a real job; a tab with an earlier version holds the store; the store is of
 * a newer version; the browser threw it away or closed it; the job is another tab's; the job is
 * not there any more; a part of the page itself is missing.
 * @typedef {'blocked' | 'full' | 'failed' | 'wrong_store' | 'older_tab' | 'newer' | 'evicted'
 *   | 'elsewhere' | 'gone' | 'unloaded'} StoreCode
 */

export class StoreError extends Error {
  /** @param {StoreCode} code @param {unknown} [cause] */
  constructor(code, cause) {
    super(code, { cause });
    this.code = code;
  }
}

/** @type {Record<string, StoreCode>} */
const CODES = {
  QuotaExceededError: 'full',
  SecurityError: 'blocked',
  InvalidStateError: 'blocked',
  VersionError: 'newer',
};

/** @param {DOMException | null} error */
export const storeError = (error) => new StoreError(CODES[error?.name ?? ''] ?? 'failed', error);

/** A job of which nothing is known yet. @param {string} created_at ISO 8601
 * @returns {Omit<import('./types.js').Job, 'id'>} */
export const blankJob = (created_at) => ({
  vehicle: '',
  heater: '',
  customer: '',
  installer: '',
  limits: null,
  created_at,
  changed_at: created_at,
  archived_at: null,
  deleted_at: null,
  before: null,
});

/** Makes what is not there; what is there stays. @param {IDBDatabase} db @param {IDBTransaction} tx */
function makeStores(db, tx) {
  const store = (/** @type {string} */ name, /** @type {IDBObjectStoreParameters} */ key) =>
    db.objectStoreNames.contains(name) ? tx.objectStore(name) : db.createObjectStore(name, key);
  const ofJob = (/** @type {IDBObjectStore} */ made) => made.createIndex('job_id', 'job_id');
  store('kept', {});
  store('jobs', { keyPath: 'id', autoIncrement: true }).put(blankJob(new Date().toISOString()));
  store('entries', { keyPath: ['job_id', 'key'] });
  ofJob(store('captures', { keyPath: 'id', autoIncrement: true }));
  ofJob(store('photos', { keyPath: 'id', autoIncrement: true }));
}

/** Everything before jobs belongs to the first one. @param {IDBDatabase} db @param {IDBTransaction} tx */
function toFirstJob(db, tx) {
  const job_id = 1;
  const kept = tx.objectStore('kept');
  kept.get('limits').onsuccess = (e) => {
    const limits = /** @type {IDBRequest} */ (e.target).result ?? null;
    const jobs = tx.objectStore('jobs');
    jobs.get(job_id).onsuccess = (found) =>
      jobs.put({ .../** @type {IDBRequest} */ (found.target).result, limits });
    kept.delete('limits');
  };
  tx.objectStore('photos').openCursor().onsuccess = (e) => {
    const cursor = /** @type {IDBRequest<IDBCursorWithValue | null>} */ (e.target).result;
    if (!cursor) return;
    cursor.update({ ...cursor.value, job_id });
    cursor.continue();
  };
  if (!db.objectStoreNames.contains('sheets')) return;
  tx.objectStore('sheets').getAll().onsuccess = (e) => {
    for (const sheet of /** @type {IDBRequest} */ (e.target).result)
      tx.objectStore('entries').put({ ...sheet, job_id });
    db.deleteObjectStore('sheets');
  };
}

/** Whether another tab's earlier version is waited for. */
let waiting = false;

/** @param {string} name @returns {Promise<IDBDatabase>} */
export function openDatabase(name) {
  return new Promise((resolve, reject) => {
    let opening;
    try {
      opening = indexedDB.open(name, VERSION);
    } catch (error) {
      // No store at all: a private window, or it is switched off.
      return reject(new StoreError('blocked', error));
    }
    const request = opening;
    let late = false;
    // A tab that lets go in time is none that is in the way.
    const wait = () =>
      setTimeout(() => {
        late = true;
        reject(new StoreError('older_tab'));
      }, PATIENCE_MS);
    // One that waits already is told; one behind it hears nothing.
    if (waiting) wait();
    request.onupgradeneeded = ({ oldVersion }) => {
      const tx = /** @type {IDBTransaction} */ (request.transaction);
      makeStores(request.result, tx);
      if (oldVersion > 0) toFirstJob(request.result, tx);
    };
    request.onblocked = () => {
      waiting = true;
      wait();
    };
    request.onerror = () => {
      waiting = false;
      reject(storeError(request.error));
    };
    request.onsuccess = () => {
      waiting = false;
      if (late) request.result.close();
      else resolve(request.result);
    };
  });
}
