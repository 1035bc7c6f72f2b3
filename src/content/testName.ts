/** Tests by their names. */
import type { Library } from './library.ts';

/** A test as its card or the protocol names it; by its id where neither does, or nothing is known. */
export function testNameIn(
  library: Pick<Library, 'exercises' | 'protocols'> | null,
  protocol: string | null,
): (id: string) => string {
  const tests = protocol === null ? [] : (library?.protocols.get(protocol)?.tests ?? []);
  return (id) => library?.exercises.get(id)?.title ?? tests.find((test) => test.id === id)?.name ?? id;
}
