/**
 * What one person was given is one set: leaflet, paper, record and note of one make. It is put in force, set aside and
 * replaced as a whole, and what was given for an earlier revision stays for good.
 */
import { lstatSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { IsoDate } from '../../units/date.ts';
import { carry, makeFolder, PRIVATE_FOLDER_MODE, syncFolder, type Put } from './disk.ts';
import { EXIT } from '../exit.ts';
import { hashOf, ISSUED, linesOf, withLine, type Happening, type Listed } from './issued.ts';
import { addToJournal } from './journal.ts';
import {
  ASIDE,
  namesIn,
  revisionIn,
  standingOf,
  WHY,
  type Found,
  type HashesOf,
  type Standing,
} from './standing.ts';
import { Stop } from './stop.ts';
import { folderNow, isAway, isWaiting, swapIn, takeAway } from './swap.ts';

/** One make, whole. */
export interface PersonSet {
  readonly alias: string;
  readonly revision: number;
  readonly mark: string;
  readonly files: readonly { readonly name: string; readonly bytes: Uint8Array | string }[];
  readonly loadleaf: string;
  readonly library: string;
}

/** Why a set may not be followed any longer. */
export interface Reason {
  /** Codes, for the chain. */
  readonly because: readonly string[];
  /** Sentences, for whoever opens the folder. */
  readonly lines: readonly string[];
}

/** Where sets are written, and how. */
export interface SetStore {
  readonly out: string;
  readonly on: IsoDate;
  readonly loadleaf: string;
  readonly put: Put;
  /** Whether what is written outlasts a power cut. */
  readonly flush: boolean;
  readonly knownOf: (alias: string) => HashesOf;
}

/** Names of files, within the person's folder. */
export interface SetChange {
  readonly written: readonly string[];
  readonly removed: readonly string[];
  /** Changed by hand, and written anew. */
  readonly restored: readonly string[];
  /** Changed by hand and no part of the set any longer: still there. */
  readonly left: readonly string[];
}

const NOTHING: SetChange = { written: [], removed: [], restored: [], left: [] };

/** Puts a set in force. What was in force for another revision, or waited in `set-aside/`, goes to `r<n>/`. */
export function issueSet(store: SetStore, set: PersonSet): SetChange {
  const { out, flush } = store;
  const { alias } = set;
  const plan = planOf(store, set);
  if (!plan.isNeeded) return { ...NOTHING, left: plan.change.left };
  addToJournal(
    out,
    plan.files.map(({ name, sha256 }) => ({ path: `private/${alias}/${name}`, sha256 })),
    flush,
  );
  swapIn(out, alias, (next) => fill(store, folderNow(out, alias), plan, next), flush);
  return plan.change;
}

/** What is to become of a person's folder. */
interface Plan {
  readonly standing: Standing;
  readonly files: readonly (PersonSet['files'][number] & Named)[];
  /** Sets of other revisions that are kept for good from now on: the one in force, the one that was set aside. */
  readonly kept: readonly Place[];
  /** Files in `set-aside/` that hands have changed; they stay there. */
  readonly waiting: readonly string[];
  readonly issued: string;
  readonly change: SetChange;
  /** False where everything stands as it must. */
  readonly isNeeded: boolean;
}

/** At the top of a person's folder, or in `set-aside/`. */
type Place = '' | typeof ASIDE;

function planOf(store: SetStore, set: PersonSet): Plan {
  const folder = folderNow(store.out, set.alias);
  const standing = standingOf(store.out, set.alias, store.knownOf(set.alias));
  const files = set.files.map((file) => ({ ...file, sha256: hashOf(file.bytes) }));
  const taken = files.find(({ name }) => standing.kept.includes(name));
  if (taken !== undefined) throw inTheWay(join(folder, taken.name));
  const kept = placesOfOthers(set.revision, folder, standing);
  const change = changeOf(standing.present, files, kept.includes(''));
  const issued = issuedText(standing.issued, happeningOf(store, set, files));
  const waiting = kept.includes(ASIDE) ? [] : namesOf(standing.aside.filter(({ isChanged }) => isChanged));
  const isNeeded =
    isAway(store.out, set.alias) ||
    change.written.length + change.removed.length + kept.length > 0 ||
    waiting.length < standing.aside.length ||
    issued !== standing.issued;
  return { standing, files, kept, waiting, issued, change, isNeeded };
}

function changeOf(present: readonly Found[], files: readonly Named[], isOther: boolean): SetChange {
  const there = new Map(present.map((one) => [one.name, one]));
  const fresh = files.filter(({ name, sha256 }) => there.get(name)?.sha256 !== sha256);
  const gone = present.filter(({ name }) => files.every((file) => file.name !== name));
  // With their revision they go where that is kept, as hands have left them.
  const isLeft = ({ isChanged }: Found) => isChanged && !isOther;
  return {
    written: namesOf(fresh),
    removed: namesOf(gone.filter((one) => !isLeft(one))),
    restored: namesOf(fresh).filter((name) => there.get(name)?.isChanged === true && !isOther),
    left: namesOf(gone.filter(isLeft)),
  };
}

function fill(store: SetStore, folder: string, plan: Plan, next: string): void {
  const { standing, files, kept, waiting, issued, change } = plan;
  for (const { name, bytes } of files)
    if (change.written.includes(name)) store.put(join(next, name), bytes);
    else carry(join(folder, name), join(next, name));
  for (const name of [...standing.kept, ...change.left]) carry(join(folder, name), join(next, name));
  for (const place of kept) archive(folder, place, standing, next);
  keepAside(folder, [...standing.keptAside, ...waiting], next);
  store.put(join(next, ISSUED), issued);
}

/** Takes a set out of force into `set-aside/`, with a line saying why; what already lies there is told the newest reason. */
export function withdrawSet(store: SetStore, alias: string, reason: Reason): SetChange {
  const { out } = store;
  const standing = standingOf(out, alias, store.knownOf(alias));
  const folder = folderNow(out, alias);
  const why = `${reason.lines.join('\n')}\n`;
  const { present, aside } = standing;
  if (present.length === 0) {
    if (aside.length > 0 && !isThere(join(folder, ASIDE, WHY), why)) store.put(join(folder, ASIDE, WHY), why);
    return NOTHING;
  }
  try {
    swapIn(out, alias, (next) => setAside(store, alias, standing, reason, why, next), store.flush);
  } catch (error) {
    throw takenAway(out, alias, error);
  }
  return { ...NOTHING, removed: namesOf(present) };
}

function setAside(
  store: SetStore,
  alias: string,
  standing: Standing,
  { because }: Reason,
  why: string,
  next: string,
): void {
  const folder = folderNow(store.out, alias);
  const { present, aside, kept, keptAside, issued } = standing;
  for (const name of kept) carry(join(folder, name), join(next, name));
  const to = join(next, ASIDE);
  makeFolder(to, PRIVATE_FOLDER_MODE);
  for (const { name } of present) carry(join(folder, name), join(to, name));
  // Should anything lie there already, nothing of it is lost.
  for (const name of [...namesOf(aside), ...keptAside])
    carry(join(folder, ASIDE, name), join(to, freeName(namesIn(to), name)));
  store.put(join(to, WHY), why);
  const last = linesOf(issued).at(-1);
  store.put(
    join(next, ISSUED),
    withLine(issued, {
      on: store.on,
      event: 'withdrawn',
      alias,
      revision: revisionOf(folder, standing),
      mark: last?.mark ?? null,
      // What hands have changed is not what was given out.
      files: listed(present.filter(({ isChanged }) => !isChanged)),
      loadleaf: store.loadleaf,
      library: last?.library ?? null,
      because,
    }),
  );
  if (store.flush) syncFolder(to);
}

// A disk that is full takes no new folder, but it takes a name away: nobody may go on with what was withdrawn.
function takenAway(out: string, alias: string, error: unknown): unknown {
  if (!(error instanceof Stop) || isWaiting(out, alias)) return error;
  try {
    const to = isAway(out, alias) ? folderNow(out, alias) : takeAway(out, alias);
    return new Stop(error.exit, `${error.message}; the files of ${alias} were taken away to ${to}`);
  } catch {
    return error;
  }
}

/** Whether a set is in force: by the list and the marks alone, whatever the manifest knows. */
export function isInForce(out: string, alias: string): boolean {
  return !isAway(out, alias) && standingOf(out, alias, () => undefined).present.length > 0;
}

function happeningOf(store: SetStore, set: PersonSet, files: readonly Named[]): Happening {
  const { alias, revision, mark, loadleaf, library } = set;
  return { on: store.on, event: 'issued', alias, revision, mark, files: listed(files), loadleaf, library };
}

type Named = Pick<Found, 'name' | 'sha256'>;

function namesOf(files: readonly Named[]): string[] {
  return files.map(({ name }) => name);
}

function listed(files: readonly Named[]): Listed[] {
  return files.map(({ name, sha256 }) => ({ path: name, sha256 })).sort((a, b) => (a.path < b.path ? -1 : 1));
}

/** The chain with this set as its last: as it is, or with a line more. */
function issuedText(text: string, happening: Happening): string {
  const lines = linesOf(text);
  const same = lines.filter(({ files }) => JSON.stringify(files) === JSON.stringify(happening.files));
  const last = lines.at(-1);
  if (last !== undefined && last.event !== 'withdrawn' && same.includes(last)) return text;
  const event = same.some((line) => line.event === 'issued') ? 'returned' : 'issued';
  return withLine(text, { ...happening, event });
}

/** Where sets of other revisions stand. */
function placesOfOthers(revision: number, folder: string, standing: Standing): Place[] {
  const places: readonly Place[] = ['', ASIDE];
  return places.filter(
    (place) => filesIn(place, standing).length > 0 && revisionOf(join(folder, place), standing) !== revision,
  );
}

function filesIn(place: Place, { present, aside }: Standing): readonly Found[] {
  return place === '' ? present : aside;
}

// Where the record does not tell it the chain does; 0 is of a revision that nobody can tell any more.
function revisionOf(folder: string, { issued }: Standing): number {
  return revisionIn(folder) ?? linesOf(issued).at(-1)?.revision ?? 0;
}

/** Keeps a set of another revision for good. One that lies there already is never written over. */
function archive(folder: string, from: Place, standing: Standing, next: string): void {
  const files = filesIn(from, standing);
  const name = `r${revisionOf(join(folder, from), standing)}`;
  if (holds(join(next, name), files)) return;
  const to = join(next, freeName(namesIn(next), name));
  makeFolder(to, PRIVATE_FOLDER_MODE);
  for (const file of files) carry(join(folder, from, file.name), join(to, file.name));
  syncFolder(to);
}

function holds(folder: string, files: readonly Found[]): boolean {
  const names = namesIn(folder);
  return (
    names.length === files.length && files.every(({ name, sha256 }) => hasHash(join(folder, name), sha256))
  );
}

function keepAside(folder: string, names: readonly string[], next: string): void {
  if (names.length === 0) return;
  makeFolder(join(next, ASIDE), PRIVATE_FOLDER_MODE);
  for (const name of names) carry(join(folder, ASIDE, name), join(next, ASIDE, name));
  syncFolder(join(next, ASIDE));
}

/** @example freeName(['r1'], 'r1') // => 'r1-2' */
function freeName(taken: readonly string[], name: string): string {
  if (!taken.includes(name)) return name;
  for (let number = 2; ; number += 1) if (!taken.includes(`${name}-${number}`)) return `${name}-${number}`;
}

function isThere(place: string, text: string): boolean {
  return hasHash(place, hashOf(text));
}

function hasHash(place: string, sha256: string): boolean {
  return (
    lstatSync(place, { throwIfNoEntry: false })?.isFile() === true && hashOf(readFileSync(place)) === sha256
  );
}

export function inTheWay(place: string): Stop {
  return new Stop(
    EXIT.cannotCreate,
    `${place} is in the way and was not written by a build; move it away, or choose another place with --out`,
  );
}
