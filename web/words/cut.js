// Words of the cut plan.

/** @param {string} by @param {boolean} more */
const move = (by, more) => (more ? `Move the cut or the thing ${by} apart.` : `${by} less.`);

/** @param {string} by @param {boolean} more */
const grow = (by, more) => (more ? `${by} more would prove it.` : `${by} less.`);

/** @type {Record<string, string | [string, string]>} */
const fields = {
  panel_mm: 'Thickness of the panel',
  lean_right: ['Drill went right, mm for each mm', 'seen from the near face; 0 where square'],
  lean_up: ['Drill went up, mm for each mm', '0 where square'],
  wander_mm: ['Edge as cut, outside its line', '0 on the line; ± is how well your saw follows it'],
  middle_right_mm: ['Right of the pilot hole', 'minus is left'],
  middle_up_mm: ['Above the pilot hole', 'minus is below'],
  turn_deg: ['Turned anticlockwise', '0 is upright'],
  width_mm: 'Width',
  height_mm: 'Height',
  corner_mm: ['Radius of its corners', 'empty is square'],
  a_diameter_mm: 'Diameter',
  a_right_mm: ['Right of the middle of the cut', 'minus is left'],
  a_up_mm: ['Above the middle of the cut', 'minus is below'],
  plate_width_mm: 'Width of the plate',
  plate_height_mm: 'Height of the plate',
  plate_right_mm: ['Its middle, right of that of the cut', 'minus is left'],
  plate_up_mm: ['Its middle, above that of the cut', 'minus is below'],
  seal_mm: ['Width of the seal', 'that must bear all round'],
  face: 'On which face',
  right_mm: ['Right of the pilot hole', 'seen from its face; minus is left'],
  up_mm: ['Above the pilot hole', 'minus is below'],
  right_to_mm: ['… and right as far as', 'empty where it has no width'],
  up_to_mm: ['… and up as far as', 'empty where it has no height'],
  distance_mm: 'Distance from the pilot hole',
  direction_deg: ['Direction, degrees anticlockwise from right', 'seen from its face; 90 is up'],
};
for (const letter of 'bcd')
  for (const name of ['diameter_mm', 'right_mm', 'up_mm'])
    fields[`${letter}_${name}`] = fields[`a_${name}`];

const BEYOND = 'a gap is the way from edge to edge of two flat shapes; nearest at a corner of one';

export const words = {
  title: 'Cut plan',
  cautions: [
    'Find out what is behind before you drill: orange high-voltage cables, airbag and belt parts, tank, brake, air, hull.',
    'Pilot hole with a drill stop. Then look at both faces, tape everything near, and only then cut.',
    'Never into a tank, a frame rail or a pillar. Near fuel: no sparks, no hot work.',
  ],
  frameWhy:
    'All from the middle of one pilot hole. Right and up as you look at that face: on the far face, right is the other way, and this page turns it round.',
  panel: 'Panel and tools',
  panelWhy:
    'A drill by hand leans: where the pilot hole comes out is that far off. Its ± is in the list further down.',
  lean: 'How the pilot drill leaned',
  where: 'Middle of the cut',
  rectangle: 'A rectangle',
  hole: 'A round hole',
  holes: 'More round holes',
  shapesWhy: 'A rectangle, round holes, or both. What is not cut stays empty.',
  plate: 'Plate and seal over it',
  things: 'What is near, on both faces',
  thingsWhy:
    'Ribs, pipes, cables, tank, anything. To its nearest edge; to its far edge too where it goes on. Only one of right and up: it runs on past the cut.',
  byDistance: 'By distance and direction instead',
  byDistanceWhy: 'Distance alone is enough: it is then taken to lie in the worst direction.',
  addNear: 'Add a thing on the near face',
  addFar: 'Add a thing on the far face',
  print: 'Print the plan',
  picture: {
    label: 'The cut to scale, seen from the near face',
    seen: 'Seen from the near face. Dashed outlines lie behind the panel.',
    pilot: 'pilot hole',
    /** @param {string} reach */
    reach: (reach) => `cut reaches ${reach}`,
    /** @param {string} length */
    bar: (length) => `${length}: tape this bar before you use a print`,
    /** @param {number} per */
    scale: (per) => `On paper 1 : ${per}`,
    /** @param {string} right @param {string} up @param {string} turn */
    offset: (right, up, turn) => `Middle of the cut from the pilot hole: ${right}, ${up}${turn}.`,
    /** @param {string} by @param {boolean} more */
    right: (by, more) => `${by} ${more ? 'right' : 'left'}`,
    /** @param {string} by @param {boolean} more */
    up: (by, more) => `${by} ${more ? 'up' : 'down'}`,
    /** @param {string} by */
    turn: (by) => `, turned ${by} anticlockwise`,
    /** @param {string} width @param {string} height @param {string} corner */
    rectangle: (width, height, corner) => `${width} × ${height}, corners ${corner}`,
    /** @param {string} diameter */
    hole: (diameter) => `⌀ ${diameter}`,
    near: 'near face',
    far: 'far face',
  },
  /** @param {string} reach */
  look: (reach) =>
    `The cut reaches ${reach} from the pilot hole. Look at both faces farther out than that.`,
  noThings: 'Nothing told yet: no answer about what is near.',
  ticks: 'Looked for, on both faces',
  ticksWhy: 'Each by itself, with a photo or in words. What you found goes into the list above.',
  /** @type {Record<string, string>} */
  tick: {
    cut_near_face: 'Near face looked at, all round the cut',
    cut_far_face: 'Far face looked at, all round the cut: by eye, mirror or camera',
    cut_high_voltage: 'Orange high-voltage cables looked for',
    cut_airbag_belt: 'Airbag and belt parts looked for',
    cut_tank: 'Tank and fuel lines looked for',
    cut_brake: 'Brake lines looked for',
    cut_air: 'Air lines and air springs looked for',
    cut_hull: 'Hull and frame structure looked for: nothing that carries is cut',
    cut_pilot: 'Pilot hole drilled with a drill stop',
    cut_sealed: 'Edges of the cut deburred and sealed',
  },
  cut: {
    fields,
    choices: { face: ['near face', 'far face'] },
    results: {
      reach_mm: 'Farthest point of the cut from the pilot hole',
      seal_spare_mm: 'Plate beyond cut and seal',
      gap_mm: 'edge of the cut to it',
      plate_gap_mm: 'edge of the plate to it',
      left_mm: 'its left, seen from the near face',
      right_mm: 'its right',
      bottom_mm: 'its bottom',
      top_mm: 'its top',
      from_right_mm: 'nearest point of the cut, right',
      from_up_mm: 'nearest point of the cut, up',
      to_right_mm: 'its nearest point, right',
      to_up_mm: 'its nearest point, up',
    },
    how: {
      reach_mm: 'to the farthest corner of the farthest piece',
      seal_spare_mm: 'least of the four sides of the plate, less the seal',
      gap_mm: BEYOND,
      plate_gap_mm: 'the same, of the plate; near face only',
    },
    // On the far face no plate lies.
    silent: ['plate_gap_mm'],
    change: { cut_to_obstacle_mm: move, spare_room_mm: grow },
    /** @param {number} n */
    row: (n) => `Thing ${n}`,
    /** @type {Record<string, string>} */
    problems: {
      'corner_mm.contradiction': 'Rounder than the rectangle is wide or high.',
      'distance_mm.contradiction': 'Tell it by right and up, or by distance: not both.',
    },
  },
};
