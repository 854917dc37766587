// Words of the whole job: what must be known first, what is still open, what is not needed.

/** Facts that are asked before anything is cut. @type {Record<string, string>} */
export const facts = {
  manual: 'The heater’s own manual is at hand, for this very unit, and was read.',
  approval_mark: 'The heater bears its approval mark and number, readable once it is mounted.',
  dangerous_goods:
    'Asked whether this vehicle ever carries dangerous goods. Such vehicles have rules of their own for heaters: stop until they are known.',
  local_rules: 'Local codes, and the rules of who may do this work, are known.',
};

export const words = {
  title: 'First questions',
  sub: 'manual, approval, dangerous goods',
  why: 'What must be known before anything is cut. No number settles these.',
  unchecked: 'Not checked',
  uncheckedWhy:
    'Each stands in the record as not checked. What this vehicle does not have, say so: who, and why.',
  nothing: 'Nothing is left unchecked.',
  /** @param {string} where */
  go: (where) => `Go to: ${where}`,
  /** @param {string} names */
  marked: (names) => `Not needed: ${names}`,
  /** Of a mark that something is not needed; as the words of a tick. */
  noNeed: {
    tick: 'Not needed here',
    open: '',
    seen: 'not needed',
    who: 'Your name',
    reason: 'Why it is not needed here',
    byPhoto: 'With a photo',
    byReason: 'With these words',
    needsWho: 'Enter your name.',
    needsReason: 'Say why, or take a photo.',
    takeBack: 'It is needed after all',
    /** @param {string} who @param {string} time @param {string} reason */
    by: (who, time, reason) => `${who}, ${time}, ${reason || 'with a photo'}`,
  },
};
