/** A thread that makes sets: it is handed the library once, and then one order after the other. */
import { parentPort, workerData } from 'node:worker_threads';
import type { Library } from '../../content/library.ts';
import type { LeafletPhotos } from '../../outputs/html/assets.ts';
import { dressFor } from '../io/dress.ts';
import { oneSet, type OneSet, type Order } from './oneSet.ts';

/** What a thread is given when it starts. */
export interface Outfit {
  readonly library: Library;
  readonly loadleaf: string;
  /** The clinic's logo; null without one. */
  readonly logo: Uint8Array | null;
  readonly photos: LeafletPhotos;
  readonly fridge: boolean;
}

/** What a thread says: that it has begun, then what it made of an order, by its number. */
export type Delivery = 'begun' | { readonly at: number; readonly made: OneSet };

/** Makes what it is asked for until nobody asks any more. */
export async function workInCrew(): Promise<void> {
  const port = parentPort;
  if (port === null) throw new Error('a thread of the crew was started as a program');
  const { library, loadleaf, logo, photos, fridge } = workerData as Outfit;
  const { paper, pages } = await dressFor(logo);
  const tools = {
    paper,
    pages: { ...pages, photos },
    workshop: { library, models: new Map(), loadleaf },
    fridge,
  };
  port.on('message', ({ at, order }: { readonly at: number; readonly order: Order }) => {
    void oneSet(order, tools).then((made) => port.postMessage({ at, made } satisfies Delivery));
  });
  port.postMessage('begun' satisfies Delivery);
}
