// Records from outside that were made to do harm: what is refused, with what the refusal names, and
// what is random.

import { words } from '../../web/words/record.js';

const exactly = (said) => new RegExp(`^${said.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}$`);
const SVG = '<svg xmlns="http://www.w3.org/2000/svg"><script>window.ran = 1</script></svg>';

/** A text with one byte that no UTF-8 has. */
function brokenUtf8(json) {
  const at = json.indexOf('Carrier');
  return Buffer.concat([Buffer.from(json.slice(0, at)), Buffer.from([0xc0]), Buffer.from(json.slice(at))]);
}

const before = (patch) => ({
  sha256: 'f'.repeat(64),
  checks: [{ id: 'a.b', what: 'w', value: 1, u: 1, unit: 'mm', at: null, ...patch }],
});

/** What a file holds, and what the refusal says. @param {string} json a record with a photo, a tick
 * and a capture */
export function refusedRecords(json) {
  const sound = JSON.parse(json);
  const changed = (patch) => JSON.stringify({ ...sound, ...patch });
  const inJob = (patch) => changed({ job: { ...sound.job, ...patch } });
  const inCapture = (patch) => changed({ captures: [{ ...sound.captures[0], ...patch }] });
  const support = sound.entries.find((e) => e.key === 'support');
  const inEntry = (patch) => changed({ entries: [{ ...support, ...patch }] });
  const withPhoto = (patch) => changed({ photos: [{ ...sound.photos[0], ...patch }] });
  const tick = { who: 'a', at: support.changed_at, reason: '', photo: 1 };
  const limits = { format: 'plumbmark-limits', version: 2, name: '', lines: [], surfaces: [] };
  const bound = { id: 'duct_loss_pa', low: null, high: 250, basis: 'assumed', source: '' };
  return [
    ['a byte that no UTF-8 has', brokenUtf8(json), exactly(words.notJson)],
    ['a name twice', json.replace('"job":', '"job":{},"job":'), exactly(words.twice)],
    ['a name twice, once escaped', json.replace('"job":', '"j\\u006fb":{},"job":'), exactly(words.twice)],
    ['a million brackets', '['.repeat(1e6), exactly(words.notJson)],
    ['a million lists', '['.repeat(1e6) + ']'.repeat(1e6), /^This file is no record/],
    [
      'deep limits',
      json.replace(/"limits":null/, `"limits":${'{"a":'.repeat(5e4)}1${'}'.repeat(5e4)}`),
      /^a: /,
    ],
    [
      'an exponent of ten digits',
      inJob({ before: before({ value: 1 }) }).replace('"value":1,', '"value":1e9999999999,'),
      /\.value: number is expected$/,
    ],
    [
      'a unit that nobody has',
      inJob({ before: before({ unit: 'constructor' }) }),
      /checks\[0\]\.unit: .constructor. is not known$/,
    ],
    ['a negative U', inJob({ before: before({ u: -1 }) }), /checks\[0\]\.u: it is below 0$/],
    ['constructor', inJob({ constructor: { prototype: { a: 1 } } }), /^record\.job\.constructor: /],
    ['a time that is none', inJob({ changed_at: 'zzz' }), /^record\.job\.changed_at: it has another form$/],
    ['a tick in a skipped step', inEntry({ skipped: { co: tick } }), /skipped\.co\.photo: null is expected$/],
    ['a name that can’t be a text', inEntry({ system: { toString: 1 } }), /system: .object. is not known$/],
    [
      'two entries of one sheet',
      changed({ entries: [support, support] }),
      /^record\.entries\[1\]\.key: there are two of it/,
    ],
    ['a photo that is not there', inEntry({ photos: [9] }), exactly(words.badPhoto)],
    [
      'a capture’s photo of a lower end',
      changed({
        photos: [...sound.photos, { ...sound.photos[0], id: 7, sheet: 'lower_end', about: '1' }],
        captures: [{ ...sound.captures[0], photos: [7] }],
      }),
      exactly(words.badPhoto),
    ],
    ['a lower end by another photo', inCapture({ photo: 1 }), exactly(words.badPhoto)],
    [
      'a drawing with a script',
      withPhoto({ jpeg_base64: Buffer.from(SVG).toString('base64') }),
      exactly(words.badPhoto),
    ],
    [
      'an address for a photo',
      withPhoto({ jpeg_base64: `data:image/svg+xml,${encodeURIComponent(SVG)}` }),
      exactly(words.badPhoto),
    ],
    [
      'limits with a field of prototypes',
      changed({ limits: { ...limits, bounds: [{ ...bound, constructor: {} }] } }),
      /^duct_loss_pa\.constructor: /,
    ],
    [
      'limits with __proto__',
      JSON.stringify({ ...sound, limits: 1 }).replace('"limits":1', '"limits":{"__proto__":{}}'),
      /^record\.limits\.__proto__: /,
    ],
  ];
}

const PIECES = [
  ...[
    '"__proto__":{"a":1},',
    '"constructor":1,',
    '1e999',
    '-0',
    '"\\ud800"',
    '\u202e',
    '=1+1',
    '<b>',
    '[[[[',
  ],
  ...['null', '{}', '""', '9'.repeat(400), '\\u0000', '"', '\\', ',', '}', ']', '"photos":[1],', 'true'],
];
const VALUES = [
  null,
  -1,
  0,
  1.5,
  1e300,
  '',
  'constructor',
  '__proto__',
  [],
  {},
  true,
  'y'.repeat(9000),
  [null],
];

/** Mutations of a record, always the same ones. @param {string} json @param {number} [seed] */
export function mutations(json, seed = 7) {
  let state = seed;
  const random = (n) => {
    state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
    return Math.floor((state / 0x80000000) * n);
  };
  const one = (list) => list[random(list.length)];
  const places = (root) => {
    const found = [];
    const walk = (value) => {
      if (typeof value !== 'object' || value === null) return;
      for (const key of Object.keys(value)) {
        found.push([value, key]);
        walk(value[key]);
      }
    };
    walk(root);
    return found;
  };
  const ways = [
    (text) => {
      const bytes = Buffer.from(text);
      bytes[random(bytes.length)] = random(256);
      return bytes;
    },
    (text) => text.slice(0, random(text.length)),
    (text) => {
      const at = random(text.length);
      return text.slice(0, at) + one(PIECES) + text.slice(at);
    },
    (text) => {
      const [from, length] = [random(text.length), random(60)];
      return text.slice(0, from) + text.slice(from + length);
    },
    // In these the JSON stays whole.
    (text) => {
      const record = JSON.parse(text);
      const [parent, key] = one(places(record));
      parent[key] = one(VALUES);
      return JSON.stringify(record);
    },
    (text) => {
      const record = JSON.parse(text);
      const [parent, key] = one(places(record));
      const [other, name] = one(places(record));
      parent[key] = structuredClone(other[name]);
      return JSON.stringify(record);
    },
    (text) => {
      const record = JSON.parse(text);
      // Where most is taken in: what was typed.
      const [parent, key] = one(places([record.entries, record.job]));
      if (typeof parent[key] === 'string') parent[key] = one(PIECES);
      return JSON.stringify(record);
    },
  ];
  return { next: () => one(ways)(json) };
}
