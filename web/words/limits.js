// Words of the limits that a tape, a table or a manual tells, in the order of the work: what each is
// for, which end a manual usually gives, and where it usually stands.

const DIMENSIONS =
  'Drawing of the unit with its free spaces, in the chapter on the mounting place.';
const AIR = 'Technical data, or the chapter on air ducting.';
const LINE = 'Chapter on the fuel supply, table of line lengths.';
const FLUE = 'Chapter on exhaust and combustion air, with its drawing.';
const BOAT = 'Chapter on boats, or the boat outlet’s own paper.';

/** @type {Record<string, { label: string, ask: 'low' | 'high' | 'both', where: string }>} */
export const bounds = {
  altitude_m: {
    label: 'Height above the sea',
    ask: 'high',
    where: 'Technical data, or the chapter on use in the mountains.',
  },
  clear_outlet_end_mm: { label: 'Free beyond the warm-air end', ask: 'low', where: DIMENSIONS },
  clear_intake_end_mm: { label: 'Free before the intake end', ask: 'low', where: DIMENSIONS },
  clear_top_mm: { label: 'Free above', ask: 'low', where: DIMENSIONS },
  clear_bottom_mm: { label: 'Free below', ask: 'low', where: DIMENSIONS },
  clear_left_mm: { label: 'Free on the left', ask: 'low', where: DIMENSIONS },
  clear_right_mm: { label: 'Free on the right', ask: 'low', where: DIMENSIONS },
  outlet_to_person_mm: {
    label: 'Warm-air outlet to a person',
    ask: 'low',
    where: 'Warnings at the front, or the chapter on outlets.',
  },
  intake_to_exhaust_mm: {
    label: 'Heated-air intake to an exhaust',
    ask: 'low',
    where: 'Chapter on heated air, warnings about exhaust gas.',
  },
  cut_to_obstacle_mm: {
    label: 'Edge of the cut to anything behind it',
    ask: 'low',
    where: 'Rarely in a heater’s manual; the vehicle’s body-builder guide says it.',
  },
  unevenness_mm: {
    label: 'Unevenness under the seal',
    ask: 'high',
    where: 'Chapter on mounting, beside the seal.',
  },
  duct_bends_deg: { label: 'Bends of warm and return duct together', ask: 'high', where: AIR },
  duct_length_m: { label: 'Length of the ducts together', ask: 'high', where: AIR },
  duct_loss_pa: { label: 'Pressure the ducts may cost', ask: 'high', where: AIR },
  air_flow_m3_per_h: { label: 'Air the heater needs', ask: 'low', where: AIR },
  outlet_air_celsius: {
    label: 'Warm air at the outlet',
    ask: 'high',
    where: 'Technical data, overheat switch; fault table.',
  },
  return_area_cm2: { label: 'Free area for return air', ask: 'low', where: AIR },
  fuel_bore_mm: { label: 'Bore, tank to pump', ask: 'both', where: LINE },
  fuel_bore_pressure_mm: { label: 'Bore, pump to heater', ask: 'both', where: LINE },
  suction_line_m: { label: 'Line from tank to pump', ask: 'high', where: LINE },
  pressure_line_m: { label: 'Line from pump to heater', ask: 'high', where: LINE },
  suction_lift_mm: { label: 'Pump above the fuel', ask: 'high', where: LINE },
  pressure_lift_mm: { label: 'Heater above the pump', ask: 'both', where: LINE },
  suction_pa: {
    label: 'Suction at the pump',
    ask: 'high',
    where: 'Technical data of the pump; often only the lift is given.',
  },
  pump_pressure_pa: {
    label: 'Pressure behind the pump',
    ask: 'high',
    where: 'Technical data of the pump.',
  },
  pump_air_celsius: {
    label: 'Air round the pump',
    ask: 'high',
    where: 'Technical data of the pump.',
  },
  fuel_to_hot_mm: {
    label: 'Pump and line to hot parts',
    ask: 'low',
    where: 'Chapter on the fuel supply, warnings.',
  },
  standpipe_gap_mm: {
    label: 'Standpipe to the tank’s floor',
    ask: 'low',
    where: 'Chapter on tapping the tank.',
  },
  engine_reserve_l: {
    label: 'Fuel that must be left to the engine',
    ask: 'low',
    where: 'Rarely in a heater’s manual: what the engine needs to be started and driven to a pump.',
  },
  starts_in_a_row: {
    label: 'Starts in a row',
    ask: 'high',
    where: 'Chapter on first start, or the fault table.',
  },
  exhaust_length_m: { label: 'Exhaust pipe', ask: 'both', where: FLUE },
  exhaust_bends_deg: { label: 'Bends of the exhaust', ask: 'high', where: FLUE },
  exhaust_to_combustible_mm: {
    label: 'Bare exhaust to what can burn',
    ask: 'low',
    where: 'Chapter on the exhaust, warnings; laws for some vehicles.',
  },
  exhaust_to_opening_mm: { label: 'Exhaust’s end to an opening', ask: 'low', where: FLUE },
  exhaust_to_line_mm: {
    label: 'Exhaust to tyres, brake and fuel lines',
    ask: 'low',
    where: 'Chapter on the exhaust, warnings.',
  },
  exhaust_past_body_mm: { label: 'Exhaust’s end past the body', ask: 'low', where: FLUE },
  outlet_above_water_mm: {
    label: 'Boat’s outlet above the water, heeled',
    ask: 'low',
    where: BOAT,
  },
  loop_above_water_mm: { label: 'Boat’s loop above the water, heeled', ask: 'low', where: BOAT },
  drain_bore_mm: {
    label: 'Drain hole at the lowest point',
    ask: 'both',
    where: 'Chapter on the exhaust. Where it names none, none is allowed.',
  },
  air_pipe_length_m: { label: 'Combustion-air pipe', ask: 'both', where: FLUE },
  air_pipe_bends_deg: { label: 'Bends of the combustion-air pipe', ask: 'high', where: FLUE },
  air_to_exhaust_mm: { label: 'Combustion-air end to the exhaust’s', ask: 'low', where: FLUE },
  supply_voltage_v: { label: 'Voltage of the supply', ask: 'both', where: 'Technical data.' },
  start_voltage_v: {
    label: 'Voltage at the heater during start',
    ask: 'low',
    where: 'Technical data, undervoltage; fault table.',
  },
  cable_drop_v: {
    label: 'Voltage the cable may cost',
    ask: 'high',
    where: 'Wiring diagram; often a table of conductors by length.',
  },
  fuse_a: { label: 'Fuse', ask: 'both', where: 'Wiring diagram.' },
  fuse_to_battery_mm: {
    label: 'Battery to its fuse',
    ask: 'high',
    where: 'Wiring diagram; laws for some vehicles.',
  },
  after_run_min: {
    label: 'After-run, from off to still',
    ask: 'both',
    where: 'Chapter on operation.',
  },
};

