/** Reads a folder of an author's files into memory; the only way content comes in. */
import { readFileSync, readdirSync, realpathSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { SourceFile } from '../content/source.ts';
import { contains, realPath } from './disk.ts';
import { EXIT } from './exit.ts';
import { Stop } from './stop.ts';

/**
 * Every file below `folder` whose name the filter takes, in the order of their names, relative with `/`. Hidden files
 * and folders are passed over. A link that leads out of the folder is handed on unread, marked; so is one that leads to
 * a folder, with `/` at its end, for every file has one place.
 */
export function readFolder(folder: string, takes: (file: string) => boolean): SourceFile[] {
  const root = realPath(folder);
  return namesIn(folder, '')
    .filter(({ file }) => takes(file))
    .flatMap(({ file, isLink }) => read(file, isLink, join(folder, file), root) ?? []);
}

interface Name {
  readonly file: string;
  readonly isLink: boolean;
}

function namesIn(folder: string, inside: string): Name[] {
  return readdirSync(join(folder, inside), { withFileTypes: true })
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
  try {
    return { file, bytes: readFileSync(path), link: 'no' };
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT') return null;
    throw new Stop(EXIT.noSuchFile, `cannot read ${path}: ${message}`);
  }
}

function readLink(file: string, path: string, root: string): SourceFile {
  const target = statSync(path, { throwIfNoEntry: false });
  const isInside = target?.isFile() === true && contains(root, realpathSync(path));
  if (isInside) return { file, bytes: readFileSync(path), link: 'inside' };
  return {
    file: target?.isDirectory() === true ? `${file}/` : file,
    bytes: new Uint8Array(),
    link: 'outside',
  };
}
