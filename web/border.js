// Names on the page, places in the core's lists across the border: the only file that knows both.
// It looks up and passes on; it decides nothing.

import lists from './pkg/catalogue.js';
import { wall } from './wall.js';
import { readReport } from './report.js';
import { text } from './text.js';
import { filled, NO_BOUND, NO_LINE } from './typed.js';

/** @typedef {typeof import('./pkg/plumbmark_phone.js')} Pkg */
/** @typedef {Awaited<ReturnType<typeof import('./module.js').loadModule<Pkg>>>} Module */
/** The core's calls, one core a module. @typedef {Omit<Pkg, 'default' | 'initSync'>} Live */
/** @typedef {import('./types.js').LimitSet} LimitSet */
/** @typedef {import('./types.js').Catalogue} Catalogue */
/** @typedef {import('./types.js').VehicleTerms} VehicleTerms */

const { faults } = text;
const problems = text.limitProblems;
const FORMAT = 'plumbmark-limits';
/** Version 1 had no bounds, vehicles and reasons. */
const VERSION = 2;
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
const LINE_TEXTS = ['source', 'vehicles', 'reason'];
const LINE_FIELDS = ['check', 'basis', ...LINE_TEXTS, ...LINE_FLAGS, ...LINE_NUMBERS];

/** What stands where a name was expected: not every value can be made a text. @param {unknown} name */
export const shown = (name) => (typeof name === 'string' ? name.slice(0, 40) : typeof name);

/**
 * @param {readonly string[]} list
 * @param {unknown} name
 * @param {string} field
 */
function code(list, name, field) {
  const found = list.indexOf(/** @type {string} */ (name));
  if (found < 0) throw new Error(`${field}: ${faults.strange(shown(name))}`);
  return found;
}

/** Length of a text as it is kept. @param {string} words */
const bytes = (words) => new TextEncoder().encode(words).length;

/**
 * @param {unknown} value
 * @param {readonly string[]} fields
 * @param {string} where
 * @returns {any}
 */
function shaped(value, fields, where) {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new Error(`${where || 'file.'}object: ${faults.object}`);
  for (const field of Object.keys(value))
    if (!fields.includes(field)) throw new Error(`${where}${field}: ${faults.notKnown}`);
  return value;
}

/**
 * The core behind one loaded module, by names.
 * @param {Module} module
 */
