/** Sets made by threads beside each other are those that one thread makes, in the order they were asked for. */
import { availableParallelism } from 'node:os';
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

let alone: readonly OneSet[];
beforeAll(async () => {
  const tools = {
    ...(await dressFor(null)),
    workshop: { library, models: new Map(), loadleaf: version() },
    fridge: false,
  };
  const made: OneSet[] = [];
  for (const order of orders) made.push(await oneSet(order, tools));
  alone = made;
});

const shown = (made: OneSet) =>
  'set' in made
    ? made.set.files.map(({ name, bytes }) => [name, Buffer.from(bytes).toString('base64')])
    : [made.refusals, made.letters];

async function crewed(threads: number, from: readonly Order[] = orders): Promise<OneSet[]> {
  const sets: OneSet[] = [];
  for await (const made of setsOfCrew(from, outfit, threads)) sets.push(made);
  return sets;
}

describe('a crew', () => {
  it.each([1, 2])('of %i makes the same bytes and the same refusals', async (threads) => {
    const sets = await crewed(threads);
    expect(sets.map(shown)).toEqual(alone.map(shown));
    expect(sets.some((made) => !('set' in made))).toBe(true);
  });

  it('ends with the error that broke one of its threads', async () => {
    const broken = { ...first, consult: { ...first.consult, tests: null } } as unknown as Order;
    await expect(crewed(2, [first, broken, second])).rejects.toThrow(TypeError);
  });

  it.each([
    [0, 0],
    [3, 0],
    [23, 0],
    [1000, Math.min(8, availableParallelism())],
  ])('for %i orders has %i threads', (count, threads) =>
    expect(threadsFor(count)).toBe(threads < 2 ? 0 : threads),
  );
});
