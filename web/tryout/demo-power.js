// Of the invented job: supply, first start.

/** @typedef {import('./demo-job.js').Entry} Entry */

const CURRENTS = { start_a: '10.5' };

/** @type {Record<string, Entry>} */
export const supply = {
  cable: {
    typed: {
      ...CURRENTS,
      out_m: '4.6',
      back_by: '0',
      back_m: '4.1',
      conductor: '5',
      conductor_celsius: '40',
      joints_mohm: '8',
      start_supply_v: '12.4',
      running_supply_v: '12.7',
      running_a: '2.2',
    },
  },
  fuse: {
    typed: {
      fuse_a: '20',
      fuse_to_battery_mm: '130',
      conductor: '5',
      ampacity_a: '42',
      engine_space: '0.9',
      bundle: '0.8',
    },
  },
  bank: { typed: { nominal: '0', bank_v: '12.6', take_off_v: '12.6' } },
  battery: {
    typed: {
      ...CURRENTS,
      capacity_ah: '95',
      rated_h: '20',
      usable: '0.5',
      cold: '0.8',
      average_a: '1.9',
      standby_a: '0.05',
      starts: '2',
      start_min: '3',
      after_a: '3',
      after_min: '3',
      wanted_h: '9',
    },
  },
};

/** @type {Record<string, Entry>} */
export const start = {
  started: {
    typed: {
      battery_glow_v: '12.4',
      heater_glow_v: '12.0',
      glow_a: '10.5',
      battery_run_v: '12.7',
      heater_run_v: '12.6',
      run_a: '2.2',
      low_a: '0.9',
      intake_celsius: '9',
      outlet_celsius: '76',
      outlet_low_celsius: '48',
      flame_min: '2.4',
      starts: '1',
      after_run_min: '3.1',
    },
  },
  co_check: {
    typed: {
      device: '0',
      meter_ppm: '3',
      meter_share: '0.05',
      step_ppm: '1',
      outdoor_ppm: '0',
      volume_m3: '4.6',
      air_least_per_h: '5',
      air_most_per_h: '11',
      powers: '0',
    },
    rows: [
      { place: '0', minutes: '5', power: '0', ppm: '0' },
      { place: '1', minutes: '25', power: '0', ppm: '1' },
      { place: '0', minutes: '40', power: '1', ppm: '0' },
      { place: '0', minutes: '58', power: '1', ppm: '0' },
    ],
  },
};
