/** Threads that make sets beside each other, where there are many; what they make comes back in the order it was asked for. */
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { crewProgram } from '../io/assets.ts';
import type { Delivery, Outfit } from './crewHand.ts';
import type { OneSet, Order } from './oneSet.ts';

/** Fewer are made before threads have read what they need [measured: `npm run bench -- many`]. */
const WORTH_A_CREW = 24;
const THREADS_MOST = 8;
/** Orders out for each thread: one it works on, one that waits for it. What has come back waits for its turn, so few. */
const OUT_EACH = 2;

/** How many threads make so many sets: none where one thread alone is sooner done. */
export function threadsFor(orders: number): number {
  const cores = Math.min(availableParallelism(), THREADS_MOST);
  return orders < WORTH_A_CREW || cores < 2 ? 0 : cores;
}

/** Each is let go of with its set: raced against one promise for all, every set would be held until the last. */
interface Waiting {
  readonly resolve: (made: OneSet) => void;
  readonly reject: (error: unknown) => void;
}

/** The sets of these orders, one after the other. An order that breaks a thread ends them all with its error. */
export async function* setsOfCrew(
  orders: readonly Order[],
  outfit: Outfit,
  threads: number,
): AsyncGenerator<OneSet> {
  const crew = Array.from({ length: threads }, () => new Worker(crewProgram(), { workerData: outfit }));
  const waiting = new Map<number, Waiting>();
  let fault: { readonly error: unknown } | null = null;
  for (const one of crew) {
    one.on('message', ({ at, made }: Delivery) => {
      waiting.get(at)?.resolve(made);
      waiting.delete(at);
    });
    one.on('error', (error) => {
      fault ??= { error };
      for (const { reject } of waiting.values()) reject(error);
    });
  }
  const promised = new Map<number, Promise<OneSet>>();
  const ask = (at: number): void => {
    const order = orders[at];
    if (order === undefined) return;
    if (fault !== null) throw fault.error;
    const made = new Promise<OneSet>((resolve, reject) => waiting.set(at, { resolve, reject }));
    // Nobody may be waiting for it when it breaks.
    made.catch(() => undefined);
    promised.set(at, made);
    crew[at % threads]?.postMessage({ at, order });
  };
  try {
    for (let at = 0; at < threads * OUT_EACH; at += 1) ask(at);
    for (const at of orders.keys()) {
      const made = await (promised.get(at) as Promise<OneSet>);
      promised.delete(at);
      ask(at + threads * OUT_EACH);
      yield made;
    }
  } finally {
    await Promise.all(crew.map((one) => one.terminate()));
  }
}
