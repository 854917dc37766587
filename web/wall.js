// The clock on the wall, which does not go back while the page is open: what counts for an hour must
// not count longer because somebody set the clock.

const from = { wall_ms: Date.now(), steady_ms: performance.now() };

/** ms since 1970 */
export const wall = () => Math.max(Date.now(), from.wall_ms + performance.now() - from.steady_ms);
