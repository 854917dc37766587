// Of the invented job: heat wanted, place, support.

/** @typedef {import('./demo-job.js').Entry} Entry */

/** Plywood, insulation, sheet; ribs of wood. */
const PANEL = {
  thickness_1_mm: '4',
  conductivity_1_w_per_m_k: '0.13',
  thickness_2_mm: '30',
  conductivity_2_w_per_m_k: '0.035',
  thickness_3_mm: '1.2',
  conductivity_3_w_per_m_k: '160',
  bridged_share: '0.08',
  bridged_u_w_per_m2_k: '2.2',
};
/** As the space's own sheet has it. */
const LOSS = { loss_w: '528.8' };
const LOSS_HALF = { loss_w: '63.64' };

/** @type {Record<string, Entry>} */
export const demand = {
  heat_loss: {
    typed: {
      inside_celsius: '18',
      outside_celsius: '-14',
      volume_m3: '4.6',
      changes_per_h: '1.5',
      altitude_m: '150',
    },
    rows: [
      { area_m2: '7.2', flow: '0', ...PANEL },
      { area_m2: '2.6', flow: '1', ...PANEL },
      { area_m2: '2.6', flow: '2', ...PANEL },
      { area_m2: '0.35', flow: '0', u_w_per_m2_k: '3.1', bridged_share: '0' },
    ],
  },
  heater_size: {
    typed: {
      ...LOSS,
      loss_is: '0',
      full_w: '2050',
      lowest_w: '750',
      altitude_m: '150',
      altitude_share: '0',
    },
    half: LOSS_HALF,
  },
  warm_up: {
    typed: {
      ...LOSS,
      power_w: '2050',
      inside_celsius: '18',
      outside_celsius: '-14',
      start_celsius: '-14',
      heat_kj_per_k: '140',
    },
    half: { ...LOSS_HALF, power_w: '236.7' },
  },
  night: {
    typed: {
      ...LOSS,
      hours_h: '9',
      fuel: '0',
      efficiency: '0.81',
      electrical_w: '24',
      battery_v: '12.6',
      idle_l_per_h: '1.9',
    },
    half: LOSS_HALF,
  },
};

/** @type {Record<string, Entry>} */
export const place = {
  clearances: {
    typed: {
      outlet_end_mm: '210',
      intake_end_mm: '160',
      top_mm: '92',
      bottom_mm: '71',
      left_mm: '110',
      right_mm: '68',
      outlet_to_person_mm: '520',
      intake_to_exhaust_mm: '1480',
    },
  },
  fit: {
    typed: {
      inner_x_mm: '720',
      inner_y_mm: '460',
      inner_z_mm: '410',
      length_mm: '365',
      width_mm: '128',
      height_mm: '132',
      orientation: '0',
    },
  },
  cut_plan: {
    typed: {
      panel_mm: '9',
      lean_right: '0',
      lean_up: '0',
      wander_mm: '0',
      middle_right_mm: '10',
      middle_up_mm: '5',
      turn_deg: '0',
      a_diameter_mm: '92',
      a_right_mm: '0',
      a_up_mm: '0',
      plate_width_mm: '230',
      plate_height_mm: '170',
      plate_right_mm: '0',
      plate_up_mm: '0',
      seal_mm: '12',
    },
    rows: [
      { face: '0', right_mm: '190', up_mm: '-60', up_to_mm: '80' },
      { face: '1', right_mm: '170', up_mm: '-200', up_to_mm: '200' },
    ],
  },
};

/** Blades that go in and stay out, line by line. */
const GAPS = [
  ['0.1', '0.15'],
  ['0.15', '0.2'],
  ['0.05', '0.1'],
  ['0.1', '0.15'],
  ['0.25', '0.3'],
  ['0.2', '0.25'],
];

/** @type {Record<string, Entry>} */
export const support = {
  support: {
    typed: { long_mm: '168', short_mm: '112', straightedge_mm: '300', straightness_mm: '0.02' },
    rows: GAPS.map(([goes_mm, stays_mm], i) => ({ line: String(i), goes_mm, stays_mm })),
  },
  twist: { typed: { first_deg: '0.4', second_deg: '0.5', base_mm: '150' } },
};
