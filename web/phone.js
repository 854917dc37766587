// The phone's sensors: asking for them, and passing their events on untouched.

/**
 * @typedef {{ requestPermission?: () => Promise<string> }} Asks
 * @typedef {'granted' | 'denied' | 'insecure' | 'unsupported'} Answer
 */

/**
 * Asks for both event classes. Must be called in the tap itself, before anything is awaited.
 * @returns {Promise<Answer>}
 */
export function askPermission() {
  if (!window.isSecureContext) return Promise.resolve('insecure');
  const classes = [window.DeviceMotionEvent, window.DeviceOrientationEvent];
  if (classes.some((c) => c === undefined)) return Promise.resolve('unsupported');
  const asked = classes.map((c) => {
    const asks = /** @type {Asks} */ (/** @type {unknown} */ (c));
    if (typeof asks.requestPermission !== 'function') return Promise.resolve('granted');
    return asks.requestPermission().catch(() => 'denied');
  });
  return Promise.all(asked).then((all) =>
    all.every((a) => a === 'granted') ? 'granted' : 'denied',
  );
}

/**
 * Feeds every event to the core. Time stamps are the events' own; `interval` differs by browser
 * in meaning and is not used.
 * @param {import('./engine.js').Engine} engine
 * @returns {() => void} stops feeding
 */
export function listen(engine) {
  /** @type {DeviceMotionEvent} */
  let motion;
  /** @type {DeviceOrientationEvent} */
  let orientation;
  // One function each for all events: the hot path makes no closures.
  /** @param {import('./engine.js').Live} live */
  const passMotion = (live) => {
    const a = motion.accelerationIncludingGravity;
    live.motion(motion.timeStamp, a?.x, a?.y, a?.z);
  };
  /** @param {import('./engine.js').Live} live */
  const passOrientation = (live) => {
    live.orientation(orientation.beta, orientation.gamma);
    live.heading(orientation.alpha);
  };
  /** @param {DeviceMotionEvent} event */
  const onMotion = (event) => {
    if (document.visibilityState === 'hidden') return;
    motion = event;
    engine.call(passMotion);
  };
  /** @param {DeviceOrientationEvent} event */
  const onOrientation = (event) => {
    orientation = event;
    engine.call(passOrientation);
  };
  addEventListener('devicemotion', onMotion);
  addEventListener('deviceorientation', onOrientation);
  return () => {
    removeEventListener('devicemotion', onMotion);
    removeEventListener('deviceorientation', onOrientation);
  };
}
