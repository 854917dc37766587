// What the page shows without a browser: units against exact values, holding pictures against the
// rotations that core uses, sounds, a browser's rounding, words.

import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { phoneCorners } from '../../web/drawings/hold.js';
import { PATTERNS } from '../../web/sound.js';
import { text } from '../../web/text.js';
import { parseTrace } from '../../web/tryout/replay.js';
import { rounded } from '../../web/tryout/phone.js';
import { fromShown, toShown, valueAndU, widthFromShown, widthToShown } from '../../web/plan/units.js';
import { formatAngle, formatLength, formatU, lengthFromField, parseNumber } from '../../web/units.js';
import { REFERENCE } from './harness.mjs';

// Slopes: exact tangents; 45° is 100 % and 1000 mm/m, arctan 0.02 is 1.1458°.
test('degrees, percent and mm/m are the exact slope', () => {
  for (const [deg, percent, mm_m] of [
    [45, '100.0 %', '1000 mm/m'],
    [-45, '−100.0 %', '−1000 mm/m'],
    [1.145763, '2.0 %', '20 mm/m'],
    [30, '57.7 %', '577 mm/m'],
    [0, '0.0 %', '0 mm/m'],
  ]) {
    assert.equal(formatAngle(deg, 'percent'), percent);
    assert.equal(formatAngle(deg, 'mm_m'), mm_m);
  }
  assert.equal(formatAngle(-0.01), '0.0°', 'no minus before nothing');
  assert.equal(formatAngle(75, 'percent'), '75.0°', 'a steep one stays in degrees');
});

test('rounding carries no value across its limit, and never makes U smaller', () => {
  assert.equal(formatAngle(14.96, 'deg', [15]), '14.96°');
  assert.equal(formatAngle(15.04, 'deg', [15]), '15.04°');
  for (let u = 0.001; u < 2; u += 0.0137) assert.ok(Number(formatU(20, u).slice(0, -1)) >= u - 1e-4);
  for (let deg = -40; deg <= 40; deg += 7) {
    const shown = Number(formatU(deg, 1, 'mm_m').split(' ')[0]);
    const slope = (a) => 1000 * Math.tan((a * Math.PI) / 180);
    const wide = Math.max(slope(deg + 1) - slope(deg), slope(deg) - slope(deg - 1));
    assert.ok(shown >= wide - 0.01, `${deg}: ${shown} < ${wide}`);
  }
});

// The international inch is 25.4 mm exactly (NIST SP 811).
test('lengths in inches are those of NIST', () => {
  assert.equal(formatLength(25.4, 'us'), '1 in');
  assert.equal(formatLength(12.7, 'us'), '1/2 in');
  assert.equal(formatLength(28.575, 'us'), '1 1/8 in');
  assert.equal(lengthFromField(10, 'us'), 254);
});

test('numbers are taken with comma or point, and nothing else is a number', () => {
  assert.equal(parseNumber('1,5'), 1.5);
  assert.equal(parseNumber(' −2.25 '), -2.25);
  assert.equal(parseNumber(''), null);
  assert.equal(parseNumber('0,075'), 0.075);
  assert.equal(parseNumber('2.125'), 2.125);
  for (const bad of [
    'abc',
    '1.2.3',
    '1,000.5',
    '2,000',
    '12,500',
    '1e3',
    '0x10',
    'Infinity',
    'NaN',
    '--1',
    '1 2',
    '.',
  ])
    assert.throws(() => parseNumber(bad), /not_a_number/, bad);
});

test('a picture follows the rotation: swapping two holds changes it', () => {
  // Rows of body = R · device, as the words of the holds have them.
  const back = [0, 1, 0, -1, 0, 0, 0, 0, 1];
  const edge = [0, 1, 0, 0, 0, -1, -1, 0, 0];
  const extent = (rotation) => {
    const corners = phoneCorners(rotation, 'metal_face');
    const heights = corners.map(([, y]) => y);
    return Math.max(...heights) - Math.min(...heights);
  };
  // Lying on its back the phone is low on the paper; on its long edge it stands its width high.
  assert.ok(extent(edge) > extent(back) + 15, `${extent(edge)} and ${extent(back)}`);
  // The top edge (device +y) points to the head end, to the right, in both.
  for (const rotation of [back, edge]) {
    const corners = phoneCorners(rotation, 'metal_face');
    for (const i of [0, 1, 4, 5]) assert.ok(corners[i + 2][0] > corners[i][0] + 100);
  }
  assert.notDeepEqual(phoneCorners(back, 'metal_face'), phoneCorners(edge, 'metal_face'));
});

