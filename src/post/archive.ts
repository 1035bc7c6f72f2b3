/** Files as one archive, to be unpacked where the site lies. */
import { zipSync } from 'fflate';

// The format keeps local time and knows none before (APPNOTE 4.4.6, from memory): the same files are the same bytes anywhere.
const NO_TIME = new Date(1980, 0, 1);

/** A ZIP of UTF-8 texts at these paths. */
export function archived(
  files: readonly { readonly path: string; readonly bytes: string }[],
): Uint8Array<ArrayBuffer> {
  const texts = files.map(({ path, bytes }) => [path, new TextEncoder().encode(bytes)] as const);
  return new Uint8Array(zipSync(Object.fromEntries(texts), { level: 9, mtime: NO_TIME }));
}
