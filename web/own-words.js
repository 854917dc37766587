// What core's own limits say of themselves: kept as core says it, in every language, and shown in the
// reader's words.

import { text } from './text.js';

/** @param {string} kept @returns {string} as it is read */
export const asRead = (kept) => text.ofCore[kept] ?? kept;

/** @param {string} read @returns {string} as it is kept */
export const asKept = (read) =>
  Object.keys(text.ofCore).find((kept) => text.ofCore[kept] === read) ?? read;
