/**
 * One person's folder changes as a whole: the new one is made beside the old one and switched in by two renames. A stop
 * at any moment leaves the old folder, the new folder, or the old one under its journal name, from where the next
 * command that writes puts it back.
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

/** Where a person's files lie. */
export function personFolder(out: string, alias: string): string {
  return join(out, PRIVATE, alias);
}

/** Fills a folder beside the person's and switches it in. A fault of the disk leaves the old folder as it was. */
export function swapIn(out: string, alias: string, fill: (folder: string) => void, flush: boolean): void {
  const { person, next, old, around } = placesOf(out, alias);
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
    rmSync(old, { recursive: true, force: true });
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
  const { person, old, around } = placesOf(out, alias);
  onDisk(person, () => {
    renameSync(person, old);
    syncFolder(around);
  });
  return old;
}

/** Ends the swaps of commands that were stopped. */
export function putBack(out: string): void {
  const around = join(out, PRIVATE);
  if (lstatSync(around, { throwIfNoEntry: false })?.isDirectory() !== true) return;
  for (const name of readdirSync(around)) {
    if (name.startsWith('.') && name.endsWith(NEW))
      onDisk(around, () => rmSync(join(around, name), { recursive: true, force: true }));
    if (name.startsWith('.') && name.endsWith(OLD)) settle(out, name.slice(1, -OLD.length));
  }
}

function settle(out: string, alias: string): void {
  const { person, old, around } = placesOf(out, alias);
  onDisk(person, () => {
    refuseLink(old);
    if (lstatSync(person, { throwIfNoEntry: false }) === undefined) renameSync(old, person);
    else if (goesOnFrom(person, old)) rmSync(old, { recursive: true, force: true });
    else
      throw new Stop(
        EXIT.cannotCreate,
        `${person} was made by hand while ${old} waits to be put back there; move the first one away`,
      );
    syncFolder(around);
  });
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

function placesOf(out: string, alias: string) {
  const around = join(out, PRIVATE);
  return {
    around,
    person: join(around, alias),
    next: join(around, `.${alias}${NEW}`),
    old: join(around, `.${alias}${OLD}`),
  };
}
