/** The library read, or as it was read before from files of the same hash. */
import { deserialize, serialize } from 'node:v8';
import {
  readingAgain,
  readLibrary,
  type KeptLibrary,
  type LibraryReading,
} from '../../content/readLibrary.ts';
import { keep, recalled } from './cache.ts';
import { shippedLibrary } from './assets.ts';
import type { Sources } from './sources.ts';

const LIBRARY_FILE = 'library.bin';

interface KeptReading extends KeptLibrary {
  readonly key: string;
  /** Of the files of all folders one after the other, which were read, in the order of the reading. */
  readonly order: readonly number[];
}

/** The last one, for a server that builds again and again. */
let last: KeptReading | null = null;

/** `key`: of the library's files and of the program that reads them. What has no Problem is kept for the next build. */
export function libraryReading(out: string, { layers }: Sources, key: string): LibraryReading {
  const files = layers.folders.flat();
  const kept = keptFor(out, key);
  if (kept !== null) {
    last = kept;
    return readingAgain(
      kept,
      kept.order.flatMap((at) => files[at] ?? []),
    );
  }
  const reading = readLibrary(...layers.folders);
  const { library, problems, counts, extending } = reading;
  if (library === null || problems.length > 0) return reading;
  const order = reading.files.map((file) => files.indexOf(file));
  last = { key, library, counts, extending, order };
  keep(out, LIBRARY_FILE, serialize(last));
  return reading;
}

function keptFor(out: string, key: string): KeptReading | null {
  if (last?.key === key) return last;
  return keptReading(recalled(out, LIBRARY_FILE), key) ?? keptReading(shippedLibrary(), key);
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
