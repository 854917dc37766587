// Keeps the screen on while measuring.

/** @type {WakeLockSentinel | null} */
let lock = null;
let wanted = false;

async function request() {
  if (!wanted || document.visibilityState !== 'visible') return;
  lock = (await navigator.wakeLock?.request('screen').catch(() => null)) ?? null;
  // Let go meanwhile: the request was answered too late.
  if (!wanted) letSleep();
}

export function keepAwake() {
  if (wanted) return;
  wanted = true;
  request();
}

export function letSleep() {
  wanted = false;
  lock?.release();
  lock = null;
}

document.addEventListener('visibilitychange', request);
