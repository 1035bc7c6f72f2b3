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
    void oneSet(order, tools).then((set) => {
      const { made, handedOver } = inBytes(set);
      port.postMessage({ at, made } satisfies Delivery, handedOver);
    });
  });
  port.postMessage('begun' satisfies Delivery);
}

/**
 * The same with every file as bytes that can be handed over as they lie: of a set of two megabytes nothing is copied, and
 * nothing fills the memory of whoever asked, where it would be garbage that is looked for late.
 */
function inBytes(made: OneSet): { readonly made: OneSet; readonly handedOver: ArrayBuffer[] } {
  if (!('set' in made)) return { made, handedOver: [] };
  const encoder = new TextEncoder();
  const files = made.set.files.map(({ name, bytes }) => ({
    name,
    // A copy of what is bytes already: they may be a window on more than the file.
    bytes: typeof bytes === 'string' ? encoder.encode(bytes) : new Uint8Array(bytes),
  }));
  return {
    made: { ...made, set: { ...made.set, files } },
    handedOver: files.map(({ bytes }) => bytes.buffer),
  };
}
