// npm's and Python's packages: each of one exact version, known by its hash, under a licence that is
// allowed; none of them goes into the page.

import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const read = (path) => readFileSync(join(root, path), 'utf8');
/** They ask to pass the notice on, or (MPL-2.0, of axe-core, a test's) to give out changes of their own files. */
const LICENCES = ['MIT', 'Apache-2.0', 'BSD-3-Clause', 'ISC', 'BlueOak-1.0.0', 'MPL-2.0'];
/** Packages that may run a script when they are installed: esbuild picks its binary. */
const SCRIPTS = ['node_modules/esbuild'];
const wrong = [];
const want = (right, what) => right || wrong.push(what);

for (const folder of ['web', 'tests/browser']) {
  const { dependencies = {}, devDependencies } = JSON.parse(read(`${folder}/package.json`));
  want(Object.keys(dependencies).length === 0, `${folder}: a dependency that is not for building`);
  for (const [name, version] of Object.entries(devDependencies))
    want(/^\d+\.\d+\.\d+$/.test(version), `${folder}: ${name} ${version} is not one version`);
  const { '': _, ...packages } = JSON.parse(read(`${folder}/package-lock.json`)).packages;
  for (const [path, { integrity, license = '', hasInstallScript, resolved }] of Object.entries(packages)) {
    want(/^sha512-/.test(integrity ?? ''), `${folder}: ${path} has no hash`);
    want(license.split(' OR ').some((one) => LICENCES.includes(one)), `${folder}: ${path} is under ${license}`);
    want(!hasInstallScript || SCRIPTS.includes(path), `${folder}: ${path} runs a script when installed`);
    want(!resolved || resolved.startsWith('https://registry.npmjs.org/'), `${folder}: ${path} from ${resolved}`);
  }
}

const below = (folder) =>
  readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    if (['node_modules', 'dist', 'dist.new', 'pkg'].includes(entry.name)) return [];
    const path = `${folder}/${entry.name}`;
    return entry.isDirectory() ? below(path) : path;
  });
for (const path of below('web').filter((name) => name.endsWith('.js')))
  for (const [, from] of read(path).matchAll(/^(?:import|export)\b[^;]*?from '([^']+)'/gm))
    want(/^\.{1,2}\//.test(from), `${path}: ${from} would go into the page`);

for (const folder of readdirSync(join(root, 'tests'))) {
  let lines;
  try {
    lines = read(`tests/${folder}/requirements.txt`).replaceAll('\\\n', ' ').split('\n').filter(Boolean);
  } catch {
    continue;
  }
  for (const line of lines)
    want(/^[\w-]+==[\d.]+( .*)? --hash=sha256:[0-9a-f]{64}/.test(line), `tests/${folder}: ${line.slice(0, 60)} has no version or no hash`);
}

for (const what of wrong) console.error(what);
if (wrong.length) process.exit(1);
