// The sheets' own module of the core: loaded with this half, and anew when it traps; until its
// successor is there nothing is worked out.

import { loadModule } from '../module.js';

/** @typedef {typeof import('../pkg/plumbmark_sheets.js')} Pkg */
/** @typedef {Awaited<ReturnType<typeof loadModule<Pkg>>>} Module */

/** @param {number} again @returns {Promise<Module>} */
const load = (again) => loadModule('sheets', again);

export class Core {
  #again = 0;
  /** @type {Module | null} */ #module;

  /** @param {Module} module */
  constructor(module) {
    this.#module = module;
  }

  static async load() {
    return new Core(await load(0));
  }

  /**
   * @template T
   * @param {(module: Module) => T} use
   * @returns {T | undefined}
   */
  #call(use) {
    if (!this.#module) return undefined;
    try {
      return use(this.#module);
    } catch (error) {
      if (!(error instanceof WebAssembly.RuntimeError)) throw error;
      this.#rebuild();
      return undefined;
    }
  }

  async #rebuild() {
    this.#module = null;
    this.#again += 1;
    this.#module = await load(this.#again);
  }

  /** What comes of a sheet, in numbers: see `sheet_work`.
   * @param {number} sheet @param {number[]} x @param {number[]} half @param {number[]} limits */
  work(sheet, x, half, limits) {
    return this.#call(({ pkg, give, numbers }) => {
      give(x, half, limits);
      return numbers(pkg.sheet_work(sheet, x.length, limits.length, 0));
    });
  }

  /** What each number given adds to the uncertainty of the result at `output`.
   * @param {number} sheet @param {number[]} x @param {number[]} half @param {number} output */
  parts(sheet, x, half, output) {
    const worked = this.#call(({ pkg, give, numbers }) => {
      give(x, half);
      return numbers(pkg.sheet_work(sheet, x.length, 0, output));
    });
    // Refused numbers have no parts; their refusal was told before.
    return worked?.[0] === 0 ? worked.slice(-x.length) : [];
  }

  /** What has become of a value: the change, its U, and whether it is larger than that; nothing while
   * the core is loaded anew. @param {number[]} before value and U @param {number[]} now */
  moved(before, now) {
    const told = this.#call(({ pkg, give, numbers }) => {
      give(before, now);
      return numbers(pkg.value_moved());
    });
    return told && { by: told[0], u: told[1], shown: told[2] === 1 };
  }

  /** What is wrong with a limit, by its code; nothing where it is fine.
   * @param {Parameters<Pkg['bound_problem']>} line */
  boundProblem(...line) {
    return this.#call(({ pkg }) => pkg.bound_problem(...line));
  }
}
