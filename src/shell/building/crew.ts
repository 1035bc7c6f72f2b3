/** Threads that make sets beside the one that asks for them; what is made comes back in the order it was asked for. */
import { availableParallelism } from 'node:os';
import { setImmediate } from 'node:timers/promises';
import { Worker } from 'node:worker_threads';
import { crewProgram } from '../io/assets.ts';
import type { Delivery, Outfit } from './crewHand.ts';
import { tellOfMany } from './engineOfMany.ts';
import type { OneSet, Order } from './oneSet.ts';

/** Fewer are made before a thread has read what it needs [measured on two cores]. */
const WORTH_A_CREW = 24;
/** Each holds the library, the typefaces and the program once more; whoever has more cores builds in parts (`--part`). */
const THREADS_MOST = 1;
/** Orders out for each thread: one it works on, one that waits for it. */
const OUT_EACH = 2;
/** Orders taken before their turn: what is made of them waits for it, two megabytes each, so few: those out, one made here. */
const AHEAD = OUT_EACH * THREADS_MOST + 2;
/** Of sets hardly anything outlives the next: a small nursery is enough, and three of them make the heap of the young. */
const THREAD_LIMITS = { maxYoungGenerationSizeMb: 12 };

/** How many threads help with so many sets: none where one alone is sooner done. */
export function threadsFor(orders: number): number {
  return orders < WORTH_A_CREW ? 0 : Math.min(availableParallelism() - 1, THREADS_MOST);
}

/**
 * The sets of these orders, one after the other; each order is read when somebody takes it. `own`: makes one here, for
 * whoever asks works too. An order that breaks a thread ends them all with its error.
 */
export async function* setsOfCrew(
  orders: readonly (() => Order)[],
  outfit: Outfit,
  threads: number,
  own: (order: Order) => Promise<OneSet>,
): AsyncGenerator<OneSet> {
  const made = new Map<number, OneSet>();
  /** Of each thread that has begun, the orders it has not brought back. */
  const out = new Map<Worker, number>();
  let fault: { readonly error: unknown } | null = null;
  let wake = (): void => undefined;
  let [next, turn] = [0, 0];
  const take = (): number | null => (next < orders.length && next < turn + AHEAD ? next++ : null);
  const orderAt = (at: number): Order => (orders[at] as () => Order)();
  const keepBusy = (thread: Worker): void => {
    for (let count = out.get(thread) ?? OUT_EACH; count < OUT_EACH; count += 1) {
      const at = take();
      if (at === null) return;
      out.set(thread, count + 1);
      thread.postMessage({ at, order: orderAt(at) });
    }
  };
  const crew = Array.from({ length: threads }, () => {
    const thread = new Worker(crewProgram(), { workerData: outfit, resourceLimits: THREAD_LIMITS });
    thread.on('message', (delivery: Delivery) => {
      if (delivery === 'begun') tellOfMany(orders.length);
      else made.set(delivery.at, delivery.made);
      out.set(thread, delivery === 'begun' ? 0 : (out.get(thread) ?? 0) - 1);
      wake();
    });
    thread.on('error', (error) => {
      fault ??= { error };
      wake();
    });
    return thread;
  });
  const isMade = async (): Promise<boolean> => {
    // What has come back is seen between two sets.
    await setImmediate();
    if (fault !== null) throw fault.error;
    return made.has(turn);
  };
  try {
    for (; turn < orders.length; turn += 1) {
      while (!(await isMade())) {
        crew.forEach(keepBusy);
        const at = take();
        if (at !== null) made.set(at, await own(orderAt(at)));
        else await new Promise<void>((resolve) => (wake = resolve));
      }
      crew.forEach(keepBusy);
      const set = made.get(turn) as OneSet;
      made.delete(turn);
      yield set;
    }
  } finally {
    await Promise.all(crew.map((one) => one.terminate()));
  }
}
