// Keeps the program on the device, so that it starts and works without a network. What it keeps, and
// the name of this version, come from the server's list; a new version replaces the old as a whole.
importScripts('/site-list.js');

const CACHE = 'fandown-' + self.SITE.version;

self.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(CACHE)
      // What the page has just loaded is asked for again but not sent again, since it did not change.
      .then((cache) => cache.addAll(self.SITE.files.map((file) => new Request(file, { cache: 'no-cache' }))))
      .then(() => self.skipWaiting()),
  );
});

self.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((n) => n.startsWith('fandown-') && n !== CACHE).map((n) => caches.delete(n))))
      .then(() => self.clients.claim()),
  );
});

self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== location.origin || url.pathname.startsWith('/api/')) return;
  event.respondWith(
    caches
      .open(CACHE)
      .then((cache) => cache.match(url.pathname === '/' ? '/index.html' : event.request))
      .then((kept) => kept ?? fetch(event.request)),
  );
});
