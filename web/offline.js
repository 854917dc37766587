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
      // Another tab may have put it in force: then only this page is old.
      if (registration.waiting !== waiting) return location.reload();
      navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), {
        once: true,
      });
      waiting.postMessage('take over');
    });
  };
  const watch = () => registration.installing?.addEventListener('statechange', offer);
  offer();
  // One may have been on its way before this page listened.
  watch();
  registration.addEventListener('updatefound', watch);
}
