// Words of a check that is made again.

import { t } from '../language.js';

/** What servicing asks for. @type {Record<string, string>} */
export const service = {
  service_seal: t`The heater was taken off its seat: the seal is new. A seal is used once.`,
  service_clamps: t`Clamps of fuel line, exhaust and ducts were tightened again, and looked at hot.`,
  service_ends: t`Ends of exhaust and combustion air are free of dirt and nests; drains are open.`,
  service_leaks: t`Fuel joints are dry; no soot or stain on the exhaust’s joints.`,
  service_alarm: t`Each carbon monoxide alarm was tested, and is within its date.`,
};

export const words = {
  title: t`Check again`,
  read: t`Read the parts`,
  why: t`Read each part again, the same way if you can. What has moved by more than both readings are uncertain stands first, then what was beyond.`,
  none: t`This job is not beside an earlier one. Open an earlier job’s card and choose “Check it again”.`,
  /** @param {string} told value, verdict, time */
  earlier: (told) => t`Then: ${told}`,
  stops: t`Stopped in the first start then`,
  /** @param {string} value */
  now: (value) => t`Now: ${value}`,
  /** @param {string} by @param {boolean} up */
  moved: (by, up) => (up ? t`Moved: ${by} more` : t`Moved: ${by} less`),
  /** @param {string} u */
  still: (u) => t`No change shown; uncertainty: ${u}`,
  open: t`Not read again yet.`,
  service: t`What servicing asks for`,
};
