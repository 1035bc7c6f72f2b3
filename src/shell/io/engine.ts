/** Which program makes the files: two of one hash make the same bytes from the same folders. */
import { createHash } from 'node:crypto';
import { programFiles } from './assets.ts';

let known: string | null = null;

/** SHA-256 over our code, what dresses the outputs, and the parts of Node that decide about bytes: as this process began. */
export function engineHash(): string {
  return (known ??= hashNow());
}

function hashNow(): string {
  const hash = createHash('sha256');
  const { node, v8, zlib, icu, unicode } = process.versions;
  hash.update(JSON.stringify([node, v8, zlib, icu, unicode, process.platform, process.arch]));
  for (const bytes of programFiles()) hash.update(`\0${bytes.length}\0`).update(bytes);
  return hash.digest('hex');
}
