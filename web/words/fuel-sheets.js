// Words of the fuel's sheets: fields, results, formulas, what to do.

import { t } from '../language.js';

/** @param {string} by @param {boolean} more */
const length = (by, more) => (more ? t`Make it ${by} longer.` : t`Make it ${by} shorter.`);

/** @param {string} by @param {boolean} more */
const suctionHeight = (by, more) =>
  more ? t`Set the pump ${by} higher.` : t`Set the pump ${by} lower.`;

/** @param {string} by @param {boolean} more */
const pressureHeight = (by, more) =>
  more
    ? t`${by} more from the pump up to the heater.`
    : t`${by} less from the pump up to the heater.`;

/** @param {string} by @param {boolean} more */
const space = (by, more) => (more ? t`Make ${by} more room.` : t`${by} less.`);

const BORE = t`Take a line of the bore that the limit names.`;
const ITS_BORE = t`The bore that the limit names.`;

/** @typedef {Record<string, string | [string, string]>} Labels */

/** @type {Labels} */
const suction = {
  suction_length_m: t`Line from tank to pump`,
  suction_lift_mm: [t`Pump above the lowest fuel`, t`below it: with a minus`],
};
/** @type {Labels} */
const pressure = {
  pressure_length_m: t`Line from pump to heater`,
  pressure_lift_mm: [t`Heater above the pump`, t`below it: with a minus`],
};
const fuel = t`Fuel`;
const fuels = [t`Diesel`, t`Petrol`];
const realBore = t`for the loss: ± 0.1 mm until gauged`;

