// Words of the limits that a tape, a table or a manual tells, in the order of the work: what each is
// for, which end a manual usually gives, and where it usually stands.

import { t } from '../language.js';

const DIMENSIONS = t`Drawing of the unit with its free spaces, in the chapter on the mounting place.`;
const AIR = t`Technical data, or the chapter on air ducting.`;
const LINE = t`Chapter on the fuel supply, table of line lengths.`;
const BORE = t`One size: enter the same number twice, the one you use.`;
const FLUE = t`Chapter on exhaust and combustion air, with its drawing.`;
const BOAT = t`Chapter on boats, or the boat outlet’s own paper.`;

/** @type {Record<string, { label: string, ask: 'low' | 'high' | 'both', where: string, sign?: string }>} */
export const bounds = {
  altitude_m: {
    label: t`Height above the sea`,
    ask: 'high',
    where: t`Technical data, or the chapter on use in the mountains.`,
  },
  clear_outlet_end_mm: { label: t`Free beyond the warm-air end`, ask: 'low', where: DIMENSIONS },
  clear_intake_end_mm: { label: t`Free before the intake end`, ask: 'low', where: DIMENSIONS },
  clear_top_mm: { label: t`Free above`, ask: 'low', where: DIMENSIONS },
  clear_bottom_mm: { label: t`Free below`, ask: 'low', where: DIMENSIONS },
  clear_left_mm: { label: t`Free on the left`, ask: 'low', where: DIMENSIONS },
  clear_right_mm: { label: t`Free on the right`, ask: 'low', where: DIMENSIONS },
  outlet_to_person_mm: {
    label: t`Warm-air outlet to a person`,
    ask: 'low',
    where: t`Warnings at the front, or the chapter on outlets.`,
  },
  intake_to_exhaust_mm: {
    label: t`Heated-air intake to an exhaust`,
    ask: 'low',
    where: t`Chapter on heated air, warnings about exhaust gas.`,
  },
  cut_to_obstacle_mm: {
    label: t`Edge of the cut to anything behind it`,
    ask: 'low',
    where: t`Rarely in a heater’s manual; the vehicle’s body-builder guide says it.`,
  },
  unevenness_mm: {
    label: t`Unevenness under the seal`,
    ask: 'high',
    where: t`Chapter on mounting, beside the seal.`,
  },
  duct_bends_deg: { label: t`Bends of warm and return duct together`, ask: 'high', where: AIR },
  duct_length_m: { label: t`Length of the ducts together`, ask: 'high', where: AIR },
  duct_loss_pa: { label: t`Pressure the ducts may cost`, ask: 'high', where: AIR },
  air_flow_m3_per_h: { label: t`Air the heater needs`, ask: 'low', where: AIR },
  outlet_air_celsius: {
    label: t`Warm air at the outlet`,
    ask: 'high',
    where: t`Technical data, overheat switch; fault table.`,
  },
  return_area_cm2: { label: t`Free area for return air`, ask: 'low', where: AIR },
  fuel_bore_mm: { label: t`Bore, tank to pump`, ask: 'both', where: LINE, sign: BORE },
  fuel_bore_pressure_mm: { label: t`Bore, pump to heater`, ask: 'both', where: LINE, sign: BORE },
  suction_line_m: { label: t`Line from tank to pump`, ask: 'high', where: LINE },
  pressure_line_m: { label: t`Line from pump to heater`, ask: 'high', where: LINE },
  suction_lift_mm: { label: t`Pump above the fuel`, ask: 'high', where: LINE },
  pressure_lift_mm: { label: t`Heater above the pump`, ask: 'both', where: LINE },
  suction_pa: {
    label: t`Suction at the pump`,
    ask: 'high',
    where: t`Technical data of the pump; often only the lift is given.`,
  },
  pump_pressure_pa: {
    label: t`Pressure behind the pump`,
    ask: 'high',
    where: t`Technical data of the pump.`,
  },
  pump_air_celsius: {
    label: t`Air round the pump`,
    ask: 'high',
    where: t`Technical data of the pump.`,
  },
  fuel_to_hot_mm: {
    label: t`Pump and line to hot parts`,
    ask: 'low',
    where: t`Chapter on the fuel supply, warnings.`,
  },
  standpipe_gap_mm: {
    label: t`Standpipe to the tank’s floor`,
    ask: 'low',
    where: t`Chapter on tapping the tank.`,
  },
  engine_reserve_l: {
    label: t`Fuel that must be left to the engine`,
    ask: 'low',
    where: t`Rarely in a heater’s manual: what the engine needs to be started and driven to a pump.`,
  },
  starts_in_a_row: {
    label: t`Starts in a row`,
    ask: 'high',
    where: t`Chapter on first start, or the fault table.`,
  },
  exhaust_length_m: { label: t`Length of the exhaust pipe`, ask: 'both', where: FLUE },
  exhaust_bends_deg: { label: t`Bends of the exhaust`, ask: 'high', where: FLUE },
  exhaust_to_combustible_mm: {
    label: t`Bare exhaust to what can burn`,
    ask: 'low',
    where: t`Chapter on the exhaust, warnings; laws for some vehicles.`,
  },
  exhaust_to_opening_mm: { label: t`Exhaust’s end to an opening`, ask: 'low', where: FLUE },
  exhaust_to_line_mm: {
    label: t`Exhaust to tyres, brake and fuel lines`,
    ask: 'low',
    where: t`Chapter on the exhaust, warnings.`,
  },
  exhaust_past_body_mm: { label: t`Exhaust’s end past the body`, ask: 'low', where: FLUE },
  outlet_above_water_mm: {
    label: t`Boat’s outlet above the water, heeled`,
    ask: 'low',
    where: BOAT,
  },
  loop_above_water_mm: { label: t`Boat’s loop above the water, heeled`, ask: 'low', where: BOAT },
  drain_bore_mm: {
    label: t`Drain hole at the lowest point`,
    ask: 'both',
    where: t`Chapter on the exhaust. Where it names none, none is allowed: empty both fields.`,
  },
  air_pipe_length_m: { label: t`Length of the combustion-air pipe`, ask: 'both', where: FLUE },
  air_pipe_bends_deg: { label: t`Bends of the combustion-air pipe`, ask: 'high', where: FLUE },
  air_to_exhaust_mm: { label: t`Combustion-air end to the exhaust’s`, ask: 'low', where: FLUE },
  supply_voltage_v: { label: t`Voltage of the supply`, ask: 'both', where: t`Technical data.` },
  start_voltage_v: {
    label: t`Voltage at the heater during start`,
    ask: 'low',
    where: t`Technical data, undervoltage; fault table.`,
  },
  cable_drop_v: {
    label: t`Voltage the cable may cost`,
    ask: 'high',
    where: t`Wiring diagram; often a table of conductors by length.`,
  },
  fuse_a: { label: t`Fuse`, ask: 'both', where: t`Wiring diagram.` },
  fuse_to_battery_mm: {
    label: t`Battery to its fuse`,
    ask: 'high',
    where: t`Wiring diagram; laws for some vehicles.`,
  },
  after_run_min: {
    label: t`After-run, from off to still`,
    ask: 'both',
    where: t`Chapter on operation.`,
  },
};

