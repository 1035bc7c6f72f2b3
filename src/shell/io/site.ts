/**
 * The output folder while a build writes it: the library file after file, each person's files as one set, the manifest
 * last. What we did not write, or what was changed by hand since, is never removed; a file of somebody else's in the way
 * stops the build.
 */
import { existsSync, lstatSync, readFileSync, readdirSync, rmSync, rmdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import {
  contains,
  isFolder,
  makeFolder,
  onDisk,
  PART,
  PRIVATE_FOLDER_MODE,
  putSoon,
  putWithin,
  realPath,
  syncFolder,
} from './disk.ts';
import { EXIT } from '../exit.ts';
import { hashOf } from './issued.ts';
import { addToJournal, endJournal, readJournal } from './journal.ts';
import { isOurPath, readManifest, writeManifest, type Written } from './manifest.ts';
import {
  inTheWay,
  issueSet,
  withdrawSet,
  type SetChange,
  type PersonSet,
  type Reason,
  type SetStore,
} from './personSet.ts';
import { writeEnds } from './issuedEnds.ts';
import { ownPages } from './ownPages.ts';
import { peopleIn, peopleWith } from './people.ts';
import { Stop } from './stop.ts';
import { isAway, putBack } from './swap.ts';

/** Sealed leaflets: a build without the secret cannot write them, and must not take them away. */
const SEALED = 'public/for/';

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
  /** Gone from their place; a person's are set aside or kept with their revision. */
  readonly removed: readonly string[];
  /** Aliases whose set was put aside by this build. */
  readonly setAside: readonly string[];
  /** No longer part of the site, but changed by hand since we wrote them: still there. */
  readonly left: readonly string[];
  /** Changed by hand since we wrote them, and written anew. */
  readonly restored: readonly string[];
}

/** What became of a person's folder, and the files that are in force there. */
export interface Issued extends SetChange {
  readonly files: readonly Written[];
}

export interface Site {
  /** A file that belongs to nobody in particular. Whether its bytes were not there before. */
  write(file: OutFile): boolean;
  /** One person's files, all at once. */
  issue(set: PersonSet): Issued;
  /** These files stand as an earlier build left them, and are part of the site. False where we do not know them as ours. */
  keep(files: readonly Written[]): boolean;
  /** Sets one person's files aside at once, for a leaflet that must not be followed any longer. */
  withdraw(alias: string, reason: Reason): void;
  /** Aliases whose set was put aside since the site was opened. */
  setAside(): readonly string[];
  /** Persons who have a folder here, be it under its name or taken away. */
  people(): readonly string[];
  /** Removes what this build did not write, but for `kept`, and writes the manifest. Without `kept` it was the whole site. */
  finish(kept?: (path: string) => boolean): Outcome;
}

/** How a site is written. */
export interface Manner extends Pick<SetStore, 'on' | 'loadleaf'> {
  /** For somebody who waits: a power cut can leave a page of the library empty, and the next build then writes it anew. */
  readonly isHasty: boolean;
  /** Called before everything that changes the folder; stops when the folder is no longer held. */
  readonly hold?: () => void;
}

