/** Writing to a disk, whose faults end the command with a sentence instead of a trace. */
import {
  chmodSync,
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  linkSync,
  lstatSync,
  mkdirSync,
  openSync,
  readdirSync,
  readlinkSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join, sep } from 'node:path';
import { EXIT } from '../exit.ts';
import { Stop } from './stop.ts';

/** The disk is there and takes names, but no more bytes. */
const CANNOT_TAKE_BYTES: readonly string[] = ['ENOSPC', 'EDQUOT', 'EFBIG', 'EIO'];

/** What stands at the end of a file that is not yet whole. Hidden, so that no one takes it for the file. */
export const PART = '.loadleaf-part';

/** Runs the work; a fault of the disk stops with 73 (cannot create) or 74 (cannot write), naming the place. */
export function onDisk<T>(place: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    if (CANNOT_TAKE_BYTES.includes(code))
      throw new Stop(EXIT.cannotWrite, `cannot write ${place}: ${message}`);
    throw new Stop(EXIT.cannotCreate, `cannot create ${place}: ${message}`);
  }
}

/** Whether a folder is there, or a link to one. */
export function isFolder(path: string): boolean {
  return existsSync(path) && statSync(path).isDirectory();
}

/**
 * Makes a folder and those above it. `mode`: of those it makes, whatever the umask.
 * Node's own way with parents never ends where a system makes none, as in /proc.
 */
export function makeFolder(folder: string, mode?: number): void {
  if (isFolder(folder)) return;
  if (dirname(folder) !== folder) makeFolder(dirname(folder), mode);
  try {
    mkdirSync(folder, mode);
    if (mode !== undefined) keepsMode(folder, mode);
  } catch (error) {
    // Another build may have been quicker.
    if (!isFolder(folder)) throw error;
  }
}

/** Sets the mode where it is another; false where the disk keeps none, as those of Windows and of memory sticks. */
export function keepsMode(place: string, mode: number): boolean {
  if (modeOf(place) === mode) return true;
  try {
    chmodSync(place, mode);
  } catch {
    return false;
  }
  return modeOf(place) === mode;
}

function modeOf(place: string): number {
  return lstatSync(place).mode & 0o777;
}

/** Writes a file; a private one is for this user alone, and so are the folders that are made for it. */
export type Put = (place: string, bytes: Uint8Array | string, isPrivate?: boolean) => void;

/** For this user alone. */
export const PRIVATE_FOLDER_MODE = 0o700;
export const PRIVATE_FILE_MODE = 0o600;

/** Writes beside the place and renames, so that the file is wholly old or wholly new at every moment, a power cut too. */
export const putFile: Put = (place, bytes, isPrivate) => {
  put(place, bytes, true, isPrivate);
  onDisk(place, () => syncFolder(dirname(place)));
};

/** The same, but the folder is left to be written out by whoever finishes it. */
export const putWithin: Put = (place, bytes, isPrivate) => put(place, bytes, true, isPrivate);

/** The same for somebody who waits: only a power cut can leave it empty, and the next build then writes it anew. */
export const putSoon: Put = (place, bytes, isPrivate) => put(place, bytes, false, isPrivate);

function put(place: string, bytes: Uint8Array | string, flush: boolean, isPrivate = false): void {
  const part = join(dirname(place), `.${basename(place)}${PART}`);
  onDisk(place, () => {
    makeFolder(dirname(place), isPrivate ? PRIVATE_FOLDER_MODE : undefined);
    try {
      writeFileSync(part, bytes, isPrivate ? { flush, mode: PRIVATE_FILE_MODE } : { flush });
      if (isPrivate) keepsMode(part, PRIVATE_FILE_MODE);
      renameSync(part, place);
    } catch (error) {
      rmSync(part, { force: true });
      throw error;
    }
  });
}

/**
 * What names a folder holds outlasts a power cut only when the folder itself was written out (POSIX fsync); systems
 * that open no folder do it by themselves.
 */
export function syncFolder(folder: string): void {
  let handle: number;
  try {
    handle = openSync(folder, 'r');
  } catch {
    return;
  }
  try {
    fsyncSync(handle);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'EIO' || code === 'ENOSPC' || code === 'EDQUOT') throw error;
  } finally {
    closeSync(handle);
  }
}

/** The same private file or folder at a second place; a file costs no room where the disk knows hard links. A link stays a link. */
export function carry(from: string, to: string): void {
  const found = lstatSync(from);
  if (found.isSymbolicLink()) symlinkSync(readlinkSync(from), to);
  else if (found.isDirectory()) {
    makeFolder(to, PRIVATE_FOLDER_MODE);
    for (const name of readdirSync(from)) carry(join(from, name), join(to, name));
    syncFolder(to);
  } else if (found.isFile()) carryFile(from, to);
  else
    throw new Stop(
      EXIT.cannotCreate,
      `${from} is neither a file nor a folder and cannot be carried over; move it away`,
    );
}

// Without hard links, as on a memory stick, the bytes are written again.
function carryFile(from: string, to: string): void {
  try {
    linkSync(from, to);
  } catch (error) {
    const { code = '' } = error as NodeJS.ErrnoException;
    if (!NO_LINKS.includes(code)) throw error;
    copyFileSync(from, to);
    syncFolder(to);
  }
}

const NO_LINKS: readonly string[] = ['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EXDEV', 'EMLINK', 'EINVAL'];

/** Stops with 73 where a link stands in place of a file or folder of ours: what it leads to is not ours. */
export function refuseLink(place: string): void {
  if (lstatSync(place, { throwIfNoEntry: false })?.isSymbolicLink() === true)
    throw new Stop(EXIT.cannotCreate, `cannot create ${place}: it is a link; remove it`);
}

/** The real path of a folder or file, or of its nearest ancestor that is there with the rest after it. */
export function realPath(path: string): string {
  if (existsSync(path)) return realpathSync(path);
  const parent = dirname(path);
  return parent === path ? path : join(realPath(parent), basename(path));
}

/** Whether one path is the other or lies below it; `site-leak` does not lie in `site`. Both must be real paths. */
export function contains(outer: string, inner: string): boolean {
  return inner === outer || inner.startsWith(outer.endsWith(sep) ? outer : outer + sep);
}
