// Loaded into the service worker. A new version is not even installed while a visit is open: were it installed, the
// browser could change to it by itself when the page is closed and opened again in the middle of an examination.
self.addEventListener('install', (event) => {
  event.waitUntil(
    (async () => {
      if (!self.registration.active) return;
      const flags = await caches.open('combside-flags');
      if (await flags.match('/visit-open')) throw new Error('a visit is open: the new version waits');
    })(),
  );
});