export function openBorder(module) {
  const { pkg, give } = module;
  const catalogue = /** @type {Catalogue} */ (/** @type {unknown} */ (lists));
  const parts = catalogue.parts.map((p) => p.id);
  const checks = catalogue.checks.map((c) => c.id);
  const rows = ['', ...checks, ...catalogue.surfaces];

  /** What a call returned, or its refusal by name. @param {number} answer */
  const accepted = (answer) => {
    if (answer < 0) throw new Error(refusalName(answer));
    return answer;
  };
  /** Numbers that a call left behind. @param {number} count */
  const numbers = (count) => module.numbers(accepted(count));
  /** @param {number} answer */
  const refusalName = (answer) => {
    const place = -1 - answer;
    return catalogue.refusals[place >> 5]?.[place & 31] ?? 'unknown code';
  };

  /** Core says what is wrong with a limit set in five numbers, the page has the words:
   * "line.field: what to do". @param {number} count */
  function right(count) {
    if (!count) return;
    const [row, field, problem, low, high] = numbers(count);
    const line = rows[row];
    const words = problems[catalogue.problems[problem]](low, high);
    throw new Error(`${line ? `${line}.` : ''}${catalogue.fields[field]}: ${words}`);
  }

  /** Tells core a set line by line. @param {any} set */
  function tell(set) {
    shaped(set, LIMIT_FIELDS, '');
    if (set.format !== FORMAT) throw new Error(`format: ${problems.not_a_limit_set(0, 0)}`);
    if (set.version !== 1 && set.version !== VERSION)
      throw new Error(`version: ${problems.other_version(0, 0)}`);
    if (typeof set.name !== 'string') throw new Error(`name: ${faults.text}`);
    if (!Array.isArray(set.lines)) throw new Error(`lines: ${faults.list}`);
    if (!Array.isArray(set.bounds ?? [])) throw new Error(`bounds: ${faults.list}`);
    right(pkg.limits_begin(bytes(set.name)));
    for (const line of set.lines) tellLine(line);
    tellSurfaces(set.surfaces ?? []);
  }

  /** @param {unknown} items */
  function tellSurfaces(items) {
    if (!Array.isArray(items)) throw new Error(`surfaces: ${faults.list}`);
    const seen = new Set();
    for (const item of items) {
      const { surface, hold_deg, align_deg } = shaped(item, SURFACE_FIELDS, 'surfaces.');
      const place = code(catalogue.surfaces, surface, 'surfaces.surface');
      if (seen.has(place)) throw new Error(`${surface}.surface: ${faults.repeated}`);
      seen.add(place);
      if (typeof hold_deg !== 'number') throw new Error(`${surface}.hold_deg: ${faults.number}`);
      if (typeof align_deg !== 'number') throw new Error(`${surface}.align_deg: ${faults.number}`);
      accepted(pkg.limits_surface(place, hold_deg, align_deg));
    }
  }

  /** @param {unknown} item */
  function tellLine(item) {
    const line = shaped(item, LINE_FIELDS, 'lines.');
    const check = code(checks, line.check, 'lines.check');
    const where = `${line.check}.`;
    for (const field of LINE_NUMBERS)
      if (line[field] != null && typeof line[field] !== 'number')
        throw new Error(`${where}${field}: ${faults.number}`);
    for (const flag of LINE_FLAGS)
      if (typeof (line[flag] ?? false) !== 'boolean')
        throw new Error(`${where}${flag}: ${faults.flag}`);
    for (const field of LINE_TEXTS)
      if (typeof (line[field] ?? '') !== 'string')
        throw new Error(`${where}${field}: ${faults.text}`);
    const source = line.source ?? '';
    const basis = code(catalogue.bases, line.basis, `${where}basis`);
    right(
      pkg.limits_line(
        check,
        line.low_deg,
        line.high_deg,
        line.preferred_low_deg,
        line.preferred_high_deg,
        line.at_limit_allowed === true,
        line.allowance_deg,
        basis,
        bytes(source),
        !/[^ ]/.test(source),
        line.holds_in_operation === true,
        line.length_mm,
      ),
    );
  }

  /** A set that core accepts, with every field and surface there is.
   * @param {LimitSet} set @returns {LimitSet} */
  const whole = ({ name, lines, surfaces, bounds }) => ({
    format: FORMAT,
    version: VERSION,
    name,
    lines: lines.map((line) => filled({ ...NO_LINE, check: line.check }, line)),
    surfaces: catalogue.blank_limits.surfaces.map((assumed) =>
      filled(assumed, (surfaces ?? []).find((s) => s.surface === assumed.surface) ?? {}),
    ),
    bounds: (bounds ?? []).map((bound) => ({ ...NO_BOUND, ...bound })),
  });

  return {
    catalogue,
    /** @returns {LimitSet} */
    defaultLimits: () => whole(catalogue.default_limits),
    /** @returns {LimitSet} */
    blankLimits: () => whole(catalogue.blank_limits),
    /**
     * The set as core understands it; an error's message starts with the field it is about.
     * @param {any} set
     * @returns {LimitSet}
     */
    checkLimits(set) {
      tell(set);
      right(pkg.limits_check());
      return whole(set);
    },
    live: /** @type {Live} */ (pkg),
    refusalName,
    /**
     * @param {string} part
     * @param {string} hold
     * @param {string} surface
     */
    select(part, hold, surface) {
      const place = code(catalogue.surfaces, surface, 'surface');
      accepted(pkg.select(code(parts, part, 'part'), code(catalogue.holds, hold, 'hold'), place));
    },
    /** @param {unknown} set */
    setLimits(set) {
      tell(set);
      right(pkg.limits_use());
    },
    /**
     * @param {string} check
     * @param {string | null} end
     */
    tellEnd(check, end) {
      const place = end === null ? undefined : code(catalogue.ends, end, 'end');
      accepted(pkg.tell_end(code(checks, check, 'check'), place));
    },
    /** @param {string} hold @param {string} surface */
    selectFace(hold, surface) {
      const place = code(catalogue.surfaces, surface, 'surface');
      accepted(pkg.select_face(code(catalogue.holds, hold, 'hold'), place));
    },
    /** @param {string} pointing */
    point: (pointing) => accepted(pkg.point(code(catalogue.pointings, pointing, 'pointing'))),
    /** @param {VehicleTerms} terms */
    setVehicle(terms) {
      const wrong = pkg.set_vehicle(
        terms.heading_deg,
        terms.lean_lengthwise_deg,
        terms.lean_crosswise_deg,
        terms.rake_deg,
        terms.working_lengthwise_deg,
        terms.working_crosswise_deg,
      );
      if (wrong) throw new Error(catalogue.vehicle_fields[wrong - 1]);
    },
    /** The report of the last tick's reading; texts are those of the limits in force.
     * @param {LimitSet | null} limits */
    capture: (limits) => readReport(numbers(pkg.capture()), catalogue, limits?.lines ?? []),
    /** Lengthwise, its U, crosswise, its U, degrees. */
    findZero: () => numbers(pkg.find_zero()),
    findings: () => [...numbers(pkg.findings())],
    /** @param {number[]} rows */
    restoreFindings(rows) {
      give(rows.slice(0, pkg.numbers_room()));
      pkg.restore_findings(rows.length);
    },
    /** When a side of this phone was checked, ms; null where nothing is kept of it.
     * @param {number} number @param {boolean} inCase @param {string} hold */
    foundAt(number, inCase, hold) {
      const found_ms = pkg.found_ms(number, inCase, catalogue.holds.indexOf(hold));
      return Number.isNaN(found_ms) ? null : found_ms;
    },
    /** Whether that still counts.
     * @param {number} number @param {boolean} inCase @param {string} hold */
    foundCounts: (number, inCase, hold) =>
      pkg.found_counts(number, inCase, catalogue.holds.indexOf(hold), wall()),
  };
}
