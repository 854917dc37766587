// Names on the page, places in the core's lists across the border: the only file that knows both.
// It looks up and passes on; it decides nothing.

import lists from './pkg/catalogue.js';
import { text } from './text.js';

/** @typedef {typeof import('./pkg/plumbmark_wasm.js')} Pkg */
/** @typedef {import('./types.js').LimitSet} LimitSet */
/** @typedef {import('./types.js').Catalogue} Catalogue */
/** @typedef {import('./types.js').VehicleTerms} VehicleTerms */

const LIMIT_FIELDS = ['format', 'version', 'name', 'lines', 'surfaces', 'bounds'];
const SURFACE_FIELDS = ['surface', 'hold_deg', 'align_deg'];
const LINE_NUMBERS = [
  'low_deg',
  'high_deg',
  'preferred_low_deg',
  'preferred_high_deg',
  'allowance_deg',
  'length_mm',
];
const LINE_FLAGS = ['at_limit_allowed', 'holds_in_operation'];
const LINE_FIELDS = ['check', 'basis', 'source', ...LINE_FLAGS, ...LINE_NUMBERS];

/**
 * @param {readonly string[]} list
 * @param {unknown} name
 * @param {string} field
 */
function code(list, name, field) {
  const found = list.indexOf(/** @type {string} */ (name));
  if (found < 0) throw new Error(`${field}: "${String(name).slice(0, 40)}" is not known`);
  return found;
}

/**
 * @param {unknown} value
 * @param {readonly string[]} fields
 * @param {string} where
 * @returns {any}
 */
function shaped(value, fields, where) {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new Error(`${where || 'file.'}object: an object is expected`);
  for (const field of Object.keys(value))
    if (!fields.includes(field)) throw new Error(`${where}${field}: this field is not known`);
  return value;
}

/**
 * Core names what is wrong with a limit set, the page has the words: "line.field: what to do".
 * @template T @param {() => T} call @returns {T}
 */
function inWords(call) {
  try {
    return call();
  } catch (error) {
    const { line, field, problem, low, high } = /** @type {any} */ (error);
    const words = text.limits.problems[problem];
    throw words ? new Error(`${line ? `${line}.` : ''}${field}: ${words(low, high)}`) : error;
  }
}

/** Core counts in 32 bits: 17.3 comes back as 17.299999. Seven digits are what was typed.
 * @param {LimitSet} set @returns {LimitSet} */
function asTyped(set) {
  /** @template T @param {T[]} rows @returns {T[]} */
  const tidy = (rows) =>
    rows.map((row) => {
      const cells = Object.entries(/** @type {object} */ (row));
      const typed = cells.map(([k, v]) => [
        k,
        typeof v === 'number' ? Number(v.toPrecision(7)) : v,
      ]);
      return Object.fromEntries(typed);
    });
  return { ...set, lines: tidy(set.lines), surfaces: tidy(set.surfaces) };
}

/**
 * The core behind one loaded module, by names.
 * @param {Pkg} pkg
 */
