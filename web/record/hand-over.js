// The record of the open job, handed out as a file.

import { filed } from '../carrier.js';
import { handOut } from '../exchange.js';
import { day } from '../units.js';
import { buildRecord, bytesOf } from './build.js';
import { nameOf } from './jobs.js';

/** @typedef {import('../context.js').Context} Context */

/** @typedef {Awaited<ReturnType<typeof buildRecord>>} Built */

/** A file's name without what file systems dislike. @param {Built} record @param {string} end */
export function fileName({ job }, end) {
  const name = nameOf(job)
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 40);
  return `${name}-${day(job.changed_at)}.${end}`;
}

/** @param {Context} ctx @returns {Promise<Built>} what was handed out */
export async function handOver(ctx) {
  const { job } = ctx;
  const record = await buildRecord(ctx);
  const out = await handOut(fileName(record, 'json'), 'application/json', bytesOf(record));
  if (out) await filed(ctx, job, record);
  return record;
}
