/** Writing to a disk, whose faults end the command with a sentence instead of a trace. */
import { existsSync, mkdirSync, realpathSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
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
export const putFile: Put = (place, bytes) => put(place, bytes, true);

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
