// Words of the list of jobs.

import { t } from '../language.js';
import { fixed } from '../units.js';

/** @param {number} bytes */
const size = (bytes) =>
  bytes < 1e5 ? `${Math.ceil(bytes / 1000)} kB` : `${fixed(bytes / 1e6, 1)} MB`;

export const words = {
  title: t`Jobs`,
  search: t`Search: vehicle, heater, customer, date`,
  none: t`No job like that.`,
  open: t`open now`,
  begin: t`New job`,
  archived: t`Archive`,
  deleted: t`Deleted`,
  /** @param {string} day */
  unnamed: (day) => t`Job of ${day}`,
  /** @param {string} day */
  changed: (day) => t`changed ${day}`,
  /** @type {Record<string, [string, string]>} */
  fields: {
    vehicle: [t`Vehicle`, t`plate, fleet number or name`],
    heater: [t`Heater`, t`type and serial number, from its plate`],
    customer: [t`Customer`, t`for whom`],
    installer: [t`Installer`, t`who fits it`],
  },
  onWithIt: t`On with this job`,
  openIt: t`Open this job`,
  next: t`The same heater in the next vehicle: a new job with these limits, nothing measured`,
  again: t`Check it again: a new job beside what was measured then`,
  archive: t`Put into the archive`,
  takeOut: t`Take out of the archive`,
  remove: t`Delete`,
  askDelete: t`Delete this job, with its captures, numbers and photos? It can be put back from the list of deleted ones.`,
  doDelete: t`Yes, delete it`,
  keepIt: t`No, keep it`,
  isDeleted: t`This job is deleted.`,
  putBack: t`Put it back`,
  forGood: t`Remove for good`,
  /** @param {{ captures: number, entries: number, photos: number, bytes: number }} content */
  askForGood: ({ captures, entries, photos, bytes }) => {
    const space = size(bytes);
    return t`Remove this job for good? ${captures} captures, ${entries} sheets with what was typed and seen, ${photos} photos are lost (about ${space}). Nothing brings them back; a record that was handed out stays.`;
  },
  doForGood: t`Yes, remove it for good`,
  openElsewhere: t`This job is open in another tab. Close that one first.`,
  /** @param {number} bytes */
  about: (bytes) => {
    const space = size(bytes);
    return t`about ${space}`;
  },
  /** @param {number} bytes */
  all: (bytes) => {
    const space = size(bytes);
    return t`Everything kept here, this page too, takes about ${space}.`;
  },
};
