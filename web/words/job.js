// Words of the whole job: what must be known first, what is still open, what is not needed.

import { t } from '../language.js';

/** Facts that are asked before anything is cut. @type {Record<string, string>} */
export const facts = {
  manual: t`The heater’s own manual is at hand, for this very unit, and was read.`,
  approval_mark: t`The heater bears its approval mark and number, readable once it is mounted.`,
  dangerous_goods: t`Asked whether this vehicle ever carries dangerous goods. Such vehicles have rules of their own for heaters: stop until they are known.`,
  local_rules: t`Local codes, and the rules of who may do this work, are known.`,
};

export const words = {
  title: t`First questions`,
  sub: t`manual, approval, dangerous goods`,
  why: t`What must be known before anything is cut. No number settles these.`,
  unchecked: t`Not checked`,
  uncheckedWhy: t`Each stands in the record as not checked. What this vehicle does not have, say so: who, and why.`,
  nothing: t`Nothing is left unchecked.`,
  /** @param {string} where */
  go: (where) => t`Go to: ${where}`,
  /** @param {string} names */
  marked: (names) => t`Not needed: ${names}`,
  /** Of a mark that something is not needed; as the words of a tick. */
  noNeed: {
    tick: t`Not needed here`,
    open: '',
    seen: t`not needed`,
    who: t`Your name`,
    reason: t`Why it is not needed here`,
    byPhoto: t`With a photo`,
    byReason: t`With these words`,
    needsWho: t`Enter your name.`,
    needsReason: t`Say why, or take a photo.`,
    takeBack: t`It is needed after all`,
    /** @param {string} who @param {string} time @param {string} reason */
    by: (who, time, reason) =>
      reason ? `${who}, ${time}, ${reason}` : t`${who}, ${time}, with a photo`,
  },
};
