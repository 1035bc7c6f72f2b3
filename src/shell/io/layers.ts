/** The folders a library is read from: a clinic's own, and below it the shipped one where the clinic file says so. */
import { relative, sep } from 'node:path';
import { FOLDERS } from '../../content/kind.ts';
import { layered } from '../../content/layers.ts';
import { liesOverShipped } from '../../content/over.ts';
import type { SourceFile } from '../../content/source.ts';
import { realPath } from './disk.ts';
import { readFolder } from './folder.ts';
import { SHIPPED } from './shelf.ts';

export interface Layers {
  /** The files of each folder without the consults, lowest folder first, as `readLibrary` takes them. */
  readonly folders: readonly (readonly SourceFile[])[];
  /** Those of the shipped folder; none where it is the content folder itself, or not below it. */
  readonly shipped: readonly SourceFile[];
}

export function readLayers(content: string): Layers {
  const own = libraryFiles(content);
  if (!liesOverShipped(own) || realPath(content) === realPath(SHIPPED))
    return { folders: [own], shipped: [] };
  const shipped = libraryFiles(SHIPPED);
  return { folders: [shipped, own], shipped };
}

/** What is left of the folders when one lies over the other: each id once. */
export function upperFiles({ folders }: Layers): readonly SourceFile[] {
  return layered(folders).files;
}

/**
 * The names of shipped files as an author is told them, by their names in the library: the way from the content folder.
 * `read`: what of all folders was read.
 */
export function shippedNames(
  { shipped }: Layers,
  read: readonly SourceFile[],
  content: string,
): ReadonlyMap<string, string> {
  const way = relative(content, SHIPPED).replaceAll(sep, '/').replace(/\/$/, '');
  const below = new Set(shipped);
  return new Map(read.filter((file) => below.has(file)).map(({ file }) => [file, `${way}/${file}`]));
}

function libraryFiles(folder: string): SourceFile[] {
  return readFolder(folder, (file) => !file.startsWith(`${FOLDERS.consult}/`));
}
