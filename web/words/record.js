// Words of the record: what is handed over, what it claims and what not.

import { t } from '../language.js';

export const words = {
  title: t`Record`,
  claims: [
    t`This record shows what was measured, how, when and against whose limits.`,
    t`It is neither an approval nor proof that the installation is free of danger.`,
    t`What is listed as not checked was not checked.`,
    t`A verdict holds for the moment of its reading, within the uncertainty beside it.`,
    t`The checksum finds a slip in copying. It does not show who wrote the record, nor that nobody changed it on purpose.`,
  ],
  clockBack: t`Times are those of the device, and its clock was set back in the course of this job: some are out of order. Captures stand in the order in which they were taken.`,
  sum: t`Checksum`,
  handOver: t`Hand over the file`,
  table: t`A table for a fleet (CSV)`,
  bringIn: t`Bring in a record`,
  changed: t`Taken in. Its checksum is wrong: it was changed after it was written.`,
  sound: t`Taken in. Its checksum agrees.`,
  moved: t`the vehicle moved afterwards, this no longer counts`,
  print: t`Print, or save as PDF`,
  sign: {
    title: t`Signatures`,
    installer: t`Installer`,
    customer: t`Customer`,
    here: t`Sign in the box with a finger.`,
    empty: t`not signed`,
    byName: t`Or type the name`,
    clear: t`Clear`,
    /** @param {string} time */
    at: (time) => t`signed ${time}`,
  },
  paper: {
    title: t`Installation record`,
    tryout: t`Try-out: a simulated phone, no real job.`,
    blank: '……………………',
    none: t`None.`,
    vehicle: t`Vehicle`,
    heater: t`Heater`,
    customer: t`Customer`,
    installer: t`Installer`,
    dates: t`Begun, last changed`,
    limits: t`Limit set, SHA-256`,
    software: t`Software`,
    columns: [t`Check`, t`Value ± U (95 %)`, t`Limit`, t`Verdict`],
    noLimit: t`not entered`,
    whose: t`On whose word the limits stand`,
    stops: t`Stopped in the first start`,
    beyond: t`Beyond the limit`,
    measured: t`Measured`,
    open: t`Not checked`,
    noNeed: t`Not needed here`,
    seen: t`Seen by eye`,
    claims: t`What this record says, and what not`,
    /** @param {number} n @param {number} byGauge @param {number} repeated */
    captures: (n, byGauge, repeated) =>
      `${[
        byGauge
          ? t`${n} captures by phone and gauge (${byGauge} by gauge)`
          : t`${n} captures by phone`,
        repeated > 0 && t`${repeated} of them repeats: the last one counts, all are in the file`,
      ]
        .filter(Boolean)
        .join(', ')}.`,
    /** @param {string} number @param {string} software */
    gauges: (number, software) =>
      t`By gauge ${number}, software ${software}: it has no clock, the times are those of taking in.`,
    /** @param {string} at @param {string} who @param {string} reason */
    overruled: (at, who, reason) => t`Capture of ${at} does not count: ${who}: ${reason}.`,
  },
  tooLarge: t`This file is too large for a record.`,
  notJson: t`This file is no record: it is cut short, or no JSON. Take the one that “Hand over the file” wrote.`,
  twice: t`This file is no record: something in it stands twice.`,
  notRecord: t`This file is no record of this page. Take the one that “Hand over the file” wrote.`,
  newer: t`This record was written by a newer version of the page. Update the page first.`,
  photoGone: t`seen on a photo that was lost with the browser’s storage`,
  badPhoto: t`A photo in this record is missing or no JPEG.`,
  tryout: t`This record is of the try-out. Open the try-out to look at it.`,
  notTryout: t`This record is of a real job. Leave the try-out to look at it.`,
};
