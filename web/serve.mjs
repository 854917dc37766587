// Serves web/dist on localhost with the headers that a host should send. No dependencies.

import { createReadStream, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { dirname, extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

export const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webp': 'image/webp',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
  '.json': 'application/json',
  // The list of sums.
  '': 'text/plain; charset=utf-8',
};

/** The same policy stands in index.html, for hosts that send no headers; a test compares them. */
export const PAGE_POLICY =
  "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' blob:; connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types sw";

export const HEADERS = {
  'Content-Security-Policy': `${PAGE_POLICY}; frame-ancestors 'none'`,
  // No word on the magnetometer: one engine asks for it before it gives orientation.
  'Permissions-Policy':
    'accelerometer=(self), gyroscope=(self), screen-wake-lock=(self), camera=(), microphone=(), geolocation=()',
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cache-Control': 'no-cache',
};
const WORKER_POLICY = "default-src 'none'; connect-src 'self'";

/** @param {string} folder */
export function pageServer(folder) {
  return createServer((request, response) => {
    const path = normalize(
      decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname),
    );
    const file = join(folder, path.endsWith('/') ? `${path}index.html` : path);
    for (const [name, value] of Object.entries(HEADERS)) response.setHeader(name, value);
    if (path === '/sw.js') response.setHeader('Content-Security-Policy', WORKER_POLICY);
    // The page as one file is taken away: under this policy it could not run.
    if (path === '/plumbmark.html') response.setHeader('Content-Disposition', 'attachment');
    const type = TYPES[/** @type {keyof typeof TYPES} */ (extname(file))];
    try {
      if (!type || !file.startsWith(folder) || !statSync(file).isFile()) throw new Error(path);
    } catch {
      response.writeHead(404, { 'Content-Type': 'text/plain' }).end('not found');
      return;
    }
    response.writeHead(200, { 'Content-Type': type });
    createReadStream(file).pipe(response);
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const folder =
    process.env.PLUMBMARK_DIST ?? join(dirname(fileURLToPath(import.meta.url)), 'dist');
  readFileSync(join(folder, 'index.html'));
  const port = Number(process.env.PORT ?? 8137);
  const server = pageServer(folder);
  server.on('error', (error) => {
    console.error(`Stopped: ${error.message}. Another port: PORT=8138 sh web/serve.sh`);
    process.exit(1);
  });
  server.listen(port, '127.0.0.1', () => {
    const { port: used } = /** @type {import('node:net').AddressInfo} */ (server.address());
    console.log(`Plumbmark: http://localhost:${used}/   (Ctrl-C stops it)

On an Android phone: switch on USB debugging, connect the cable, then
  adb reverse tcp:${used} tcp:${used}
and open http://localhost:${used}/ on the phone. A plain address of this computer in the
network gets no sensors: browsers give them to https pages and to localhost only.
On an iPhone: put web/dist on any host with https, open it once, add it to the home screen.`);
  });
}
