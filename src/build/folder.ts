/** Reads a folder of an author's files into memory; the only way content comes in. */
import { lstatSync, readFileSync, readdirSync, realpathSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import type { SourceFile } from '../content/source.ts';
import { EXIT } from './exit.ts';
import { Stop } from './fault.ts';

/**
 * Every file below `folder` whose name the filter takes, in the order of their names, relative with `/`.
 * Hidden files and folders are passed over. A link that leads out of the folder is handed on unread, marked.
 */
export function readFolder(folder: string, takes: (file: string) => boolean): SourceFile[] {
  if (!isFolder(folder)) throw new Stop(EXIT.noSuchFile, `there is no folder ${folder}`);
  const root = realpathSync(folder);
  const walk = (inside: string): SourceFile[] =>
    readdirSync(join(folder, inside), { withFileTypes: true })
      .filter(({ name }) => !name.startsWith('.'))
      .sort((a, b) => (a.name < b.name ? -1 : 1))
      .flatMap((entry) => {
        const file = inside === '' ? entry.name : `${inside}/${entry.name}`;
        if (entry.isDirectory()) return walk(file);
        return takes(file) ? [readOne(folder, file, root)] : [];
      });
  return walk('');
}

export function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

function readOne(folder: string, file: string, root: string): SourceFile {
  const path = join(folder, file);
  if (lstatSync(path).isSymbolicLink()) {
    const target = resolved(path);
    if (target === null || !target.startsWith(root + sep))
      return { file, bytes: new Uint8Array(), link: 'outside' };
    return { file, bytes: readFileSync(path), link: 'inside' };
  }
  return { file, bytes: readFileSync(path), link: 'no' };
}

function resolved(path: string): string | null {
  try {
    return realpathSync(path);
  } catch {
    return null;
  }
}
