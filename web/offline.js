// The service worker: installed after the first visit, brought up to date only when the user says so.

/**
 * @param {{ onUpdateWaiting: (apply: () => void) => void, isMeasuring: () => boolean }} page
 */
export async function registerOffline({ onUpdateWaiting, isMeasuring }) {
  if (!('serviceWorker' in navigator)) return;
  /** @type {any} */
  const types = Reflect.get(globalThis, 'trustedTypes');
  const policy = types?.createPolicy('sw', {
    createScriptURL: (/** @type {string} */ url) => {
      if (url !== 'sw.js') throw new TypeError(url);
      return url;
    },
  });
  const registration = await navigator.serviceWorker.register(
    policy ? policy.createScriptURL('sw.js') : 'sw.js',
    {
      updateViaCache: 'none',
    },
  );
  const offer = () => {
    const { waiting } = registration;
    // The first worker of all waits for nobody.
    if (!waiting || !navigator.serviceWorker.controller) return;
    onUpdateWaiting(() => {
      if (isMeasuring()) return;
      navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), {
        once: true,
      });
      waiting.postMessage('take over');
    });
  };
  offer();
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', offer);
  });
}
