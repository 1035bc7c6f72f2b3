/**
 * Files of the library that are known as ours without a manifest: pages by the mark of the generator in their heads, what
 * the desk fetches by names that tell what is in them.
 */
import { readdirSync, readFileSync, type Dirent } from 'node:fs';
import { join, sep } from 'node:path';
import { isFolder, onDisk } from './disk.ts';
import { isByItsName } from './hashedName.ts';
import { hashOf } from './issued.ts';
import type { Written } from './manifest.ts';

const GENERATOR = '<meta name="generator" content="Loadleaf" />';

/** Every such file below `public/`, with its hash. Links are not followed. */
export function ownPages(out: string): Written[] {
  const folder = join(out, 'public');
  if (!isFolder(folder)) return [];
  const desk = join(folder, 'desk');
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && (entry.name.endsWith('.html') || entry.parentPath === desk))
    .flatMap((entry) => {
      const place = join(entry.parentPath, entry.name);
      const bytes = onDisk(place, () => readFileSync(place));
      if (!isOurs(entry, bytes)) return [];
      return [{ path: place.slice(out.length + 1).replaceAll(sep, '/'), sha256: hashOf(bytes) }];
    });
}

function isOurs({ name }: Dirent, bytes: Buffer): boolean {
  return name.endsWith('.html') ? bytes.includes(GENERATOR) : isByItsName(name, bytes);
}
