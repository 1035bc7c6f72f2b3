/** The consult files of a clinic, read and checked against its library. */
import { consultId, consultOf } from './consult.ts';
import { consultReferences } from './consultReferences.ts';
import { isHidden, nameOf } from './fileName.ts';
import type { FrontMatter } from './frontMatter.ts';
import { FOLDERS } from './kind.ts';
import type { Consult, Known } from './library.ts';
import { placeOfValue } from './locate.ts';
import { valueAt } from './path.ts';
import { placesIn, type PlaceOf } from './place.ts';
import { errorAt, sortProblems, type Place, type Problem } from './problem.ts';
import { readFile } from './readFile.ts';
import { readScreen, type ScreenPart } from './readScreen.ts';
import { consultSchema } from './schema/consult.ts';
import { ID_PATTERN } from './schema/words.ts';
import type { SourceFile } from './source.ts';
import { topOf } from './sourceText.ts';

export interface ConsultsReading {
  /** Every revision without a Problem, by alias, then by revision. */
  readonly consults: readonly Consult[];
  /** Of each alias the highest revision, unless that one, or one that may be higher, has a Problem. */
  readonly current: readonly Consult[];
  /** Aliases whose programme must not be written because of a Problem. */
  readonly stopped: readonly string[];
  /** Of each stopped alias what the files that stop it say of the screen; null where one does not let it be read. */
  readonly stoppedScreens: ReadonlyMap<string, readonly (ScreenPart | null)[]>;
  /** Whose each file is, right or wrong, as far as that can be told: alias by file. */
  readonly aliases: ReadonlyMap<string, string>;
  readonly problems: readonly Problem[];
  /** A consult goes by its id `alias-r2`, or by its alias for the highest revision. */
  readonly placeOf: PlaceOf;
  readonly count: number;
}

/**
 * Reads the `.md` files below `consults/`; the keys in a file decide whose it is, not its name. `known`: the library, or
 * what is known of one with an error.
 */
export function readConsults(files: readonly SourceFile[], known: Known): ConsultsReading {
  const inFolder = files.filter(({ file }) => file.startsWith(`${FOLDERS.consult}/`) && !isHidden(file));
  const own = inFolder
    .filter(({ file }) => file.endsWith('.md'))
    .toSorted((a, b) => (a.file < b.file ? -1 : 1));
  const sheets = withoutTwins(own.map((file) => sheetOf(file, known)));
  const consults = sheets.flatMap(({ consult }) => (consult === null ? [] : [consult])).toSorted(byRevision);
  const aliases = [...new Set(sheets.map(({ alias }) => alias))].sort();
  const stopped = aliases.filter((alias) => isStopped(sheets.filter((sheet) => sheet.alias === alias)));
  return {
    consults,
    current: consults.filter(
      ({ alias }, index) => !stopped.includes(alias) && consults[index + 1]?.alias !== alias,
    ),
    stopped,
    stoppedScreens: new Map(
      stopped.map((alias) => [
        alias,
        stopping(sheets.filter((sheet) => sheet.alias === alias)).map(({ screen }) => screen),
      ]),
    ),
    aliases: new Map(sheets.map(({ file, alias }) => [file.file, alias])),
    problems: sortProblems([...misnamed(inFolder), ...sheets.flatMap(({ problems }) => problems)]),
    placeOf: placesIn((kind, id) => (kind === 'consult' ? fileOf(sheets, id) : null)),
    count: own.length,
  };
}

/** One file with the alias and revision it is for, as far as they can be told. */
interface Sheet {
  readonly file: SourceFile;
  readonly alias: string;
  readonly revision: number | null;
  readonly consult: Consult | null;
  /** What can be read of its screen, whatever else is wrong with the file. */
  readonly screen: ScreenPart | null;
  /** Of its revision, or of its top. The head itself is not kept: of hundreds of consults it would fill the memory. */
  readonly place: Place;
  readonly problems: readonly Problem[];
}

