/** A clinic's folders read into values: the library, its consults, and every Problem of both. */
import type { Log } from '../../content/log/log.ts';
import { readLogs } from '../../content/log/readLogs.ts';
import type { Draft } from '../../content/draft.ts';
import type { Consult, Nameable, Library, LibraryFiles } from '../../content/library.ts';
import { problemOf, type PlaceOf } from '../../content/place.ts';
import { sortProblems, type Problem } from '../../content/problem.ts';
import { readConsults, type ConsultsReading } from '../../content/readConsults.ts';
import { readLibrary, type LibraryReading } from '../../content/readLibrary.ts';
import type { SourceFile } from '../../content/source.ts';
import { logAlarms } from '../../decisions/screen/alarms.ts';
import { screenEffects } from '../../decisions/screen/screen.ts';
import { withdrawals, type Withdrawal } from '../../decisions/screen/withdrawal.ts';
import { wordedAlarm, wordedStop, wordedWithdrawal } from '../../programme/worded.ts';
import type { Refusal } from '../../units/refusal.ts';
import type { Standing } from '../../content/underneath.ts';
import type { Counts } from './counted.ts';
import type { Folders } from './folders.ts';
import { shippedNames } from './layers.ts';
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
  /** Every revision without a Problem. */
  readonly consults: readonly Consult[];
  /** Of each alias the highest revision, unless that one has a Problem. */
  readonly current: readonly Consult[];
  /** Aliases whose consult has a Problem, or that a newer file withdraws; their leaflets must go. */
  readonly stopped: readonly string[];
  /** Leaflets that must go because of what a newer file says of the screen, be it a draft or broken. */
  readonly withdrawals: readonly Withdrawal[];
  /** What was written down of each revision, by its id `alias-r2`. */
  readonly logs: ReadonlyMap<string, Log>;
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
  const own = readConsults(consults, reading.known);
  const names = shippedNames(layers, reading.files, folders.content);
  const named = <T extends { readonly file: string }>(one: T): T => {
    const name = names.get(one.file);
    return name === undefined ? one : { ...one, file: name };
  };
  const placeOf: PlaceOf = (kind, ...where) => {
    const place = (kind === 'consult' ? own.placeOf : reading.placeOf)(kind, ...where);
    return place === null ? null : named(place);
  };
  const asProblem = (refusal: Refusal): Problem => problemOf(refusal, placeOf);
  const revisions = new Map(own.current.map(({ alias, revision }) => [alias, revision]));
  const withdrawn = withdrawals([...own.drafts, ...own.unreadable], revisions, reading.known.clinic);
  const logs = readLogs(consults, reading.known, new Set(own.aliases.values()));
  const alarms = logAlarms(logs.logs, own.current, reading.known.clinic);
  const gone = new Set(aliasesOf([...withdrawn, ...alarms]));
  const current = own.current.filter(({ alias }) => !gone.has(alias));
  const stopped = [
    ...new Set([...own.stopped, ...aliasesOf(own.current).filter((alias) => gone.has(alias))]),
  ];
  const stops = screenStops(own, reading.known);
  const ofCurrent = stops
    .filter(({ alias }) => !own.stopped.includes(alias))
    .map(({ refusal }) => asProblem(refusal));
  // Of a file that is wrong elsewhere too, the items that were answered: the others may not have been come to yet.
  const ofStopped = stops
    .filter(({ alias, refusal }) => own.stopped.includes(alias) && refusal.found === 'yes')
    .map(({ refusal }) => asProblem(refusal));
  return {
    library: reading.library,
    shelves: reading.shelves,
    consults: own.consults,
    current,
    stopped: stopped.sort(),
    withdrawals: withdrawn,
    drafts: own.drafts,
    logs: logs.logs,
    aliases: new Map([...own.aliases, ...logs.aliases]),
    libraryProblems: sortProblems(reading.problems.map(named)),
    asked: layers.asked,
    standing: { own: layers.folders.at(-1) ?? [], below: layers.shipped, extending: reading.extending },
    blocked: [...new Set([...aliasesOf(stops), ...gone])].sort(),
    unreadable: own.stopped.filter((alias) => own.stoppedScreens.get(alias)?.includes(null)),
    stoppedWithdrawn: own.stoppedWithdrawn,
    toBeSeen: [],
    screenProblems: ofCurrent,
    // Without a library there is no programme to say so.
    consultProblems: sortProblems([
      ...own.problems,
      ...withdrawn.map(({ refusal }) => asProblem(wordedWithdrawal(refusal))),
      ...alarms.map(wordedAlarm),
      ...ofStopped,
      ...(reading.library === null ? ofCurrent : []),
    ]),
    draftProblems: own.draftProblems,
    logProblems: logs.problems,
    clinic: reading.known.clinic,
    counts: { ...reading.counts, consults: own.count + leftOut.size },
    layers: layers.folders,
    files: [...reading.files.map(named), ...consults],
    shipped: new Set(names.values()),
    isStill: () => isStill(sources, folders),
    placeOf,
    asProblem,
  };
}

function aliasesOf(list: readonly { readonly alias: string }[]): string[] {
  return list.map(({ alias }) => alias);
}

interface Stops {
  readonly alias: string;
  readonly refusal: Refusal;
}

/** Every item of a screen that stops a programme, though the clinic's emergency wording may be missing. */
function screenStops({ current, stoppedScreens }: ConsultsReading, { clinic }: Nameable): readonly Stops[] {
  const screens = [
    ...current.map((consult) => ({ alias: consult.alias, screen: consult })),
    ...[...stoppedScreens].flatMap(([alias, found]) =>
      found.flatMap((screen) => (screen === null ? [] : [{ alias, screen }])),
    ),
  ];
  return screens.flatMap(({ alias, screen }) => {
    const effects = screenEffects(screen, clinic ?? { emergency: {} });
    return 'refusals' in effects
      ? effects.refusals.map((refusal) => ({ alias, refusal: wordedStop(refusal) }))
      : [];
  });
}
