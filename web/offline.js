// The service worker: installed after the first visit, brought up to date only when the user says so.

/**
 * @param {{ onUpdateWaiting: (apply: () => void) => void, isBusy: () => boolean,
 *   settle: () => Promise<void> }} page settle: writes what is not written yet
 */
export async function registerOffline({ onUpdateWaiting, isBusy, settle }) {
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
      if (isBusy()) return;
      const anew = () => settle().then(() => location.reload());
      // Another tab may have put it in force: then only this page is old.
      if (registration.waiting !== waiting) return anew();
      navigator.serviceWorker.addEventListener('controllerchange', anew, { once: true });
      waiting.postMessage('take over');
    });
  };
  const watch = () => registration.installing?.addEventListener('statechange', offer);
  offer();
  // One may have been on its way before this page listened.
  watch();
  registration.addEventListener('updatefound', watch);
}
