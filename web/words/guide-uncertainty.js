// Words of "What ± means".

export const words = {
  title: 'What ± means',
  made: 'A made-up phone on a made-up heater, by a made-up limit. Nothing here is a measurement, and nothing of it enters the job.',
  /** Heading, then paragraphs. @type {[string, string[]][]} */
  before: [
    [
      'A tape with a bent hook',
      [
        'Measure one board ten times with a tape whose hook is bent by 2 mm: ten times the same number, ten times wrong by 2 mm. A phone is such a tape. Its sensor has a zero of its own, often half a degree off, and no reading shows it.',
        'So reading twice the same proves nothing. It shows that phone and hand repeat, not that they are right.',
      ],
    ],
    [
      'Why ± and not one number',
      [
        'A single number hides how wrong it may be. ± says it: 95 times in 100 the truth lies between the value less ± and the value plus ±. The bar, and the wedge in the drawing, are that stretch.',
      ],
    ],
  ],
  play: 'Try it',
  part: 'Outlet of the heater: move it by the buttons, arrow keys, or by dragging sideways',
  lower: 'Lower',
  raise: 'Raise',
  limit: 'made up for this picture',
  /** @param {string} angle */
  really: (angle) =>
    `Really it lies at ${angle}: here we know, on a vehicle nobody does. This phone reads 0.7° too high by itself.`,
  /** @param {string} what */
  mostly: (what) => `± comes mostly from: ${what}.`,
  phone: { legend: 'The phone is', unchecked: 'not checked', turned: 'turned end for end' },
  hand: { legend: 'It', rests: 'rests on the part', trembles: 'held free, it trembles' },
  surface: {
    legend: 'It lies on',
    metal: 'a metal face',
    sheet: 'a sheet or cover',
  },
  follow: 'What the words follow from',
  /** Verdict, what it is, what to do. @type {[import('../types.js').Verdict, string, string][]} */
  verdicts: [
    ['within', 'the whole bar lies on the permitted, hatched side.', 'Go on.'],
    ['beyond', 'the whole bar lies on the other side.', 'Move the part as told, read again.'],
    [
      'not_proven',
      'the limit lies inside the bar: it can be either. That is not “nearly within”.',
      'Make ± smaller, or move the part away from the limit.',
    ],
  ],
  smaller: 'What makes ± smaller',
  does: [
    'Let it rest on the part. While it trembles there is no number at all.',
    'Turn it end for end on the same spot: its own zero drops out.',
    'Check the phone on a table: counts for an hour in the same place.',
    'A bare, clean metal face instead of sheet or cover.',
  ],
  smallerNot: 'What does not',
  doesNot: [
    'Reading again the same way, however often.',
    'Waiting longer than it asks for.',
    'More digits.',
    'Another phone of the same make: it has a zero too.',
  ],
  throwsTitle: 'What 95 in 100 means',
  throwsWhy:
    'Forty made-up phones, as unlike as this page takes phones to be, read the same part once each. Every dot is a reading, its bar the ±, the line across how the part really lies.',
  truth: 'how it really lies',
  /** @param {number} all @param {number} missed */
  thrown: (all, missed) =>
    missed === 0
      ? `${all} readings: every bar holds the truth. In the long run 1 in 20 may miss it.`
      : `${all} readings: ${all - missed} bars hold the truth, ${missed} ${missed === 1 ? 'misses' : 'miss'} it (drawn broken). On a vehicle nobody can tell which. In the long run no more than 1 in 20 may miss.`,
  others: 'Forty other phones',
  done: 'Back',
};
