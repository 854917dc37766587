// Serves the page from its own cache, for ever after one visit. The build writes the version and
// the list; a test compares the list with the folder.
const PREFIX = 'plumbmark-';
const VERSION = 'unbuilt';
const FILES = ['./'];
const CACHE = PREFIX + VERSION;

addEventListener('install', (event) => {
  const fresh = FILES.map((file) => new Request(file, { cache: 'no-cache' }));
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(fresh)));
});

addEventListener('activate', (event) => {
  const old = (name) => name.startsWith(PREFIX) && name !== CACHE;
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter(old).map((name) => caches.delete(name)))),
  );
});

addEventListener('message', (event) => {
  if (event.data === 'take over') self.skipWaiting();
});

addEventListener('fetch', (event) => {
  if (event.request.method !== 'GET') return;
  // The page as one file is for taking away: it comes from the host, not from here.
  if (event.request.url.endsWith('/plumbmark.html')) return;
  const hit = caches
    .open(CACHE)
    .then((cache) =>
      event.request.mode === 'navigate'
        ? cache.match('./')
        : cache.match(event.request, { ignoreSearch: true }),
    );
  event.respondWith(hit.then((found) => found ?? fetch(event.request)));
});
