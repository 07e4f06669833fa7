// Served at /worker.js while BROODSHELF_WORKER=off: takes the worker and its cached shell away, never the log.
self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', (event) => event.waitUntil(leave()));

async function leave() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith('shell-')).map((name) => caches.delete(name)));
  const pages = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  await self.registration.unregister();
  // not to page.url: that is where the page was first opened, perhaps a link that is used up
  await Promise.all(pages.map((page) => page.navigate('/').catch(() => undefined)));
}
