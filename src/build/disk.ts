/** Writing to a disk, whose faults end the command with a sentence instead of a trace. */
import {
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
import { EXIT } from './exit.ts';
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

/** Makes a folder and those above it. Node's own way with parents never ends where a system makes none, as in /proc. */
export function makeFolder(folder: string): void {
  if (isFolder(folder)) return;
  if (dirname(folder) !== folder) makeFolder(dirname(folder));
  try {
    mkdirSync(folder);
  } catch (error) {
    // Another build may have been quicker.
    if (!isFolder(folder)) throw error;
  }
}

/** Writes a file. */
export type Put = (place: string, bytes: Uint8Array | string) => void;

/** Writes beside the place and renames, so that the file is wholly old or wholly new at every moment, a power cut too. */
export const putFile: Put = (place, bytes) => {
  put(place, bytes, true);
  onDisk(place, () => syncFolder(dirname(place)));
};

/** The same, but the folder is left to be written out by whoever finishes it. */
export const putWithin: Put = (place, bytes) => put(place, bytes, true);

/** The same for somebody who waits: only a power cut can leave it empty, and the next build then writes it anew. */
export const putSoon: Put = (place, bytes) => put(place, bytes, false);

function put(place: string, bytes: Uint8Array | string, flush: boolean): void {
  const part = join(dirname(place), `.${basename(place)}${PART}`);
  onDisk(place, () => {
    makeFolder(dirname(place));
    try {
      writeFileSync(part, bytes, { flush });
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

/** The same file or folder at a second place; a file costs no room where the disk knows hard links. A link stays a link. */
export function carry(from: string, to: string): void {
  const found = lstatSync(from);
  if (found.isSymbolicLink()) symlinkSync(readlinkSync(from), to);
  else if (found.isDirectory()) {
    makeFolder(to);
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
