// One of the core's modules, loaded, and numbers on their way to it and back.

import { freshCore } from './carrier.js';

/**
 * What every module of the core has.
 * @typedef {object} Pkg
 * @property {() => void} start
 * @property {() => number} given_at
 * @property {() => number} numbers_at
 * @property {() => number} numbers_room
 */

/**
 * @template {Pkg} P
 * @param {'phone' | 'sheets' | 'gauge'} name
 * @param {number} again how many times it was loaded before
 */
export async function loadModule(name, again) {
  const fresh = await freshCore(name, again);
  const { memory } = fresh;
  const pkg = /** @type {P} */ (fresh.pkg);
  pkg.start();
  return {
    pkg,
    /** Lays numbers where the next call finds them, list behind list.
     * @param {ArrayLike<number>[]} lists */
    give(...lists) {
      const room = new Float64Array(memory.buffer, pkg.given_at(), pkg.numbers_room());
      let at = 0;
      for (const list of lists) {
        room.set(list, at);
        at += list.length;
      }
    },
    /** Numbers that a call left behind. @param {number} count */
    numbers: (count) => new Float64Array(memory.buffer, pkg.numbers_at(), count).slice(),
  };
}
