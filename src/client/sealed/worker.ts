/**
 * The service worker of one sealed leaflet, within its own folder: asks the network first, so that a newer leaflet or a
 * withdrawal is seen, and gives the last copy when there is none. The copy is as sealed as the page itself.
 */
interface Waiting extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface Asked extends Waiting {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}
interface Worker {
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
}

(() => {
  const worker = self as unknown as Worker;
  const page = new URL('./', worker.registration.scope);
  const name = `loadleaf ${page.pathname}`;
  // A phone with a bar of signal must not stare at an empty page [choice].
  const WAIT_MS = 8000;

  const fetched = async (): Promise<Response> => {
    const stop = new AbortController();
    const timer = setTimeout(() => stop.abort(), WAIT_MS);
    try {
      return await fetch(page.href, { cache: 'no-cache', credentials: 'omit', signal: stop.signal });
    } finally {
      clearTimeout(timer);
    }
  };

  const networkFirst = async (): Promise<Response> => {
    const copies = await caches.open(name);
    try {
      const answer = await fetched();
      if (answer.ok) await copies.put(page.href, answer.clone());
      // What a host no longer has is gone; what it cannot give now is not.
      if (answer.status === 404 || answer.status === 410) await copies.delete(page.href);
      if (answer.status < 500) return answer;
      return (await copies.match(page.href)) ?? answer;
    } catch {
      return (await copies.match(page.href)) ?? Response.error();
    }
  };

  addEventListener('install', (event) => {
    (event as Waiting).waitUntil(networkFirst().then(() => worker.skipWaiting()));
  });
  addEventListener('activate', (event) => {
    (event as Waiting).waitUntil(worker.clients.claim());
  });
  addEventListener('fetch', (event) => {
    const asked = event as Asked;
    const { pathname } = new URL(asked.request.url);
    const isPage = pathname === page.pathname || pathname === `${page.pathname}index.html`;
    if (asked.request.mode === 'navigate' && isPage) asked.respondWith(networkFirst());
  });
})();
