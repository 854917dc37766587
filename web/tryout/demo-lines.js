// Of the invented job: warm air, fuel, exhaust and combustion air.

/** @typedef {import('./demo-job.js').Entry} Entry */

const AIR = { power_w: '2050', inlet_celsius: '8', altitude_m: '150' };

/** @type {Record<string, Entry>} */
export const ducts = {
  ducts: {
    typed: {
      ...AIR,
      flow_m3_per_h: '96',
      power: '1.8',
      curve_density_kg_per_m3: '1.2',
      flow_1_m3_per_h: '0',
      pressure_1_pa: '480',
      flow_2_m3_per_h: '50',
      pressure_2_pa: '400',
      flow_3_m3_per_h: '90',
      pressure_3_pa: '260',
      flow_4_m3_per_h: '120',
      pressure_4_pa: '120',
      flow_5_m3_per_h: '140',
      pressure_5_pa: '0',
    },
    rows: [
      { layout: '0', run: '0', kind: '4', bore_mm: '75', share: '0.7' },
      { layout: '0', run: '1', kind: '0', bore_mm: '75', length_m: '0.9', roughness_mm: '0.09' },
      { layout: '0', run: '1', kind: '1', bore_mm: '75', angle_deg: '90', radius_ratio: '1.5' },
      {
        ...{ layout: '0', run: '1', kind: '3', bore_mm: '75', length_m: '1.2', share: '0.1' },
        ...{ angle_deg: '90', radius_ratio: '1.5' },
      },
      { layout: '0', run: '1', kind: '4', bore_mm: '75' },
    ],
  },
  air_flow: { typed: { ...AIR, outlet_celsius: '68' } },
  return_air: {
    typed: { flow_m3_per_h: '96', air_celsius: '18', altitude_m: '150', allowed_pa: '12' },
    rows: [{ width_mm: '180', height_mm: '90', free_share: '0.6', count: '1' }],
  },
};

const LINE = {
  suction_bore_mm: '2.2',
  suction_length_m: '1.4',
  pressure_bore_mm: '2.2',
  pressure_length_m: '3.8',
};
const LIFTS = { suction_lift_mm: '320', pressure_lift_mm: '640' };

/** @type {Record<string, Entry>} */
export const fuel = {
  fuel_run: { typed: { ...LINE, ...LIFTS, pump_air_celsius: '30', fuel_to_hot_mm: '210' } },
  fuel_pressure: {
    typed: {
      ...LINE,
      ...LIFTS,
      fuel: '0',
      fuel_celsius: '6',
      cloud_point_celsius: '-12',
      viscosity_40_mm2_per_s: '2.9',
      density_15_kg_per_m3: '836',
      stroke_ml: '0.028',
      stroke_ms: '45',
      filter_pa: '1800',
    },
  },
  bubble: { typed: { fuel: '0', bore_mm: '2.2' } },
  prime: {
    typed: {
      ...LINE,
      filter_ml: '9',
      stroke_ml: '0.028',
      stroke_hz: '3.5',
      start_s: '160',
      starts_made: '1',
    },
  },
  tank: {
    typed: {
      shape: '0',
      depth_mm: '420',
      length_mm: '640',
      width_mm: '520',
      standpipe_mm: '310',
      cut_mm: '12',
      second_mm: '356',
      level_mm: '260',
    },
  },
  burn: { typed: { fuel: '0', output_w: '2050', efficiency: '0.81', reach_l: '60' } },
};

/** @param {[string, string, string][]} legs angle, length, bend */
const legs = (legs) =>
  legs.map(([elevation_deg, length_m, bend_deg]) => ({ elevation_deg, length_m, bend_deg }));

/** @type {Record<string, Entry>} */
export const flue = {
  exhaust: {
    typed: { boat: '0', drain_in_manual: '0' },
    rows: legs([
      ['-12', '0.35', '0'],
      ['-8', '0.45', '60'],
      ['-15', '0.3', '45'],
    ]),
  },
  air_pipe: {
    typed: { boat: '0', drain_in_manual: '0' },
    rows: legs([
      ['-10', '0.3', '0'],
      ['-0.6', '0.35', '45'],
    ]),
  },
  pipe_ends: {
    typed: { air_to_exhaust_mm: '480', past_body_mm: '28', lagged: '0' },
    rows: [
      { what: '0', distance_mm: '610' },
      { what: '1', distance_mm: '940' },
      { what: '7', distance_mm: '240' },
      { what: '9', distance_mm: '560' },
    ],
  },
};
