// Runs what the documents tell somebody to type, or knows where else it runs; fails for a command
// that nobody has thought about, and for a thought about none.

import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { documented } from './find.mjs';
import { FATES } from './table.mjs';

const LONGEST_MS = 600_000;
const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const steps = readFileSync(join(root, 'tests/run.sh'), 'utf8');
/** Where cargo leaves the gauge, and where somebody's board would be. */
const BUILT = process.env.CARGO_TARGET_DIR ?? 'core/gauge/target';
const place = mkdtempSync(join(tmpdir(), 'plumbmark-'));

/** @param {string} command @returns {string | undefined} why it failed */
function ran(command) {
  const { status, stdout, stderr } = spawnSync('sh', ['-c', command], {
    cwd: root,
    env: { ...process.env, BUILT, PLACE: place },
    encoding: 'utf8',
    timeout: LONGEST_MS,
    killSignal: 'SIGTERM',
  });
  if (status === 0) return undefined;
  return `ended with ${status ?? 'too long'}: ${(stdout + stderr).split('\n').slice(-12).join('\n')}`;
}

/** What is not run must at least be there and be read without complaint. @param {string} command */
function readable(command) {
  const scripts = [...command.matchAll(/\b(sh|node) ([\w./]+\.(?:sh|mjs))/g)];
  for (const [, program, path] of scripts) {
    if (!existsSync(join(root, path))) return `${path} is not there`;
    const why = ran(program === 'sh' ? `sh -n '${path}'` : `node --check '${path}'`);
    if (why) return why;
  }
  return undefined;
}

/** @param {string} command @param {import('./table.mjs').Fate} fate */
function tried(command, { run, as, step }) {
  if (run || as) return ran(as ?? command);
  if (step && !steps.includes(`"${step}"`)) return `tests/run.sh has no step "${step}"`;
  return readable(command);
}

const told = documented(root);
const failed = [];
for (const [command, fate] of Object.entries(FATES)) {
  const begun = performance.now();
  const why = told.has(command) ? tried(command, fate) : 'no document tells it any more: out of table.mjs';
  const how =
    fate.not ?? (fate.step ? `step "${fate.step}"` : `${Math.round((performance.now() - begun) / 1000)} s`);
  console.log(`${why ? 'FAIL' : 'ok  '} ${command}: ${why ?? how}`);
  if (why) failed.push(command);
}
for (const [command, files] of told) {
  if (FATES[command]) continue;
  console.log(
    `FAIL ${command} (${files.join(', ')}): tests/commands/table.mjs does not say what becomes of it`,
  );
  failed.push(command);
}
rmSync(place, { recursive: true, force: true });
console.log(`${told.size} documented commands, ${failed.length} failed`);
process.exitCode = failed.length ? 1 : 0;
