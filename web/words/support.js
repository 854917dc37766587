// Words of the support: unevenness under the seal, plate, seal, light-and-leak check.

export const words = {
  title: 'Support',
  caution: 'Never work under a cab or an air-sprung body without stands. Edges of a cut are sharp.',
  seal: 'Seal line and straightedge',
  sealWhy:
    'Lay the edge along every side of the seal and across both diagonals. Slide it: enter the widest gap on each line. If it rocks, press one end down and take the gap at the other.',
  six: 'List the six lines',
  /** @param {number} open */
  open: (open) =>
    open === 0
      ? 'All six lines read along their whole length.'
      : `${open} of 6 lines not read along their whole length: the face can be found too uneven, not even enough.`,
  picture: 'The seal line from above: lines read are solid, lines still open dashed.',
  widest: 'widest',
  phone: 'With the phone instead',
  phoneWhy:
    'Two tilts along the same direction, on opposite sides of the seal or one after the other, the phone turned the same way. This can find the face too uneven; it never proves it even: that takes the straightedge.',
  plate: 'If the face is too uneven: a plate with a gasket, then read the plate.',
  ticks: 'Seen with your own eyes',
  tick: {
    plate: 'Where the face was too uneven: plate and gasket are mounted, and the plate was read.',
    new_seal: 'The seal is new. A seal is used once.',
    light_leak:
      'After mounting: no lamp shines through round the seal, and no air or water comes through.',
  },
};

const DRESS = 'Dress the face, or mount a plate with its gasket.';

/** @param {string} by */
const flatter = (by) => `${by} flatter: dress the face, or mount a plate with its gasket.`;

/** @type {Record<string, import('../plan/sheet.js').SheetWords>} */
export const sheets = {
  support: {
    fields: {
      long_mm: 'Long side of the seal line',
      short_mm: 'Short side',
      straightedge_mm: ['Length of the straightedge', 'as long as the diagonal, or longer'],
      straightness_mm: ['How far off straight it can be', 'its paper; or turn it over'],
      edge_spread: 'the straightedge itself',
      line: 'Line',
      goes_mm: ['Blade that goes in', 'thickest; 0 if none does'],
      stays_mm: ['Blade that stays out', 'the next thicker one'],
      step_spread: 'step between two blades',
    },
    choices: {
      line: [
        'Long side, one',
        'Long side, other',
        'Short side, one',
        'Short side, other',
        'Diagonal, one',
        'Diagonal, other',
      ],
    },
    problems: {
      'stays_mm.contradiction':
        'The blade that stays out must be thicker than the one that goes in.',
    },
    results: {
      unevenness_mm: 'Unevenness under the seal',
      at_least_mm: 'Unevenness, at least',
      open_lines: 'Lines still open',
      gap_mm: 'Gap',
    },
    how: {
      unevenness_mm: 'widest gap, and the edge’s own straightness',
      at_least_mm: 'widest gap found so far',
      open_lines: 'not read, or the straightedge too short, or no blade stays out',
      gap_mm: 'middle between the two blades',
    },
    silent: ['at_least_mm'],
    change: { unevenness_mm: flatter },
    advice: {
      'at_least_mm.beyond': DRESS,
      'at_least_mm.not_proven': 'Read the lines that are still open.',
    },
    row: (/** @type {number} */ n) => `Reading ${n}`,
    addRow: 'Add a reading',
  },
  twist: {
    fields: {
      first_deg: 'First tilt',
      second_deg: ['Second tilt', 'phone turned the same way'],
      base_mm: ['Length on which it rests', 'phone, or straight bar under it'],
    },
    results: { at_least_mm: 'Unevenness, at least' },
    how: {
      at_least_mm: 'half of length · sin(difference): the ends are at best so far from any plane',
    },
    advice: { 'at_least_mm.beyond': DRESS },
  },
};
