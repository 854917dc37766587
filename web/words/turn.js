// Words of the one-minute turn.

import { t } from '../language.js';
import { until } from '../units.js';

export const words = {
  title: t`Turn`,
  edge: t`the phone along a straight edge on a table`,
  /** @param {number} n @param {number} of */
  count: (n, of) => t`${n} of ${of}.`,
  lay: t`Lay it on a firm table as drawn, long side along a straight edge.`,
  half: t`Turn it end for end on the same spot, along the same edge.`,
  quarter: t`Turn it by a quarter on the same spot, against the same edge.`,
  keep: t`Keep`,
  turned: t`It is turned`,
  four: t`Four quarters: better`,
  two: t`Two placements`,
  over: t`Start over`,
  again: t`Once more`,
  done: t`Done`,
  found: t`This phone reads`,
  high: t`too high`,
  low: t`too low`,
  lengthwise: t`lengthwise`,
  crosswise: t`crosswise`,
  /** @param {number} ms */
  takenOff: (ms) => {
    const end = until(ms);
    return t`Taken off from now on; counts until ${end} in the same place.`;
  },
  errors: {
    not_turned: t`It was not turned. Turn it as drawn, keep it still, then tap Keep.`,
    turn_too_old: t`More than three minutes between two placements. Start over, a little quicker.`,
    tipped: t`The placements do not fit together: it rocked or was tipped. Wipe table and phone, start over.`,
    zero_too_large: t`That would be more than any sensor is wrong by. Was the table moved, or the phone put on something? Start over.`,
    pairs_disagree: t`The two pairs find different things. Use a firmer table, keep to the same spot, start over.`,
    not_opposite: t`Two placements were not end for end. Turn as drawn, along the same edge; start over.`,
    wrong_count: t`A placement is missing. Start over.`,
  },
};
