// Words of the invented job of the try-out.

import { t } from '../language.js';

export const words = {
  offer: t`Fill in an invented job`,
  ask: t`This job has been worked on. The invented numbers take the place of its limits, its names and what was typed into its sheets.`,
  fill: t`Fill it in all the same`,
  leave: t`Leave it as it is`,
  invented: t`Invented job: its limits, names and numbers stand for no heater and no vehicle. Facts and angles are left open.`,
  header: {
    vehicle: t`Invented flatbed 7, sleeping box`,
    heater: t`invented unit Q-23, no. 0007`,
    customer: t`Invented carrier of Millrace Quay`,
    installer: t`N. Example, invented`,
  },
  manual: t`Invented manual: unit Q-23`,
  /** @param {string} number */
  page: (number) => t`invented manual, p. ${number}`,
  reason: t`the invented manual names another bore`,
};
