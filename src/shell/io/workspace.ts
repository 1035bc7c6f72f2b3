/** A clinic's folders read into values: the library, its consults, and every Problem of both. */
import type { Draft } from '../../content/draft.ts';
import type { Nameable, Library, LibraryFiles } from '../../content/library.ts';
import { firstPlace, problemOf, type PlaceOf } from '../../content/place.ts';
import { sortProblems, type Problem } from '../../content/problem.ts';
import { readConsults } from '../../content/readConsults.ts';
import { readLibrary, type LibraryReading } from '../../content/readLibrary.ts';
import type { SourceFile } from '../../content/source.ts';
import type { Withdrawal } from '../../decisions/screen/withdrawal.ts';
import type { Revisions } from '../../programme/revisions.ts';
import type { Refusal } from '../../units/refusal.ts';
import type { Standing } from '../../content/underneath.ts';
import type { Counts } from './counted.ts';
import type { Folders } from './folders.ts';
import { shippedNames } from './layers.ts';
import { filesByPerson, readPerson, revisionsIn, type InUse } from './person.ts';
import { isStill, lookAt, type Sources } from './sources.ts';

/** A person who must be seen before going on, and the grounds in words. */
export interface ToBeSeen {
  readonly alias: string;
  readonly because: readonly string[];
}

export interface Workspace {
  /** Null as soon as a library file has an error; nothing is built then. */
  readonly library: Library | null;
  /** Its cards and protocols whose keys are right; there always. */
  readonly shelves: LibraryFiles;
  /** Of each alias the highest revision, unless that one has a Problem; sorted. */
  readonly current: readonly InUse[];
  /** Every revision of a person without a Problem, and what was written down of each; read anew each time. */
  readonly revisionsOf: (alias: string) => Revisions;
  /** Aliases whose consult has a Problem, or that a newer file withdraws; their leaflets must go. */
  readonly stopped: readonly string[];
  /** Leaflets that must go because of what a newer file says of the screen, be it a draft or broken. */
  readonly withdrawals: readonly Withdrawal[];
  /** The revisions that there is a log of, by their ids `alias-r2`. */
  readonly logged: ReadonlySet<string>;
  /** Files that are still being written: checked, never built. */
  readonly drafts: readonly Draft[];
  /** Whose a consult file is: alias by file. */
  readonly aliases: ReadonlyMap<string, string>;
  /** Aliases whose screen stops every programme, whatever else is right or wrong; sorted. */
  readonly blocked: readonly string[];
  /** Aliases whose newest file does not let its screen be read: it may say anything. */
  readonly unreadable: readonly string[];
  /** Aliases whose newest file has a Problem and says `withdraw: yes` all the same. */
  readonly stoppedWithdrawn: readonly string[];
  /** Whose log leads to "stop and be seen"; nobody until the logs are looked back on (`toBeSeen.ts`). */
  readonly toBeSeen: readonly ToBeSeen[];
  /** What the screens of `blocked` say. */
  readonly screenProblems: readonly Problem[];
  readonly libraryProblems: readonly Problem[];
  /** Whether the folder was meant to lie over the shipped library: a question, no error. */
  readonly asked: readonly Problem[];
  /** What is held against an earlier state of the library below. */
  readonly standing: Standing;
  /** Of the files that stand, and of what withdraws one. */
  readonly consultProblems: readonly Problem[];
  readonly draftProblems: readonly Problem[];
  readonly logProblems: readonly Problem[];
  /** Null where its file cannot be read. */
  readonly clinic: Nameable['clinic'];
  readonly counts: Counts;
  /** The library's files as they lie in its folders, lowest first. */
  readonly layers: readonly (readonly SourceFile[])[];
  /** All files, for the source lines of Problems. */
  readonly files: readonly SourceFile[];
  /** The names of those that belong to the shipped library below a clinic's own folder. */
  readonly shipped: ReadonlySet<string>;
  /** Whether the folders still hold what was read: a build must not put an older leaflet over a newer one. */
  readonly isStill: () => boolean;
  readonly placeOf: PlaceOf;
  readonly asProblem: (refusal: Refusal) => Problem;
}

