// The ways out where the store takes nothing: what is in memory goes into a file, or into the store
// once it opens again.

import { openStore } from '../carrier.js';
import { buildRecord } from './build.js';
import { handOver } from './hand-over.js';
import { takeIn } from './take-in.js';

/** @typedef {import('../context.js').Context} Context */

/** A record of what is here, saved or not. @param {Context} ctx */
export async function copyOut(ctx) {
  await handOver(ctx);
}

/** Writes what is not written. Where the job is not in the store any more, it becomes one of its own
 * beside what is there. @param {Context} ctx */
export async function tryAgain(ctx) {
  const { job } = ctx;
  // Before the store is there: a job of the same number may be somebody else's.
  const record = await buildRecord(ctx);
  const store = ctx.store ?? (await openStore({ tryout: ctx.tryout }));
  const there = (await store.jobs()).some(
    (j) => j.id === job.id && j.created_at === job.created_at,
  );
  ctx.useStore(store);
  if (there) return ctx.saveLeft();
  // Nothing was done meanwhile: what the store has is opened.
  const some = record.captures.length + record.entries.length > 0 || job.limits !== null;
  const id = some ? await takeIn(ctx, record) : ctx.settings.job;
  await ctx.keep({ job: id });
  await ctx.open(ctx.tryout, id);
  ctx.showAgain();
}
