// Whether something found earlier still counts now. Core says so of a reading, so it is asked with a
// phone of its own that lies flat and still.

/** @typedef {import('./engine.js').Engine} Engine */

/** One second and a half at rest, face up.
 * @param {import('./engine.js').Live} live @param {number} from_ms @param {number} clock_ms */
function rest(live, from_ms, clock_ms) {
  live.set_sign(1);
  live.set_clock(clock_ms);
  for (let t = 0; t <= 1500; t += 15) live.motion(from_ms + t, 0, 0, 9.8);
  live.tick(from_ms + 1500);
}

/** Whether this phone's zero on a side counts.
 * @param {Engine} engine @param {import('./types.js').Settings} phone @param {string} hold */
export function zeroCounts(engine, { device, in_case }, hold) {
  return engine.aside((live, border) => {
    live.set_device(device, in_case);
    border.selectFace(live, hold, 'metal_face');
    rest(live, 0, Date.now());
    return border.catalogue.zeros[live.zero_by] === 'found';
  });
}

/** Whether the vehicle's level that is kept counts. @param {Engine} engine */
export function levelCounts(engine) {
  const taken_ms = engine.call((live) => live.level_taken_ms);
  // NaN where none was read.
  if (!taken_ms) return false;
  return engine.aside((live, border) => {
    border.selectFace(live, 'back', 'metal_face');
    rest(live, 0, taken_ms);
    live.keep_level();
    border.select(live, 'pump', 'back', 'bracket');
    rest(live, 2000, Date.now());
    return live.has_level && live.level_refusal === 0;
  });
}
