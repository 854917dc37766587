// Words of the limits of the angles, line by line.

import { t } from '../language.js';

export const words = {
  title: t`Limits`,
  guide: t`From the manual, step by step`,
  name: t`Name of this set`,
  low: t`at least`,
  high: t`at most`,
  preferredLow: t`preferred from`,
  preferredHigh: t`preferred to`,
  atLimit: t`may sit exactly at the limit`,
  inOperation: t`holds on the slopes the vehicle works on`,
  allowance: t`allowance from the manual`,
  basis: t`on whose word`,
  source: t`document and page, or clause`,
  vehicles: t`the vehicles a law is for`,
  reason: t`why it may be looser than law or usage`,
  length: t`length between its ends`,
  limitMissing: t`limit not entered`,
  allowanceMissing: t`allowance not entered`,
  surfaces: t`How well the phone lies on it`,
  surfacesWhy: t`Standard uncertainties, assumed until you know better.`,
  hold: t`tilt`,
  align: t`turn`,
  save: t`Save`,
  saved: t`saved`,
  unsaved: t`not saved yet`,
  out: t`Copy out (JSON)`,
  in: t`Bring in (JSON)`,
  blank: t`Empty it`,
  examples: t`Trade usage again`,
  replaced: t`Put into the fields. Look it through, then save.`,
  loose: t`Examples are common practice without a source. Put the manual’s numbers in their place.`,
  notANumber: t`Enter a number, such as 1200 or 12.5, no sign between thousands, or leave it empty.`,
  tooLarge: t`This file is too large for a limit set; nothing was changed.`,
  notJson: t`This file is not JSON; nothing was changed.`,
  twice: t`Something stands twice in this file; nothing was changed.`,
  /** @param {string} why */
  refused: (why) => {
    const reason = why.replace(/\.$/, '');
    return t`Refused: ${reason}. Nothing was changed.`;
  },
  wrongField: t`See the field that is marked.`,
};
