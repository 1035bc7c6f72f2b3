/** Reads a folder of an author's files into memory; the only way content comes in. */
import { existsSync, readFileSync, readdirSync, realpathSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { mostBytes } from '../../content/fileSize.ts';
import type { SourceFile } from '../../content/source.ts';
import { contains, realPath } from './disk.ts';
import { EXIT } from '../exit.ts';
import { stateOf, type FileState } from './fileState.ts';
import { Stop } from './stop.ts';

/**
 * Every file below `folder` whose name the filter takes, in the order of their names, relative with `/`. Hidden files
 * and folders are passed over. A link that leads out of the folder is handed on unread, marked; so is one that leads to
 * a folder, with `/` at its end, for every file has one place.
 */
export function readFolder(folder: string, takes: (file: string) => boolean): SourceFile[] {
  return lookIn(folder, takes).flatMap((look) => look.read() ?? []);
}

/** A file that was seen, and not read yet. */
export interface Look {
  readonly file: string;
  /** Null where it tells nothing: of a link, and of what went meanwhile. */
  readonly state: FileState | null;
  /** Null when it went meanwhile. */
  readonly read: () => SourceFile | null;
}

/** The same files as `readFolder` reads. */
export function lookIn(folder: string, takes: (file: string) => boolean): Look[] {
  const root = realPath(folder);
  return namesIn(folder, '')
    .filter(({ file }) => takes(file))
    .map(({ file, isLink }) => {
      const path = join(folder, file);
      return { file, state: isLink ? null : stateOf(path), read: () => read(file, isLink, path, root) };
    });
}

interface Name {
  readonly file: string;
  readonly isLink: boolean;
}

function namesIn(folder: string, inside: string): Name[] {
  const entries = toBeRead(join(folder, inside), (path) => readdirSync(path, { withFileTypes: true }));
  return (entries ?? [])
    .filter(({ name }) => !name.startsWith('.'))
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => {
      const file = inside === '' ? entry.name : `${inside}/${entry.name}`;
      if (entry.isDirectory()) return namesIn(folder, file);
      return entry.isFile() || entry.isSymbolicLink() ? [{ file, isLink: entry.isSymbolicLink() }] : [];
    });
}

// Null when an editor took the file away between the look and the reading.
function read(file: string, isLink: boolean, path: string, root: string): SourceFile | null {
  if (isLink) return readLink(file, path, root);
  return contentOf(file, path, 'no');
}

// Looked at before it is read: a film that was put here by mistake must not fill the memory. A file that cannot be read is
// its author's matter alone: it is handed on with the reason, and the others are read.
function contentOf(file: string, path: string, link: 'no' | 'inside'): SourceFile | null {
  try {
    const length = statSync(path).size;
    if (length > mostBytes(file)) return { file, bytes: new Uint8Array(), link, unreadBytes: length };
    return { file, bytes: readFileSync(path), link };
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    return code === 'ENOENT'
      ? null
      : { file, bytes: new Uint8Array(), link, closed: `closed to the reader (${code})` };
  }
}

function readLink(file: string, path: string, root: string): SourceFile | null {
  // False for a link to nothing, or to itself.
  const target = existsSync(path) ? statSync(path) : null;
  if (target?.isFile() === true && contains(root, realpathSync(path))) return contentOf(file, path, 'inside');
  return {
    file: target?.isDirectory() === true ? `${file}/` : file,
    bytes: new Uint8Array(),
    link: 'outside',
  };
}

/** What was read of a folder; null when it is not there. Stops with 66 when it is closed to this user. */
function toBeRead<T>(path: string, look: (path: string) => T): T | null {
  try {
    return look(path);
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT') return null;
    throw new Stop(EXIT.noSuchFile, `cannot read ${path}: ${message}`);
  }
}
