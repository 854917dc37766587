// Words of the page as one file: what it cannot do, and how much of a job is in a file of its own.

/** @param {number} n */
const changes = (n) => `${n} ${n === 1 ? 'change' : 'changes'}`;

export const words = {
  title: 'Opened as a file. It cannot:',
  points: [
    'keep a job for certain: hand its record over before you close or move the file. Under Jobs, “Bring in a record” opens it again.',
    'keep it to itself: other pages opened as files may read it.',
    'be installed, or get new versions.',
    'count on sensors: a phone may give a file none. Then use the page by https, or type.',
  ],
  schemas: 'For programs: how the files look',
  limitsSchema: 'Limits (JSON schema)',
  recordSchema: 'Record (JSON schema)',
  forgets:
    'This browser lets this file keep nothing. What you enter is gone when the page closes: hand the record over before.',
  held: 'held until this page closes',
  /** @param {number} n */
  inNoFile: (n) => `In no file yet: ${changes(n)}.`,
  /** @param {string} time @param {number} n */
  since: (time, n) => `Not in the record of ${time}: ${changes(n)}.`,
  /** @param {string} time */
  unchanged: (time) => `Nothing changed since the record of ${time}. See that you have the file.`,
  handOver: 'Hand over the record',
};
