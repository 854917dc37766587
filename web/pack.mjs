// Packs the page into dist/: the modules as one script, the try-out's apart, since most never load
// it; the styles as one sheet; the service worker's list; beside all that the page as one file; the
// version, made of what is in all of them; the sum of each.

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
import { basename, dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build, buildSync, transformSync } from 'esbuild';
import { laterThan, replaced, small } from './pack-common.mjs';
import { pageAsFile } from './pack-file.mjs';
import { ALL, languages, page } from './pack-languages.mjs';
import { sha256, sumsOf } from './pack-sums.mjs';
import { schema } from './record/schema.js';

const web = dirname(fileURLToPath(import.meta.url));
const number = readFileSync(join(web, '../Cargo.toml'), 'utf8').match(/^version = "(.*)"/m)?.[1];

/** @param {string} folder @returns {string[]} */
function filesBelow(folder) {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesBelow(path) : [relative(web, path)];
  });
}

/** @param {string} folder @param {RegExp} kind */
const from = (folder, kind) => filesBelow(join(web, folder)).filter((path) => kind.test(path));
// In the order that the page names them: later rules win.
const styles = [...page.matchAll(/href="(styles\/.*?\.css)"/g)].map((found) => found[1]);
const copied = [
  'index.html',
  'manifest.webmanifest',
  ...from('icons', /\.(png|svg)$/),
  ...from('guide', /\.webp$/),
  ...from('pkg', /(\.wasm|schema\.json)$/),
];
/** What stands for the version until it is known. */
const UNBUILT = 'unbuilt';

const out = join(web, 'dist.new');
rmSync(out, { recursive: true, force: true });
for (const path of copied) {
  mkdirSync(dirname(join(out, path)), { recursive: true });
  cpSync(join(web, path), join(out, path));
}

/** @param {string} path */
const source = (path) => readFileSync(join(web, path), 'utf8');
/** @param {string} path @param {string} text */
const ship = (path, text) => writeFileSync(join(out, path), text);

const { outputFiles, metafile } = await build({
  ...small,
  // The chunks' names are made of paths as seen from here: wherever the folder lies, the same.
  absWorkingDir: web,
  entryPoints: [join(web, 'app.js')],
  bundle: true,
  splitting: true,
  format: 'esm',
  outdir: out,
  plugins: [languages({ areInside: false })],
  metafile: true,
  write: false,
});
for (const { path, text } of outputFiles) ship(relative(out, path), text);
// The core's own scripts are loaded by their addresses, again after a trap.
const cores = ['pkg/plumbmark_phone', 'pkg/plumbmark_sheets', 'pkg/plumbmark_gauge'];
for (const core of cores) {
  const packed = buildSync({
    ...small,
    // wasm-bindgen names its module of ours once for every call: harmless.
    logLevel: 'error',
    entryPoints: [join(web, `${core}.js`)],
    bundle: true,
    format: 'esm',
    write: false,
  });
  ship(`${core}.js`, packed.outputFiles[0].text);
}
ship('pkg/record.schema.json', JSON.stringify(schema));
const sheet = transformSync(styles.map(source).join('\n'), { ...small, loader: 'css' }).code;
ship('styles.css', sheet);
const links = /( *<link rel="stylesheet" href="styles\/[a-z]+\.css">\n)+/;
// What the first screen waits for is asked for at once, not one round trip after the other.
const [, app] =
  Object.entries(metafile.outputs).find(([path]) => basename(path) === 'app.js') ?? [];
const parts = (app?.imports ?? []).filter(({ kind }) => kind === 'import-statement');
const soon = [...parts.map(({ path }) => basename(path)), 'pkg/plumbmark_phone.js']
  .map((path) => `    <link rel="modulepreload" href="${path}">\n`)
  .join('');
const core = `    <link rel="preload" href="pkg/plumbmark_phone_bg.wasm" as="fetch" crossorigin>\n`;
const one = `    <link rel="stylesheet" href="styles.css">\n${soon}${core}`;
ship('index.html', replaced(page, links, one));

const shipped = filesBelow(out)
  .map((path) => relative('dist.new', path))
  .sort();
const cached = ['./', ...shipped.filter((path) => path !== 'index.html')];
ship('sw.js', replaced(source('sw.js'), "['./']", JSON.stringify(cached)));
shipped.push('sw.js');
const AS_FILE = 'plumbmark.html';
const asFile = (/** @type {string} */ version) => pageAsFile({ page, sheet, version });
ship(AS_FILE, await asFile(UNBUILT));

// No file can hold its own sum: the version is that of all files as they are without one.
const version = `${number}+${sha256(sumsOf(out, [...shipped, AS_FILE]))}`;
for (const path of shipped.filter((path) => path.endsWith('.js'))) {
  const text = readFileSync(join(out, path), 'utf8');
  if (text.includes(UNBUILT)) ship(path, text.replaceAll(UNBUILT, version));
}
ship(AS_FILE, await asFile(version));
ship('SHA256SUMS', sumsOf(out, [...shipped, AS_FILE]));

rmSync(join(web, 'dist'), { recursive: true, force: true });
renameSync(out, join(web, 'dist'));

const icons = shipped.filter((path) => path.startsWith('icons/'));
const size = (/** @type {string[]} */ list) =>
  list.reduce(
    (sum, path) => sum + gzipSync(readFileSync(join(web, 'dist', path)), { level: 9 }).length,
    0,
  );
const kb = (/** @type {number} */ bytes) => `${(bytes / 1000).toFixed(1)} kB`;
console.log(
  `web/dist: version ${version}, ${shipped.length} files, and the page as one of its own`,
);
for (const path of [...cores.map((core) => `${core}_bg.wasm`), AS_FILE])
  console.log(
    `  ${path} ${kb(statSync(join(web, 'dist', path)).size)}, compressed ${kb(size([path]))}`,
  );
const whole = size(shipped) - size(icons);
const first = ALL.map((language) => {
  const later = shipped.filter((path) => laterThan(language).test(path));
  return `${language} ${kb(whole - size(later))}`;
});
console.log(`  whole page compressed, without icons ${kb(whole)}; first load: ${first.join(', ')}`);
