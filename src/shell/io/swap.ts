/**
 * One person's folder changes as a whole: the new one is made beside the old one and switched in by two renames. A stop
 * at any moment leaves the old folder, the new folder, or the old one under its journal name, from where the next
 * command that writes puts it back. What had to be taken out of force where nothing could be written has a name of its
 * own: nobody puts it back, the next set or withdrawal of that person goes on from it.
 */
import { existsSync, lstatSync, readFileSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { makeFolder, onDisk, PRIVATE_FOLDER_MODE, refuseLink, syncFolder } from './disk.ts';
import { EXIT } from '../exit.ts';
import { ISSUED } from './issued.ts';
import { Stop } from './stop.ts';

const PRIVATE = 'private';

/** Hidden, so that nobody takes them for a person's folder and `serve` hands nothing out of them. */
const NEW = '.loadleaf-new';
const OLD = '.loadleaf-old';
const AWAY = '.loadleaf-away';

/** Where a person's files lie. */
export function personFolder(out: string, alias: string): string {
  return join(out, PRIVATE, alias);
}

/** Where they lie now: there, or where they were taken away to. */
export function folderNow(out: string, alias: string): string {
  return isAway(out, alias) ? placesOf(out, alias).away : personFolder(out, alias);
}

/** Fills a folder beside the person's and switches it in. A fault of the disk leaves the old folder as it was. */
export function swapIn(out: string, alias: string, fill: (folder: string) => void, flush: boolean): void {
  const { person, next, old, away, around } = placesOf(out, alias);
  onDisk(person, () => {
    try {
      rmSync(next, { recursive: true, force: true });
      makeFolder(next, PRIVATE_FOLDER_MODE);
      fill(next);
      if (flush) syncFolder(next);
      if (flush) syncFolder(around);
      if (existsSync(person)) renameSync(person, old);
    } catch (error) {
      rmSync(next, { recursive: true, force: true });
      throw error;
    }
    switchIn(next, person, old);
    if (flush) syncFolder(around);
    for (const gone of [old, away]) rmSync(gone, { recursive: true, force: true });
  });
}

function switchIn(next: string, person: string, old: string): void {
  try {
    renameSync(next, person);
  } catch (error) {
    if (existsSync(old)) renameSync(old, person);
    rmSync(next, { recursive: true, force: true });
    throw error;
  }
}

/** Out of the way by one rename, which a full disk takes too: the last resort for what must not be followed any longer. */
export function takeAway(out: string, alias: string): string {
  const { person, away, around } = placesOf(out, alias);
  onDisk(person, () => {
    renameSync(person, away);
    syncFolder(around);
  });
  return away;
}

/** Whether a person's folder is one of ours in this output folder, and no link out of it. */
export function isOwnFolder(out: string, alias: string): boolean {
  const { person, around } = placesOf(out, alias);
  return [around, person].every(
    (place) => lstatSync(place, { throwIfNoEntry: false })?.isDirectory() === true,
  );
}

/** Ends the swaps of commands that were stopped. */
export function putBack(out: string): void {
  const around = join(out, PRIVATE);
  for (const name of hiddenIn(around, NEW))
    onDisk(around, () => rmSync(join(around, `.${name}${NEW}`), { recursive: true, force: true }));
  for (const alias of hiddenIn(around, OLD)) settle(out, alias, 'old');
  for (const alias of hiddenIn(around, AWAY)) settle(out, alias, 'away');
}

/** What commands that were stopped have left of persons, under its hidden names. */
export interface Unsettled {
  readonly alias: string;
  readonly place: string;
  /** `clashes`: a folder that was made by hand since stands in its place, and the next build stops there. */
  readonly is: 'waiting' | 'away' | 'clashes';
}

/** By alias; what the next build only throws away is not of it. */
export function unsettledIn(out: string): readonly Unsettled[] {
  const around = join(out, PRIVATE);
  const found = (kind: 'old' | 'away') => (alias: string) => {
    const { person, [kind]: place } = placesOf(out, alias);
    const is = isThere(person) ? 'clashes' : kind === 'old' ? 'waiting' : 'away';
    return is === 'clashes' && goesOnFrom(person, place) ? [] : [{ alias, place, is } as const];
  };
  return [...hiddenIn(around, OLD).flatMap(found('old')), ...hiddenIn(around, AWAY).flatMap(found('away'))];
}

function hiddenIn(around: string, ending: string): string[] {
  if (lstatSync(around, { throwIfNoEntry: false })?.isDirectory() !== true) return [];
  return readdirSync(around)
    .filter((name) => name.startsWith('.') && name.endsWith(ending))
    .map((name) => name.slice(1, -ending.length))
    .sort();
}

function settle(out: string, alias: string, kind: 'old' | 'away'): void {
  const { person, [kind]: left, around } = placesOf(out, alias);
  onDisk(person, () => {
    refuseLink(left);
    if (!isThere(person)) {
      if (kind === 'old') renameSync(left, person);
    } else if (goesOnFrom(person, left)) rmSync(left, { recursive: true, force: true });
    else
      throw new Stop(
        EXIT.cannotCreate,
        `${person} was made by hand while ${left} waits to be put back there; move the first one away`,
      );
    syncFolder(around);
  });
}

function isThere(place: string): boolean {
  return lstatSync(place, { throwIfNoEntry: false }) !== undefined;
}

// A folder that was switched in goes on with the list of the one before; one made by hand does not.
function goesOnFrom(person: string, old: string): boolean {
  const listIn = (folder: string) => {
    const place = join(folder, ISSUED);
    return existsSync(place) ? readFileSync(place, 'utf8') : null;
  };
  return listIn(person)?.startsWith(listIn(old) ?? '') === true;
}

/** Whether a command was stopped between the two renames of this person's folder. */
export function isWaiting(out: string, alias: string): boolean {
  const { person, old } = placesOf(out, alias);
  return existsSync(old) && !existsSync(person);
}

/** Whether this person's folder was taken away. */
export function isAway(out: string, alias: string): boolean {
  const { person, away } = placesOf(out, alias);
  return existsSync(away) && !existsSync(person);
}

function placesOf(out: string, alias: string) {
  const around = join(out, PRIVATE);
  return {
    around,
    person: join(around, alias),
    next: join(around, `.${alias}${NEW}`),
    old: join(around, `.${alias}${OLD}`),
    away: join(around, `.${alias}${AWAY}`),
  };
}
