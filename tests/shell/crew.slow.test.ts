/** Sets made by threads beside each other are those that one thread makes, in the order they were asked for. */
import { availableParallelism } from 'node:os';
import { setTimeout } from 'node:timers/promises';
import { beforeAll, describe, expect, it } from 'vitest';
import { setsOfCrew, threadsFor } from '../../src/shell/building/crew.ts';
import { oneSet, orderOf, type OneSet, type Order } from '../../src/shell/building/oneSet.ts';
import { dressFor } from '../../src/shell/io/dress.ts';
import { version } from '../../src/shell/io/assets.ts';
import { readWorkspace } from '../../src/shell/io/workspace.ts';

const workspace = readWorkspace({ content: 'content', consults: 'content/consults' });
const library = workspace.library!;
const outfit = { library, loadleaf: version(), logo: null, photos: new Map(), fridge: false };
const [first, second] = workspace.current.map((consult) => orderOf(consult, workspace)) as [Order, Order];
// The typeface has no such letters: a fault of the consult, and none of the thread.
const unprintable: Order = { ...second, consult: { ...second.consult, clinician: '理学療法士' } };
const orders: readonly Order[] = [first, unprintable, second];

let own: (order: Order) => Promise<OneSet>;
let alone: readonly OneSet[];
beforeAll(async () => {
  const tools = {
    ...(await dressFor(null)),
    workshop: { library, models: new Map(), loadleaf: version() },
    fridge: false,
  };
  own = (order) => oneSet(order, tools);
  const made: OneSet[] = [];
  for (const order of orders) made.push(await own(order));
  alone = made;
});

const shown = (made: OneSet) =>
  'set' in made
    ? made.set.files.map(({ name, bytes }) => [name, Buffer.from(bytes).toString('base64')])
    : [made.refusals, made.letters];

async function crewed(
  threads: number,
  from: readonly Order[] = orders,
  here: (order: Order) => Promise<OneSet> = own,
): Promise<OneSet[]> {
  const sets: OneSet[] = [];
  const read = from.map((order) => () => order);
  for await (const made of setsOfCrew(read, outfit, threads, here)) sets.push(made);
  return sets;
}

/** Makes nothing before a thread may have begun, so that there is something left for it. */
const late = async (order: Order): Promise<OneSet> => {
  await setTimeout(1_500);
  return own(order);
};

describe('a crew', () => {
  it.each([1, 2])('of %i makes the same bytes and the same refusals', async (threads) => {
    let here = 0;
    const counted = (order: Order) => {
      here += 1;
      return late(order);
    };
    const sets = await crewed(threads, [...orders, ...orders], counted);
    expect(sets.map(shown)).toEqual([...alone, ...alone].map(shown));
    expect(sets.some((made) => !('set' in made))).toBe(true);
    // Whoever asks made some of them, and the threads made the others.
    expect(here).toBeGreaterThan(0);
    expect(here).toBeLessThan(6);
  });

  it('ends with the error that broke one of its threads', async () => {
    const broken = { ...first, consult: { ...first.consult, tests: null } } as unknown as Order;
    // Broken at the thread alone: here nothing is wrong with any of them.
    const here = () => late(second);
    await expect(crewed(2, [second, ...Array<Order>(12).fill(broken)], here)).rejects.toThrow(TypeError);
  });

  it('reads an order when somebody takes it, a few before its turn', async () => {
    const read = Array<boolean>(40).fill(false);
    const asked = read.map((_, at) => () => {
      read[at] = true;
      return first;
    });
    const sets = setsOfCrew(asked, outfit, 1, own);
    await sets.next();
    expect(read.filter(Boolean).length).toBeLessThan(10);
    await sets.return(undefined);
  });

  it.each([
    [0, 0],
    [3, 0],
    [23, 0],
    [24, Math.min(1, availableParallelism() - 1)],
    [1000, Math.min(1, availableParallelism() - 1)],
  ])('for %i orders has %i threads', (count, threads) => expect(threadsFor(count)).toBe(threads));
});
