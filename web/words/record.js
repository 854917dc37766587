// Words of the record: what is handed over, what it claims and what not.

export const words = {
  title: 'Record',
  claims: [
    'This record shows what was measured, how, when and against whose limits.',
    'It is neither an approval nor proof that the installation is free of danger.',
    'What is listed as not checked was not checked.',
    'A verdict holds for the moment of its reading, within the uncertainty beside it.',
    'The checksum finds a slip in copying. It does not show who wrote the record, nor that nobody changed it on purpose.',
  ],
  clockBack:
    'Times are those of the device, and its clock was set back in the course of this job: some are out of order. Captures stand in the order in which they were taken.',
  sum: 'Checksum',
  handOver: 'Hand it over',
  table: 'A table for a fleet (CSV)',
  bringIn: 'Bring in a record',
  changed: 'Taken in. Its checksum is wrong: it was changed after it was written.',
  sound: 'Taken in. Its checksum is right.',
  print: 'Print, or save as PDF',
  sign: {
    title: 'Signatures',
    installer: 'Installer',
    customer: 'Customer',
    empty: 'Sign here with a finger.',
    clear: 'Clear',
    /** @param {string} time */
    at: (time) => `signed ${time}`,
  },
  paper: {
    title: 'Installation record',
    tryout: 'Try-out: a simulated phone, no real job.',
    blank: '……………………',
    none: 'None.',
    vehicle: 'Vehicle',
    heater: 'Heater',
    customer: 'Customer',
    installer: 'Installer',
    dates: 'Begun, last changed',
    limits: 'Limit set, SHA-256',
    software: 'Software',
    columns: ['Check', 'Value ± U (95 %)', 'Limit', 'Verdict'],
    whose: 'On whose word the limits stand',
    measured: 'Measured',
    open: 'Not checked',
    noNeed: 'Not needed here',
    seen: 'Seen by eye',
    claims: 'What this record says, and what not',
    /** @param {number} n @param {number} byGauge @param {number} repeated */
    captures: (n, byGauge, repeated) =>
      `${n} captures by ${byGauge ? `phone and gauge (${byGauge} by gauge)` : 'phone'}${repeated > 0 ? `, ${repeated} of them repeats: the last one counts, all are in the file` : ''}.`,
    /** @param {string} number @param {string} software */
    gauges: (number, software) =>
      `By gauge ${number}, software ${software}: it has no clock, the times are those of taking in.`,
    /** @param {string} at @param {string} who @param {string} reason */
    overruled: (at, who, reason) => `Capture of ${at} does not count: ${who}: ${reason}.`,
  },
  tooLarge: 'This file is too large for a record.',
  notJson: 'This file is no record: it is cut short, or no JSON.',
  notRecord: 'This file is no record of this page.',
  newer: 'This record was written by a newer version of the page. Update the page first.',
  photoGone: 'seen on a photo that was lost with the browser’s storage',
  badPhoto: 'A photo in this record is missing or no JPEG.',
  tryout: 'This record is of the try-out. Open the try-out to look at it.',
  notTryout: 'This record is of a real job. Leave the try-out to look at it.',
};
