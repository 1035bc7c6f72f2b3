/** Circles in a chain where each card names at most one next. */

/**
 * Every circle once, each begun at its first id by name and closed by it again, in the order of those ids.
 * @example circlesIn(new Map([['b', 'a'], ['a', 'b']])) // => [['a', 'b', 'a']]
 */
export function circlesIn(next: ReadonlyMap<string, string | null>): string[][] {
  const done = new Set<string>();
  const circles: string[][] = [];
  for (const start of [...next.keys()].sort()) {
    const trail = trailFrom(start, next, done);
    const again = trail.closedBy === null ? -1 : trail.ids.indexOf(trail.closedBy);
    if (again !== -1) circles.push(fromFirst(trail.ids.slice(again)));
    for (const id of trail.ids) done.add(id);
  }
  return circles.sort(([a = ''], [b = '']) => (a < b ? -1 : 1));
}

interface Trail {
  readonly ids: readonly string[];
  /** The id that was met a second time, or null where the chain ends. */
  readonly closedBy: string | null;
}

function trailFrom(
  start: string,
  next: ReadonlyMap<string, string | null>,
  done: ReadonlySet<string>,
): Trail {
  const ids = new Set<string>();
  let at: string | null = start;
  while (at !== null && !done.has(at) && !ids.has(at)) {
    ids.add(at);
    at = next.get(at) ?? null;
  }
  return { ids: [...ids], closedBy: at };
}

function fromFirst(circle: readonly string[]): string[] {
  const first = circle.indexOf([...circle].sort()[0] ?? '');
  const turned = [...circle.slice(first), ...circle.slice(0, first)];
  return [...turned, ...turned.slice(0, 1)];
}
