/**
 * What the files of a site were made from, so that a build makes again only what differs. The finished work itself lies
 * in the site; here stand only hashes, and how the files looked when they were written. An entry counts for nothing
 * unless the hash of everything its files come from is the same.
 */
import { createHash } from 'node:crypto';
import { lstatSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { keep, recalled } from './cache.ts';
import { isSameState, stateOf, type FileState } from './fileState.ts';
import { hashOf, ISSUED } from './issued.ts';
import type { StageName } from '../../decisions/terms/stageName.ts';
import type { Written } from './manifest.ts';
import { personFolder } from './swap.ts';
import type { Counts } from './counted.ts';

const NAME = 'made-from.json';

/** A file of the site as it was when it was written. */
export interface Kept extends Written {
  readonly state: FileState;
}

/** One person's set in force. */
export interface Finished {
  /** Of everything the set comes from. */
  readonly key: string;
  readonly revision: number;
  readonly stage: StageName;
  readonly step: number;
  /** Of the folder, which shows when a name in it comes or goes. */
  readonly folder: FileState;
  /** The set, then the list of what was issued. */
  readonly files: readonly Kept[];
}

/** The library's part of the site. */
export interface FinishedLibrary {
  readonly key: string;
  readonly counts: Counts;
  readonly files: readonly Kept[];
}

/** A consult file as it was read. */
export interface ReadConsult {
  readonly alias: string;
  readonly sha256: string;
  /** Null where it tells nothing. */
  readonly state: FileState | null;
}

export interface Ledger {
  readonly library: FinishedLibrary | null;
  /** By file. */
  readonly consults: Readonly<Record<string, ReadConsult>>;
  /** By alias; only of persons whose files stand as the last build left them, with nothing said against them. */
  readonly people: Readonly<Record<string, Finished>>;
}

export const NO_LEDGER: Ledger = { library: null, consults: {}, people: {} };

export function readLedger(out: string): Ledger {
  const bytes = recalled(out, NAME);
  // What we wrote under its hash is of our form.
  return bytes === null ? NO_LEDGER : (JSON.parse(bytes.toString('utf8')) as Ledger);
}

export function ledgerText(ledger: Ledger): string {
  return JSON.stringify(ledger);
}

/** `text`: of the ledger. */
export function writeLedger(out: string, text: string): void {
  keep(out, NAME, Buffer.from(text));
}

/** One hash for many; the same texts in another order are others. */
export function keyOf(...parts: readonly string[]): string {
  return createHash('sha256').update(JSON.stringify(parts)).digest('hex');
}

/** A person's set as it stands now, right after it was put in force; null where it stands in no folder of ours. */
export function finishedNow(
  out: string,
  alias: string,
  names: readonly Written[],
): Pick<Finished, 'folder' | 'files'> | null {
  const place = personFolder(out, alias);
  const folder = stateOf(place);
  const list = join(place, ISSUED);
  if (folder === null || stateOf(list) === null) return null;
  const path = `private/${alias}/${ISSUED}`;
  const files = keptNow(out, [...names, { path, sha256: hashOf(readFileSync(list)) }]);
  return files === null ? null : { folder, files };
}

/** Files as they look now; null where one is not there. */
export function keptNow(out: string, files: readonly Written[]): readonly Kept[] | null {
  const kept = files.flatMap(({ path, sha256 }) => {
    const state = stateOf(join(out, path));
    return state === null ? [] : [{ path, sha256, state }];
  });
  return kept.length === files.length ? kept : null;
}

/** The entry as it is now where a person's folder holds the set as it was left, else null. `isRead`: by the bytes as well. */
export function standing(out: string, alias: string, finished: Finished, isRead: boolean): Finished | null {
  const place = personFolder(out, alias);
  const isFolder = lstatSync(place, { throwIfNoEntry: false })?.isDirectory() === true;
  if (!isFolder || !isSameState(finished.folder, stateOf(place))) return null;
  const files = standingFiles(out, finished.files, isRead);
  return files === null ? null : { ...finished, files };
}

/** The files as they look now where they are those that were written: by size and times, else by their bytes. */
export function standingFiles(out: string, files: readonly Kept[], isRead: boolean): readonly Kept[] | null {
  const now = files.flatMap((file) => {
    const place = join(out, file.path);
    const state = stateOf(place);
    if (state === null) return [];
    if (isSameState(file.state, state) && !isRead) return [file];
    return isFile(place) && hashOf(readFileSync(place)) === file.sha256 ? [{ ...file, state }] : [];
  });
  return now.length === files.length ? now : null;
}

function isFile(place: string): boolean {
  return lstatSync(place, { throwIfNoEntry: false })?.isFile() === true;
}
