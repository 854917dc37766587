// Words of the fuel: line, pump, pressure, priming, tank, consumption.

import { t } from '../language.js';

export const words = {
  title: t`Fuel`,
  cautions: [
    t`Engine off and cold, no flame, no sparks, no hot work, no lit lamp with a bare bulb. Extinguisher at hand.`,
    t`Use a port that the tank already has. Never weld or grind on a tank, full or empty.`,
    t`Catch what drips, keep it off skin and paint, air the place: petrol vapour creeps along the floor.`,
  ],
  lead: t`The pump’s slope and the filter stand under their own names in the list of the job.`,
  fuelFirst: t`Which fuel`,
  sheets: {
    tank: [t`Tank`, t`standpipe, what it leaves, the engine’s share`],
    fuel_run: [t`Line and pump`, t`bore, lengths, heights, heat`],
    fuel_pressure: [t`Pressure at the pump`, t`lift and loss in a stroke`],
    prime: [t`Filling the line`, t`volume, time, starts in a row`],
    burn: [t`Consumption`, t`an hour, and how long it lasts`],
  },
  whyNarrow: t`Why the line is narrow`,
  bubbleWords: t`In a narrow upright tube a long bubble sticks, and the fuel carries it out. In a wide one it rises by itself, stays at the highest point and starves the burner. This explains the manual’s bore; it permits no bore that the manual does not list.`,
  bubbleSource: t`Bretherton, J. Fluid Mech. 10 (1961) 166; surface tension from memory.`,
  still: t`sticks`,
  rising: t`rises`,
  narrow: t`narrow`,
  wide: t`wide`,
  picture: {
    bubble: t`Two upright tubes: in the narrow one the bubble sticks, in the wide one it rises.`,
    tank: t`The tank from the side, with its pipes and the fuel.`,
    line: t`From the tank up to the pump and on to the heater.`,
  },
  pump: t`pump`,
  heater: t`heater`,
  heaterPipe: t`heater`,
  secondPipe: t`second`,
  ticks: t`Seen with your own eyes`,
  tick: {
    joints: t`At every joint the ends of the lines meet inside the coupler, with a clamp on each side.`,
    pump_near: t`The pump sits near the fuel, on a soft mount, where it can be heard and reached.`,
    pump_cool: t`Pump and line are kept off hot parts, shielded where one is near, and cannot chafe.`,
    slant: t`The standpipe’s end is cut at a slant.`,
    harness: t`The pump’s plug is locked and its cable fixed, clear of hot and moving parts.`,
    dry: t`With the pump running, every joint is dry.`,
    hot: t`After the first hot run every clamp was looked at and tightened again.`,
  },
  /** Notes above the fields of a sheet. */
  why: {
    tank: t`Dip the tank with a clean stick, lay the pipes beside a tape. Distances from the flange, which here is the tank’s top; inside sizes.`,
    fuel_run: t`Bore: as printed on the line or its packing, not guessed. Lengths along the line, bends included.`,
    fuel_pressure: t`At the flow of one stroke, which is many times the mean flow. Couplers and the inertia of the fuel are not in it: a real pulse can be higher.`,
    paper: t`From the fuel’s paper, where you have it`,
    paperWhy: t`Empty: anything that EN 590 or EN 228 permits, so the ± is wide. A second viscosity, at another temperature, lets it reckon in the cold.`,
    prime: t`A pump that draws air moves less than its full stroke: this is the least time, never the most.`,
    burn: t`Heat that comes out, not what is burnt.`,
  },
  groups: {
    tank: t`Tank`,
    pipes: t`Pipes`,
    suction: t`Tank to pump`,
    pressure: t`Pump to heater`,
    pump: t`Pump`,
    fuel: t`Fuel in the cold`,
    stroke: t`One stroke`,
    start: t`Starts`,
    burn: t`Heat`,
  },
};
