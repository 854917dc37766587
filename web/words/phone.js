// Words of what is known of this phone.

import { t } from '../language.js';
import { clock, until } from '../units.js';

export const words = {
  title: t`This phone`,
  why: t`Every phone reads a little wrong. One minute on a table finds by how much, and ± gets smaller.`,
  case: t`The phone is`,
  inCase: t`in its case`,
  bare: t`bare`,
  side: t`Side that lies on the part`,
  unchecked: t`not yet checked`,
  /** @param {number} ms */
  checked: (ms) => {
    const [time, end] = [clock(ms), until(ms)];
    return t`checked ${time}, counts until ${end} in the same place`;
  },
  /** @param {string} time */
  over: (time) => t`checked ${time}: over an hour ago, counts no more`,
  place: t`Warmth moves the zero: check again after an hour, and where it is warmer or colder.`,
  turn: t`One-minute turn`,
  poses: t`Any pose`,
};
