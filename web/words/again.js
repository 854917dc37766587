// Words of a check that is made again.

/** What servicing asks for. @type {Record<string, string>} */
export const service = {
  service_seal: 'The heater was taken off its seat: the seal is new. A seal is used once.',
  service_clamps: 'Clamps of fuel line, exhaust and ducts were tightened again, and looked at hot.',
  service_ends: 'Ends of exhaust and combustion air are free of dirt and nests; drains are open.',
  service_leaks: 'Fuel joints are dry; no soot or stain on the exhaust’s joints.',
  service_alarm: 'Each carbon monoxide alarm was tested, and is within its date.',
};

export const words = {
  title: 'Checked again',
  why: 'Read each part again, the same way if you can. What has moved by more than both readings are uncertain stands first.',
  none: 'This job is not beside an earlier one. Open an earlier job’s card and choose “Check it again”.',
  /** @param {string} value @param {string} time */
  earlier: (value, time) => `Then: ${value}${time ? `, ${time}` : ''}`,
  /** @param {string} value */
  now: (value) => `Now: ${value}`,
  /** @param {string} by @param {boolean} up */
  moved: (by, up) => `Moved: ${by} ${up ? 'more' : 'less'}`,
  /** @param {string} u */
  still: (u) => `No change shown, within ${u}`,
  open: 'Not read again yet.',
  service: 'What servicing asks for',
};
