/** Pages of the library that are known as ours without a manifest, by the mark of the generator in their heads. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { isFolder, onDisk } from './disk.ts';
import { hashOf } from './issued.ts';
import type { Written } from './manifest.ts';

const GENERATOR = '<meta name="generator" content="Loadleaf" />';

/** Every such page below `public/`, with its hash. Links are not followed. */
export function ownPages(out: string): Written[] {
  const folder = join(out, 'public');
  if (!isFolder(folder)) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.html'))
    .flatMap((entry) => {
      const place = join(entry.parentPath, entry.name);
      const bytes = onDisk(place, () => readFileSync(place));
      if (!bytes.includes(GENERATOR)) return [];
      return [{ path: place.slice(out.length + 1).replaceAll(sep, '/'), sha256: hashOf(bytes) }];
    });
}
