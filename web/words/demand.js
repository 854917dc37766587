// Words of the heat wanted: the space and its surfaces, the heater, warming up, a night.

import { forNumber, t } from '../language.js';

export const words = {
  title: t`Heat wanted`,
  cautions: [
    t`Never close a vent to save heat: people and flames need its air. A space that is slept in needs a carbon monoxide alarm.`,
    t`A sum for steady cold. The manual says what the heater may heat, and where it may stand.`,
  ],
  space: t`The space and the cold`,
  spaceWhy: t`Air changes are hardly ever known, so their ± is wide: try your worst guess too. Wind and gaps count, and every vent.`,
  surfaces: t`Surfaces`,
  surfacesWhy: t`Walls, roof, floor, glass, doors, partition: areas from inside. Layers from inside outwards; what holds a panel or trims it may stay out.`,
  add: {
    wall: t`Add a wall`,
    roof: t`Add a roof`,
    floor: t`Add a floor`,
    whole: t`Add glass or a door, U known`,
  },
  edit: t`Its numbers`,
  layers: t`More layers`,
  whole: t`Or a U value for all of it`,
  wholeWhy: t`From its paper, frame and ribs in it; then no layers. Bare metal or one pane of glass: enter it as a layer.`,
  ribs: t`Ribs through the insulation`,
  ribsWhy: t`Share of the area where metal or wood goes through: width of a rib ÷ distance from rib to rib. 0 where none does. Left empty, more may be lost than is told.`,
  behind: t`Behind it is not the outside`,
  behindWhy: t`A cab, a garage: how warm it is there in the same cold.`,
  listed: t`from a list`,
  listWhy: t`Solid materials by EN 12524, now ISO 10456. Insulation: the λ on its own label.`,
  /** By core's names. @type {Record<string, string>} */
  materials: {
    steel: t`Steel`,
    stainless: t`Stainless steel`,
    aluminium: t`Aluminium alloy`,
    glass: t`Glass`,
    acrylic: t`Acrylic sheet`,
    plywood_500: t`Plywood, 500 kg/m³`,
    plywood_700: t`Plywood, 700 kg/m³`,
    timber_500: t`Softwood, 500 kg/m³`,
    particleboard_600: t`Chipboard, 600 kg/m³`,
    polyester: t`Polyester resin`,
    pvc: t`PVC`,
    rubber_floor: t`Rubber floor`,
    carpet: t`Carpet`,
  },
  /** @param {string} w @param {string} u */
  through: (w, u) => t`Loses ${w}; U ${u}.`,
  /** @param {string} w @param {string} u */
  throughLeast: (w, u) =>
    t`Loses at least ${w}: its ribs lead too well, or were not told (0 where there are none); U ${u}.`,
  /** @param {string} w */
  loses: (w) => t`The space loses ${w}.`,
  /** @param {string} w @param {number} open */
  losesLeast: (w, open) =>
    forNumber(
      open,
      t`The space loses at least ${w}. One surface can lose more (drawn broken): this can show a heater too small, never large enough.`,
      t`The space loses at least ${w}. ${open} surfaces can lose more (drawn broken): this can show a heater too small, never large enough.`,
    ),
  picture: t`The space with an arrow for each loss, as wide as the loss is large; broken where more can be lost.`,
  /** @param {string} w */
  atLeast: (w) => t`at least ${w}`,
  air: t`air`,
  ways: t`With this loss`,
  /** @type {Record<string, [string, string]>} */
  sheets: {
    heater_size: [t`Size of the heater`, t`heat to spare, height, lowest power`],
    warm_up: [t`Warming up`, t`from cold to warm`],
    night: [t`A night`, t`fuel, charge, against idling`],
  },
  another: t`its loss is another one than above`,
  take: t`Take what is known from before`,
  taken: t`What is taken keeps its ±, and follows the sheet before until you type over it.`,
  /** What a loss that is a lower end makes of a sheet. @type {Record<string, string>} */
  least: {
    heater_size: t`The loss is “at least”: the lowest heat is at most this multiple of it.`,
    warm_up: t`The loss is “at least”: it takes at least so long, and gets at most so much warmer.`,
    night: t`The loss is “at least”: so is the fuel, and what is saved is at most this.`,
  },
  never: t`Never: the heat that is lost before it is that warm is more than the heater gives.`,
  nearly: t`So near to never that no time bounds it: see how much warmer it would get in the end, and its ±.`,
  why: {
    heater_size: t`Numbers from the heater’s manual. Far below its full power for hours a burner soots: if the lowest is more than is lost, it will switch off and on instead. Run it at full now and then, as the manual says.`,
    warm_up: t`One temperature for air and everything that warms with it. Mass × specific heat, in kJ/(kg·K): steel 0.45, aluminium 0.88, wood 1.6, glass 0.75 (EN 12524), water 4.2. Count linings, furniture, water; not what lies outside the insulation.`,
    night: t`The heater makes good what is lost. Where the loss is “at least”, so is the fuel. Share of the fuel’s energy that warms: from the manual, heat ÷ (fuel · energy of a litre).`,
  },
  groups: {
    loss: t`What is lost`,
    heater: t`Heater, from its manual`,
    height: t`Where it works`,
    heat: t`Heat`,
    cold: t`How cold`,
    inside: t`What is warmed`,
    night: t`The night`,
    fuel: t`Fuel`,
    current: t`Current`,
    idle: t`The engine instead`,
  },
};
