/** A clinic's folders read into values: the library, its consults, and every Problem of both. */
import type { Consult, Library } from '../content/library.ts';
import { problemOf, type PlaceOf } from '../content/place.ts';
import { sortProblems, type Problem } from '../content/problem.ts';
import { readConsults } from '../content/readConsults.ts';
import { readLibrary } from '../content/readLibrary.ts';
import type { SourceFile } from '../content/source.ts';
import type { Refusal } from '../units/refusal.ts';
import { isFolder, readFolder } from './folder.ts';
import type { Folders } from './folders.ts';

export interface Workspace {
  /** Null as soon as a library file has an error; nothing is built then. */
  readonly library: Library | null;
  readonly consults: readonly Consult[];
  /** Of each alias the highest revision, unless that one has a Problem. */
  readonly current: readonly Consult[];
  /** Aliases whose consult has a Problem; their leaflets must go. */
  readonly stopped: readonly string[];
  readonly libraryProblems: readonly Problem[];
  readonly consultProblems: readonly Problem[];
  readonly counts: {
    readonly exercises: number;
    readonly advice: number;
    readonly protocols: number;
    readonly consults: number;
  };
  /** All files, for the source lines of Problems. */
  readonly files: readonly SourceFile[];
  readonly asProblem: (refusal: Refusal) => Problem;
}

const CONSULTS = 'consults/';

export function readWorkspace({ content, consults }: Folders): Workspace {
  const libraryFiles = readFolder(content, (file) => !file.startsWith(CONSULTS));
  const consultFiles = isThere(consults).map((one) => ({ ...one, file: `${CONSULTS}${one.file}` }));
  const reading = readLibrary(libraryFiles);
  const own = readConsults(consultFiles, reading.library);
  const placeOf: PlaceOf = (kind, id, path) =>
    (kind === 'consult' ? own.placeOf : reading.placeOf)(kind, id, path);
  return {
    library: reading.library,
    consults: own.consults,
    current: own.current,
    stopped: own.stopped,
    libraryProblems: reading.problems,
    consultProblems: own.problems,
    counts: { ...reading.counts, consults: own.count },
    files: [...libraryFiles, ...consultFiles],
    asProblem: (refusal) => problemOf(refusal, placeOf),
  };
}

export function allProblems({ libraryProblems, consultProblems }: Workspace): Problem[] {
  return sortProblems([...libraryProblems, ...consultProblems]);
}

// A library without consults is a library all the same.
function isThere(consults: string): SourceFile[] {
  return isFolder(consults) ? readFolder(consults, () => true) : [];
}
