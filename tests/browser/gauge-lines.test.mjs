// Gauge and page give the same answers for the same samples, to the last bit: thousands of random
// ones go through the gauge's way in a native program, through the page's phone as events, and
// through the gauge's line. Needs no browser: the page's own scripts and modules run here.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { before, test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { openBorder } from '../../web/border.js';
import { loadModule } from '../../web/module.js';
import { GaugeLines } from '../../web/plan/gauge-lines.js';
import { told } from './gauge-told.mjs';

const CASES = 14_000;
/** A calibration is of a phone, and still counts. */
const [DEVICE, NOW_MS] = [7, 1_000_000];

let phone;
let lines;
before(async () => {
  // A module fetches its .wasm from beside itself: here that is a file.
  globalThis.fetch = async (url) =>
    new Response(readFileSync(fileURLToPath(url)), { headers: { 'Content-Type': 'application/wasm' } });
  phone = openBorder(await loadModule('phone', 0));
  lines = await GaugeLines.load();
});

const single = new Float32Array(1);
const bitsOf = new Uint32Array(single.buffer);
/** The bits of a single, null for none. */
function bits(value) {
  if (value === null || Number.isNaN(value)) return null;
  assert.equal(Math.fround(value), value, 'a single came across whole');
  single[0] = value;
  return bitsOf[0];
}

/** The case's samples as events of a phone; its answers, or the reason for none. */
function byPhone(c, sets) {
  const { live } = phone;
  live.start();
  phone.setLimits(sets[c.limits]);
  live.set_sign(1);
  live.set_device(DEVICE, false);
  live.set_clock(NOW_MS);
  if (c.calibration) phone.restoreFindings([15, DEVICE, NOW_MS - 1000, ...c.calibration, 0]);
  let t_ms = 0;
  const send = (x, y, z) => {
    t_ms += c.dt_us / 1000;
    live.motion(t_ms, x / 10, y / 10, z / 10);
  };
  const reason = () => phone.catalogue.reasons[live.tick(t_ms)];
  // The first event has none before it to tell its time step by.
  send(...c.samples[0].slice(0, 3));
  phone.select(c.part, c.hold, c.surface);
  for (const [i, samples] of c.samples.entries()) {
    if (i > 0) {
      const kept = live.keep_placement();
      if (kept < 0) return phone.refusalName(kept);
      send(0, 0, 0);
      live.tick(t_ms);
      live.tell_turned();
    }
    for (let at = 0; at < samples.length; at += 3) send(...samples.slice(at, at + 3));
    for (const [at, check] of c.checks.entries()) phone.tellEnd(check, c.ends[at]);
    const none = reason();
    if (none) return none;
  }
  return c.checks.map((_, i) => ({
    value: bits(live.number(i, 0)),
    u: bits(live.number(i, 1)),
    margin: bits(live.number(i, 2)),
    verdict: phone.catalogue.verdicts[live.number(i, 6)],
    why: phone.catalogue.whys[live.number(i, 7)],
  }));
}

/** The answers of a line by these limits, and what it says that the gauge showed. */
function byLine(line, set) {
  lines.useLimits(set);
  const read = lines.read(line.trim());
  assert.equal(typeof read, 'object', `${read}: ${line}`);
  const answers = read.report.checks.map((c) => ({
    value: bits(c.value),
    u: bits(c.u),
    margin: bits(c.margin_deg),
    verdict: c.verdict,
    why: c.why,
  }));
  return { ...read, answers };
}

test('gauge and page answer alike, to the last bit', { timeout: 600_000 }, async () => {
  let sets = null;
  const seen = { phone: 0, line: 0, refused: 0, turn: 0, found: 0, answers: 0, verdicts: {} };
  for await (const c of told(CASES, 1)) {
    if (!sets) {
      sets = c;
      continue;
    }
    if (!c.own) {
      assert.deepEqual(byPhone(c, sets), c.refused ?? c.gauge);
      seen.phone += 1;
    }
    if (c.refused) {
      seen.refused += 1;
      continue;
    }
    const own = byLine(c.line, sets[c.limits]);
    assert.deepEqual(own.answers, c.gauge, 'by the gauge’s own limits');
    assert.deepEqual(byLine(c.line, sets[c.job]).answers, c.answers, 'by a job’s limits');
    for (const [i, shown] of own.shown.entries()) {
      const check = own.report.checks[i];
      assert.deepEqual([shown.verdict, shown.why], [check.verdict, check.why]);
      assert.ok(check.value === null || Math.abs(shown.value - check.value) < 0.00502);
      assert.ok(check.u === null || (shown.u >= check.u - 1e-5 && shown.u < check.u + 0.01002));
      seen.verdicts[check.verdict] = (seen.verdicts[check.verdict] ?? 0) + 1;
    }
    seen.line += 1;
    seen.answers += own.answers.length;
    if (own.report.zero_by in seen) seen[own.report.zero_by] += 1;
  }
  console.log(
    `# ${seen.phone} sets of samples as a phone’s events and ${seen.line} as lines, ${seen.answers} checks, alike to the last bit; ${seen.turn} turned end for end, ${seen.found} calibrated, ${seen.refused} refused alike; ${JSON.stringify(seen.verdicts)}`,
  );
  assert.ok(seen.phone >= 10_000 && seen.line >= 10_000);
  assert.ok(seen.turn > 1000 && seen.found > 1000 && seen.refused > 100);
  for (const verdict of ['within', 'beyond', 'not_proven', 'none']) assert.ok(seen.verdicts[verdict] > 500);
});
