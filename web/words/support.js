// Words of the support: unevenness under the seal, plate, seal, light-and-leak check.

import { t } from '../language.js';

export const words = {
  title: t`Support`,
  caution: t`Never work under a cab or an air-sprung body without stands. Edges of a cut are sharp.`,
  seal: t`Seal line and straightedge`,
  sealWhy: t`Lay the edge along every side of the seal and across both diagonals. Slide it: enter the widest gap on each line. If it rocks, press one end down and take the gap at the other.`,
  six: t`List the six lines`,
  /** @param {number} open */
  open: (open) =>
    open === 0
      ? t`All six lines read along their whole length.`
      : t`${open} of 6 lines not read along their whole length: the face can be found too uneven, but never shown to be even enough.`,
  picture: t`The seal line from above: lines read are solid, lines still open dashed.`,
  widest: t`widest`,
  phone: t`With the phone instead`,
  phoneWhy: t`Two tilts along the same direction, on opposite sides of the seal or one after the other, the phone turned the same way. This can find the face too uneven; it never proves it even: that takes the straightedge.`,
  plate: t`If the face is too uneven: a plate with a gasket, then read the plate.`,
  ticks: t`Seen with your own eyes`,
  tick: {
    plate: t`The face is even enough as it is, or plate and gasket are mounted and the plate was read.`,
    new_seal: t`The seal is new. A seal is used once.`,
    light_leak: t`After mounting: no lamp shines through round the seal, and no air or water comes through.`,
  },
};

const DRESS = t`Dress the face, or mount a plate with its gasket.`;

/** @param {string} by */
const flatter = (by) => t`${by} flatter: dress the face, or mount a plate with its gasket.`;

/** @type {Record<string, import('../plan/sheet.js').SheetWords>} */
export const sheets = {
  support: {
    fields: {
      long_mm: t`Long side of the seal line`,
      short_mm: t`Short side`,
      straightedge_mm: [t`Length of the straightedge`, t`as long as the diagonal, or longer`],
      straightness_mm: [t`How far off straight it can be`, t`its paper; or turn it over`],
      edge_spread: t`the straightedge itself`,
      line: t`Line`,
      goes_mm: [t`Blade that goes in`, t`thickest; 0 if none does`],
      stays_mm: [t`Blade that stays out`, t`the next thicker one`],
      step_spread: t`step between two blades`,
    },
    choices: {
      line: [
        t`Long side, one`,
        t`Long side, other`,
        t`Short side, one`,
        t`Short side, other`,
        t`Diagonal, one`,
        t`Diagonal, other`,
      ],
    },
    problems: {
      'stays_mm.contradiction': t`The blade that stays out must be thicker than the one that goes in.`,
    },
    results: {
      unevenness_mm: t`Unevenness under the seal`,
      at_least_mm: t`Unevenness, at least`,
      open_lines: t`Lines still open`,
      gap_mm: t`Gap`,
    },
    how: {
      unevenness_mm: t`widest gap, and the edge’s own straightness`,
      at_least_mm: t`widest gap found so far`,
      open_lines: t`not read, or the straightedge too short, or no blade stays out`,
      gap_mm: t`middle between the two blades`,
    },
    silent: ['at_least_mm'],
    change: { unevenness_mm: flatter },
    advice: {
      'at_least_mm.beyond': DRESS,
      'at_least_mm.not_proven': t`Read the lines that are still open.`,
    },
    row: (/** @type {number} */ n) => t`Reading ${n}`,
    addRow: t`Add a reading`,
  },
  twist: {
    fields: {
      first_deg: t`First tilt`,
      second_deg: [t`Second tilt`, t`phone turned the same way`],
      base_mm: [t`Length on which it rests`, t`phone, or straight bar under it`],
    },
    results: { at_least_mm: t`Unevenness, at least` },
    how: {
      at_least_mm: t`half of length · sin(difference): the ends are at best so far from any plane`,
    },
    advice: { 'at_least_mm.beyond': DRESS },
  },
};
