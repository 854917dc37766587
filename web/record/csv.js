// A record as a table for a fleet: one row a check or fact, one job after the other when files are
// put together (RFC 4180). A spreadsheet must not take a text for a formula.

import { isStop } from './rows.js';

/** @typedef {Awaited<ReturnType<typeof import('./build.js').buildRecord>>} Record_ */

const COLUMNS = /** @type {const} */ ([
  'vehicle',
  'heater',
  'customer',
  'installer',
  'job_created_at',
  'job_changed_at',
  'tryout',
  'software',
  'record_sha256',
  'limits_sha256',
  'section',
  'id',
  'what',
  'verdict',
  'value',
  'u',
  'unit',
  'low',
  'high',
  'basis',
  'source',
  'vehicles',
  'reason',
  'only_beyond',
  'why',
  'margin',
  'probability',
  'at',
  'how',
]);

/** What makes a cell a formula: at the start of a text, and behind a sign by which another program
 * may split the line. */
const AT_START = /^(?=\s*[=+\-@＝＋－＠]|[\t\r])/;
const BEHIND = /[;\t\r\n](?=\s*[=+\-@＝＋－＠])/g;

/** What a spreadsheet would read as a formula is led by an apostrophe. @param {unknown} value */
function cell(value) {
  if (value === null || value === undefined) return '';
  if (typeof value === 'number') return String(value);
  const text = String(value).replace(BEHIND, "$&'").replace(AT_START, "'");
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** @param {Record_} record */
export function csvOf(record) {
  const { job } = record;
  const same = {
    vehicle: job.vehicle,
    heater: job.heater,
    customer: job.customer,
    installer: job.installer,
    job_created_at: job.created_at,
    job_changed_at: job.changed_at,
    tryout: job.tryout,
    software: record.software,
    record_sha256: record.sha256,
    limits_sha256: record.limits_sha256,
  };
  const facts = record.facts.map((f) => ({
    section: f.section,
    id: f.id,
    what: f.statement,
    verdict: isStop(f) ? 'stopped' : f.state,
    reason: f.reason,
    at: f.at,
    how: f.who,
  }));
  const rows = [...record.checks, ...facts].map((row) => ({ ...same, ...row }));
  const lines = rows.map((row) =>
    COLUMNS.map((name) => cell(/** @type {Record<string, unknown>} */ (row)[name])).join(','),
  );
  // The mark at the start tells spreadsheets that it is UTF-8.
  return `\ufeff${[COLUMNS.join(','), ...lines].join('\r\n')}\r\n`;
}
