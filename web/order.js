// The order of the work: what must be known before the first cut comes first.

/** Sections and parts by group. @type {Record<string, string[]>} */
export const ORDER = {
  first: ['job', 'limits', 'demand', 'place'],
  seat: ['support', 'level', 'heater'],
  air: ['ducts'],
  fuel: ['fuel', 'pump', 'filter'],
  flue: ['flue', 'pipe'],
  supply: ['supply'],
  start: ['start_up'],
};
