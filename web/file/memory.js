// A database that lasts as long as the page: as much of IndexedDB as the store asks for, so that
// the store is the same where a browser refuses the real one.

/** @typedef {{ keyPath?: string | string[], autoIncrement?: boolean }} Shape */

/** As in database.js. @type {Record<string, Shape>} */
const SHAPES = {
  kept: {},
  jobs: { keyPath: 'id', autoIncrement: true },
  entries: { keyPath: ['job_id', 'key'] },
  captures: { keyPath: 'id', autoIncrement: true },
  photos: { keyPath: 'id', autoIncrement: true },
};

/** Numbers below texts, lists place by place. @param {any} a @param {any} b */
function order(a, b) {
  const [left, right] = [[a].flat(), [b].flat()];
  const at = left.findIndex((v, i) => v !== right[i]);
  return at < 0 ? 0 : left[at] < right[at] ? -1 : 1;
}

class Table {
  /** @type {Map<string, { key: any, value: any }>} */ rows = new Map();
  last = 0;
  /** @param {Shape} shape */
  constructor(shape) {
    this.shape = shape;
  }

  /** @param {any} value @param {any} [key] */
  put(value, key) {
    const { keyPath, autoIncrement } = this.shape;
    const own = structuredClone(value);
    if (autoIncrement) {
      own.id ??= this.last + 1;
      this.last = Math.max(this.last, own.id);
    }
    const at = Array.isArray(keyPath) ? keyPath.map((k) => own[k]) : keyPath ? own[keyPath] : key;
    this.rows.set(JSON.stringify(at), { key: at, value: own });
    return at;
  }

  /** @param {any} key */
  get(key) {
    return structuredClone(this.rows.get(JSON.stringify(key))?.value);
  }

  /** @param {any} which a key or a range */
  remove(which) {
    const range = which instanceof IDBKeyRange ? which : IDBKeyRange.only(which);
    for (const [name, { key }] of this.rows) if (range.includes(key)) this.rows.delete(name);
  }

  /** @param {(row: { key: any, value: any }) => boolean} wanted */
  keys(wanted) {
    return [...this.rows.values()].filter(wanted).map(({ key }) => key);
  }

  /** @param {(row: { key: any, value: any }) => boolean} wanted */
  all(wanted) {
    const found = [...this.rows.values()].filter(wanted);
    return found.sort((a, b) => order(a.key, b.key)).map(({ value }) => structuredClone(value));
  }
}

/** Answers each request after the caller has listened; complete when none is left.
 * @param {Record<string, Table>} tables */
function transaction(tables) {
  let left = 0;
  let ended = false;
  const tx = {
    oncomplete: () => {},
    onabort: () => {},
    // The store gives up before it has written anything.
    abort() {
      ended = true;
      tx.onabort();
    },
  };
  /** @param {any} result */
  const request = (result) => {
    const asked = { result, onsuccess: (/** @type {any} */ _event) => {} };
    left += 1;
    queueMicrotask(() => {
      if (ended) return;
      asked.onsuccess({ target: asked });
      left -= 1;
      if (left === 0 && !ended) tx.oncomplete();
    });
    return asked;
  };
  /** @param {string} name */
  const objectStore = (name) => {
    const table = tables[name];
    return {
      /** @param {any} value @param {any} [key] */
      put: (value, key) => request(table.put(value, key)),
      /** @param {any} value */
      add: (value) => request(table.put(value)),
      /** @param {any} key */
      get: (key) => request(table.get(key)),
      /** @param {any} key */
      count: (key) => request(table.get(key) === undefined ? 0 : 1),
      /** @param {any} which a key or a range */
      delete: (which) => request(table.remove(which)),
      /** @param {IDBKeyRange} [range] */
      getAll: (range) => request(table.all(({ key }) => range?.includes(key) ?? true)),
      /** @param {string} field */
      index: (field) => ({
        /** @param {any} wanted */
        getAll: (wanted) => request(table.all(({ value }) => value[field] === wanted)),
        /** @param {any} wanted */
        getAllKeys: (wanted) => request(table.keys(({ value }) => value[field] === wanted)),
      }),
    };
  };
  return Object.assign(tx, { objectStore });
}

/** @returns {IDBDatabase} */
export function memoryDatabase() {
  const tables = Object.fromEntries(
    Object.entries(SHAPES).map(([name, shape]) => [name, new Table(shape)]),
  );
  const database = { transaction: () => transaction(tables), close: () => {} };
  return /** @type {IDBDatabase} */ (/** @type {unknown} */ (database));
}
