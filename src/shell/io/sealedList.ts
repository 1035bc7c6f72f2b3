/** Whose sealed leaflet stands in which folder: known to this machine alone, so that it can be replaced without the secret. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isRegularFile } from './people.ts';
import type { OutFile } from './site.ts';

const SEALED_LIST = 'private/sealed.json';

export interface SealedPlace {
  readonly alias: string;
  readonly id: string;
}

/** Those that were sealed into this folder; what cannot be read is nobody's. */
export function readSealedList(out: string): SealedPlace[] {
  const place = join(out, SEALED_LIST);
  if (!isRegularFile(place)) return [];
  try {
    const list = JSON.parse(readFileSync(place, 'utf8')) as unknown;
    return Array.isArray(list) ? list.filter(isPlace) : [];
  } catch {
    return [];
  }
}

export function sealedListFile(list: readonly SealedPlace[]): OutFile {
  const sorted = list.toSorted((a, b) => (a.alias < b.alias ? -1 : 1));
  return { path: SEALED_LIST, bytes: `${JSON.stringify(sorted, null, 2)}\n` };
}

function isPlace(one: unknown): one is SealedPlace {
  const { alias, id } = (one ?? {}) as Readonly<Record<string, unknown>>;
  return typeof alias === 'string' && typeof id === 'string' && /^[0-9a-f]{32}$/.test(id);
}
