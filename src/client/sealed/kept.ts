/** What stays on the phone of a person who agreed: the keys, which a page can use and nobody can read out. */
import type { OpeningKeys } from './open.ts';

const STORE = 'keys';
const KEPT = 'opening';

/** One store for each leaflet: pages of one host share theirs. */
function nameHere(): string {
  return `loadleaf ${location.pathname.replace(/[^/]*$/, '')}`;
}

function store(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const asked = indexedDB.open(nameHere(), 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore(STORE);
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error ?? new Error('no store'));
  });
}

async function within<T>(
  mode: IDBTransactionMode,
  work: (keys: IDBObjectStore) => IDBRequest<T>,
): Promise<T> {
  const database = await store();
  try {
    return await new Promise((resolve, reject) => {
      const asked = work(database.transaction(STORE, mode).objectStore(STORE));
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(asked.error ?? new Error('no store'));
    });
  } finally {
    database.close();
  }
}

/** Null where nothing is kept, or the browser keeps nothing. */
export async function keptKeys(): Promise<OpeningKeys | null> {
  try {
    return (
      (await within<OpeningKeys | undefined>('readonly', (keys) => keys.get(KEPT) as IDBRequest)) ?? null
    );
  } catch {
    return null;
  }
}

/** Whether they are kept now. */
export async function keepKeys(keys: OpeningKeys): Promise<boolean> {
  try {
    await within('readwrite', (kept) => kept.put(keys, KEPT));
    return true;
  } catch {
    return false;
  }
}

/** Takes everything of this leaflet off the phone: keys, offline copy, and what keeps that. */
export async function forgetAll(): Promise<void> {
  indexedDB.deleteDatabase(nameHere());
  const { pathname } = new URL('./', location.href);
  if ('caches' in self)
    for (const name of await caches.keys()) if (name === `loadleaf ${pathname}`) await caches.delete(name);
  if ('serviceWorker' in navigator)
    for (const worker of await navigator.serviceWorker.getRegistrations())
      if (new URL(worker.scope).pathname === pathname) await worker.unregister();
}
