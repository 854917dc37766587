// Words of the driver's card. Nothing on it is a fact of this heater unless it was typed or measured.

export const words = {
  title: 'Driver’s card',
  lead: 'What you type stands on the card; what you leave empty becomes a line to write on.',
  print: 'Print',
  paper: 'One A5 card on A4 or Letter: cut along the frame.',
  fields: {
    vehicle: 'Vehicle',
    heater: 'Heater, from its plate',
    switch_on: 'How to switch on',
    switch_off: 'How to switch off',
    exhaust: 'Where the exhaust ends',
    vents: 'Where the air openings are',
    emergency: 'Emergency number',
    service: 'Next service',
    fitter: 'Fitted by, phone',
  },
  card: {
    title: 'Air heater',
    vehicle: 'Vehicle',
    heater: 'Heater',
    on: 'On',
    off: 'Off',
    afterRun:
      'After “off” it runs on to cool itself. Wait until it is still. Only then cut its power or the battery switch.',
    /** @param {string} time */
    afterRunTook: (time) => `At the first start that took ${time}.`,
    never: 'Never',
    nevers: [
      'in a closed space: garage, hall, tent, under a snow drift. The exhaust kills',
      'while refuelling or at a filling station: off, and still, before the cap is opened',
      'with an opening or the exhaust covered, or things laid on the outlet',
    ],
    alarm: 'CO alarm, headache, dizziness, sickness',
    alarms: [
      'Out, all of you. Do not look for the cause first.',
      'Air: open doors from outside. Heater off.',
      'Help: call the emergency number.',
      'Nobody sleeps in it and the heater stays off until the cause was found and mended.',
    ],
    emergency: 'Emergency number',
    clear: 'Keep clear of snow, mud, bags',
    exhaust: 'Exhaust',
    vents: 'Air openings',
    service: 'Next service',
    fitter: 'Fitted by',
    measured: 'Measured at the first start',
    /** @param {string} day */
    measuredAt: (day) => `on ${day}`,
    co: [
      'CO test: not done in full, or not proven.',
      'CO test: no rise found by the fitter’s meter, that time.',
    ],
    note: 'These are measurements, not an approval. The heater’s own manual comes first.',
  },
};
