// Words of the place: clearances, and the ways to cut plan and fit.

/** @param {string} by @param {boolean} more */
const space = (by, more) => (more ? `Find ${by} more.` : `${by} less.`);

const sides = {
  outlet_end_mm: 'Beyond the warm-air end',
  intake_end_mm: 'Before the intake end',
  top_mm: 'Above',
  bottom_mm: 'Below',
  left_mm: 'Left, seen from the intake',
  right_mm: 'Right, seen from the intake',
  outlet_to_person_mm: 'Warm-air outlet to a person',
  intake_to_exhaust_mm: 'Heated-air intake to an exhaust',
};

export const words = {
  title: 'Place',
  caution:
    'Engine off and cold, vehicle chocked. Look at both faces of a panel before anything is cut.',
  sides: 'Free space round the heater',
  sidesWhy: 'Tape from the heater’s face to the nearest thing. What is not measured stays empty.',
  ends: 'What is near its ends',
  endsWhy:
    'A person: where somebody sits, sleeps or reaches. An exhaust: this heater’s, the engine’s, any other near the intake.',
  picture: {
    label: 'The heater with its six free spaces, warm-air end right, fuel port down; not to scale',
    /** @type {Record<string, string>} */
    spaces: {
      outlet_end_mm: 'warm air',
      intake_end_mm: 'intake',
      top_mm: 'above',
      bottom_mm: 'below',
      left_mm: 'left',
      right_mm: 'right',
    },
  },
  ticks: 'Seen with your own eyes',
  tick: {
    nothing_stored: 'Nothing can be stored against the heater: its room is closed off or guarded.',
    no_fuel:
      'No petrol, gas bottle, solvent or spray can stands in the heater’s compartment, and none is to.',
    reach: 'It can be reached for service: cover, plug, clamps, and a way to take it out.',
  },
  ways: 'Also before the first cut',
  /** @type {Record<string, [string, string]>} */
  sheets: {
    fit: ['Fit', 'which way round it finds room'],
    cut_plan: ['Cut plan', 'from a pilot hole, both faces'],
  },
  clearances: {
    named: 'Free space',
    fields: sides,
    results: sides,
    how: Object.fromEntries(Object.keys(sides).map((name) => [name, 'as told by the tape'])),
    change: {
      clear_outlet_end_mm: space,
      clear_intake_end_mm: space,
      clear_top_mm: space,
      clear_bottom_mm: space,
      clear_left_mm: space,
      clear_right_mm: space,
      outlet_to_person_mm: space,
      intake_to_exhaust_mm: space,
    },
  },
};
