// Words of the cut plan.

import { t } from '../language.js';

/** @param {string} by @param {boolean} more */
const move = (by, more) =>
  more ? t`Move the cut or the thing ${by} farther apart.` : t`${by} less.`;

/** @param {string} by @param {boolean} more */
const grow = (by, more) => (more ? t`${by} more would prove it.` : t`${by} less.`);

/** @type {Record<string, string | [string, string]>} */
const fields = {
  panel_mm: t`Thickness of the panel`,
  lean_right: [t`Drill went right, mm for each mm`, t`seen from the near face; 0 where square`],
  lean_up: [t`Drill went up, mm for each mm`, t`0 where square`],
  wander_mm: [
    t`Edge as cut, outside its line`,
    t`0 on the line; ± is how well your saw follows it`,
  ],
  middle_right_mm: [t`Right of the pilot hole`, t`minus is left`],
  middle_up_mm: [t`Above the pilot hole`, t`minus is below`],
  turn_deg: [t`Turned anticlockwise`, t`0 is upright`],
  width_mm: t`Width`,
  height_mm: t`Height`,
  corner_mm: [t`Radius of its corners`, t`empty is square`],
  a_diameter_mm: t`Diameter`,
  a_right_mm: [t`Right of the middle of the cut`, t`minus is left`],
  a_up_mm: [t`Above the middle of the cut`, t`minus is below`],
  plate_width_mm: t`Width of the plate`,
  plate_height_mm: t`Height of the plate`,
  plate_right_mm: [t`Its middle, right of that of the cut`, t`minus is left`],
  plate_up_mm: [t`Its middle, above that of the cut`, t`minus is below`],
  seal_mm: [t`Width of the seal`, t`that must bear all round`],
  face: t`On which face`,
  right_mm: [t`Right of the pilot hole`, t`seen from its face; minus is left`],
  up_mm: [t`Above the pilot hole`, t`minus is below`],
  right_to_mm: [t`… and right as far as`, t`empty where it has no width`],
  up_to_mm: [t`… and up as far as`, t`empty where it has no height`],
  distance_mm: t`Distance from the pilot hole`,
  direction_deg: [t`Direction, degrees anticlockwise from right`, t`seen from its face; 90 is up`],
};
for (const letter of 'bcd')
  for (const name of ['diameter_mm', 'right_mm', 'up_mm'])
    fields[`${letter}_${name}`] = fields[`a_${name}`];

const BEYOND = t`a gap is the way from edge to edge of two flat shapes; nearest at a corner of one`;