export function openBorder(pkg) {
  const catalogue = /** @type {Catalogue} */ (/** @type {unknown} */ (lists));
  const parts = catalogue.parts.map((p) => p.id);
  const checks = catalogue.checks.map((c) => c.id);

  /** @param {any} set */
  function toLimits(set) {
    shaped(set, LIMIT_FIELDS, '');
    if (set.format !== 'plumbmark-limits') throw new Error('format: this is not a limit set');
    if (set.version !== 1)
      throw new Error('version: this limit set was written by another version');
    if (typeof set.name !== 'string') throw new Error('name: text is expected');
    if (!Array.isArray(set.lines)) throw new Error('lines: a list is expected');
    const limits = inWords(() => new pkg.Limits(set.name));
    try {
      for (const line of set.lines) addLine(limits, line);
      addSurfaces(limits, set.surfaces ?? []);
      return limits;
    } catch (error) {
      limits.free();
      throw error;
    }
  }

  /**
   * @param {import('./pkg/plumbmark_wasm.js').Limits} limits
   * @param {unknown} items
   */
  function addSurfaces(limits, items) {
    if (!Array.isArray(items)) throw new Error('surfaces: a list is expected');
    const seen = new Set();
    for (const item of items) {
      const { surface, hold_deg, align_deg } = shaped(item, SURFACE_FIELDS, 'surfaces.');
      const place = code(catalogue.surfaces, surface, 'surfaces.surface');
      if (seen.has(place)) throw new Error(`${surface}.surface: there are two of it; keep one`);
      seen.add(place);
      if (typeof hold_deg !== 'number')
        throw new Error(`${surface}.hold_deg: a number is expected`);
      if (typeof align_deg !== 'number')
        throw new Error(`${surface}.align_deg: a number is expected`);
      limits.set_surface(place, hold_deg, align_deg);
    }
  }

  /**
   * @param {import('./pkg/plumbmark_wasm.js').Limits} limits
   * @param {unknown} item
   */
  function addLine(limits, item) {
    const line = shaped(item, LINE_FIELDS, 'lines.');
    const check = code(checks, line.check, 'lines.check');
    const where = `${line.check}.`;
    for (const field of LINE_NUMBERS)
      if (line[field] != null && typeof line[field] !== 'number')
        throw new Error(`${where}${field}: a number is expected`);
    for (const flag of LINE_FLAGS)
      if (typeof (line[flag] ?? false) !== 'boolean')
        throw new Error(`${where}${flag}: true or false is expected`);
    if (typeof (line.source ?? '') !== 'string')
      throw new Error(`${where}source: text is expected`);
    const basis = code(catalogue.bases, line.basis, `${where}basis`);
    inWords(() =>
      limits.add_line(
        check,
        line.low_deg,
        line.high_deg,
        line.preferred_low_deg,
        line.preferred_high_deg,
        line.at_limit_allowed === true,
        line.allowance_deg,
        basis,
        line.source ?? '',
        line.holds_in_operation === true,
        line.length_mm,
      ),
    );
  }

  return {
    catalogue,
    /** @returns {LimitSet} */
    defaultLimits: () => asTyped(catalogue.default_limits),
    /** @returns {LimitSet} */
    blankLimits: () => asTyped(catalogue.blank_limits),
    /**
     * The set as core understands it; an error's message starts with the field it is about.
     * @param {unknown} set
     * @returns {LimitSet}
     */
    checkLimits(set) {
      const limits = toLimits(set);
      try {
        return asTyped(inWords(() => limits.check()));
      } finally {
        limits.free();
      }
    },
    newLive: () => new pkg.Live(),
    sheetWork: pkg.sheet_work,
    sheetParts: pkg.sheet_parts,
    boundProblem: pkg.bound_problem,
    /**
     * @param {import('./pkg/plumbmark_wasm.js').Live} live
     * @param {string} part
     * @param {string} hold
     * @param {string} surface
     */
    select(live, part, hold, surface) {
      live.select(
        code(parts, part, 'part'),
        code(catalogue.holds, hold, 'hold'),
        code(catalogue.surfaces, surface, 'surface'),
      );
    },
    /**
     * @param {import('./pkg/plumbmark_wasm.js').Live} live
     * @param {unknown} set
     */
    setLimits(live, set) {
      const limits = toLimits(set);
      try {
        inWords(() => live.set_limits(limits));
      } finally {
        limits.free();
      }
    },
    /**
     * @param {import('./pkg/plumbmark_wasm.js').Live} live
     * @param {string} check
     * @param {string | null} end
     */
    tellEnd(live, check, end) {
      live.tell_end(
        code(checks, check, 'check'),
        end === null ? undefined : code(catalogue.ends, end, 'end'),
      );
    },
    /** @param {import('./pkg/plumbmark_wasm.js').Live} live @param {string} hold @param {string} surface */
    selectFace(live, hold, surface) {
      live.select_face(
        code(catalogue.holds, hold, 'hold'),
        code(catalogue.surfaces, surface, 'surface'),
      );
    },
    /** @param {import('./pkg/plumbmark_wasm.js').Live} live @param {string} pointing */
    point: (live, pointing) => live.point(code(catalogue.pointings, pointing, 'pointing')),
    /** @param {import('./pkg/plumbmark_wasm.js').Live} live @param {VehicleTerms} terms */
    setVehicle: (live, terms) =>
      live.set_vehicle(
        terms.heading_deg,
        terms.lean_lengthwise_deg,
        terms.lean_crosswise_deg,
        terms.rake_deg,
        terms.working_lengthwise_deg,
        terms.working_crosswise_deg,
      ),
    /** When a side of this phone was checked, ms; null where nothing is kept of it.
     * @param {import('./pkg/plumbmark_wasm.js').Live} live
     * @param {number} number @param {boolean} inCase @param {string} hold */
    foundAt(live, number, inCase, hold) {
      const found_ms = live.found_ms(number, inCase, catalogue.holds.indexOf(hold));
      return Number.isNaN(found_ms) ? null : found_ms;
    },
    /** Whether that still counts.
     * @param {import('./pkg/plumbmark_wasm.js').Live} live
     * @param {number} number @param {boolean} inCase @param {string} hold */
    foundCounts: (live, number, inCase, hold) =>
      live.found_counts(number, inCase, catalogue.holds.indexOf(hold), Date.now()),
  };
}
