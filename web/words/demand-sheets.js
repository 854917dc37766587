// Words of the sheets of the heat wanted: fields, results, formulas, what to do.

/** @typedef {[string, string]} Told */

const LOSS = 'Heat lost';
/** @type {Told} */
const HEIGHT = ['Height above the sea', 'where it will be used'];
const POWER = 'Heat at full power';

/** @type {(n: number) => Record<string, Told>} */
const layer = (n) => ({
  [`thickness_${n}_mm`]: [`Layer ${n}, thickness`, n === 1 ? 'innermost' : 'behind the last one'],
  [`conductivity_${n}_w_per_m_k`]: [`Layer ${n}, conductivity λ`, 'on the label of insulation'],
});

/** @type {Record<string, import('../plan/sheet.js').SheetWords>} */
export const sheets = {
  heat_loss: {
    fields: {
      inside_celsius: 'Wanted inside',
      outside_celsius: ['Coldest outside', 'that the heater must cope with'],
      volume_m3: 'Air inside',
      changes_per_h: ['Air changes', 'how often all of it is new'],
      altitude_m: ['Height above the sea', '± takes in the weather'],
      inside_film_spread: 'how well air clings inside',
      outside_film_spread: 'how windy it is',
      bridge_spread: 'how well ribs lead heat',
      area_m2: 'Area',
      flow: 'Heat goes',
      ...layer(1),
      ...layer(2),
      ...layer(3),
      u_w_per_m2_k: ['U value', 'of all of it'],
      bridged_share: ['Share of the area', '0.1 is 10 %; 0: none'],
      bridged_u_w_per_m2_k: ['U value there', 'through the rib; bare metal about 6'],
      other_celsius: 'Temperature there',
    },
    choices: { flow: ['sideways: wall, glass, door', 'up: roof', 'down: floor'] },
    problems: {
      'outside_celsius.contradiction': 'No colder than inside: nothing is lost.',
      'u_w_per_m2_k.contradiction': 'Layers or a U value, not both.',
      'other_celsius.contradiction':
        'Warmer than inside: that heats only while it is warm. Leave this surface out.',
    },
    results: {
      surfaces_w: 'Through the surfaces',
      air_w: 'By the air that is changed',
      loss_w: LOSS,
      at_least_w: 'Heat lost, at least',
      open_surfaces: 'Surfaces that can lose more',
      u_w_per_m2_k: 'U value',
      through_w: 'Heat through it',
      open: 'can lose more',
    },
    how: {
      surfaces_w: 'U · area · difference, each',
      air_w: 'volume · changes · ρ·cp · difference; ISO 2533 pressure, density as inside',
      loss_w: 'both together; no sun, no people, no damp',
      at_least_w: 'both together; one-dimensional, so the least',
      open_surfaces: 'ribs not told, or beyond what ISO 6946’s method is for',
      u_w_per_m2_k:
        '1 ÷ (films + Σ thickness ÷ λ), ISO 6946: inside 0.13, up 0.10, down 0.17 (± 20 %, assumed), outside 0.04 (0.02 to 0.06 m²·K/W, wind of 10 to 2 m/s); another space behind: 0.04 to the inside’s. Ribs: the middle between paths side by side and faces of one temperature, ± to both; the two more than 1.5 apart: side by side alone, the least',
      through_w: 'U · area · difference',
    },
    row: (n) => `Surface ${n}`,
  },
  heater_size: {
    fields: {
      loss_w: LOSS,
      loss_is: ['This loss', 'a lower end proves no heater enough'],
      full_w: [POWER, 'heat that comes out'],
      lowest_w: ['Heat at its lowest', 'empty if not told'],
      altitude_m: HEIGHT,
      altitude_share: [
        'Share of its heat lost there',
        'from the manual; 0.1 is 10 %; 0: none told',
      ],
    },
    choices: { loss_is: ['everything is in it', 'at least so much is lost'] },
    results: {
      available_w: 'Heat at full power there',
      spare_w: 'Heat to spare at full power',
      spare_at_most_w: 'Heat to spare, at most',
      altitude_m: 'Height above the sea',
      lowest_ratio: 'Lowest heat ÷ heat lost',
    },
    how: {
      available_w: 'full · (1 − share lost with height)',
      spare_w: 'heat there less heat lost',
      spare_at_most_w: 'heat there less what is lost at least',
      altitude_m: 'as told',
      lowest_ratio: 'above 1 it switches off and on in this cold; in milder weather sooner',
    },
    silent: ['spare_at_most_w'],
    change: {
      spare_power_w: (by, more) =>
        more ? `${by} more heat, or so much less lost, would prove it.` : `${by} less.`,
      altitude_m: (by) => `${by} lower; or what the manual asks for beyond its height.`,
    },
    advice: {
      'spare_at_most_w.beyond': 'Too small already for what is told.',
      'spare_at_most_w.not_proven':
        'The loss is a lower end: tell the ribs of every surface, then take it again.',
    },
  },
  warm_up: {
    fields: {
      power_w: [POWER, 'at that height'],
      loss_w: [LOSS, 'at the wanted temperature'],
      inside_celsius: 'Wanted inside',
      outside_celsius: 'Outside',
      start_celsius: 'Inside at the start',
      heat_kj_per_k: ['Heat for one kelvin', 'everything that warms with the air'],
    },
    problems: {
      'outside_celsius.contradiction': 'No colder than inside: nothing is lost.',
      'start_celsius.contradiction': 'Warmer than wanted already.',
    },
    results: {
      beyond_wanted_k: 'Warmer than wanted in the end, by',
      warm_min: 'Until it is warm',
    },
    how: {
      beyond_wanted_k: 'outside + heat ÷ (loss a kelvin), less what is wanted',
      warm_min:
        'C·dT/dt = P − H·(T − outside), solved: C ÷ H · ln((end − start) ÷ (end − wanted)). A loss that is “at least” makes it the least time',
    },
  },
  night: {
    fields: {
      hours_h: 'Hours',
      loss_w: LOSS,
      fuel: 'Fuel',
      efficiency: ['Share of the fuel’s energy that warms', '0.8 is 80 %'],
      energy_kwh_per_l: ['Energy of a litre', 'empty: usual for the fuel'],
      energy_spread: 'what a litre of the fuel holds',
      electrical_w: ['Electrical power', 'on average over the night; empty: not asked'],
      battery_v: 'Voltage of its battery',
      idle_l_per_h: ['Engine burns idling', 'its paper, or measured; empty: not asked'],
    },
    choices: { fuel: ['Diesel', 'Petrol'] },
    results: {
      burn_l_per_h: 'Fuel in an hour',
      night_l: 'Fuel of the night',
      charge_ah: 'Charge from the battery',
      idle_l: 'Fuel of the engine, idling',
      saved_l: 'Less than idling, by',
    },
    how: {
      burn_l_per_h:
        'heat ÷ (share · energy of a litre): diesel 9.9 ± 0.2 kWh/L (UK conversion factors 2025), petrol 8.85 ± 0.35 (from memory)',
      night_l: 'fuel in an hour · hours',
      charge_ah: 'power · hours ÷ voltage',
      idle_l: 'idling in an hour · hours',
      saved_l: 'idling less the heater; below 0 the heater takes more',
    },
  },
};
