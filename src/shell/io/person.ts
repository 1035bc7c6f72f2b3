/**
 * One person's consults and logs, read by themselves: what a build must know of everybody before it begins. The values go
 * when the next person is read, and are read again when it is their turn; of thousands they would fill the memory.
 */
import type { Draft } from '../../content/draft.ts';
import { consultId } from '../../content/consult.ts';
import { isHidden } from '../../content/fileName.ts';
import { FOLDERS } from '../../content/kind.ts';
import type { Consult, Nameable } from '../../content/library.ts';
import { logOfName } from '../../content/log/readLog.ts';
import { readLogs } from '../../content/log/readLogs.ts';
import { firstPlace, problemOf, type PlaceOf } from '../../content/place.ts';
import type { Problem } from '../../content/problem.ts';
import { readConsults, type ConsultsReading } from '../../content/readConsults.ts';
import type { SourceFile } from '../../content/source.ts';
import { logAlarms } from '../../decisions/screen/alarms.ts';
import { withdrawals, type Withdrawal } from '../../decisions/screen/withdrawal.ts';
import type { Revisions } from '../../programme/revisions.ts';
import { wordedAlarm, wordedStops, wordedWithdrawal, type Stop } from '../../programme/worded.ts';
import type { Refusal } from '../../units/refusal.ts';
import { quickAlias } from './quickAlias.ts';

/** The revision that is in use, without its values. */
export type InUse = Pick<Consult, 'id' | 'alias' | 'revision' | 'withdraw' | 'withdrawOn'>;

/** Lists, so that those of all persons are put one behind the other. */
export interface PersonReading {
  readonly current: readonly InUse[];
  /** This person, where a Problem, a newer file or the log stops the programme; likewise the next three. */
  readonly stopped: readonly string[];
  readonly blocked: readonly string[];
  readonly unreadable: readonly string[];
  readonly stoppedWithdrawn: readonly string[];
  readonly withdrawals: readonly Withdrawal[];
  readonly drafts: readonly Draft[];
  /** Ids of the revisions there is a log of. */
  readonly logged: readonly string[];
  /** The files that are this person's. */
  readonly files: readonly string[];
  /** What the screen in use says, where it stops the programme. */
  readonly screenProblems: readonly Problem[];
  readonly consultProblems: readonly Problem[];
  readonly draftProblems: readonly Problem[];
  readonly logProblems: readonly Problem[];
  readonly count: number;
}

/** Files by the alias they are of; under '' what is of nobody. */
export function filesByPerson(files: readonly SourceFile[]): ReadonlyMap<string, readonly SourceFile[]> {
  const people = new Map<string, SourceFile[]>();
  for (const file of files) {
    const alias = whose(file);
    const own = people.get(alias);
    if (own === undefined) people.set(alias, [file]);
    else own.push(file);
  }
  return people;
}

function whose(file: SourceFile): string {
  if (!file.file.startsWith(`${FOLDERS.consult}/`) || isHidden(file.file)) return '';
  return file.file.endsWith('.md') ? quickAlias(file) : (logOfName(file.file)?.alias ?? '');
}

/** Everything that was written of a person, with its values. */
export function revisionsIn(files: readonly SourceFile[], known: Nameable): Revisions {
  const { consults, aliases } = readConsults(files, known);
  return { consults, logs: readLogs(files, known, new Set(aliases.values())).logs };
}

/** `alias`: whose the files are. `libraryPlace`: where the library has what a Problem speaks of. */
export function readPerson(
  alias: string,
  files: readonly SourceFile[],
  known: Nameable,
  libraryPlace: PlaceOf,
): PersonReading {
  const own = readConsults(files, known);
  const logs = readLogs(files, known, new Set(own.aliases.values()));
  const placeOf = firstPlace(own.placeOf, libraryPlace);
  const asProblem = (refusal: Refusal): Problem => problemOf(refusal, placeOf);
  const [consult] = own.current;
  const inUse = new Map(own.current.map(({ revision }) => [alias, revision]));
  const withdrawn = withdrawals([...own.drafts, ...own.unreadable], inUse, known.clinic);
  const alarms = logAlarms(logs.logs, own.current, known.clinic);
  const stops = screenStops(own, known);
  const told = (some: readonly Stop[]) => some.map(({ refusal }) => asProblem(refusal));
  const isGone = withdrawn.length + alarms.length > 0;
  const isStopped = own.stopped.length > 0;
  const ifSo = (is: boolean): string[] => (is ? [alias] : []);
  return {
    current: consult === undefined || isGone ? [] : [inUseOf(alias, consult)],
    stopped: ifSo(isStopped || (isGone && consult !== undefined)),
    blocked: ifSo(isGone || stops.length > 0),
    unreadable: ifSo([...own.stoppedScreens.values()].flat().includes(null)),
    stoppedWithdrawn: ifSo(own.stoppedWithdrawn.length > 0),
    withdrawals: withdrawn,
    drafts: own.drafts,
    logged: [...logs.logs.keys()],
    files: [...own.aliases.keys(), ...logs.aliases.keys()],
    screenProblems: isStopped ? [] : told(stops),
    consultProblems: [
      ...own.problems,
      ...withdrawn.map(({ refusal }) => asProblem(wordedWithdrawal(refusal))),
      ...alarms.map(wordedAlarm),
      // Of a file that is wrong elsewhere too, the items that were answered: the others may not have been come to yet.
      ...(isStopped ? told(stops.filter(({ isYes }) => isYes)) : []),
    ],
    draftProblems: own.draftProblems,
    logProblems: logs.problems,
    count: own.count,
  };
}

// Under the alias of the file's name: one cut out of a text would keep the whole text in memory.
function inUseOf(alias: string, { revision, withdraw, withdrawOn }: Consult): InUse {
  return { id: consultId(alias, revision), alias, revision, withdraw, withdrawOn };
}

function screenStops({ current, stoppedScreens }: ConsultsReading, { clinic }: Nameable): readonly Stop[] {
  const found = [...stoppedScreens.values()].flat();
  return [...current, ...found.filter((screen) => screen !== null)].flatMap((screen) =>
    wordedStops(screen, clinic),
  );
}
