// Words of the place: clearances, and the ways to cut plan and fit.

import { t } from '../language.js';

/** @param {string} by @param {boolean} more */
const space = (by, more) => (more ? t`Make ${by} more room.` : t`${by} less.`);

const sides = {
  outlet_end_mm: t`Beyond the warm-air end`,
  intake_end_mm: t`Before the intake end`,
  top_mm: t`Above`,
  bottom_mm: t`Below`,
  left_mm: t`Left, seen from the intake`,
  right_mm: t`Right, seen from the intake`,
  outlet_to_person_mm: t`Warm-air outlet to a person`,
  intake_to_exhaust_mm: t`Heated-air intake to an exhaust`,
};

export const words = {
  title: t`Place`,
  caution: t`Engine off and cold, vehicle chocked. Look at both faces of a panel before anything is cut.`,
  sides: t`Free space round the heater`,
  sidesWhy: t`Tape from the heater’s face to the nearest thing. What is not measured stays empty.`,
  ends: t`What is near its ends`,
  endsWhy: t`A person: where somebody sits, sleeps or reaches. An exhaust: this heater’s, the engine’s, any other near the intake.`,
  picture: {
    label: t`The heater with its six free spaces, warm-air end right, fuel port down; not to scale`,
    /** @type {Record<string, string>} */
    spaces: {
      outlet_end_mm: t`warm air`,
      intake_end_mm: t`intake`,
      top_mm: t`above`,
      bottom_mm: t`below`,
      left_mm: t`left`,
      right_mm: t`right`,
    },
  },
  ticks: t`Seen with your own eyes`,
  tick: {
    nothing_stored: t`Nothing can be stored against the heater: its room is closed off or guarded.`,
    no_fuel: t`No petrol, gas bottle, solvent or spray can stands in the heater’s compartment, and none is to.`,
    reach: t`It can be reached for service: cover, plug, clamps, and a way to take it out.`,
  },
  ways: t`Also before the first cut`,
  /** @type {Record<string, [string, string]>} */
  sheets: {
    fit: [t`Fit`, t`which way round it finds room`],
    cut_plan: [t`Cut plan`, t`from a pilot hole, both faces`],
  },
  clearances: {
    named: t`Free space`,
    fields: sides,
    results: sides,
    how: Object.fromEntries(Object.keys(sides).map((name) => [name, t`as told by the tape`])),
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
