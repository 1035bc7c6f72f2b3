/** The folders a library is read from: a clinic's own, and below it the shipped one where the clinic file says so. */
import { existsSync } from 'node:fs';
import { basename, dirname, relative, resolve, sep } from 'node:path';
import { FOLDERS } from '../../content/kind.ts';
import { BELOW, layered } from '../../content/layers.ts';
import { overAsked } from '../../content/overAsked.ts';
import type { Problem } from '../../content/problem.ts';
import { liesOverShipped } from '../../content/over.ts';
import type { SourceFile } from '../../content/source.ts';
import { EXIT } from '../exit.ts';
import { isFolder, realPath } from './disk.ts';
import { readFolder } from './folder.ts';
import { SHIPPED } from './assets.ts';
import { Stop } from './stop.ts';

export interface Layers {
  /** The files of each folder without the consults, lowest folder first, as `readLibrary` takes them. */
  readonly folders: readonly (readonly SourceFile[])[];
  /** Those of the shipped folder; none where it is the content folder itself, or not below it. */
  readonly shipped: readonly SourceFile[];
  /** Whether the folder was meant to lie over the shipped one. */
  readonly asked: readonly Problem[];
}

export function readLayers(content: string): Layers {
  const own = libraryFiles(content);
  if (realPath(content) === realPath(SHIPPED)) return { folders: [own], shipped: [], asked: [] };
  const shipped = libraryFiles(SHIPPED);
  if (!liesOverShipped(own)) return { folders: [own], shipped: [], asked: overAsked(own, shipped) };
  return { folders: [shipped, own], shipped, asked: [] };
}

/** The files of a library as it was: of a folder, or one protocol alone. Stops with 66 where neither is there. */
export function filesBefore(against: string): readonly SourceFile[] {
  const path = resolve(against);
  if (isFolder(path)) return libraryFiles(path);
  if (!existsSync(path))
    throw new Stop(EXIT.noSuchFile, `there is no folder or file ${against}; name it with --against`);
  const folder = `${FOLDERS.protocol}/`;
  const file = `${folder}${basename(path)}`;
  return readFolder(dirname(path), (name) => name === basename(path)).map((one) => ({ ...one, file }));
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
  const isBelow = (file: SourceFile) => below.has(file) || file.file.startsWith(BELOW);
  return new Map(
    read
      .filter(isBelow)
      .map(({ file }) => [file, `${way}/${file.startsWith(BELOW) ? file.slice(BELOW.length) : file}`]),
  );
}

function libraryFiles(folder: string): SourceFile[] {
  return readFolder(folder, (file) => !file.startsWith(`${FOLDERS.consult}/`));
}
