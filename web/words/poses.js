// Words of the calibration in any pose.

import { forNumber, t } from '../language.js';

export const words = {
  title: t`Any pose`,
  why: t`Lean the phone in nine or more different ways and keep each. This finds its zero for every side at once.`,
  /** @param {number} n */
  count: (n) => forNumber(n, t`1 pose kept`, t`${n} poses kept`),
  keep: t`Keep this pose`,
  over: t`Start over`,
  both: t`Calibrated, for both of the phone’s sensors. It counts for an hour in the same place; more poses make it better.`,
  one: t`Calibrated, for acceleration only: in too few poses did the phone’s two sensors agree. Keep more, each after three seconds of rest.`,
  ways: [
    t`face up, and face down`,
    t`on its left long edge, and on its right one`,
    t`on its bottom edge, and on its top edge`,
    t`leaning between these, against a box or a wall`,
  ],
  refusals: {
    too_few_poses: t`At least nine are needed.`,
    pose_taken: t`Too near to a pose that is kept. Lean it another way.`,
    full: t`No room for more poses. Start over if it does not fit.`,
    one_sided: t`One side never looked both up and down. Go through the list below.`,
    singular: t`The poses are too much alike. Lean it in other ways.`,
    no_convergence: t`The poses fit no sensor. Start over; keep it quite still each time.`,
    too_large: t`That would be more than any sensor is wrong by. Start over.`,
    does_not_fit: t`The poses contradict each other: one was not at rest. Start over.`,
  },
};
