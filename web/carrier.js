// How the page comes to this device: here from a host, piece by piece. In the page as one file,
// file/carrier.js stands in the place of this one.

export { registerOffline as keepUpToDate } from './offline.js';
export { openStore } from './store.js';

/** One of the core's modules, fresh and started by nobody yet.
 * @param {'phone' | 'sheets' | 'gauge'} name @param {number} again how many times it was loaded before
 * @returns {Promise<{ pkg: any, memory: WebAssembly.Memory }>} */
export async function freshCore(name, again) {
  // Another address is another module instance; the service worker ignores what follows "?".
  const file = `./pkg/plumbmark_${name}.js${again ? `?again=${again}` : ''}`;
  const pkg = await import(new URL(file, import.meta.url).href);
  const { memory } = await pkg.default();
  return { pkg, memory };
}

/** A picture of the guide, of the page in its language. @param {string} id @returns {string | null} */
export const guidePicture = (id) => `guide/${document.documentElement.lang}/${id}.webp`;

/** What is to be known on the first screen of a page that came like this: nothing.
 * @param {import('./context.js').Context} _ctx @returns {HTMLElement | null} */
export const opening = (_ctx) => null;

/** How much of the open job is in no file yet: of a host's page nothing is said.
 * @param {import('./context.js').Context} _ctx @returns {HTMLElement | null} */
export const filing = (_ctx) => null;

/** The open job, as it was at `_job`, is in a file, which holds `_record`.
 * @param {import('./context.js').Context} _ctx @param {import('./types.js').Job} _job
 * @param {any} _record */
export async function filed(_ctx, _job, _record) {}
