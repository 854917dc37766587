// What a gauge's way in a native program says of random samples.

import { spawn } from 'node:child_process';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '../..');

/** First the limit sets, of which the first one is every job's, then case by case. */
export async function* told(cases, seed) {
  const args = ['run', '--quiet', '--locked', '--profile', 'study', '-p', 'plumbmark-tests'];
  const program = spawn('cargo', [...args, '--bin', 'gauge_lines', '--', String(cases), String(seed)], {
    cwd: ROOT,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  for await (const line of createInterface({ input: program.stdout })) yield JSON.parse(line);
}
