// Words of the driver's card. Nothing on it is a fact of this heater unless it was typed or measured.

import { t } from '../language.js';

export const words = {
  title: t`Driver’s card`,
  lead: t`What you type stands on the card; what you leave empty becomes a line to write on.`,
  print: t`Print`,
  paper: t`One A5 card on A4 or Letter: cut along the frame.`,
  fields: {
    vehicle: t`Vehicle`,
    heater: t`Heater, from its plate`,
    switch_on: t`How to switch on`,
    switch_off: t`How to switch off`,
    exhaust: t`Where the exhaust ends`,
    vents: t`Where the air openings are`,
    emergency: t`Emergency number`,
    service: t`Next service`,
    fitter: t`Fitted by: name and phone`,
  },
  card: {
    title: t`Air heater`,
    vehicle: t`Vehicle`,
    heater: t`Heater`,
    on: t`On`,
    off: t`Off`,
    afterRun: t`After “off” it runs on to cool itself. Wait until it is still. Only then cut its power or the battery switch.`,
    /** @param {string} time */
    afterRunTook: (time) => t`At the first start that took ${time}.`,
    never: t`Never`,
    nevers: [
      t`in a closed space: garage, hall, tent, under a snow drift. The exhaust kills`,
      t`while refuelling or at a filling station: heater off, its after-run over, before the cap is opened`,
      t`with an opening or the exhaust covered, or things laid on the outlet`,
    ],
    alarm: t`CO alarm, headache, dizziness, sickness`,
    alarms: [
      t`Out, all of you. Do not look for the cause first.`,
      t`Air: open doors from outside. Heater off.`,
      t`Help: call the emergency number.`,
      t`Nobody sleeps in it and the heater stays off until the cause was found and mended.`,
    ],
    emergency: t`Emergency number`,
    clear: t`Keep clear of snow, mud, bags`,
    exhaust: t`Exhaust`,
    vents: t`Air openings`,
    service: t`Next service`,
    fitter: t`Fitted by`,
    /** @param {number} n */
    beyond: (n) =>
      t`NOT FINISHED. Beyond their limits: ${n}. The heater stays off until the fitter has put them right.`,
    measured: t`Measured at the first start`,
    /** @param {string} day */
    measuredAt: (day) => t`on ${day}`,
    co: [
      t`CO test: not done in full, or not proven.`,
      t`CO test: no rise found by the fitter’s meter, that time.`,
    ],
    note: t`These are measurements, not an approval. The heater’s own manual comes first.`,
  },
};