/** @type {Record<string, import('../plan/sheet.js').SheetWords>} */
export const sheets = {
  bubble: {
    fields: {
      fuel,
      bore_mm: [t`Bore`, t`as printed on the line`],
      density_spread: t`what the fuel may weigh`,
      tension_spread: t`what its surface may pull`,
    },
    choices: { fuel: fuels },
    results: {
      bubble_number: t`Buoyancy against surface`,
      critical_bore_mm: t`Bore above which a long bubble rises`,
    },
    how: {
      bubble_number: t`Δρ·g·r²/σ; the bubble sticks below 0.842`,
      critical_bore_mm: t`2·√(0.842·σ/(Δρ·g)), still and upright`,
    },
  },
  fuel_run: {
    fields: {
      suction_bore_mm: [t`Bore, tank to pump`, t`as printed`],
      ...suction,
      pressure_bore_mm: [t`Bore, pump to heater`, t`as printed`],
      ...pressure,
      pump_air_celsius: [t`Warmest air at the pump`, t`after a drive, shaded thermometer`],
      fuel_to_hot_mm: t`Pump and line to a hot part`,
    },
    results: {
      suction_bore_mm: t`Bore, tank to pump`,
      suction_length_m: t`Line from tank to pump`,
      suction_lift_mm: t`Pump above the lowest fuel`,
      pressure_bore_mm: t`Bore, pump to heater`,
      pressure_length_m: t`Line from pump to heater`,
      pressure_lift_mm: t`Heater above the pump`,
      pump_air_celsius: t`Warmest air at the pump`,
      fuel_to_hot_mm: t`Pump and line to a hot part`,
    },
    change: {
      suction_line_m: length,
      pressure_line_m: length,
      suction_lift_mm: suctionHeight,
      pressure_lift_mm: pressureHeight,
      fuel_to_hot_mm: space,
      pump_air_celsius: (/** @type {string} */ by) => t`${by} cooler: move it, or shield it.`,
    },
    advice: {
      'suction_bore_mm.beyond': BORE,
      'suction_bore_mm.within': ITS_BORE,
      'pressure_bore_mm.beyond': BORE,
      'pressure_bore_mm.within': ITS_BORE,
    },
  },
  fuel_pressure: {
    fields: {
      fuel,
      fuel_celsius: [t`Coldest fuel in the line`, t`where it will be used`],
      cloud_point_celsius: [t`Cloud point`, t`of diesel, from its supplier`],
      viscosity_40_mm2_per_s: t`Viscosity at 40 °C`,
      other_viscosity_mm2_per_s: t`Viscosity, a second one`,
      other_celsius: t`at the temperature`,
      density_15_kg_per_m3: t`Density at 15 °C`,
      stroke_ml: [t`Stroke`, t`technical data of the pump`],
      stroke_ms: [t`Time of a stroke`, t`the faster way; pump’s data`],
      suction_bore_mm: [t`Bore, tank to pump`, realBore],
      ...suction,
      filter_pa: [t`Loss of a filter before the pump`, t`empty: no filter`],
      pressure_bore_mm: [t`Bore, pump to heater`, realBore],
      ...pressure,
      density_spread: t`what the fuel may weigh (enter its density)`,
      viscosity_spread: t`how thick the fuel may be (enter its viscosity)`,
      steepness_spread: t`how much the cold thickens it (enter a second viscosity)`,
      pulse_spread: t`how uneven a stroke is`,
    },
    choices: { fuel: fuels },
    problems: {
      'fuel_celsius.beyond_formula': t`Below the cloud point wax comes out and no formula holds: winter fuel, or a warmer line.`,
      'suction_bore_mm.beyond_formula': t`At this flow the line is no longer laminar (Reynolds above 2000): no answer from here.`,
      'pressure_bore_mm.beyond_formula': t`At this flow the line is no longer laminar (Reynolds above 2000): no answer from here.`,
    },
    results: {
      above_cloud_kelvin: t`Fuel above its cloud point`,
      suction_reynolds: t`Reynolds number, tank to pump`,
      pressure_reynolds: t`Reynolds number, pump to heater`,
      density_kg_per_m3: t`Density in the cold`,
      viscosity_mm2_per_s: t`Viscosity in the cold`,
      peak_l_per_h: t`Flow during a stroke`,
      suction_loss_pa: t`Loss, tank to pump`,
      pressure_loss_pa: t`Loss, pump to heater`,
      suction_pa: t`Suction at the pump`,
      pump_pressure_pa: t`Pressure behind the pump`,
    },
    how: {
      above_cloud_kelvin: t`coldest fuel less its cloud point; where this may be below 0, nothing else is bounded`,
      suction_reynolds: t`4·Q/(π·d·ν); laminar up to 2000`,
      pressure_reynolds: t`4·Q/(π·d·ν); laminar up to 2000`,
      density_kg_per_m3: t`EN 590 or EN 228 at 15 °C, less 0.084 or 0.12 % a kelvin (ASTM D1250, from memory)`,
      viscosity_mm2_per_s: t`log log (ν + 0.7) falls evenly with log T (ASTM D341, from memory)`,
      peak_l_per_h: t`stroke ÷ time of a stroke, 1 ± 0.5 for an uneven one (assumed)`,
      suction_loss_pa: t`128·µ·L·Q/(π·d⁴), Hagen–Poiseuille`,
      pressure_loss_pa: t`128·µ·L·Q/(π·d⁴), Hagen–Poiseuille`,
      suction_pa: t`ρ·g·h and loss and filter`,
      pump_pressure_pa: t`ρ·g·h and loss`,
    },
    change: {
      suction_pa: (/** @type {string} */ by) =>
        t`${by} less: pump lower, line shorter, or fuel warmer.`,
      pump_pressure_pa: (/** @type {string} */ by, /** @type {boolean} */ more) =>
        more ? t`${by} more.` : t`${by} less: line shorter, or fuel warmer.`,
    },
  },
  prime: {
    fields: {
      suction_bore_mm: t`Bore, tank to pump`,
      suction_length_m: suction.suction_length_m,
      pressure_bore_mm: t`Bore, pump to heater`,
      pressure_length_m: pressure.pressure_length_m,
      filter_ml: [t`What a filter holds`, t`empty: no filter`],
      stroke_ml: [t`Stroke`, t`technical data of the pump`],
      stroke_hz: [t`Strokes a second`, t`while it starts: count them`],
      start_s: [t`Pump runs in one failed start`, t`watch it once`],
      starts_made: t`Starts made in a row so far`,
    },
    results: {
      suction_ml: t`In the line, tank to pump`,
      pressure_ml: t`In the line, pump to heater`,
      volume_ml: t`To be filled`,
      prime_s: t`Pump must run at least`,
      starts_worth: t`Starts needed, at least`,
      starts_made: t`Starts made in a row`,
    },
    how: {
      suction_ml: t`π/4·d²·L`,
      pressure_ml: t`π/4·d²·L`,
      volume_ml: t`both and the filter`,
      prime_s: t`volume ÷ (stroke · strokes a second), every stroke full of fuel`,
      starts_worth: t`that time ÷ one start; a lower bound`,
      starts_made: t`as counted`,
    },
    advice: {
      'starts_worth.beyond': t`More starts than the manual permits in a row: pause as it says, or fill the line first.`,
      'starts_worth.not_proven': t`It can take more, so this is never proven: count the starts, and stop at the manual’s number.`,
      'starts_made.beyond': t`No more starts: pause or unlock as the manual says.`,
    },
  },
  tank: {
    fields: {
      shape: t`Shape`,
      depth_mm: [t`Depth`, t`flange to floor; of a lying cylinder its diameter`],
      length_mm: [t`Length`, t`box, lying cylinder`],
      width_mm: [t`Width`, t`box; diameter of an upright cylinder`],
      standpipe_mm: [t`Heater’s pipe below the flange`, t`to its tip`],
      cut_mm: [t`Height of its slanted cut`, t`empty: cut square`],
      cut_spread: t`where on the cut it begins to draw air`,
      second_mm: [t`Second pipe below the flange`, t`as the engine’s own; empty: none`],
      level_mm: [t`Fuel in the tank, above its floor`, t`no number: a full tank`],
    },
    choices: { shape: [t`Box`, t`Lying cylinder`, t`Upright cylinder`] },
    problems: {
      'standpipe_mm.contradiction': t`Longer than the tank is deep.`,
      'second_mm.contradiction': t`Longer than the tank is deep.`,
      'level_mm.contradiction': t`Higher than the tank is deep.`,
      'cut_mm.contradiction': t`The cut can’t be longer than the pipe.`,
    },
    results: {
      gap_mm: t`Heater’s pipe to the floor`,
      second_gap_mm: t`Second pipe to the floor`,
      in_tank_l: t`Fuel in the tank`,
      left_l: t`Left when the heater draws air`,
      heater_l: t`The heater can draw`,
      second_l: t`Left to the second pipe then`,
    },
    how: {
      gap_mm: t`depth less pipe`,
      second_gap_mm: t`depth less pipe`,
      in_tank_l: t`the level in the tank’s shape, level and with flat ends`,
      left_l: t`below the tip, and half of the cut ± half`,
      heater_l: t`in the tank, less what is left`,
      second_l: t`left, less what the second pipe does not reach; below 0 it draws air first`,
    },
    change: {
      standpipe_gap_mm: (/** @type {string} */ by, /** @type {boolean} */ more) =>
        more ? t`Shorten the pipe by ${by}.` : t`${by} longer.`,
      engine_reserve_l: (/** @type {string} */ by) =>
        t`${by} more must be left: shorten the heater’s pipe.`,
    },
  },
  burn: {
    fields: {
      fuel,
      output_w: [t`Heat`, t`on the power it will mostly run`],
      efficiency: [t`Share of the fuel’s energy that warms`, t`0.8 is 80 %`],
      reach_l: [t`Fuel the standpipe reaches`, t`as the tank’s sheet says`],
      energy_spread: t`what a litre of the fuel holds`,
    },
    choices: { fuel: fuels },
    results: { burn_l_per_h: t`Burnt`, lasts_h: t`Lasts` },
    how: {
      burn_l_per_h: t`heat ÷ (share · energy of a litre): diesel 9.9 ± 0.2 kWh/L (UK conversion factors 2025), petrol 8.85 ± 0.35 (from memory)`,
      lasts_h: t`litres ÷ litres an hour`,
    },
  },
};
