// Words of the page as one file: what it cannot do, and how much of a job is in a file of its own.

import { forNumber, t } from '../language.js';

export const words = {
  title: t`Opened as a file. It cannot:`,
  points: [
    t`keep a job for certain: hand its record over before you close or move the file. Under Jobs, “Bring in a record” opens it again.`,
    t`keep it to itself: other pages opened as files may read it.`,
    t`be installed, or get new versions.`,
    t`count on sensors: a phone may give a file none. Then use the page by https, or type.`,
  ],
  schemas: t`For programs: how the files look`,
  limitsSchema: t`Limits (JSON schema)`,
  recordSchema: t`Record (JSON schema)`,
  forgets: t`This browser lets this file keep nothing. What you enter is gone when the page closes: hand the record over before.`,
  held: t`held until this page closes`,
  /** @param {number} n */
  inNoFile: (n) => forNumber(n, t`In no file yet: 1 change.`, t`In no file yet: ${n} changes.`),
  /** @param {string} time @param {number} n */
  since: (time, n) =>
    forNumber(
      n,
      t`Not in the record of ${time}: 1 change.`,
      t`Not in the record of ${time}: ${n} changes.`,
    ),
  /** @param {string} time */
  unchanged: (time) => t`Nothing changed since the record of ${time}. See that you have the file.`,
  handOver: t`Hand over the record`,
};
