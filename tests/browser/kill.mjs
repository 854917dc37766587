// A browser that can be killed as a dead battery kills it, and what is then in its store.

import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { chromium } from 'playwright-core';

const PATH = process.env.PLUMBMARK_CHROMIUM ?? '/usr/bin/chromium';
const FLAGS = ['--headless', '--no-sandbox', '--disable-gpu', '--no-first-run'];

process.once('SIGTERM', () => process.exit(1));

export const ROUNDS = Number(process.env.PLUMBMARK_KILLS ?? 5);
export const SEED = Number(process.env.PLUMBMARK_SEED ?? Date.now() % 1_000_000);

/** A small generator, so that a round that failed can be run again. */
export function randomOf(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A browser that is nobody's child but ours, so that all of it can be killed at once. */
export async function launchToKill(profile) {
  const portFile = join(profile, 'DevToolsActivePort');
  for (const left of ['DevToolsActivePort', 'SingletonLock', 'SingletonCookie', 'SingletonSocket'])
    rmSync(join(profile, left), { force: true });
  const flags = [...FLAGS, `--user-data-dir=${profile}`, '--remote-debugging-port=0', 'about:blank'];
  const child = spawn(PATH, flags, { detached: true, stdio: 'ignore' });
  const gone = new Promise((done) => child.once('exit', done));
  const end = () => {
    try {
      process.kill(-child.pid, 'SIGKILL');
    } catch {
      // Nobody of the group is left.
    }
  };
  // Not our group: it would outlive a run that is stopped.
  process.once('exit', end);
  const kill = async () => {
    process.off('exit', end);
    end();
    await gone;
  };
  try {
    let port;
    for (let i = 0; i < 600 && !port; i += 1) {
      await wait(50);
      try {
        port = readFileSync(portFile, 'utf8').match(/^(\d+)\n/)?.[1];
      } catch {
        // Not written yet.
      }
    }
    assert.ok(port, 'the browser opened its port');
    const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
    const context = browser.contexts()[0];
    return { context, page: context.pages()[0] ?? (await context.newPage()), kill };
  } catch (error) {
    await kill();
    throw error;
  }
}

/** All that a database's store holds, read beside the page's own code. Photos are left out. */
export const stored = (page, database, store = 'captures') =>
  page.evaluate(
    ([database, store]) =>
      new Promise((done, fail) => {
        const open = indexedDB.open(database);
        // Asking must not make what was not there.
        open.onupgradeneeded = () => open.transaction.abort();
        open.onerror = () => done([]);
        open.onsuccess = () => {
          const all = open.result.transaction(store).objectStore(store).getAll();
          all.onerror = () => fail(all.error);
          all.onsuccess = () => {
            open.result.close();
            done(all.result.map((c) => (store === 'photos' ? { ...c, blob: c.blob.size } : c)));
          };
        };
      }),
    [database, store],
  );
