/** The library read, or as it was read before from files of the same hash. */
import { deserialize, serialize } from 'node:v8';
import {
  readingAgain,
  readLibrary,
  type KeptLibrary,
  type LibraryReading,
} from '../../content/readLibrary.ts';
import { keep, recalled } from './cache.ts';
import { shippedLibrary } from './shelf.ts';
import type { Sources } from './sources.ts';

export const LIBRARY_FILE = 'library.bin';

interface KeptReading extends KeptLibrary {
  readonly key: string;
  /** Of the files of all folders one after the other, which were read, in the order of the reading. */
  readonly order: readonly number[];
}

/** `key`: of the library's files and of the program that reads them. What has no Problem is kept for the next build. */
export function libraryReading(out: string, { layers }: Sources, key: string): LibraryReading {
  const files = layers.folders.flat();
  const kept = keptReading(recalled(out, LIBRARY_FILE), key) ?? keptReading(shippedLibrary(), key);
  if (kept !== null)
    return readingAgain(
      kept,
      kept.order.flatMap((at) => files[at] ?? []),
    );
  const reading = readLibrary(...layers.folders);
  const { library, problems, counts } = reading;
  if (library === null || problems.length > 0) return reading;
  const order = reading.files.map((file) => files.indexOf(file));
  keep(out, LIBRARY_FILE, serialize({ key, library, counts, order } satisfies KeptReading));
  return reading;
}

function keptReading(bytes: Uint8Array | null, key: string): KeptReading | null {
  try {
    const kept = bytes === null ? null : (deserialize(bytes) as KeptReading);
    return kept?.key === key ? kept : null;
  } catch {
    // Of another version of Node.
    return null;
  }
}
