// Words for taking in a gauge's captures.

import { forNumber, t } from '../language.js';

export const words = {
  title: t`From a gauge`,
  why: t`A gauge writes one line for each capture. This page answers each of them anew by this job’s limits.`,
  newest: t`A gauge has no clock: a line gets the time when it is taken in, and then counts as its part’s newest reading.`,
  lines: t`Its lines, pasted or typed`,
  open: t`Open a file of lines`,
  listen: t`Listen by cable`,
  stop: t`Stop listening`,
  listening: t`Listening. What the gauge captures now comes in below.`,
  noPort: t`No cable was chosen.`,
  noCable: t`The cable could not be opened. See that the gauge is plugged in and that no other program uses its port.`,
  unplugged: t`The cable is gone. What came is below.`,
  tooLarge: t`This file is too large for a gauge’s lines.`,
  byGauge: t`By the gauge’s limits`,
  byJob: t`By this job’s limits`,
  wanted: t`Take this one in`,
  here: t`In this job already`,
  none: t`No line yet.`,
  refused: t`Not taken in`,
  /** @param {number} number @param {string} why */
  bad: (number, why) => t`Line ${number}: ${why}`,
  /** @param {number} n */
  take: (n) => forNumber(n, t`Take in 1 capture`, t`Take in ${n} captures`),
  /** @param {number} n */
  taken: (n) => forNumber(n, t`1 capture taken in.`, t`${n} captures taken in.`),
  done: t`To the captures`,
  /** Why a line is refused, by core's names. @type {Record<string, string>} */
  refusals: {
    not_a_line: t`no gauge’s line.`,
    other_version: t`written by a newer or older kind of gauge. Update the page, or the gauge.`,
    damaged: t`letters were lost or changed on the way. Copy it again, whole.`,
    word_count: t`a word is missing, or one too many.`,
    unknown_word: t`a word that this page does not know.`,
    no_such_placement: t`that part can’t be read so.`,
    impossible_number: t`a number that can’t be.`,
    other_rules: t`the gauge’s answer does not follow from its numbers: it was built with other rules. Update the gauge.`,
  },
};
