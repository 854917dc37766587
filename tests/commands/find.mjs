// Every command that a document of this repository tells somebody to type.

import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const BEGINS = /^([A-Z_]+=\S+ +)*(sh|cargo|rustup|node|npm|npx|python3|cd|cp|adb|probe-rs) +\S/;

/** @param {string} line */
const bare = (line) =>
  line
    .replace(/^\$ /, '')
    .replace(/\s+#.*$/, '')
    .trim();

/** Commands of a text: in a fence of sh each line, elsewhere what begins like one.
 * @param {string} text Markdown @returns {string[]} */
export function commandsIn(text) {
  const found = [];
  let fence = null;
  for (const line of text.split('\n')) {
    const mark = line.match(/^\s*```(\w*)/);
    if (mark) fence = fence === null ? mark[1] : null;
    else if (fence === 'sh' || fence === 'bash') found.push(bare(line));
    else if (fence === '') found.push(...[bare(line)].filter((one) => BEGINS.test(one)));
    else if (fence === null)
      found.push(
        ...[...line.matchAll(/`([^`]+)`/g)].map(([, code]) => code).filter((one) => BEGINS.test(one)),
      );
  }
  return found.filter((one) => one !== '' && !one.startsWith('#'));
}

/** Of all documents: each command, and which of them tell it. @param {string} root
 * @returns {Map<string, string[]>} */
export function documented(root) {
  const told = new Map();
  const ask = ['ls-files', '--cached', '--others', '--exclude-standard', '*.md'];
  const files = execFileSync('git', ask, { cwd: root, encoding: 'utf8' }).split('\n').filter(Boolean);
  for (const file of files)
    for (const command of commandsIn(readFileSync(join(root, file), 'utf8')))
      told.set(command, [...(told.get(command) ?? []), file]);
  return told;
}
