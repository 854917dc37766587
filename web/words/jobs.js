// Words of the list of jobs.

/** @param {number} bytes */
const size = (bytes) =>
  bytes < 1e5 ? `${Math.ceil(bytes / 1000)} kB` : `${(bytes / 1e6).toFixed(1)} MB`;

export const words = {
  title: 'Jobs',
  search: 'Search: vehicle, heater, customer, date',
  none: 'No job like that.',
  open: 'open now',
  begin: 'New job',
  archived: 'Put away',
  deleted: 'Deleted',
  /** @param {string} day */
  unnamed: (day) => `Job of ${day}`,
  /** @param {string} day */
  changed: (day) => `changed ${day}`,
  /** @type {Record<string, [string, string]>} */
  fields: {
    vehicle: ['Vehicle', 'plate, fleet number or name'],
    heater: ['Heater', 'type and serial number, from its plate'],
    customer: ['Customer', 'for whom'],
    installer: ['Installer', 'who fits it'],
  },
  openIt: 'Open this job',
  next: 'The same heater in the next vehicle: a new job with these limits, nothing measured',
  again: 'Check it again: a new job beside what was measured then',
  archive: 'Put away',
  takeOut: 'Take out again',
  remove: 'Delete',
  askDelete:
    'Delete this job, with its captures, numbers and photos? It can be put back from the list of deleted ones.',
  doDelete: 'Yes, delete it',
  keepIt: 'No, keep it',
  isDeleted: 'This job is deleted.',
  putBack: 'Put it back',
  forGood: 'Remove for good',
  /** @param {{ captures: number, entries: number, photos: number, bytes: number }} content */
  askForGood: ({ captures, entries, photos, bytes }) =>
    `Remove this job for good? ${captures} captures, ${entries} sheets with what was typed and seen, ${photos} photos are lost (about ${size(bytes)}). Nothing brings them back; a record that was handed out stays.`,
  doForGood: 'Yes, remove it for good',
  openElsewhere: 'This job is open in another tab. Close that one first.',
  /** @param {number} bytes */
  about: (bytes) => `about ${size(bytes)}`,
  /** @param {number} bytes */
  all: (bytes) => `Everything kept here, this page too, takes about ${size(bytes)}.`,
};
