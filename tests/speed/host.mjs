// A host far away: the page compressed, with ETags, over a connection that is slow for the page and
// for its service worker alike, which the browser's own throttling would let through.

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { HEADERS, TYPES } from '../../web/serve.mjs';

const CHUNK_BYTES = 1400;
const wait = (ms) => new Promise((done) => setTimeout(done, ms));

/** Serves `folder`; one connection is set up by two round trips (TCP, TLS 1.3), then shared, as by
 * HTTP/2: each answer waits one round trip, all of them share the width. */
export async function slowHost(folder, { rtt_ms, bytes_per_s }) {
  let asked = false;
  /** When the connection is free again. */
  let free_ms = 0;
  let sent = 0;
  async function trickle(response, body) {
    for (let at = 0; at < body.length; at += CHUNK_BYTES) {
      const chunk = body.subarray(at, at + CHUNK_BYTES);
      // One chunk of each answer at a time.
      free_ms = Math.max(free_ms, performance.now()) + (1000 * chunk.length) / bytes_per_s;
      await wait(free_ms - performance.now());
      response.write(chunk);
      sent += chunk.length;
    }
    response.end();
  }
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url, 'http://localhost');
    const path = pathname.endsWith('/') ? `${pathname}index.html` : pathname;
    const trips = asked ? 1 : 3;
    asked = true;
    await wait(trips * rtt_ms);
    const body = gzipSync(readFileSync(join(folder, path)), { level: 9 });
    const etag = `"${createHash('sha256').update(body).digest('hex').slice(0, 16)}"`;
    const headers = { ...HEADERS, ETag: etag, 'Content-Type': TYPES[extname(path)] };
    if (request.headers['if-none-match'] === etag) return response.writeHead(304, headers).end();
    response.writeHead(200, { ...headers, 'Content-Encoding': 'gzip' });
    await trickle(response, body);
  });
  await new Promise((done) => server.listen(0, '127.0.0.1', () => done(undefined)));
  return {
    url: `http://localhost:${server.address().port}/`,
    /** Bytes of bodies so far. */
    sent: () => sent,
    kill() {
      server.closeAllConnections();
      server.close();
    },
  };
}