/** Where a manual states an angle. @type {Record<string, string>} */
export const angleWhere = {
  heater_port: 'Drawing of permitted positions, chapter on mounting.',
  heater_outlet: 'Drawing of permitted positions, chapter on mounting.',
  pump_outlet: 'Drawing of the pump’s position, chapter on the fuel supply.',
  pump_roll: 'Drawing of the pump’s position, chapter on the fuel supply.',
  filter_upright: 'Beside the filter, chapter on the fuel supply.',
  pipe_fall: FLUE,
};

/** The way through the manual: sections in the order of the work, each with its angles. */
export const steps = [
  { id: 'demand', title: 'Heat wanted', angles: [] },
  { id: 'place', title: 'Place', angles: [] },
  { id: 'support', title: 'Support and heater', angles: ['heater_port', 'heater_outlet'] },
  { id: 'ducts', title: 'Ducts', angles: [] },
  { id: 'fuel', title: 'Fuel', angles: ['pump_outlet', 'pump_roll', 'filter_upright'] },
  { id: 'flue', title: 'Exhaust and combustion air', angles: ['pipe_fall'] },
  { id: 'supply', title: 'Supply', angles: [] },
  { id: 'start', title: 'First start', angles: [] },
];

export const guide = {
  title: 'From the manual',
  lead: 'Take the heater’s own manual. What it does not say stays empty: it then reads “not entered”, which is honest, and better than a guess.',
  document: 'The document',
  documentHint: 'title, number, edition',
  /** @param {number} n @param {number} of */
  step: (n, of) => `Step ${n} of ${of}`,
  low: 'at least',
  high: 'at most',
  basis: 'on whose word',
  source: 'document and page',
  vehicles: 'the vehicles this law is for',
  reason: 'why it may be looser than law or usage',
  where: 'Usually:',
  notEntered: 'not entered',
  entered: 'entered',
  /** @param {string} what */
  useUsage: (what) => `Trade usage, no source: ${what}. Use it`,
  /** @param {string} what @param {string} source @param {string} vehicles */
  useLaw: (what, source, vehicles) => `${source}, ${vehicles}: ${what}. Use it`,
  next: 'Save, go on',
  last: 'Save',
  saved: 'saved',
  other: 'Steps',
  /** @param {number} n @param {number} of */
  count: (n, of) => `${n} of ${of} entered`,
  /** @type {Record<string, (low: string, high: string) => string>} */
  problems: {
    out_of_range: (low, high) => `Enter ${low} to ${high}.`,
    not_above_low: () => 'The upper end must not lie below the lower one.',
    not_one_value: () => 'A bore is one size: enter the same number twice, the one you use.',
    source_missing: () => 'Name the document and page, or the clause.',
    vehicles_missing: () => 'A law is for certain vehicles: name them.',
    reason_missing: () =>
      'Looser than law or trade usage: say why this heater may. It goes into the record.',
    too_long: (_, most) => `Shorten it to ${most} letters.`,
  },
  seeField: 'Not saved: see the field that is marked.',
};
