/**
 * The output folder while a build writes it: file after file, the manifest last. What we did not write, or what was
 * changed by hand since, is never removed; a file of somebody else's in the way stops the build.
 */
import { createHash } from 'node:crypto';
import { existsSync, lstatSync, readFileSync, readdirSync, rmSync, rmdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { contains, isFolder, onDisk, PART, putFile, realPath, type Put } from './disk.ts';
import { EXIT } from './exit.ts';
import { addToJournal, endJournal, readJournal } from './journal.ts';
import { isOurPath, readManifest, writeManifest, type Written } from './manifest.ts';
import { Stop } from './stop.ts';

export interface OutFile {
  /** Relative to the output folder, `/` between folders. */
  readonly path: string;
  readonly bytes: Uint8Array | string;
}

export interface Outcome {
  /** All files of the site after this build, in the order of their paths. */
  readonly files: readonly Written[];
  /** Those whose bytes were not there before. */
  readonly written: readonly string[];
  readonly removed: readonly string[];
  /** No longer part of the site, but changed by hand since we wrote them: still there. */
  readonly left: readonly string[];
  /** Changed by hand since we wrote them, and written anew. */
  readonly restored: readonly string[];
}

export interface Site {
  /** Whether its bytes were not there before. */
  write(file: OutFile): boolean;
  /** Removes at once what stood below a folder, for a leaflet that must not be followed any longer. */
  drop(folder: string): void;
  /** Removes what this build did not write, but for `kept`, and writes the manifest. */
  finish(kept: (path: string) => boolean): Outcome;
}

/** Only one may be open in a folder at a time: see lock.ts. `put`: how its files are written. */
export function openSite(out: string, put: Put = putFile): Site {
  const ours = hashesByPath(out);
  clearParts(out, [...ours.keys()]);
  const now = new Map<string, string>();
  const written: string[] = [];
  const removed: string[] = [];
  const restored: string[] = [];

  const write = ({ path, bytes }: OutFile): boolean => {
    const sha256 = hashOf(bytes);
    now.set(path, sha256);
    checkPlace(out, path);
    const there = hashThere(out, path);
    if (there === sha256) return false;
    if (there !== null && !ours.has(path)) throw inTheWay(out, path);
    if (there !== null && ours.get(path)?.has(there) !== true) restored.push(path);
    addToJournal(out, { path, sha256 });
    put(join(out, path), bytes, path.startsWith('private/'));
    written.push(path);
    return true;
  };

  const remove = (paths: readonly string[]): void => {
    for (const path of paths) {
      const there = hashThere(out, path);
      if (there === null || ours.get(path)?.has(there) !== true || !isInside(out, path)) continue;
      removeFile(out, path);
      removed.push(path);
    }
  };

  const finish = (kept: (path: string) => boolean): Outcome => {
    const gone = [...ours.keys()].filter((path) => !now.has(path) && !kept(path));
    remove(gone);
    const leftHere = gone.filter((path) => hashThere(out, path) !== null);
    const keptHere = [...ours.keys()].filter(
      (path) => !now.has(path) && kept(path) && existsSync(join(out, path)),
    );
    const files = sorted(
      [...now].map(([path, sha256]) => ({ path, sha256 })),
      lastOf(keptHere, ours),
    );
    writeManifest(out, { files, left: sorted(lastOf(leftHere, ours)) });
    endJournal(out);
    return {
      files,
      written: written.toSorted(),
      removed: removed.toSorted(),
      left: leftHere.toSorted(),
      restored: restored.toSorted(),
    };
  };

  return {
    write,
    drop: (folder) => remove([...ours.keys()].filter((path) => path.startsWith(`${folder}/`))),
    finish,
  };
}

type Ours = ReadonlyMap<string, ReadonlySet<string>>;

// More than one hash where a build was killed: the file is the old one or the new one, both are ours.
function hashesByPath(out: string): Ours {
  const { files, left } = readManifest(out);
  const ours = new Map<string, Set<string>>();
  for (const { path, sha256 } of [...files, ...left, ...readJournal(out)])
    ours.set(path, (ours.get(path) ?? new Set()).add(sha256));
  return ours;
}

function lastOf(paths: readonly string[], ours: Ours): Written[] {
  return paths.map((path) => ({ path, sha256: [...(ours.get(path) ?? [])].at(-1) ?? '' }));
}

function sorted(...lists: readonly (readonly Written[])[]): Written[] {
  return lists.flat().sort((a, b) => (a.path < b.path ? -1 : 1));
}

/** SHA-256 of the regular file at a path; `other` for a link or a folder, which is never ours; null for nothing. */
function hashThere(out: string, path: string): string | null {
  const place = join(out, path);
  // Below a file there is nothing, though to ask about it is a fault.
  if (!isFolder(dirname(place))) return null;
  const found = lstatSync(place, { throwIfNoEntry: false });
  if (found === undefined) return null;
  return found.isFile() ? onDisk(place, () => hashOf(readFileSync(place))) : 'other';
}

function hashOf(bytes: Uint8Array | string): string {
  return createHash('sha256').update(bytes).digest('hex');
}

// A folder of the site that is a link to elsewhere would carry leaflets out of it.
function checkPlace(out: string, path: string): void {
  if (!isOurPath(path)) throw new Error(`a file of the site must lie in public or private; found ${path}`);
  if (!isInside(out, path))
    throw new Stop(EXIT.cannotCreate, `${join(out, dirname(path))} leads out of ${out}; remove that link`);
}

function isInside(out: string, path: string): boolean {
  return contains(realPath(out), realPath(join(out, dirname(path))));
}

function inTheWay(out: string, path: string): Stop {
  return new Stop(
    EXIT.cannotCreate,
    `${join(out, path)} is in the way and was not written by a build; move it away, or choose another place with --out`,
  );
}

function removeFile(out: string, path: string): void {
  onDisk(join(out, path), () => rmSync(join(out, path), { force: true }));
  for (let folder = dirname(path); folder !== '.'; folder = dirname(folder)) {
    if (readdirSync(join(out, folder)).length > 0) return;
    rmdirSync(join(out, folder));
  }
}

// Half files of a build that was killed; they can hold a person's lines.
function clearParts(out: string, paths: readonly string[]): void {
  for (const folder of new Set(['.', ...paths.map((path) => dirname(path))])) {
    if (!isFolder(join(out, folder)) || !isInside(out, `${folder}/x`)) continue;
    for (const name of readdirSync(join(out, folder)))
      if (name.startsWith('.') && name.endsWith(PART)) rmSync(join(out, folder, name), { force: true });
  }
}
