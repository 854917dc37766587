// Words of the heat wanted: the space and its surfaces, the heater, warming up, a night.

export const words = {
  title: 'Heat wanted',
  cautions: [
    'Never close a vent to save heat: people and flames need its air. A space that is slept in needs a carbon monoxide alarm.',
    'A sum for steady cold. The manual says what the heater may heat, and where it may stand.',
  ],
  space: 'The space and the cold',
  spaceWhy:
    'Air changes are hardly ever known, so their ± is wide: try your worst guess too. Wind and gaps count, and every vent.',
  surfaces: 'Surfaces',
  surfacesWhy:
    'Walls, roof, floor, glass, doors, partition: areas from inside. Layers from inside outwards; what holds a panel or trims it may stay out.',
  add: {
    wall: 'Add a wall',
    roof: 'Add a roof',
    floor: 'Add a floor',
    whole: 'Add glass or a door, U known',
  },
  edit: 'Its numbers',
  layers: 'More layers',
  whole: 'Or a U value for all of it',
  wholeWhy:
    'From its paper, frame and ribs in it; then no layers. Bare metal or one pane of glass: enter it as a layer.',
  ribs: 'Ribs through the insulation',
  ribsWhy:
    'Share of the area where metal or wood goes through: width of a rib ÷ distance from rib to rib. 0 where none does. Left empty, more may be lost than is told.',
  behind: 'Behind it is not the outside',
  behindWhy: 'A cab, a garage: how warm it is there in the same cold.',
  listed: 'from a list',
  listWhy: 'Solid materials by EN 12524, now ISO 10456. Insulation: the λ on its own label.',
  /** By core's names. @type {Record<string, string>} */
  materials: {
    steel: 'Steel',
    stainless: 'Stainless steel',
    aluminium: 'Aluminium alloy',
    glass: 'Glass',
    acrylic: 'Acrylic sheet',
    plywood_500: 'Plywood, 500 kg/m³',
    plywood_700: 'Plywood, 700 kg/m³',
    timber_500: 'Softwood, 500 kg/m³',
    particleboard_600: 'Chipboard, 600 kg/m³',
    polyester: 'Polyester resin',
    pvc: 'PVC',
    rubber_floor: 'Rubber floor',
    carpet: 'Carpet',
  },
  /** @param {string} w @param {string} u */
  through: (w, u) => `Loses ${w}; U ${u}.`,
  /** @param {string} w @param {string} u */
  throughLeast: (w, u) => `Loses at least ${w}: its ribs are not told, or lead too well; U ${u}.`,
  /** @param {string} w */
  loses: (w) => `The space loses ${w}.`,
  /** @param {string} w @param {number} open */
  losesLeast: (w, open) =>
    `The space loses at least ${w}. ${open === 1 ? 'One surface' : `${open} surfaces`} can lose more (drawn broken): this can show a heater too small, never large enough.`,
  picture:
    'The space with an arrow for each loss, as wide as the loss is large; broken where more can be lost.',
  /** @param {string} w */
  atLeast: (w) => `at least ${w}`,
  air: 'air',
  ways: 'With this loss',
  /** @type {Record<string, [string, string]>} */
  sheets: {
    heater_size: ['Heater', 'heat to spare, height, lowest power'],
    warm_up: ['Warming up', 'from cold to warm'],
    night: ['A night', 'fuel, charge, against idling'],
  },
  another: 'its loss is another one than above',
  take: 'Take what is known from before',
  taken: 'What is taken keeps its ±, and follows the sheet before until you type over it.',
  /** What a loss that is a lower end makes of a sheet. @type {Record<string, string>} */
  least: {
    heater_size: 'The loss is “at least”: the lowest heat is at most this multiple of it.',
    warm_up: 'The loss is “at least”: it takes at least so long, and gets at most so much warmer.',
    night: 'The loss is “at least”: so is the fuel, and what is saved is at most this.',
  },
  never: 'Never: the heat that is lost before it is that warm is more than the heater gives.',
  nearly:
    'So near to never that no time bounds it: see how much warmer it would get in the end, and its ±.',
  why: {
    heater_size:
      'Numbers from the heater’s manual. Far below its full power for hours a burner soots: if the lowest is more than is lost, it will switch off and on instead. Run it at full now and then, as the manual says.',
    warm_up:
      'One temperature for air and everything that warms with it. Mass × specific heat, in kJ/(kg·K): steel 0.45, aluminium 0.88, wood 1.6, glass 0.75 (EN 12524), water 4.2. Count linings, furniture, water; not what lies outside the insulation.',
    night:
      'The heater makes good what is lost. Where the loss is “at least”, so is the fuel. Share of the fuel’s energy that warms: from the manual, heat ÷ (fuel · energy of a litre).',
  },
  groups: {
    loss: 'What is lost',
    heater: 'Heater, from its manual',
    height: 'Where it works',
    heat: 'Heat',
    cold: 'How cold',
    inside: 'What is warmed',
    night: 'The night',
    fuel: 'Fuel',
    current: 'Current',
    idle: 'The engine instead',
  },
};
