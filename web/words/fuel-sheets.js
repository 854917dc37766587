// Words of the fuel's sheets: fields, results, formulas, what to do.

/** @param {string} by @param {boolean} more */
const length = (by, more) =>
  more ? `${by} longer would prove it.` : `${by} shorter would prove it.`;

/** @param {string} by @param {boolean} more */
const height = (by, more) =>
  more ? `${by} higher would prove it.` : `${by} lower would prove it.`;

/** @param {string} by @param {boolean} more */
const space = (by, more) => (more ? `Find ${by} more.` : `${by} less.`);

const bore = () => 'Take a line of the bore that the manual lists.';

/** @typedef {Record<string, string | [string, string]>} Labels */

/** @type {Labels} */
const suction = {
  suction_length_m: 'Line from tank to pump',
  suction_lift_mm: ['Pump above the lowest fuel', 'below it: with a minus'],
};
/** @type {Labels} */
const pressure = {
  pressure_length_m: 'Line from pump to heater',
  pressure_lift_mm: ['Heater above the pump', 'below it: with a minus'],
};
const fuel = 'Fuel';
const fuels = ['Diesel', 'Petrol'];
const realBore = 'for the loss: ± 0.1 mm until gauged';

/** @type {Record<string, import('../plan/sheet.js').SheetWords>} */
export const sheets = {
  bubble: {
    fields: {
      fuel,
      bore_mm: ['Bore', 'as printed on the line'],
      density_spread: 'what the fuel may weigh',
      tension_spread: 'what its surface may pull',
    },
    choices: { fuel: fuels },
    results: {
      bubble_number: 'Buoyancy against surface',
      critical_bore_mm: 'Bore above which a long bubble rises',
    },
    how: {
      bubble_number: 'Δρ·g·r²/σ; the bubble sticks below 0.842',
      critical_bore_mm: '2·√(0.842·σ/(Δρ·g)), still and upright',
    },
  },
  fuel_run: {
    fields: {
      suction_bore_mm: ['Bore, tank to pump', 'as printed'],
      ...suction,
      pressure_bore_mm: ['Bore, pump to heater', 'as printed'],
      ...pressure,
      pump_air_celsius: ['Warmest air at the pump', 'after a drive, shaded thermometer'],
      fuel_to_hot_mm: 'Pump and line to a hot part',
    },
    results: {
      suction_bore_mm: 'Bore, tank to pump',
      suction_length_m: 'Line from tank to pump',
      suction_lift_mm: 'Pump above the lowest fuel',
      pressure_bore_mm: 'Bore, pump to heater',
      pressure_length_m: 'Line from pump to heater',
      pressure_lift_mm: 'Heater above the pump',
      pump_air_celsius: 'Warmest air at the pump',
      fuel_to_hot_mm: 'Pump and line to a hot part',
    },
    change: {
      fuel_bore_mm: bore,
      fuel_bore_pressure_mm: bore,
      suction_line_m: length,
      pressure_line_m: length,
      suction_lift_mm: height,
      pressure_lift_mm: height,
      fuel_to_hot_mm: space,
      pump_air_celsius: (/** @type {string} */ by) => `${by} cooler: move it, or shield it.`,
    },
  },
  fuel_pressure: {
    fields: {
      fuel,
      fuel_celsius: ['Coldest fuel in the line', 'where it will be used'],
      cloud_point_celsius: ['Cloud point', 'of diesel, from its supplier'],
      viscosity_40_mm2_per_s: 'Viscosity at 40 °C',
      other_viscosity_mm2_per_s: 'Viscosity, a second one',
      other_celsius: 'at the temperature',
      density_15_kg_per_m3: 'Density at 15 °C',
      stroke_ml: ['Stroke', 'technical data of the pump'],
      stroke_ms: ['Time of a stroke', 'the faster way; pump’s data'],
      suction_bore_mm: ['Bore, tank to pump', realBore],
      ...suction,
      filter_pa: ['Loss of a filter before the pump', 'empty: no filter'],
      pressure_bore_mm: ['Bore, pump to heater', realBore],
      ...pressure,
      density_spread: 'what the fuel may weigh (enter its density)',
      viscosity_spread: 'how thick the fuel may be (enter its viscosity)',
      steepness_spread: 'how much the cold thickens it (enter a second viscosity)',
      pulse_spread: 'how uneven a stroke is',
    },
    choices: { fuel: fuels },
    problems: {
      'fuel_celsius.beyond_formula':
        'Below the cloud point wax comes out and no formula holds: winter fuel, or a warmer line.',
      'suction_bore_mm.beyond_formula':
        'At this flow the line is no longer laminar (Reynolds above 2000): no answer from here.',
      'pressure_bore_mm.beyond_formula':
        'At this flow the line is no longer laminar (Reynolds above 2000): no answer from here.',
    },
    results: {
      above_cloud_kelvin: 'Fuel above its cloud point',
      suction_reynolds: 'Reynolds number, tank to pump',
      pressure_reynolds: 'Reynolds number, pump to heater',
      density_kg_per_m3: 'Density in the cold',
      viscosity_mm2_per_s: 'Viscosity in the cold',
      peak_l_per_h: 'Flow during a stroke',
      suction_loss_pa: 'Loss, tank to pump',
      pressure_loss_pa: 'Loss, pump to heater',
      suction_pa: 'Suction at the pump',
      pump_pressure_pa: 'Pressure behind the pump',
    },
    how: {
      above_cloud_kelvin:
        'coldest fuel less its cloud point; where this may be below 0, nothing else is bounded',
      suction_reynolds: '4·Q/(π·d·ν); laminar up to 2000',
      pressure_reynolds: '4·Q/(π·d·ν); laminar up to 2000',
      density_kg_per_m3:
        'EN 590 or EN 228 at 15 °C, less 0.084 or 0.12 % a kelvin (ASTM D1250, from memory)',
      viscosity_mm2_per_s: 'log log (ν + 0.7) falls evenly with log T (ASTM D341, from memory)',
      peak_l_per_h: 'stroke ÷ time of a stroke, 1 ± 0.5 for an uneven one (assumed)',
      suction_loss_pa: '128·µ·L·Q/(π·d⁴), Hagen–Poiseuille',
      pressure_loss_pa: '128·µ·L·Q/(π·d⁴), Hagen–Poiseuille',
      suction_pa: 'ρ·g·h and loss and filter',
      pump_pressure_pa: 'ρ·g·h and loss',
    },
    change: {
      suction_pa: (/** @type {string} */ by) =>
        `${by} less: pump lower, line shorter, or fuel warmer.`,
      pump_pressure_pa: (/** @type {string} */ by, /** @type {boolean} */ more) =>
        more ? `${by} more.` : `${by} less: line shorter, or fuel warmer.`,
    },
  },
  prime: {
    fields: {
      suction_bore_mm: 'Bore, tank to pump',
      suction_length_m: suction.suction_length_m,
      pressure_bore_mm: 'Bore, pump to heater',
      pressure_length_m: pressure.pressure_length_m,
      filter_ml: ['What a filter holds', 'empty: no filter'],
      stroke_ml: ['Stroke', 'technical data of the pump'],
      stroke_hz: ['Strokes a second', 'while it starts: count them'],
      start_s: ['Pump runs in one failed start', 'watch it once'],
      starts_made: 'Starts made in a row so far',
    },
    results: {
      suction_ml: 'In the line, tank to pump',
      pressure_ml: 'In the line, pump to heater',
      volume_ml: 'To be filled',
      prime_s: 'Pump must run at least',
      starts_worth: 'Starts that takes, at least',
      starts_made: 'Starts made in a row',
    },
    how: {
      suction_ml: 'π/4·d²·L',
      pressure_ml: 'π/4·d²·L',
      volume_ml: 'both and the filter',
      prime_s: 'volume ÷ (stroke · strokes a second), every stroke full of fuel',
      starts_worth: 'that time ÷ one start; a lower bound',
      starts_made: 'as counted',
    },
    advice: {
      'starts_worth.beyond':
        'More starts than the manual permits in a row: pause as it says, or fill the line first.',
      'starts_worth.not_proven':
        'It can take more: count the starts, and stop at the manual’s number.',
      'starts_made.beyond': 'No more starts: pause or unlock as the manual says.',
    },
  },
  tank: {
    fields: {
      shape: 'Shape',
      depth_mm: ['Depth', 'flange to floor; of a lying cylinder its diameter'],
      length_mm: ['Length', 'box, lying cylinder'],
      width_mm: ['Width', 'box; diameter of an upright cylinder'],
      standpipe_mm: ['Heater’s pipe below the flange', 'to its tip'],
      cut_mm: ['Height of its slanted cut', 'empty: cut square'],
      cut_spread: 'where on the cut it begins to draw air',
      second_mm: ['Second pipe below the flange', 'as the engine’s own; empty: none'],
      level_mm: ['Fuel in the tank, above its floor', 'empty: full'],
    },
    choices: { shape: ['Box', 'Lying cylinder', 'Upright cylinder'] },
    problems: {
      'standpipe_mm.contradiction': 'Longer than the tank is deep.',
      'second_mm.contradiction': 'Longer than the tank is deep.',
      'level_mm.contradiction': 'Higher than the tank is deep.',
      'cut_mm.contradiction': 'The cut can’t be longer than the pipe.',
    },
    results: {
      gap_mm: 'Heater’s pipe to the floor',
      second_gap_mm: 'Second pipe to the floor',
      in_tank_l: 'Fuel in the tank',
      left_l: 'Left when the heater draws air',
      heater_l: 'The heater can draw',
      second_l: 'Left to the second pipe then',
    },
    how: {
      gap_mm: 'depth less pipe',
      second_gap_mm: 'depth less pipe',
      in_tank_l: 'the level in the tank’s shape, level and with flat ends',
      left_l: 'below the tip, and half of the cut ± half',
      heater_l: 'in the tank, less what is left',
      second_l: 'left, less what the second pipe does not reach; below 0 it draws air first',
    },
    change: {
      standpipe_gap_mm: (/** @type {string} */ by, /** @type {boolean} */ more) =>
        more ? `Shorten the pipe by ${by}.` : `${by} longer.`,
      engine_reserve_l: (/** @type {string} */ by) =>
        `${by} more must be left: shorten the heater’s pipe.`,
    },
  },
  burn: {
    fields: {
      fuel,
      output_w: ['Heat', 'on the power it will mostly run'],
      efficiency: ['Share of the fuel’s energy that warms', '0.8 is 80 %'],
      reach_l: ['Fuel the standpipe reaches', 'see the tank'],
      energy_spread: 'what a litre of the fuel holds',
    },
    choices: { fuel: fuels },
    results: { burn_l_per_h: 'Burnt', lasts_h: 'Lasts' },
    how: {
      burn_l_per_h:
        'heat ÷ (share · energy of a litre): diesel 9.9 ± 0.2 kWh/L (UK conversion factors 2025), petrol 8.85 ± 0.35 (from memory)',
      lasts_h: 'litres ÷ litres an hour',
    },
  },
};