/** Where a manual states an angle. @type {Record<string, string>} */
export const angleWhere = {
  heater_port: t`Drawing of permitted positions, chapter on mounting.`,
  heater_outlet: t`Drawing of permitted positions, chapter on mounting.`,
  pump_outlet: t`Drawing of the pump’s position, chapter on the fuel supply.`,
  pump_roll: t`Drawing of the pump’s position, chapter on the fuel supply.`,
  filter_upright: t`Beside the filter, chapter on the fuel supply.`,
  pipe_fall: FLUE,
};

const UP = t`Plus looks up, minus looks down, 0 is level.`;
/** Which way an angle counts. @type {Record<string, string>} */
export const angleSigns = {
  heater_port: [UP, t`Where it may look straight down, leave “at least” empty.`].join(' '),
  heater_outlet: UP,
  pump_outlet: UP,
  pump_roll: t`0 is upright. Plus is turned clockwise, seen from its tank end.`,
  filter_upright: t`0 is upright, 90 lies flat.`,
  pipe_fall: t`Minus falls away from the heater, plus climbs.`,
};

/** The way through the manual: sections in the order of the work, each with its angles. */
export const steps = [
  { id: 'demand', title: t`Heat wanted`, angles: [] },
  { id: 'place', title: t`Place`, angles: [] },
  { id: 'support', title: t`Support and heater`, angles: ['heater_port', 'heater_outlet'] },
  { id: 'ducts', title: t`Ducts`, angles: [] },
  { id: 'fuel', title: t`Fuel`, angles: ['pump_outlet', 'pump_roll', 'filter_upright'] },
  { id: 'flue', title: t`Exhaust and combustion air`, angles: ['pipe_fall'] },
  { id: 'supply', title: t`Supply`, angles: [] },
  { id: 'start', title: t`First start`, angles: [] },
];

export const guide = {
  title: t`From the manual`,
  lead: t`Take the heater’s own manual. What it does not say stays empty: it then reads “not entered”, which is honest, and better than a guess.`,
  document: t`The document`,
  documentHint: t`title, number, edition`,
  /** @param {number} n @param {number} of */
  step: (n, of) => t`Step ${n} of ${of}`,
  low: t`at least`,
  high: t`at most`,
  basis: t`on whose word`,
  source: t`document and page`,
  vehicles: t`the vehicles this law is for`,
  reason: t`why it may be looser than law or usage`,
  where: t`Where to look:`,
  notEntered: t`not entered`,
  entered: t`entered`,
  /** On no document's word. */
  example: t`trade usage, not the manual’s: put the manual’s number in its place`,
  /** What is typed is kept with the step. */
  typed: t`not saved yet`,
  /** @param {string} what */
  useUsage: (what) => t`Trade usage, no source: ${what}. Use it`,
  /** @param {string} what @param {string} source @param {string} vehicles */
  useLaw: (what, source, vehicles) => t`${source}, ${vehicles}: ${what}. Use it`,
  next: t`Save, go on`,
  last: t`Save, to the job`,
  saved: t`saved`,
  other: t`Steps`,
  /** @param {number} n @param {number} of */
  count: (n, of) => t`${n} of ${of} from the manual`,
  /** @type {Record<string, (low: string, high: string) => string>} */
  problems: {
    out_of_range: (low, high) => t`Enter ${low} to ${high}.`,
    not_above_low: () => t`The upper end must not lie below the lower one.`,
    not_one_value: () => t`A bore is one size: enter the same number twice, the one you use.`,
    source_missing: () => t`Name the document and page, or the clause.`,
    vehicles_missing: () => t`A law is for certain vehicles: name them.`,
    reason_missing: () =>
      t`Looser than a law or trade usage: say why it may be so for this heater, or that the law is for other vehicles. It goes into the record.`,
    too_long: (_, most) => t`Shorten it to ${most} letters.`,
  },
  seeField: t`Not saved: see the field that is marked.`,
};
