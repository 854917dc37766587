// Words that a screen reader says where the page shows signs.

import { t } from '../language.js';

export const words = {
  minus: t`minus`,
  within: t`plus or minus`,
  degrees: t`degrees`,
  /** @param {string} check @param {string} verdict @param {string} value @param {string} todo */
  answer: (check, verdict, value, todo) => t`${check}: ${verdict}. ${value}. ${todo}`,
  /** @param {string} check @param {string} verdict @param {string} value */
  drawing: (check, verdict, value) =>
    t`Drawing of the part at its angle. ${check}: ${value}, ${verdict}`,
};
