// A gauge's lines, read and answered by a module of the core that is loaded with the first of them.

import { openBorder } from '../border.js';
import { loadModule } from '../module.js';
import { readReport } from '../report.js';

/** @typedef {import('../types.js').LimitSet} LimitSet */
/** @typedef {typeof import('../pkg/plumbmark_gauge.js')} Pkg */
/**
 * What a gauge showed of a check, by its own limits; degrees.
 * @typedef {object} Shown
 * @property {number} value NaN for a roll that can't be read
 * @property {number} u
 * @property {import('../types.js').Verdict} verdict
 * @property {string | null} why
 * @property {import('../types.js').Basis} basis
 * @property {number} low NaN where there is none
 * @property {number} high
 */
/**
 * A line that was read.
 * @typedef {object} GaugeLine
 * @property {import('../types.js').Gauge} gauge
 * @property {Shown[]} shown in the order of the report's checks
 * @property {import('../types.js').Report} report by the job's limits
 */

/** @param {number} number */
const eightDigits = (number) => number.toString(16).toUpperCase().padStart(8, '0');

export class GaugeLines {
  #module;
  #border;
  /** @type {LimitSet | null} */ #limits = null;

  /** @param {Awaited<ReturnType<typeof loadModule<Pkg>>>} module */
  constructor(module) {
    this.#module = module;
    // It has the phone's calls for limits and refusals, by the same names.
    this.#border = openBorder(/** @type {any} */ (module));
  }

  static async load() {
    return new GaugeLines(await /** @type {typeof loadModule<Pkg>} */ (loadModule)('gauge', 0));
  }

  /** The limits that lines are answered by. @param {LimitSet} limits */
  useLimits(limits) {
    this.#border.checkLimits(limits);
    this.#limits = limits;
  }

  /** What a line says, or the name of what is wrong with it. @param {string} words
   * @returns {GaugeLine | string} */
  read(words) {
    const { pkg, give, numbers } = this.#module;
    const letters = new TextEncoder().encode(words);
    give(letters.subarray(0, pkg.numbers_room()));
    const count = pkg.read_line(letters.length);
    return count < 0 ? this.#border.refusalName(count) : this.#told(numbers(count));
  }

  /** In the order that wasm's gauge.rs writes. @param {Float64Array} numbers @returns {GaugeLine} */
  #told(numbers) {
    const { catalogue } = this.#border;
    let at = 0;
    const next = () => numbers[at++];
    /** @template T @param {() => T} item @returns {T[]} */
    const list = (item) => Array.from({ length: next() }, item);
    const [number, count, crc] = [next(), next(), next()];
    const software = String.fromCharCode(...list(next));
    const shown = list(() => ({
      value: next() / 100,
      u: next() / 100,
      verdict: catalogue.verdicts[next()],
      why: catalogue.whys[next()],
      basis: catalogue.bases[next()],
      low: next(),
      high: next(),
    }));
    const gauge = { number: eightDigits(number), count, software, crc: eightDigits(crc) };
    const rest = numbers.subarray(at);
    return { gauge, shown, report: readReport(rest, catalogue, this.#limits?.lines ?? []) };
  }
}
