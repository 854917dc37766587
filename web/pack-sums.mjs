// Sums of what is shipped, as `sha256sum --check` reads them.

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** @param {string | Uint8Array} content @returns {string} 64 hex digits */
export const sha256 = (content) => createHash('sha256').update(content).digest('hex');

/** A line for each file, sorted by path. @param {string} folder @param {string[]} paths in it */
export const sumsOf = (folder, paths) =>
  [...paths]
    .sort()
    .map((path) => `${sha256(readFileSync(join(folder, path)))}  ${path}\n`)
    .join('');
