// Words of the invented job of the try-out.

import { t } from '../language.js';

export const words = {
  offer: t`Fill in an invented job`,
  ask: t`This job has been worked on. The invented numbers take the place of its limits, its names and what was typed into its sheets.`,
  fill: t`Fill it in all the same`,
  leave: t`Leave it as it is`,
  invented: t`Invented job: its limits, names and numbers stand for no heater and no vehicle. Facts and angles are left open.`,
};
