/** The programmes the pages are tried on. A programme made from real content is added here and every check takes it. */
import type { Programme } from '../../src/programme/programme.ts';
import { otter } from '../fixtures/programme.ts';

export const programmes: readonly (readonly [name: string, programme: Programme])[] = [
  ['the invented otter', otter],
];

/** Keys whose text is an address, a code or a unit, not words for a reader. */
const CODES = new Set([
  'alias', 'at', 'card', 'cell', 'country', 'cite', 'chosen', 'chosenBy', 'decidedBy', 'href', 'id', 'kind', 'language',
  'limit', 'loadleaf', 'mark', 'on', 'paper', 'proposed', 'scene', 'seenOn', 'squeeze', 'startOn', 'reviewOn',
  'weekday', 'weight',
]); // prettier-ignore

/** The programme with `change` made to every text a reader sees. */
export function reworded(programme: Programme, change: (text: string) => string): Programme {
  const walk = (value: unknown, key: string): unknown => {
    if (CODES.has(key)) return value;
    if (typeof value === 'string') return key === 'value' ? value : change(value);
    if (Array.isArray(value)) return value.map((entry) => walk(entry, key));
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, walk(inner, name)]));
  };
  return walk(programme, '') as Programme;
}