export const words = {
  title: t`Cut plan`,
  cautions: [
    t`Find out what is behind before you drill: orange high-voltage cables, airbag and belt parts, tank, brake, air, hull.`,
    t`Pilot hole with a drill stop. Then look at both faces, measure to everything near, and only then cut.`,
    t`Never drill or cut into a tank, a frame rail or a pillar. Near fuel: no sparks, no hot work.`,
  ],
  frameWhy: t`All from the middle of one pilot hole. Right and up as you look at that face: on the far face, right is the other way, and this page turns it round.`,
  panel: t`Panel and tools`,
  panelWhy: t`A drill by hand leans: where the pilot hole comes out is that far off. Its ± is in the list further down.`,
  lean: t`How the pilot drill leaned`,
  where: t`Middle of the cut`,
  rectangle: t`A rectangle`,
  hole: t`A round hole`,
  holes: t`More round holes`,
  shapesWhy: t`A rectangle, round holes, or both. What is not cut stays empty.`,
  plate: t`Plate and seal over it`,
  things: t`What is near, on both faces`,
  thingsWhy: t`Ribs, pipes, cables, tank, anything. To its nearest edge; to its far edge too where it goes on. With only one of right and up entered, it counts as running on past the cut.`,
  byDistance: t`By distance and direction instead`,
  byDistanceWhy: t`Distance alone is enough: it is then taken to lie in the worst direction.`,
  addNear: t`Add a thing on the near face`,
  addFar: t`Add a thing on the far face`,
  print: t`Print the plan`,
  picture: {
    label: t`The cut to scale, seen from the near face`,
    seen: t`Seen from the near face. Dashed outlines lie behind the panel.`,
    pilot: t`pilot hole`,
    /** @param {string} length */
    bar: (length) => t`${length}: measure this bar before you use a print`,
    /** @param {number} per */
    scale: (per) => t`On paper 1 : ${per}`,
    /** @param {string} right @param {string} up @param {string} turn */
    offset: (right, up, turn) => t`Middle of the cut from the pilot hole: ${right}, ${up}${turn}.`,
    /** @param {string} by @param {boolean} more */
    right: (by, more) => (more ? t`${by} right` : t`${by} left`),
    /** @param {string} by @param {boolean} more */
    up: (by, more) => (more ? t`${by} up` : t`${by} down`),
    /** @param {string} by */
    turn: (by) => t`, turned ${by} anticlockwise`,
    /** @param {string} width @param {string} height @param {string} corner */
    rectangle: (width, height, corner) => t`${width} × ${height}, corner radius ${corner}`,
    /** @param {string} diameter */
    hole: (diameter) => `⌀ ${diameter}`,
    near: t`near face`,
    far: t`far face`,
  },
  /** @param {string} reach */
  look: (reach) =>
    t`The cut reaches ${reach} from the pilot hole. Look at both faces farther out than that.`,
  noThings: t`Nothing told yet: no answer about what is near.`,
  ticks: t`Looked for, on both faces`,
  ticksWhy: t`Each by itself, with a photo or in words. What you found goes into the list above.`,
  /** @type {Record<string, string>} */
  tick: {
    cut_near_face: t`Near face looked at, all round the cut`,
    cut_far_face: t`Far face looked at, all round the cut: by eye, mirror or camera`,
    cut_high_voltage: t`Orange high-voltage cables looked for`,
    cut_airbag_belt: t`Airbag and belt parts looked for`,
    cut_tank: t`Tank and fuel lines looked for`,
    cut_brake: t`Brake lines looked for`,
    cut_air: t`Air lines and air springs looked for`,
    cut_hull: t`Hull and frame structure looked for: nothing that carries is cut`,
    cut_pilot: t`Pilot hole drilled with a drill stop`,
    cut_sealed: t`Edges of the cut deburred and sealed`,
  },
  cut: {
    fields,
    choices: { face: [t`near face`, t`far face`] },
    results: {
      reach_mm: t`Farthest point of the cut from the pilot hole`,
      seal_spare_mm: t`Plate beyond cut and seal`,
      gap_mm: t`edge of the cut to the thing`,
      plate_gap_mm: t`edge of the plate to the thing`,
      left_mm: t`its left, seen from the near face`,
      right_mm: t`its right`,
      bottom_mm: t`its bottom`,
      top_mm: t`its top`,
      from_right_mm: t`nearest point of the cut, right`,
      from_up_mm: t`nearest point of the cut, up`,
      to_right_mm: t`its nearest point, right`,
      to_up_mm: t`its nearest point, up`,
    },
    how: {
      reach_mm: t`to the farthest point of the shapes that are cut`,
      seal_spare_mm: t`least of the four sides of the plate, less the seal`,
      gap_mm: BEYOND,
      plate_gap_mm: t`the same, of the plate; near face only`,
    },
    // On the far face no plate lies.
    silent: ['plate_gap_mm'],
    change: { cut_to_obstacle_mm: move, spare_room_mm: grow },
    /** @param {number} n */
    row: (n) => t`Thing ${n}`,
    /** @type {Record<string, string>} */
    problems: {
      'corner_mm.contradiction': t`Rounder than the rectangle is wide or high.`,
      'distance_mm.contradiction': t`Tell it by right and up, or by distance: not both.`,
    },
  },
};
