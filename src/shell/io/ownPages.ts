/** What of `public/` is known as ours without a manifest: pages by the mark in their heads, the desk's files by their names. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { isFolder, onDisk } from './disk.ts';
import { hashOf } from './issued.ts';
import type { Written } from './manifest.ts';

const GENERATOR = '<meta name="generator" content="Loadleaf" />';

/** The first digits of the hash of what is in the file (`deskFiles.ts`). */
const HASHED_NAME = /-([0-9a-f]{10})\.[a-z]+$/;

/** Every such file below `public/`, with its hash. Links are not followed. */
export function ownPages(out: string): Written[] {
  const folder = join(out, 'public');
  if (!isFolder(folder)) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && (entry.name.endsWith('.html') || HASHED_NAME.test(entry.name)))
    .flatMap((entry) => {
      const place = join(entry.parentPath, entry.name);
      const bytes = onDisk(place, () => readFileSync(place));
      const sha256 = hashOf(bytes);
      if (!isOwn(entry.name, bytes, sha256)) return [];
      return [{ path: place.slice(out.length + 1).replaceAll(sep, '/'), sha256 }];
    });
}

function isOwn(name: string, bytes: Buffer, sha256: string): boolean {
  const [, digits] = HASHED_NAME.exec(name) ?? [];
  return digits === undefined ? bytes.includes(GENERATOR) : sha256.startsWith(digits);
}
