/** What is asked, as the query of an address and back, so that a search can be sent or kept. */
import type { Values } from './match.ts';

export interface Asked {
  readonly text: string;
  readonly chosen: Values;
}

/** Query without its question mark; empty when nothing is asked. Filters in the order of `keys`. */
export function queryOf({ text, chosen }: Asked, keys: readonly string[]): string {
  const query = new URLSearchParams();
  if (text.trim() !== '') query.set('q', text.trim());
  for (const key of keys) for (const value of chosen[key] ?? []) query.append(key, value);
  return query.toString();
}

/** What a query asks; values that no filter knows are passed over. `known`: the values of each filter. */
export function askedIn(query: string, known: Values): Asked {
  const asked = new URLSearchParams(query);
  const chosen: Record<string, readonly string[]> = {};
  for (const [key, values] of Object.entries(known)) {
    const wanted = new Set(asked.getAll(key));
    chosen[key] = values.filter((value) => wanted.has(value));
  }
  return { text: asked.get('q') ?? '', chosen };
}
