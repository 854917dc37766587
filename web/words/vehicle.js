// Words of what is known about the vehicle.

import { t } from '../language.js';

export const words = {
  title: t`About the vehicle`,
  working: t`Slope it works on`,
  workingWhy: t`Steepest slope the heater runs on. With 0 the answers hold for level ground only.`,
  lean: t`Lean on known level ground`,
  leanWhy: t`How the rail or floor leans when the vehicle stands level. Assumed 0, with a standard uncertainty of 1°, until it is read.`,
  heading: t`Direction of the part`,
  headingWhy: t`How well the part’s direction against the phone on the rail is known: by eye 5.`,
  fields: {
    heading_deg: t`standard uncertainty`,
    lean_lengthwise_deg: t`lengthwise, phone’s top edge up`,
    lean_crosswise_deg: t`crosswise, left side up`,
    rake_deg: t`standard uncertainty`,
    working_lengthwise_deg: t`lengthwise`,
    working_crosswise_deg: t`crosswise`,
  },
  wrong: {
    heading_deg: t`Enter 1 to 45.`,
    lean_lengthwise_deg: t`Enter −15 to 15.`,
    lean_crosswise_deg: t`Enter −15 to 15.`,
    rake_deg: t`Enter 0.1 to 10.`,
    working_lengthwise_deg: t`Enter 0 to 45.`,
    working_crosswise_deg: t`Enter 0 to 45.`,
  },
  readHere: t`Read it here: this ground is known to be level`,
  readDone: t`Put into the fields. Look it through, then save.`,
  save: t`Save`,
  saved: t`saved`,
  unsaved: t`not saved yet`,
  notANumber: t`Enter a number, such as 2 or 2.5.`,
  wrongField: t`See the field that is marked.`,
};
