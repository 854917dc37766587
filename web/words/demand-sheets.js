// Words of the sheets of the heat wanted: fields, results, formulas, what to do.

import { t } from '../language.js';

/** @typedef {[string, string]} Told */

const LOSS = t`Heat lost`;
/** @type {Told} */
const HEIGHT = [t`Height above the sea`, t`where it will be used`];
const POWER = t`Heat at full power`;

/** @type {(n: number) => Record<string, Told>} */
const layer = (n) => ({
  [`thickness_${n}_mm`]: [
    t`Layer ${n}, thickness`,
    n === 1 ? t`innermost` : t`behind the last one`,
  ],
  [`conductivity_${n}_w_per_m_k`]: [t`Layer ${n}, conductivity λ`, t`on the label of insulation`],
});

/** @type {Record<string, import('../plan/sheet.js').SheetWords>} */
export const sheets = {
  heat_loss: {
    fields: {
      inside_celsius: t`Wanted inside`,
      outside_celsius: [t`Coldest outside`, t`that the heater must cope with`],
      volume_m3: t`Air inside`,
      changes_per_h: [t`Air changes`, t`how often all of it is new`],
      altitude_m: [t`Height above the sea`, t`± takes in the weather`],
      inside_film_spread: t`how well air clings inside`,
      outside_film_spread: t`how windy it is`,
      bridge_spread: t`how well ribs lead heat`,
      area_m2: t`Area`,
      flow: t`Heat goes`,
      ...layer(1),
      ...layer(2),
      ...layer(3),
      u_w_per_m2_k: [t`U value`, t`of all of it`],
      bridged_share: [t`Share of the area`, t`0.1 is 10 %; 0: none`],
      bridged_u_w_per_m2_k: [t`U value there`, t`through the rib; bare metal about 6`],
      other_celsius: t`Temperature there`,
    },
    choices: { flow: [t`wall, glass, door: sideways`, t`roof: up`, t`floor: down`] },
    problems: {
      'outside_celsius.contradiction': t`No colder than inside: nothing is lost.`,
      'u_w_per_m2_k.contradiction': t`Layers or a U value, not both.`,
      'other_celsius.contradiction': t`Warmer than inside: that heats only while it is warm. Leave this surface out.`,
    },
    results: {
      surfaces_w: t`Through the surfaces`,
      air_w: t`By the air that is changed`,
      loss_w: LOSS,
      at_least_w: t`Heat lost, at least`,
      open_surfaces: t`Surfaces that can lose more`,
      u_w_per_m2_k: t`U value`,
      through_w: t`Heat through it`,
      open: t`can lose more`,
    },
    how: {
      surfaces_w: t`U · area · difference, each`,
      air_w: t`volume · changes · ρ·cp · difference; ISO 2533 pressure, density as inside`,
      loss_w: t`both together; no sun, no people, no damp`,
      at_least_w: t`both together; one-dimensional, so the least`,
      open_surfaces: t`ribs not told, or beyond what ISO 6946’s method is for`,
      u_w_per_m2_k: t`1 ÷ (films + Σ thickness ÷ λ), ISO 6946: inside 0.13, up 0.10, down 0.17 (± 20 %, assumed), outside 0.04 (0.02 to 0.06 m²·K/W, wind of 10 to 2 m/s); another space behind: 0.04 to the inside’s. Ribs: the middle between paths side by side and faces of one temperature, ± to both; one more than 1.5 times the other: side by side alone, the least`,
      through_w: t`U · area · difference`,
    },
    row: (n) => t`Surface ${n}`,
  },
  heater_size: {
    fields: {
      loss_w: LOSS,
      loss_is: [t`This loss`, t`“at least” shows no heater to be large enough`],
      full_w: [POWER, t`heat that comes out`],
      lowest_w: [t`Heat at its lowest`, t`empty if not told`],
      altitude_m: HEIGHT,
      altitude_share: [
        t`Share of its heat lost there`,
        t`from the manual; 0.1 is 10 %; 0: none told`,
      ],
    },
    choices: { loss_is: [t`everything is in it`, t`at least so much is lost`] },
    results: {
      available_w: t`Heat at full power there`,
      spare_w: t`Heat to spare at full power`,
      spare_at_most_w: t`Heat to spare, at most`,
      altitude_m: t`Height above the sea`,
      lowest_ratio: t`Lowest heat ÷ heat lost`,
    },
    how: {
      available_w: t`full · (1 − share lost with height)`,
      spare_w: t`heat there less heat lost`,
      spare_at_most_w: t`heat there less what is lost at least`,
      altitude_m: t`as told`,
      lowest_ratio: t`above 1 it switches off and on in this cold; in milder weather sooner`,
    },
    silent: ['spare_at_most_w'],
    change: {
      spare_power_w: (by, more) =>
        more ? t`${by} more heat, or so much less lost, would prove it.` : t`${by} less.`,
      altitude_m: (by) => t`${by} lower; or what the manual asks for beyond its height.`,
    },
    advice: {
      'spare_at_most_w.beyond': t`Too small already for what is told.`,
      'spare_at_most_w.not_proven': t`The loss is a lower end: tell the ribs of every surface, then take it again.`,
    },
  },
  warm_up: {
    fields: {
      power_w: [POWER, t`at that height`],
      loss_w: [LOSS, t`at the wanted temperature`],
      inside_celsius: t`Wanted inside`,
      outside_celsius: t`Outside`,
      start_celsius: t`Inside at the start`,
      heat_kj_per_k: [t`Heat for one kelvin`, t`everything that warms with the air`],
    },
    problems: {
      'outside_celsius.contradiction': t`No colder than inside: nothing is lost.`,
      'start_celsius.contradiction': t`Warmer than wanted already.`,
    },
    results: {
      beyond_wanted_k: t`Warmer than wanted in the end, by`,
      warm_min: t`Until it is warm`,
    },
    how: {
      beyond_wanted_k: t`outside + heat ÷ (loss a kelvin), less what is wanted`,
      warm_min: t`C·dT/dt = P − H·(T − outside), solved: C ÷ H · ln((end − start) ÷ (end − wanted)). A loss that is “at least” makes it the least time`,
    },
  },
  night: {
    fields: {
      hours_h: t`Hours`,
      loss_w: LOSS,
      fuel: t`Fuel`,
      efficiency: [t`Share of the fuel’s energy that warms`, t`0.8 is 80 %`],
      energy_kwh_per_l: [t`Energy of a litre`, t`empty: usual for the fuel`],
      energy_spread: t`what a litre of the fuel holds`,
      electrical_w: [t`Electrical power`, t`on average over the night; empty: not asked`],
      battery_v: t`Voltage of its battery`,
      idle_l_per_h: [t`Engine burns idling`, t`its paper, or measured; empty: not asked`],
    },
    choices: { fuel: [t`Diesel`, t`Petrol`] },
    results: {
      burn_l_per_h: t`Fuel in an hour`,
      night_l: t`Fuel of the night`,
      charge_ah: t`Charge from the battery`,
      idle_l: t`Fuel of the engine, idling`,
      saved_l: t`Less than idling, by`,
    },
    how: {
      burn_l_per_h: t`heat ÷ (share · energy of a litre): diesel 9.9 ± 0.2 kWh/L (UK conversion factors 2025), petrol 8.85 ± 0.35 (from memory)`,
      night_l: t`fuel in an hour · hours`,
      charge_ah: t`power · hours ÷ voltage`,
      idle_l: t`idling in an hour · hours`,
      saved_l: t`idling less the heater; below 0 the heater takes more`,
    },
  },
};
