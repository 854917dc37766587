// The page as one file: scripts, styles, the modules of the core and the icon inside, closed by a
// policy that knows them by their hashes.

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, buildSync } from 'esbuild';
import { replaced, small } from './pack-common.mjs';
import { languages } from './pack-languages.mjs';

const web = dirname(fileURLToPath(import.meta.url));
/** Everything in the file is in the page; what is not cannot be had. */
const POLICY =
  "default-src 'none'; script-src SCRIPT 'wasm-unsafe-eval'; style-src STYLE; img-src data: blob:; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types 'none'";

/** A module of the core as file/cores.js has it. @param {'phone' | 'sheets' | 'gauge'} name */
function core(name) {
  const { outputFiles } = buildSync({
    ...small,
    // Its own address, which a file has no use for, is empty: harmless.
    logLevel: 'error',
    entryPoints: [join(web, `pkg/plumbmark_${name}.js`)],
    bundle: true,
    format: 'iife',
    globalName: 'glue',
    write: false,
  });
  const base64 = readFileSync(join(web, `pkg/plumbmark_${name}_bg.wasm`)).toString('base64');
  const bytes = `Uint8Array.from(atob('${base64}'), (letter) => letter.charCodeAt(0))`;
  return `${name}: { glue() { ${outputFiles[0].text}; return glue; }, bytes: () => ${bytes} }`;
}

/** Puts the file's own way of coming in the place of the host's. @type {import('esbuild').Plugin} */
const inside = {
  name: 'inside',
  setup(to) {
    to.onResolve({ filter: /\/carrier\.js$/ }, () => ({ path: join(web, 'file/carrier.js') }));
    to.onLoad({ filter: /\/file\/cores\.js$/ }, () => ({
      contents: `export const cores = { ${core('phone')}, ${core('sheets')}, ${core('gauge')} };`,
    }));
  },
};

/** @param {string} text */
function inline(text) {
  if (/<\/s|<!--/i.test(text)) throw new Error('this text would end where it stands in the page');
  return text;
}

/** @param {string} text as it stands between its tags */
const known = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** @param {{ page: string, sheet: string, version: string }} parts index.html as written, the
 *   styles as shipped */
export async function pageAsFile({ page, sheet, version }) {
  const { outputFiles } = await build({
    ...small,
    entryPoints: [join(web, 'app.js')],
    bundle: true,
    format: 'esm',
    plugins: [inside, languages({ areInside: true })],
    write: false,
  });
  const script = inline(outputFiles[0].text.replaceAll('unbuilt', version));
  const style = inline(sheet);
  const policy = POLICY.replace('SCRIPT', known(script)).replace('STYLE', known(style));
  const mark = readFileSync(join(web, 'icons/mark.svg'), 'utf8');
  const changes = /** @type {const} */ ([
    [/(?<=Content-Security-Policy" content=")[^"]*/, policy],
    [/ *<link rel="manifest"[^>]*>\n/, ''],
    [/ *<link rel="apple-touch-icon"[^>]*>\n/, ''],
    ['icons/mark.svg', `data:image/svg+xml,${encodeURIComponent(mark)}`],
    [/( *<link rel="stylesheet"[^>]*>\n)+/, `    <style>${style}</style>\n`],
    ['<script type="module" src="app.js">', `<script type="module">${script}`],
  ]);
  return changes.reduce((text, [what, by]) => replaced(text, what, by), page);
}
