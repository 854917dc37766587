// Packs the page into dist/: the files as they are, the version made of what is in them, and the
// service worker's list. Everything ships that a browser asks for, and nothing else.

import { createHash } from 'node:crypto';
import {
  cpSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { transformSync } from 'esbuild';

const web = dirname(fileURLToPath(import.meta.url));
const number = readFileSync(join(web, '../Cargo.toml'), 'utf8').match(/^version = "(.*)"/m)?.[1];

/** @param {string} folder @returns {string[]} */
function filesBelow(folder) {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesBelow(path) : [relative(web, path)];
  });
}

const shipped = [
  'index.html',
  'manifest.webmanifest',
  ...readdirSync(web).filter((name) => name.endsWith('.js')),
  ...['screens', 'drawings', 'styles', 'tryout', 'icons', 'pkg'].flatMap((f) =>
    filesBelow(join(web, f)),
  ),
].filter((path) => /\.(html|webmanifest|js|css|png|svg|wasm)$/.test(path) && path !== 'types.js');

const hash = createHash('sha256');
for (const path of shipped.sort()) hash.update(path).update(readFileSync(join(web, path)));
const version = `${number}+${hash.digest('hex').slice(0, 12)}`;

const out = join(web, 'dist.new');
rmSync(out, { recursive: true, force: true });
for (const path of shipped) {
  mkdirSync(dirname(join(out, path)), { recursive: true });
  cpSync(join(web, path), join(out, path));
}

/** @param {string} path @param {string} from @param {string} to */
function rewrite(path, from, to) {
  const text = readFileSync(join(out, path), 'utf8');
  if (!text.includes(from)) throw new Error(`${path} has no ${from}`);
  writeFileSync(join(out, path), text.replace(from, to));
}
rewrite('version.js', "'unbuilt'", `'${version}'`);
rewrite('sw.js', "'unbuilt'", `'${version}'`);
const cached = shipped.filter((path) => path !== 'sw.js' && path !== 'index.html');
rewrite('sw.js', "['./']", JSON.stringify(['./', ...cached], null, 2));

// Comments, spaces and long local names are for readers of the sources; a slow phone need not
// fetch them.
for (const path of cached.filter((path) => /\.(js|css)$/.test(path))) {
  const loader = path.endsWith('.css') ? 'css' : 'js';
  const { code } = transformSync(readFileSync(join(out, path), 'utf8'), {
    loader,
    minify: true,
    charset: 'utf8',
    legalComments: 'none',
  });
  writeFileSync(join(out, path), code);
}

rmSync(join(web, 'dist'), { recursive: true, force: true });
renameSync(out, join(web, 'dist'));

const icons = shipped.filter((path) => path.startsWith('icons/'));
const size = (/** @type {string[]} */ list) =>
  list.reduce(
    (sum, path) => sum + gzipSync(readFileSync(join(web, 'dist', path)), { level: 9 }).length,
    0,
  );
const wasm = 'pkg/plumbmark_wasm_bg.wasm';
const kb = (/** @type {number} */ bytes) => `${(bytes / 1000).toFixed(1)} kB`;
console.log(`web/dist: version ${version}, ${shipped.length} files`);
console.log(
  `  .wasm ${kb(statSync(join(web, 'dist', wasm)).size)}, compressed ${kb(size([wasm]))}`,
);
console.log(`  whole page compressed, without icons ${kb(size(shipped) - size(icons))}`);