function sheetOf(file: SourceFile, known: Known): Sheet {
  const { value, body, front, problems: own } = readFile(file, 'consult');
  const references = value && front ? consultReferences(front, value, known) : [];
  const problems = [...own, ...references];
  const consult = value !== null && problems.length === 0 ? consultOf(value, body) : null;
  const place = front === null ? topOf(file.file) : placeOfValue(front, ['revision']);
  const { alias, revision } = whose(file.file, front);
  const screen = readScreen(revision === null ? alias : consultId(alias, revision), front);
  return { file, alias, revision, consult, screen, place, problems };
}

// Of a broken file the keys still say whose it is, where they can be read; else the name must do.
function whose(file: string, front: FrontMatter | null): { alias: string; revision: number | null } {
  const [, nameAlias, nameRevision] = /^(.*)-r(\d+)\.md$/.exec(nameOf(file)) ?? [];
  const alias = valueAt(front?.value, ['alias']);
  const revision = consultSchema.shape.revision.safeParse(valueAt(front?.value, ['revision']));
  return {
    alias:
      typeof alias === 'string' && ID_PATTERN.test(alias)
        ? alias
        : (nameAlias ?? nameOf(file).replace(/\.md$/, '')),
    revision: revision.success ? revision.data : nameRevision === undefined ? null : Number(nameRevision),
  };
}

// Which of two files with one alias and revision is the right one, nobody can tell: neither is used.
function withoutTwins(sheets: readonly Sheet[]): readonly Sheet[] {
  return sheets.map((sheet, index) => {
    const twins = sheets.filter((other) => other !== sheet && isTwin(other, sheet));
    const [first] = twins;
    if (first === undefined) return sheet;
    const later = sheets.indexOf(first) < index;
    return {
      ...sheet,
      consult: null,
      problems: later ? [...sheet.problems, twinProblem(sheet, first)] : sheet.problems,
    };
  });
}

function isTwin(a: Sheet, b: Sheet): boolean {
  return a.alias === b.alias && a.revision !== null && a.revision === b.revision;
}

function twinProblem({ place, alias, revision }: Sheet, first: Sheet): Problem {
  return errorAt(place, 'duplicate-id', {
    path: 'revision',
    found: `${revision} of ${alias} again, after ${first.file.file}`,
    expected: 'the only one of its alias',
    fix: 'give the newer file the next revision',
  });
}

function isStopped(sheets: readonly Sheet[]): boolean {
  return stopping(sheets).length > 0;
}

// An older leaflet must not go out because the newest file could not be read.
function stopping(sheets: readonly Sheet[]): readonly Sheet[] {
  const good = Math.max(0, ...sheets.flatMap(({ consult }) => consult?.revision ?? []));
  return sheets.filter(
    ({ consult, revision }) => consult === null && (revision === null || revision >= good),
  );
}

function byRevision(a: Consult, b: Consult): number {
  return a.alias === b.alias ? a.revision - b.revision : a.alias < b.alias ? -1 : 1;
}

function fileOf(sheets: readonly Sheet[], id: string): SourceFile | null {
  const exact = sheets.find(({ alias, revision }) => revision !== null && consultId(alias, revision) === id);
  const newest = sheets
    .filter(({ alias }) => alias === id)
    .toSorted((a, b) => (b.revision ?? 0) - (a.revision ?? 0))[0];
  return (exact ?? newest)?.file ?? null;
}

// A consult saved as text would be left out without a word.
function misnamed(files: readonly SourceFile[]): Problem[] {
  return files.flatMap(({ file }) => {
    const name = nameOf(file);
    if (name.endsWith('.md') || !/-r\d+\.|\.md\b/i.test(name)) return [];
    return [
      errorAt(topOf(file), 'wrong-file-name', {
        found: `a file called ${name}`,
        expected: 'called by alias and revision, ending in .md',
        fix: `rename it to ${name.replace(/\..*$/, '')}.md`,
      }),
    ];
  });
}
