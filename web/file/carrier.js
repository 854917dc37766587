// The page as one file: everything is inside, no host gives it anything, and a browser may refuse
// to keep anything for it.

import { Store, openStore as openKept } from '../store.js';
import { cores } from './cores.js';
import { forget } from './forgetting.js';
import { memoryDatabase } from './memory.js';

export { filed, filing } from './filing.js';
export { opening } from './opening.js';

/** @param {'phone' | 'sheets' | 'gauge'} name */
export async function freshCore(name) {
  const { glue, bytes } = cores[name];
  const pkg = glue();
  const { memory } = await pkg.default({ module_or_path: bytes() });
  return { pkg, memory };
}

/** Opened again with every change of the job. @type {Map<boolean, IDBDatabase>} */
const passing = new Map();

/** The kept store; where the browser refuses it, one that lasts as long as the page.
 * @param {{ tryout: boolean }} which */
export async function openStore(which) {
  try {
    return await openKept(which);
  } catch {
    forget();
    const database = passing.get(which.tryout) ?? memoryDatabase();
    passing.set(which.tryout, database);
    return new Store(database, which.tryout);
  }
}

/** Words do without the pictures, which would make the file half as large again.
 * @param {string} _id @returns {string | null} */
export const guidePicture = (_id) => null;

/** A file is as old as it is. */
export function keepUpToDate() {}