/** `leftOut`: consult files that are passed over, all those of a person or none. */
export function readWorkspace(
  folders: Pick<Folders, 'content' | 'consults'>,
  sources: Sources = lookAt(folders),
  leftOut: ReadonlySet<string> = new Set(),
  reading: LibraryReading = readLibrary(...sources.layers.folders),
): Workspace {
  const { layers } = sources;
  const consults = sources.consults
    .filter(({ file }) => !leftOut.has(file))
    .flatMap((look) => look.read() ?? []);
  const names = shippedNames(layers, reading.files, folders.content);
  const named = <T extends { readonly file: string }>(one: T): T => {
    const name = names.get(one.file);
    return name === undefined ? one : { ...one, file: name };
  };
  const libraryPlace: PlaceOf = (...where) => {
    const place = reading.placeOf(...where);
    return place === null ? null : named(place);
  };
  const people = filesByPerson(consults);
  const filesOf = (alias: string) => people.get(alias) ?? [];
  const persons = [...people.keys()].sort().map((alias) => ({
    alias,
    ...readPerson(alias, filesOf(alias), reading.known, libraryPlace),
  }));
  const placeOf = firstPlace(placeInPeople(filesOf, reading.known), libraryPlace);
  const screenProblems = persons.flatMap((one) => one.screenProblems);
  return {
    library: reading.library,
    shelves: reading.shelves,
    current: persons.flatMap(({ current }) => current),
    revisionsOf: (alias) => revisionsIn(filesOf(alias), reading.known),
    stopped: persons.flatMap(({ stopped }) => stopped),
    withdrawals: persons.flatMap((one) => one.withdrawals),
    drafts: persons.flatMap(({ drafts }) => drafts).sort(byFile),
    logged: new Set(persons.flatMap(({ logged }) => logged)),
    aliases: new Map(
      persons.flatMap(({ alias, files }) => files.map((file): [string, string] => [file, alias])),
    ),
    libraryProblems: sortProblems(reading.problems.map(named)),
    asked: layers.asked,
    standing: { own: layers.folders.at(-1) ?? [], below: layers.shipped, extending: reading.extending },
    blocked: persons.flatMap(({ blocked }) => blocked),
    unreadable: persons.flatMap(({ unreadable }) => unreadable),
    stoppedWithdrawn: persons.flatMap(({ stoppedWithdrawn }) => stoppedWithdrawn),
    toBeSeen: [],
    screenProblems,
    // Without a library there is no programme to say so.
    consultProblems: sortProblems([
      ...persons.flatMap(({ consultProblems }) => consultProblems),
      ...(reading.library === null ? screenProblems : []),
    ]),
    draftProblems: sortProblems(persons.flatMap(({ draftProblems }) => draftProblems)),
    logProblems: sortProblems(persons.flatMap(({ logProblems }) => logProblems)),
    clinic: reading.known.clinic,
    counts: { ...reading.counts, consults: persons.reduce((sum, { count }) => sum + count, leftOut.size) },
    layers: layers.folders,
    files: [...reading.files.map(named), ...consults],
    shipped: new Set(names.values()),
    isStill: () => isStill(sources, folders),
    placeOf,
    asProblem: (refusal) => problemOf(refusal, placeOf),
  };
}

function byFile(a: { readonly file: string }, b: { readonly file: string }): number {
  return a.file < b.file ? -1 : 1;
}

// `otter-r2` is the second revision of otter, or whoever is called so.
function placeInPeople(filesOf: (alias: string) => readonly SourceFile[], known: Nameable): PlaceOf {
  return (kind, id, ...where) => {
    if (kind !== 'consult') return null;
    const whose = [id.replace(/-r\d+$/, ''), id].map((alias) => readConsults(filesOf(alias), known).placeOf);
    return firstPlace(...whose)(kind, id, ...where);
  };
}
