/**
 * What was worked out before, kept in a folder beside the output folder, for this user alone. It may be deleted at any
 * time: whatever cannot be read, or is not what was written, counts as not there, and is worked out again.
 */
import { lstatSync, readFileSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { keepsMode, makeFolder, PRIVATE_FOLDER_MODE, putSoon, realPath } from './disk.ts';
import { hashOf } from './issued.ts';

const HASH_CHARACTERS = 64;

/** Names no person and lies outside the site; what it holds is ours alone. */
export function cacheFolder(out: string): string {
  const place = realPath(out);
  return join(dirname(place), `.${basename(place)}.loadleaf-cache`);
}

/** The bytes kept under a name; null when there are none, or when they are not those that were written. */
export function recalled(out: string, name: string): Buffer | null {
  try {
    const folder = cacheFolder(out);
    if (!isOurs(folder)) return null;
    const bytes = readFileSync(join(folder, name));
    const kept = bytes.subarray(HASH_CHARACTERS);
    return hashOf(kept) === bytes.toString('latin1', 0, HASH_CHARACTERS) ? kept : null;
  } catch {
    return null;
  }
}

/** Keeps bytes under a name. A disk that takes none is no fault: nothing is kept then. */
export function keep(out: string, name: string, bytes: Uint8Array): void {
  const folder = cacheFolder(out);
  try {
    makeFolder(folder, PRIVATE_FOLDER_MODE);
    if (!isOurs(folder)) return;
    putSoon(join(folder, '.gitignore'), '# Everything here is made again when it is gone.\n*\n', true);
    putSoon(join(folder, name), Buffer.concat([Buffer.from(hashOf(bytes)), bytes]), true);
  } catch {
    // What was kept before would be of an older build: then rather nothing.
    forget(folder);
  }
}

function forget(folder: string): void {
  try {
    if (isOurs(folder)) rmSync(folder, { recursive: true, force: true });
  } catch {
    // Its hashes fit no newer file, so it does no harm.
  }
}

// In a folder that others write in too, somebody could lay out a cache for us.
function isOurs(folder: string): boolean {
  const found = lstatSync(folder, { throwIfNoEntry: false });
  if (found?.isDirectory() !== true) return false;
  const own = process.getuid?.();
  return own === undefined || (found.uid === own && keepsMode(folder, PRIVATE_FOLDER_MODE));
}
