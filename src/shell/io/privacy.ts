/** Keeps what belongs to single persons to the one user who builds it, and out of any repository. */
import { existsSync, lstatSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { keepsMode, makeFolder, onDisk, PRIVATE_FILE_MODE, PRIVATE_FOLDER_MODE, putFile } from './disk.ts';

const OUT_IGNORES = [
  '# What belongs to single persons stays out of any repository; only public/ is for the web.',
  '/private/',
  '/manifest.json',
  '/.loadleaf-*',
  '',
].join('\n');

/** Stands in `private/` itself, for whatever stands around it. */
const PRIVATE_IGNORES = ['# Everything here belongs to single persons, and to no repository.', '*', ''].join(
  '\n',
);

/** Before the first private file: the folder for this user alone, and the lists that keep it out of a repository. */
export function openPrivate(out: string): void {
  const folder = join(out, 'private');
  onDisk(folder, () => {
    makeFolder(folder, PRIVATE_FOLDER_MODE);
    // A folder that leads elsewhere is refused when the first file goes in.
    if (lstatSync(folder).isSymbolicLink()) return;
    keepsMode(folder, PRIVATE_FOLDER_MODE);
    // Somebody's own list stays as it is: the one in the folder holds wherever the folder lies.
    if (lstatSync(join(out, '.gitignore'), { throwIfNoEntry: false }) === undefined)
      writeFileSync(join(out, '.gitignore'), OUT_IGNORES, { flag: 'wx' });
    const list = join(folder, '.gitignore');
    if (textOf(list) !== PRIVATE_IGNORES) putFile(list, PRIVATE_IGNORES, true);
  });
}

function textOf(file: string): string | null {
  return existsSync(file) ? readFileSync(file, 'utf8') : null;
}

/**
 * Closes everything private to other users, whatever the umask was, older files too. False where the disk keeps no modes,
 * as those of Windows and of memory sticks do not: who may read it is then for the folder's own rights to say.
 */
export function closePrivate(out: string): boolean {
  const manifest = join(out, 'manifest.json');
  return onDisk(out, () => {
    const own = existsSync(manifest) ? keepsMode(manifest, PRIVATE_FILE_MODE) : true;
    return closeTree(join(out, 'private')) && own;
  });
}

function closeTree(folder: string): boolean {
  // A link leads to what is not ours.
  if (lstatSync(folder, { throwIfNoEntry: false })?.isDirectory() !== true) return true;
  let isKept = keepsMode(folder, PRIVATE_FOLDER_MODE);
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const place = join(folder, entry.name);
    if (entry.isDirectory()) isKept = closeTree(place) && isKept;
    else if (entry.isFile()) isKept = keepsMode(place, PRIVATE_FILE_MODE) && isKept;
  }
  return isKept;
}
