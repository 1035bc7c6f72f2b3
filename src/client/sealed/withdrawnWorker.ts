/** In the place of the service worker of a leaflet that is in use no longer: takes its copy away, and itself. */
(() => {
  const { registration } = self as unknown as {
    readonly registration: { readonly scope: string; unregister(): Promise<boolean> };
  };
  addEventListener('install', () => {
    void (self as unknown as { skipWaiting(): Promise<void> }).skipWaiting();
  });
  addEventListener('activate', (event) => {
    const gone = async () => {
      await caches.delete(`loadleaf ${new URL('./', registration.scope).pathname}`);
      await registration.unregister();
    };
    (event as unknown as { waitUntil(work: Promise<unknown>): void }).waitUntil(gone());
  });
})();
