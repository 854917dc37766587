// Bytes over the wire: what the page as built takes, each file after gzip -9.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { laterThan } from '../../web/pack-common.mjs';

/** kB of the page in `dist`: first load, all of it, each module of the core. */
export function sizes(dist) {
  const files = readdirSync(dist, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name).slice(dist.length + 1))
    .filter((path) => !path.startsWith('icons/'));
  const kb = (paths) =>
    paths.reduce((sum, path) => sum + gzipSync(readFileSync(join(dist, path)), { level: 9 }).length, 0) /
    1000;
  const cores = files.filter((path) => path.endsWith('.wasm'));
  return {
    first_kb: kb(files.filter((path) => !laterThan('en').test(path))),
    all_kb: kb(files.filter((path) => path !== 'plumbmark.html')),
    cores: cores.map((path) => ({ name: path.match(/plumbmark_(.*)_bg/)[1], kb: kb([path]) })),
    cores_kb: kb(cores),
  };
}
