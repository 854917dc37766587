// Words for taking in a gauge's captures.

export const words = {
  title: 'From a gauge',
  why: 'A gauge writes one line for each capture. This page answers each of them anew by this job’s limits.',
  newest:
    'A gauge has no clock: a line gets the time when it is taken in, and then counts as its part’s newest reading.',
  lines: 'Its lines, pasted or typed',
  open: 'Open a file of lines',
  listen: 'Listen by cable',
  stop: 'Stop listening',
  listening: 'Listening. What the gauge captures now comes in below.',
  noPort: 'No cable was chosen.',
  noCable:
    'The cable could not be opened. Is the gauge plugged in, and does no other program listen to it?',
  unplugged: 'The cable is gone. What came is below.',
  tooLarge: 'This file is too large for a gauge’s lines.',
  byGauge: 'By the gauge’s limits',
  byJob: 'By this job’s limits',
  wanted: 'Take this one in',
  here: 'In this job already',
  none: 'No line yet.',
  refused: 'Not taken in',
  /** @param {number} number @param {string} why */
  bad: (number, why) => `Line ${number}: ${why}`,
  /** @param {number} n */
  take: (n) => (n === 1 ? 'Take in 1 capture' : `Take in ${n} captures`),
  /** @param {number} n */
  taken: (n) => (n === 1 ? '1 capture taken in.' : `${n} captures taken in.`),
  done: 'To the captures',
  /** Why a line is refused, by core's names. @type {Record<string, string>} */
  refusals: {
    not_a_line: 'no gauge’s line.',
    other_version: 'written by a newer or older kind of gauge. Update the page, or the gauge.',
    damaged: 'letters were lost or changed on the way. Copy it again, whole.',
    word_count: 'a word is missing, or one too many.',
    unknown_word: 'a word that this page does not know.',
    no_such_placement: 'that part can’t be read so.',
    impossible_number: 'a number that can’t be.',
    other_rules:
      'the gauge’s answer does not follow from its numbers: it was built with other rules. Update the gauge.',
  },
};
