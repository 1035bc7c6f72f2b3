/** Whose folders there are in an output folder. */
import { lstatSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { isFolder } from './disk.ts';
import { unsettledIn } from './swap.ts';

/** Folders of single persons; hidden ones are ours while at work. */
export function peopleIn(out: string): string[] {
  const around = join(out, 'private');
  if (!isFolder(around)) return [];
  return readdirSync(around, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !entry.name.startsWith('.'))
    .map(({ name }) => name)
    .sort();
}

/** The same, and those whose folder stands under a hidden name; sorted. */
export function peopleWith(out: string): string[] {
  return [...new Set([...peopleIn(out), ...unsettledIn(out).map(({ alias }) => alias)])].sort();
}

/** Whether a file of its own is there, and no link to one. */
export function isRegularFile(place: string): boolean {
  try {
    return lstatSync(place, { throwIfNoEntry: false })?.isFile() === true;
  } catch (error) {
    // Below a file, or under a name that no disk takes, there is none.
    if (['ENOTDIR', 'ENAMETOOLONG'].includes((error as NodeJS.ErrnoException).code ?? '')) return false;
    throw error;
  }
}
