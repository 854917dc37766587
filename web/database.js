// The database: its stores, and how one of an earlier version becomes this one.

/** 1: captures. 2: sheets and photos. 3: several jobs. */
const VERSION = 3;

export class StoreError extends Error {
  /** @param {'blocked' | 'full' | 'failed' | 'wrong_store'} code @param {unknown} [cause] */
  constructor(code, cause) {
    super(code, { cause });
    this.code = code;
  }
}

/** @param {DOMException | null} error */
export function storeError(error) {
  if (error?.name === 'QuotaExceededError') return new StoreError('full', error);
  const refused = ['InvalidStateError', 'SecurityError', 'VersionError'].includes(
    error?.name ?? '',
  );
  return new StoreError(refused ? 'blocked' : 'failed', error);
}

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

/** @param {string} name @returns {Promise<IDBDatabase>} */
export function openDatabase(name) {
  return new Promise((resolve, reject) => {
    let request;
    try {
      request = indexedDB.open(name, VERSION);
    } catch (error) {
      return reject(storeError(/** @type {DOMException} */ (error)));
    }
    const opening = request;
    opening.onupgradeneeded = ({ oldVersion }) => {
      const tx = /** @type {IDBTransaction} */ (opening.transaction);
      makeStores(opening.result, tx);
      if (oldVersion > 0) toFirstJob(opening.result, tx);
    };
    opening.onblocked = () => reject(new StoreError('blocked'));
    opening.onerror = () => reject(storeError(opening.error));
    opening.onsuccess = () => {
      const db = opening.result;
      // Another tab brings a newer version: let go at once, so that it can.
      db.onversionchange = () => db.close();
      resolve(db);
    };
  });
}
