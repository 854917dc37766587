// A whole job on one phone, from the first open to the paper, with nothing sent: requests to the
// page's own origin alone, none with a body, no socket, nothing that the policy had to stop.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import Ajv from 'ajv/dist/2020.js';
import { ORDER } from '../../web/order.js';
import { schema } from '../../web/record/schema.js';
import { facts } from '../../web/words/job.js';
import { collectRequests, launch, served, tap } from './harness.mjs';
import { WHO } from './whole-job.mjs';
import { wholeJob } from './whole-start.mjs';

const valid = new Ajv({ allErrors: true, allowUnionTypes: true }).compile(schema);
/** What no check is made for: limits are for others, facts and the level are none. */
const NO_CHECKS = ['limits', 'job', 'level'];
const SECTIONS = Object.values(ORDER)
  .flat()
  .filter((name) => !NO_CHECKS.includes(name));

const server = served();

async function record(page) {
  await tap(page, 'record');
  await page.waitForSelector('[data-name="sha256"]:not(:empty)');
  const [download] = await Promise.all([page.waitForEvent('download'), tap(page, 'record-json')]);
  return JSON.parse(readFileSync(await download.path(), 'utf8'));
}

/** Pages of a PDF: objects of that type (ISO 32000-1, 7.7.3.3). */
const pages = (pdf) => pdf.toString('latin1').match(/\/Type\s*\/Page(?![A-Za-z])/g)?.length ?? 0;

test('a whole job, from the first open to the paper', { timeout: 240_000 }, async (t) => {
  const b = await launch();
  t.after(() => b.close());
  const { page } = b;
  page.setDefaultTimeout(10_000);
  const requests = collectRequests(b.context);
  const sent = [];
  b.context.on(
    'request',
    (r) => (r.method() !== 'GET' || r.postData()) && sent.push(`${r.method()} ${r.url()}`),
  );
  page.on('websocket', (socket) => sent.push(socket.url()));
  // Kept over a reload: by the test, not by the page.
  await page.exposeFunction('policyBroken', (what) => sent.push(what));
  await page.addInitScript(() =>
    addEventListener('securitypolicyviolation', (e) =>
      window.policyBroken(`${e.effectiveDirective} ${e.blockedURI}`),
    ),
  );
  await page.goto(server.url);
  await wholeJob(page);

  const kept = await record(page);
  assert.ok(valid(kept), JSON.stringify(valid.errors?.slice(0, 4)));
  const answered = (name) =>
    kept.checks.filter((c) => c.section === name && ['within', 'beyond', 'not_proven'].includes(c.verdict));
  for (const name of SECTIONS) assert.ok(answered(name).length > 0, name);
  const of = (id) => kept.checks.find((c) => c.id === id);
  // 4.6 m and 4.1 m of 6 mm² (3.3 Ω/km, IEC 60228) at 40 °C, and 8 mΩ: 38.97 mΩ · 10.5 A.
  assert.ok(Math.abs(of('cable.start_drop_v').value - 0.409) < 0.002);
  assert.equal(of('cable.start_drop_v').verdict, 'within');
  assert.ok(Math.abs(of('pump_outlet').value - 25) < 0.3);
  // No limit was copied for it.
  assert.equal(of('ducts.loss_a_pa').verdict, 'not_proven');
  assert.equal(of('cut_plan').verdict, 'not_needed');
  const asked = kept.facts.filter((f) => f.section === 'job');
  assert.deepEqual(
    asked.map((f) => [f.state, f.who]),
    asked.map(() => ['seen', WHO]),
  );
  assert.equal(asked.length, Object.keys(facts).length);
  const started = kept.facts.filter((f) => f.id.startsWith('start.'));
  assert.equal(started.filter((f) => f.state === 'seen').length, 17);
  assert.equal(kept.captures.length, 4);

  for (const format of ['A4', 'Letter']) {
    // To be looked at after a run.
    const path = new URL(`shots/latest/record-${format}.pdf`, import.meta.url).pathname;
    const count = pages(await page.pdf({ format, path }));
    console.log(`${format}: ${count} pages, ${kept.checks.length} checks`);
    assert.ok(count === 1 || count === 2, `${format}: ${count} pages`);
  }
  assert.ok(requests.length > 5);
  const elsewhere = requests.filter((url) => new URL(url).origin !== new URL(server.url).origin);
  assert.deepEqual(elsewhere, []);
  assert.deepEqual(sent, []);
  assert.deepEqual(b.faults, []);
});
