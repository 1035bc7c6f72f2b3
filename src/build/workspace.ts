/** A clinic's folders read into values: the library, its consults, and every Problem of both. */
import type { Consult, Library } from '../content/library.ts';
import { problemOf, type PlaceOf } from '../content/place.ts';
import type { Problem } from '../content/problem.ts';
import { readConsults } from '../content/readConsults.ts';
import { readLibrary } from '../content/readLibrary.ts';
import type { SourceFile } from '../content/source.ts';
import type { Refusal } from '../units/refusal.ts';
import { readFolder } from './folder.ts';
import { isFolder, type Folders } from './folders.ts';

export interface Workspace {
  /** Null as soon as a library file has an error; nothing is built then. */
  readonly library: Library | null;
  /** Every revision without a Problem. */
  readonly consults: readonly Consult[];
  /** Of each alias the highest revision, unless that one has a Problem. */
  readonly current: readonly Consult[];
  /** Aliases whose consult has a Problem; their leaflets must go. */
  readonly stopped: readonly string[];
  /** Whose a consult file is: alias by file. */
  readonly aliases: ReadonlyMap<string, string>;
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
  readonly placeOf: PlaceOf;
  readonly asProblem: (refusal: Refusal) => Problem;
}

const CONSULTS = 'consults/';

export function readWorkspace(folders: Folders): Workspace {
  const files = filesOf(folders);
  const reading = readLibrary(files.filter(({ file }) => !file.startsWith(CONSULTS)));
  const own = readConsults(
    files.filter(({ file }) => file.startsWith(CONSULTS)),
    reading.library,
  );
  const placeOf: PlaceOf = (kind, ...where) =>
    (kind === 'consult' ? own.placeOf : reading.placeOf)(kind, ...where);
  return {
    library: reading.library,
    consults: own.consults,
    current: own.current,
    stopped: own.stopped,
    aliases: own.aliases,
    libraryProblems: reading.problems,
    consultProblems: own.problems,
    counts: { ...reading.counts, consults: own.count },
    files,
    placeOf,
    asProblem: (refusal) => problemOf(refusal, placeOf),
  };
}

/** Whether the folders still hold what was read: a build must not put an older leaflet over a newer one. */
export function isStill({ files }: Workspace, folders: Folders): boolean {
  const now = filesOf(folders);
  return (
    now.length === files.length &&
    now.every(({ file, bytes }, index) => {
      const then = files[index];
      return then?.file === file && Buffer.compare(then.bytes, bytes) === 0;
    })
  );
}

// A library without consults is a library all the same. Wherever the consults lie, their names begin with consults/.
function filesOf({ content, consults }: Folders): SourceFile[] {
  const library = readFolder(content, (file) => !file.startsWith(CONSULTS));
  const own = isFolder(consults) ? readFolder(consults, () => true) : [];
  return [...library, ...own.map((one) => ({ ...one, file: `${CONSULTS}${one.file}` }))];
}