/** Only one may be open in a folder at a time: see lock.ts. Ends what a stopped command left half done. */
export function openSite(out: string, { isHasty, on, loadleaf, hold = () => undefined }: Manner): Site {
  const manifest = readManifest(out);
  const journal = readJournal(out);
  putBack(out);
  const ours = hashesByPath([...(manifest?.files ?? []), ...(manifest?.left ?? []), ...journal]);
  if (manifest === null)
    for (const { path, sha256 } of ownPages(out)) if (!ours.has(path)) ours.set(path, new Set([sha256]));
  const isAdopted = manifest === null && [...ours.keys()].some((path) => path.startsWith('public/'));
  const isLost = isAdopted || (manifest === null && peopleIn(out).length > 0);
  // A build that was stopped has left its journal; whatever happens in a person's folder happens in one beside it.
  const isEnded = manifest !== null && journal.length === 0;
  clearParts(out, isEnded ? [...ours.keys()].filter((path) => !isOfPerson(path)) : [...ours.keys()]);
  const put = isHasty ? putSoon : putWithin;
  const knownOf: SetStore['knownOf'] = (alias) => (name) => ours.get(`private/${alias}/${name}`);
  // What a patient follows outlasts a power cut, whoever waits.
  const putPrivate: SetStore['put'] = (place, bytes) => putWithin(place, bytes, true);
  const store: SetStore = { out, on, loadleaf, put: putPrivate, flush: true, knownOf };
  const now = new Map<string, string>();
  const touched = new Set<string>();
  const written: string[] = [];
  const removed: string[] = [];
  const restored: string[] = [];
  const left: string[] = [];
  const setAside: string[] = [];
  const met = new Set<string>();

  const write = ({ path, bytes }: OutFile): boolean => {
    const sha256 = hashOf(bytes);
    now.set(path, sha256);
    checkPlace(out, path);
    const there = hashThere(out, path);
    if (there === sha256) return false;
    const isOurs = ours.has(path) || (isAdopted && there !== 'other');
    if (there !== null && !isOurs) throw inTheWay(join(out, path));
    if (there !== null && ours.get(path)?.has(there) === false) restored.push(path);
    hold();
    addToJournal(out, [{ path, sha256 }], !isHasty);
    put(join(out, path), bytes, path.startsWith('private/'));
    for (let folder = dirname(path); folder !== '.'; folder = dirname(folder)) touched.add(join(out, folder));
    written.push(path);
    return true;
  };

  // Of thousands every path is kept to the end: in one text, not in one for each list it stands in.
  const note = (alias: string, change: SetChange, files: readonly Written[] = []): void => {
    const known = new Map(files.map(({ path }) => [path, path]));
    const within = (names: readonly string[]) =>
      names.map((name) => `private/${alias}/${name}`).map((path) => known.get(path) ?? path);
    written.push(...within(change.written));
    removed.push(...within(change.removed));
    restored.push(...within(change.restored));
    left.push(...within(change.left));
  };

  const issue = (set: PersonSet): Issued => {
    met.add(set.alias);
    const files = set.files.map(({ name, bytes }) => ({
      path: `private/${set.alias}/${name}`,
      sha256: hashOf(bytes),
    }));
    for (const { path, sha256 } of files) {
      checkPlace(out, path);
      now.set(path, sha256);
    }
    hold();
    onDisk(join(out, 'private'), () => makeFolder(join(out, 'private'), PRIVATE_FOLDER_MODE));
    const change = issueSet(store, set);
    note(set.alias, change, files);
    return { ...change, files };
  };

  const keep = (files: readonly Written[]): boolean => {
    const areOurs =
      manifest !== null &&
      files.every(({ path, sha256 }) => ours.get(path)?.has(sha256) === true) &&
      [...new Set(files.map(({ path }) => dirname(path)))].every((folder) => isInside(out, `${folder}/x`));
    if (areOurs) for (const { path, sha256 } of files) now.set(path, sha256);
    return areOurs;
  };

  const withdraw = (alias: string, reason: Reason): void => {
    if (!isFolder(join(out, 'private', alias)) && !isAway(out, alias)) return;
    checkPlace(out, `private/${alias}/x`);
    met.add(alias);
    hold();
    const change = withdrawSet(store, alias, reason);
    if (change.removed.length > 0) setAside.push(alias);
    note(alias, change);
  };

  const remove = (paths: readonly string[]): void => {
    for (const path of paths) {
      const there = hashThere(out, path);
      if (there === null || ours.get(path)?.has(there) !== true || !isInside(out, path)) continue;
      removeFile(out, path);
      removed.push(path);
    }
  };

  const finish = (kept?: (path: string) => boolean): Outcome => {
    hold();
    const isKept = (path: string) => path.startsWith(SEALED) || kept?.(path) === true;
    const gone = [...ours.keys()].filter((path) => !now.has(path) && !isKept(path));
    remove(gone.filter((path) => !isOfPerson(path)));
    const leftHere = gone.filter((path) => hashThere(out, path) !== null);
    const keptHere = [...ours.keys()].filter(
      (path) => !now.has(path) && isKept(path) && existsSync(join(out, path)),
    );
    const files = sorted(
      [...now].map(([path, sha256]) => ({ path, sha256 })),
      lastOf(keptHere, ours),
    );
    if (!isHasty) for (const folder of touched) if (isFolder(folder)) syncFolder(folder);
    writeEnds(out, met);
    // Of a site whose manifest was lost only a whole build knows every file; until then the journal is kept.
    if (!isLost || kept === undefined) {
      writeManifest(out, { files, left: sorted(lastOf(leftHere, ours)) });
      endJournal(out);
    }
    return {
      files,
      written: written.toSorted(),
      removed: removed.toSorted(),
      setAside: setAside.toSorted(),
      left: [...new Set([...leftHere, ...left])].sort(),
      restored: restored.toSorted(),
    };
  };

  return { write, issue, keep, withdraw, people: () => peopleWith(out), setAside: () => setAside, finish };
}

type Ours = Map<string, Set<string>>;

// More than one hash where a build was killed: the file is the old one or the new one, both are ours.
function hashesByPath(written: readonly Written[]): Ours {
  const ours: Ours = new Map();
  for (const { path, sha256 } of written) ours.set(path, (ours.get(path) ?? new Set()).add(sha256));
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

/** `private/otter/note.txt` is, `private/PRIVATE.txt` is not. */
function isOfPerson(path: string): boolean {
  return path.startsWith('private/') && path.split('/').length > 2;
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

function removeFile(out: string, path: string): void {
  onDisk(join(out, path), () => rmSync(join(out, path), { force: true }));
  for (let folder = dirname(path); folder !== '.'; folder = dirname(folder)) {
    if (readdirSync(join(out, folder)).length > 0) return;
    rmdirSync(join(out, folder));
  }
}

// Half files of a build that was killed; they can hold a person's lines.
function clearParts(out: string, paths: readonly string[]): void {
  for (const folder of new Set(['.', 'private', ...paths.map((path) => dirname(path))])) {
    if (!isFolder(join(out, folder)) || !isInside(out, `${folder}/x`)) continue;
    for (const name of readdirSync(join(out, folder)))
      if (name.startsWith('.') && name.endsWith(PART)) rmSync(join(out, folder, name), { force: true });
  }
}
