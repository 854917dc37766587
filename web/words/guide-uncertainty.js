// Words of "What ± means".

import { forNumber, t } from '../language.js';

export const words = {
  title: t`What ± means`,
  made: t`A made-up phone on a made-up heater, by a made-up limit. Nothing here is a measurement, and nothing of it enters the job.`,
  /** Heading, then paragraphs. @type {[string, string[]][]} */
  before: [
    [
      t`A tape with a bent hook`,
      [
        t`Measure one board ten times with a tape whose hook is bent by 2 mm: ten times the same number, ten times wrong by 2 mm. A phone is such a tape. Its sensor has a zero of its own, often half a degree off, and no reading shows it.`,
        t`So reading twice the same proves nothing. It shows that phone and hand repeat, not that they are right.`,
      ],
    ],
    [
      t`Why ± and not one number`,
      [
        t`A single number hides how wrong it may be. ± says it: 95 times in 100 the truth lies between the value less ± and the value plus ±. The bar, and the wedge in the drawing, are that stretch.`,
      ],
    ],
  ],
  play: t`Try it`,
  part: t`Outlet of the heater: move it by the buttons, arrow keys, or by dragging sideways`,
  lower: t`Lower`,
  raise: t`Raise`,
  limit: t`made up for this picture`,
  /** @param {string} angle @param {string} zero */
  really: (angle, zero) =>
    t`Really it lies at ${angle}: here we know, on a vehicle nobody does. This phone by itself reads ${zero} too high.`,
  /** @param {string} what */
  mostly: (what) => t`± comes mostly from: ${what}.`,
  phone: { legend: t`The phone is`, unchecked: t`not checked`, turned: t`turned end for end` },
  hand: { legend: t`It`, rests: t`rests on the part`, trembles: t`held free, it trembles` },
  surface: {
    legend: t`It lies on`,
    metal: t`a metal face`,
    sheet: t`a sheet or cover`,
  },
  follow: t`What the words follow from`,
  /** Verdict, what it is, what to do. @type {[import('../types.js').Verdict, string, string][]} */
  verdicts: [
    ['within', t`the whole bar lies on the permitted, hatched side.`, t`Go on.`],
    ['beyond', t`the whole bar lies on the other side.`, t`Move the part as told, read again.`],
    [
      'not_proven',
      t`the limit lies inside the bar: it can be either. That is not “nearly within”.`,
      t`Make ± smaller, or move the part away from the limit.`,
    ],
  ],
  smaller: t`What makes ± smaller`,
  does: [
    t`Let it rest on the part. While it trembles there is no number at all.`,
    t`Turn it end for end on the same spot: its own zero drops out.`,
    t`Check the phone on a table: counts for an hour in the same place.`,
    t`A bare, clean metal face instead of sheet or cover.`,
  ],
  smallerNot: t`What does not`,
  doesNot: [
    t`Reading again the same way, however often.`,
    t`Waiting longer than it asks for.`,
    t`More digits.`,
    t`Another phone of the same make: it has a zero too.`,
  ],
  throwsTitle: t`What 95 in 100 means`,
  throwsWhy: t`Forty made-up phones, as unlike as this page takes phones to be, read the same part once each. Every dot is a reading, its bar the ±, the line across how the part really lies.`,
  truth: t`how it really lies`,
  /** @param {number} all @param {number} missed */
  thrown: (all, missed) => {
    const held = all - missed;
    return missed === 0
      ? t`${all} readings: every bar holds the truth. In the long run 1 in 20 may miss it.`
      : forNumber(
          missed,
          t`${all} readings: ${held} bars hold the truth, ${missed} misses it (drawn broken). On a vehicle nobody can tell which. In the long run no more than 1 in 20 may miss.`,
          t`${all} readings: ${held} bars hold the truth, ${missed} miss it (drawn broken). On a vehicle nobody can tell which. In the long run no more than 1 in 20 may miss.`,
        );
  },
  others: t`Forty other phones`,
  done: t`Back`,
};