test('the three sounds and "no verdict" differ by count and length, not by pitch alone', () => {
  const rhythm = (name) => JSON.stringify(PATTERNS[name].map(([start, length]) => [start, length]));
  assert.equal(new Set(Object.keys(PATTERNS).map(rhythm)).size, 4);
  for (const pattern of Object.values(PATTERNS)) {
    const [start, length] = pattern.at(-1);
    assert.ok(start + length <= 1.5);
  }
});

// W3C Device Orientation, note on fingerprinting: 0.1 degrees and 0.1 m/s².
test('the try-out rounds as the standard says', () => {
  assert.equal(rounded(9.84, 0.1).toFixed(6), '9.800000');
  assert.equal(rounded(-0.05, 0.1).toFixed(6), '-0.100000');
  assert.equal(Object.is(rounded(-0.01, 0.1), 0), true);
});

test('a trace with wrong columns, text or backward time is refused', () => {
  const good = readFileSync(join(REFERENCE, 'broad-04-stream.csv'), 'utf8');
  assert.equal(parseTrace(good).length, 6858);
  for (const bad of [
    '',
    't_ms,ax\n1,2\n2,3',
    't_ms,ax,ay,az\n0,a,b,c\n1,0,0,0',
    't_ms,ax,ay,az\n5,0,0,0\n4,0,0,0',
  ])
    assert.throws(() => parseTrace(bad));
});

test('no word of the page promises safety, and none stands outside the catalogue', () => {
  const words = [];
  const walk = (value) => {
    if (typeof value === 'string') words.push(value);
    else if (value && typeof value === 'object') Object.values(value).forEach(walk);
  };
  walk(text);
  assert.ok(words.length > 150);
  for (const word of words) assert.doesNotMatch(word, /\bsafe(ly|ty)?\b|\bapproved\b|\bguarantee/i);
  const screens = new URL('../../web/screens/', import.meta.url);
  for (const file of readdirSync(screens)) {
    const code = readFileSync(new URL(file, screens), 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, '');
    // Two words with a space between them in quotes are a sentence, not a name.
    const found = code.match(/(['"])[A-Z][a-z]+ [a-z]+[^'"\n]*\1/g);
    assert.equal(found, null, `${file}: ${found}`);
  }
});

// NIST SP 811 (2008), Appendix B.8; exact but for inH2O (conventional), all nine digits.
test('US units of the sheets are those of NIST', () => {
  const exact = [
    ['mm', 25.4],
    ['m', 0.3048],
    ['cm2', 6.4516],
    ['l', 3.785411784],
    ['l_per_h', 3.785411784],
    ['pa', 249.08891],
    ['kg_per_h', 0.45359237],
    ['m3_per_h', 1.69901079552],
    ['m_per_s', 0.3048],
  ];
  for (const [unit, factor] of exact) {
    assert.ok(Math.abs(fromShown(1, unit, 'us') / factor - 1) < 1e-12, unit);
    assert.ok(Math.abs(toShown(factor, unit, 'us') - 1) < 1e-12, unit);
    assert.ok(Math.abs(widthFromShown(1, unit, 'us') / factor - 1) < 1e-12, unit);
  }
  assert.equal(toShown(100, 'celsius', 'us'), 212);
  assert.equal(fromShown(32, 'celsius', 'us'), 0);
  assert.ok(Math.abs(widthToShown(10, 'kelvin', 'us') - 18) < 1e-12);
  assert.ok(Math.abs(widthToShown(10, 'celsius', 'us') - 18) < 1e-12, 'a difference has no zero of its own');
});

test('a value beside a limit is not rounded across it, and U only up', () => {
  assert.deepEqual(valueAndU(101.58, 2.31, 'mm', 'metric', [101.6]), { value: '101.58', u: '± 2.31 mm' });
  assert.deepEqual(valueAndU(120, Infinity, 'pa', 'metric'), { value: '120', u: '± ∞ Pa' });
  for (let u = 0.003; u < 40; u *= 1.37) {
    const { u: shown } = valueAndU(100, u, 'mm', 'metric');
    assert.ok(Number(shown.split(' ')[1]) >= u - 1e-9, shown);
  }
});
