// Words of the supply: its screens, their drawings, what is seen by eye. The sheets' own words stand
// in supply-sheets.js.

import { t } from '../language.js';

export const words = {
  title: t`Supply`,
  cautions: [
    t`Before any work on cables take the battery’s minus off; put it back last.`,
    t`No rings and no loose tools at the posts: a short burns skin and starts fires. No flame, no sparks: what a battery gives off explodes. Charger off, space aired.`,
    t`Never a fuse larger than its conductor carries. Never a conductor without one.`,
    t`The heater’s manual, local rules and a licensed electrician where one is required come first.`,
  ],
  /** Which of them stand on a sheet's own screen. @type {Record<string, number[]>} */
  cautionsOf: { bank: [1], cable: [0], fuse: [0, 2], battery: [1] },
  /** @type {Record<string, [string, string]>} */
  sheets: {
    bank: [t`Bank`, t`voltage, across the whole of it`],
    cable: [t`Cable`, t`lost out and back, sizes, harness`],
    fuse: [t`Fuse`, t`the manual’s, below its conductor`],
    battery: [t`Hours`, t`how long it lasts, after-run`],
  },
  /** @type {Record<string, string>} */
  why: {
    bank: t`Heater, engine and charger off. Read both, one after the other, with the same meter.`,
    cable: t`Along the cable’s own way, out and back each by itself. Read the battery’s voltage while the current flows, not at rest.`,
    fuse: t`What a conductor carries is on its own paper, for free air. Engine spaces and bundles leave less of it: the same paper says how much.`,
    battery: t`Charge is counted for running, standby, starts and after-runs. The after-run needs its charge too: a battery that drops out cuts it short.`,
  },
  ticks: t`Seen with your own eyes`,
  /** @type {Record<string, Record<string, string>>} */
  tick: {
    bank: {
      across: t`Both cables followed to the posts: they leave from the first plus and the last minus of the whole bank, never from between two batteries.`,
    },
    cable: {
      harness: t`The harness goes through every edge in a grommet, is fixed along its way, and keeps off sharp, moving and hot parts.`,
      earth: t`Minus goes to bare metal, protected again afterwards, or straight to the bank’s minus.`,
      controller: t`The controller can be reached, and its sensor feels the room: no sun, no draught, no warm air from a vent or a person.`,
      behind: t`Behind the controller nothing lies where its screws go: no cable, no pipe, no tank.`,
    },
    fuse: {
      at_battery: t`The fuse sits at the battery, in its holder, with the rating printed on it.`,
    },
    battery: {
      stays_on: t`Supply stays on through the after-run: no switch, no timer, no isolator cuts it before the heater stands still.`,
      vented: t`The space that the battery stands in is vented to the outside.`,
    },
  },
  groups: {
    way: t`The way`,
    conductor: t`The conductor`,
    start: t`During start`,
    running: t`While it runs`,
    fuse: t`Fuse`,
    carries: t`What the conductor carries`,
    bank: t`Two readings`,
    battery: t`Battery`,
    draw: t`What flows`,
    starts: t`Starts and after-runs`,
    wanted: t`Wanted`,
  },
  paper: t`From the cable’s own paper, where you have it`,
  paperWhy: t`Empty: anything that the name of its size can stand for, so the ± is wide. For the conductor that is there; the list of sizes does not use it.`,
  peukert: t`Large currents take more than their charge`,
  peukertWhy: t`Peukert’s exponent, from the battery’s paper. It counts above the current that the label is for. Empty: not counted, and above that current nothing is proven.`,
  /** @param {string} value @param {string} u */
  lasts_h: (value, u) => t`It lasts ${value} ${u}, starts and after-runs counted.`,
  /** @param {string} value @param {string} u */
  lasts_at_most_h: (value, u) =>
    t`It lasts at most ${value} ${u}: this is more current than its label is for.`,
  /** @param {string} amperes */
  boatLaw: (amperes) =>
    t`For US petrol boats 33 CFR 183.425 lets this size carry ${amperes} with insulation for 105 °C, before engine space and bundle. An orientation: it is used nowhere here.`,
  noBoatLaw: t`No orientation for this size: the table that is kept here has AWG 18 to 8.`,
  fuseLaw: t`US petrol boats, 33 CFR 183.455: within 7 in of the battery along the conductor, within 40 in where that is sheathed.`,
  sizes: {
    title: t`Which size would hold`,
    why: t`The same way with each size of both lists in its place. It must carry its fuse as well: see there.`,
    area: t`mm², IEC 60228 class 5`,
    gauge: t`AWG`,
    head: [t`Size`, t`Lost at start`, t`Heater at start`, t`Answer`],
    /** @param {string} size */
    first: (size) => t`Smallest that holds: ${size}.`,
    none: t`None of them is proven to hold.`,
    /** @param {string} names */
    uncounted: (names) => t`Not counted, for its limit is not entered: ${names}.`,
  },
  picture: {
    circuit: t`From the battery through fuse and joints to the heater and back, with what is lost`,
    bank: t`The bank with the two posts that the heater’s cable leaves from`,
    joints: t`joints`,
    out: t`out`,
    back: t`back`,
    body: t`back by the body`,
    battery: t`battery`,
    heater: t`heater`,
    lost: t`lost`,
    whole: t`whole bank`,
    takeOff: t`take-off`,
    never: t`never here`,
  },
};
