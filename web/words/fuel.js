// Words of the fuel: line, pump, pressure, priming, tank, consumption.

export const words = {
  title: 'Fuel',
  cautions: [
    'Engine off and cold, no flame, no sparks, no hot work, no lit lamp with a bare bulb. Extinguisher at hand.',
    'Use a port that the tank already has. Never weld or grind on a tank, full or empty.',
    'Catch what drips, keep it off skin and paint, air the place: petrol vapour creeps along the floor.',
  ],
  lead: 'The pump’s slope and the filter stand under their own names in the list of parts.',
  fuelFirst: 'Which fuel',
  sheets: {
    tank: ['Tank', 'standpipe, what it leaves, the engine’s share'],
    fuel_run: ['Line and pump', 'bore, lengths, heights, heat'],
    fuel_pressure: ['Pressure at the pump', 'lift and loss in a stroke'],
    prime: ['Filling the line', 'volume, time, starts in a row'],
    burn: ['Consumption', 'an hour, and how long it lasts'],
  },
  whyNarrow: 'Why the line is narrow',
  bubbleWords:
    'In a narrow upright tube a long bubble sticks, and the fuel carries it out. In a wide one it rises by itself, stays at the highest point and starves the burner. This explains the manual’s bore; it permits no bore that the manual does not list.',
  bubbleSource: 'Bretherton, J. Fluid Mech. 10 (1961) 166; surface tension from memory.',
  still: 'sticks',
  rising: 'rises',
  narrow: 'narrow',
  wide: 'wide',
  picture: {
    bubble: 'Two upright tubes: in the narrow one the bubble sticks, in the wide one it rises.',
    tank: 'The tank from the side, with its pipes and the fuel.',
    line: 'From the tank up to the pump and on to the heater.',
  },
  pump: 'pump',
  heater: 'heater',
  lowest: 'lowest fuel',
  heaterPipe: 'heater',
  secondPipe: 'second',
  ticks: 'Seen with your own eyes',
  tick: {
    joints:
      'At every joint the ends of the lines meet inside the coupler, with a clamp on each side.',
    pump_near: 'The pump sits near the fuel, on a soft mount, where it can be heard and reached.',
    pump_cool:
      'Pump and line are kept off hot parts, shielded where one is near, and cannot chafe.',
    slant: 'The standpipe’s end is cut at a slant.',
    harness: 'The pump’s plug is locked and its cable fixed, clear of hot and moving parts.',
    dry: 'With the pump running, every joint is dry.',
    hot: 'After the first hot run every clamp was looked at and tightened again.',
  },
  /** Notes above the fields of a sheet. */
  why: {
    tank: 'Dip the tank with a clean stick, lay the pipes beside a tape. Distances from the flange, which here is the tank’s top; inside sizes.',
    fuel_run:
      'Bore: as printed on the line or its packing, not guessed. Lengths along the line, bends included.',
    fuel_pressure:
      'At the flow of one stroke, which is many times the mean flow. Couplers and the inertia of the fuel are not in it: a real pulse can be higher.',
    paper: 'From the fuel’s paper, where you have it',
    paperWhy:
      'Empty: anything that EN 590 or EN 228 permits, so the ± is wide. Viscosity at a second temperature, for one in the cold.',
    prime:
      'A pump that draws air moves less than its full stroke: this is the least time, never the most.',
    burn: 'Heat that comes out, not what is burnt.',
  },
  groups: {
    tank: 'Tank',
    pipes: 'Pipes',
    suction: 'Tank to pump',
    pressure: 'Pump to heater',
    pump: 'Pump',
    fuel: 'Fuel in the cold',
    stroke: 'One stroke',
    start: 'Starts',
    burn: 'Heat',
  },
};
