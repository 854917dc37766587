// Words of the flue: the screen with its ways, cautions, what was seen.

import { forNumber, t } from '../language.js';

export const words = {
  title: t`Exhaust and combustion air`,
  cautions: [
    t`Engine and heater off and cold, vehicle chocked. Never under a cab or an air-sprung body without stands.`,
    t`An exhaust that has run burns skin and sets things alight: wait until it is cold. Never lay a phone on a pipe that has been hot.`,
    t`Exhaust gas kills without a smell. Every joint, drain and end belongs where none of it can come inside.`,
    t`The heater’s manual and local law come first.`,
  ],
  where: t`Where it is`,
  whereWhy: t`A boat has no drain in its pipe, and an outlet of its own.`,
  /** @type {Record<string, [string, string]>} */
  sheets: {
    exhaust: [t`Exhaust`, t`leg by leg: fall, low points, length, bends`],
    air_pipe: [t`Combustion air`, t`leg by leg: fall, low points, length, bends`],
    pipe_ends: [t`Ends`, t`openings, lines, what can burn`],
    boat_outlet: [t`Boat’s outlet`, t`above the water as she heels`],
  },
  ticks: t`Seen with your own eyes`,
  boatTicks: t`On a boat, seen with your own eyes`,
  /** By the sheet that they stand for. @type {Record<string, Record<string, string>>} */
  tick: {
    exhaust: {
      flue_fixed: t`Both pipes are fixed along their way, and every joint is clamped and gas-tight.`,
      flue_guarded: t`Nobody can touch the hot pipe: guarded or out of reach.`,
      flue_air_outside: t`Combustion air comes from outside, never from where people are, and clear of exhaust gas.`,
    },
    pipe_ends: {
      flue_sheltered: t`Both ends are sheltered from the wind of travel and from thrown dirt.`,
      flue_openings: t`Every opening near the exhaust’s end is in the list of the ends.`,
      flue_apart: t`Exhaust, combustion air and the intake of heated air lie apart: none draws what another lets out.`,
    },
    boat_outlet: {
      boat_lagged: t`The exhaust is lagged all along, from the heater to the outlet.`,
      boat_loop: t`A rising loop keeps the sea out, with its top near the outlet.`,
      boat_no_drain: t`No drain, no open joint and no hole in the pipe anywhere inside the boat.`,
      boat_closure: t`The closure or seacock of the outlet can be reached, and is open while the heater runs.`,
    },
  },
  pipe: {
    cautions: {
      exhaust: t`On a cold pipe only. What runs back to the heater, or stands, freezes and closes the pipe.`,
      air_pipe: t`Cold heater. Water that stands in the air pipe starves the flame.`,
    },
    lead: t`From the heater outwards, a leg for each straight length. A leg that sags between its clamps is two.`,
    vehicle: t`Vehicle`,
    afloat: t`Afloat`,
    afloatWhy: t`A boat that rolls is read ashore, or as the mean of at least ten roll periods. What is left of the motion counts in the ±.`,
    manual: t`A drain`,
    manualWhy: t`Only where the manual allows one, outside in free air, away from openings and hands. Never in a cab, locker, bilge or closed skirt, and never in a boat.`,
    levelled: t`Typed angles are those of the vehicle as it stands. On a slope, read its level first: captures then come in the vehicle.`,
    addAll: (/** @type {number} */ n) =>
      forNumber(
        n,
        t`Take the leg that the phone read`,
        t`Take the ${n} legs that the phone read, oldest first`,
      ),
    byPhone: t`Its angle by the phone`,
    go: t`Read a leg with the phone`,
    none: t`No capture of a pipe leg is left.`,
    /** @param {string} time @param {string} angle @param {string} how */
    take: (time, angle, how) => t`Take capture ${time}: ${angle} ${how}`,
    view: { vehicle: t`in the vehicle`, parked: t`as parked` },
    /** @param {string} time @param {string} how @param {string} u */
    taken: (time, how, u) => t`Captured ${time}, ${how}, ± ${u}. Typing over it makes it your own.`,
    moved: t`as parked: the vehicle has moved since its level was read`,
    low: t`Where it starts, drain, order`,
    earlier: t`Move it nearer to the heater`,
    /** @param {string} angle @param {string} length @param {string} unit @param {string} bend */
    short: (angle, length, unit, bend) => t`${angle}°, ${length} ${unit}, bend ${bend}°`,
    /** By core's remedies. */
    remedies: [
      '',
      t`Where it starts is a low point and no drain may be set: lay the pipe another way.`,
      t`Where it starts is a low point: a drain of the manual’s bore may be set there, or lay the pipe another way.`,
    ],
    wet: t`falls, but into the low point after it`,
    /** By verdict. @type {Record<string, string>} */
    state: {
      within: t`drains`,
      beyond: t`holds water`,
      not_proven: t`not proven`,
      none: t`not complete`,
    },
  },
  picture: {
    /** @param {string} name */
    label: (name) => t`${name} from the heater, heights to scale; the hatched band is ±`,
    heater: t`heater`,
    drain: t`drain`,
    water: (/** @type {string} */ depth) => t`${depth} of water`,
    /** @param {number} times */
    scale: (times) =>
      times === 1
        ? t`Heights and lengths to one scale.`
        : t`Heights drawn ${times} times as large as lengths.`,
    /** Solid, broken, dashed. */
    lines: t`Solid drains, broken holds water, dotted is not proven.`,
    boat: t`The hull from astern, heeled; water line, outlet and loop to scale`,
    outlet: t`outlet`,
    loop: t`loop`,
  },
  ends: {
    caution: t`Cold exhaust. Measure round corners as gas or heat would go: the shortest way.`,
    air: t`Ends`,
    bare: t`Bare or lagged`,
    things: t`What is near`,
    thingsWhy: t`Openings: to the exhaust’s end. All else: to the nearest of the pipe. Doors and windows count open.`,
    addOpening: t`Add an opening`,
    addLine: t`Add a line, cable or tyre`,
    addCombustible: t`Add what can burn`,
  },
  boat: {
    caution: t`A sea that comes in by the outlet sinks the boat. What the outlet’s maker asks comes first.`,
    lead: t`As she lies still, then heeled to the side that the outlet is on.`,
    ignores: t`Taken: flat water, and a boat that turns about her middle at the water line. Not in it: waves, spray, and a hull that rises or settles as she heels. What load, trim and the stern wave take goes into the last number.`,
    at_rest: t`At rest`,
    sailing: t`Under way`,
  },
};
