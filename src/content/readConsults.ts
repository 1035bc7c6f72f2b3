/** The consult files of a clinic, read and checked against its library. */
import { answersYes } from './answersYes.ts';
import { consultId, consultOf } from './consult.ts';
import { consultReferences } from './consultReferences.ts';
import { isHidden, nameOf } from './fileName.ts';
import { splitFile, type FrontMatter } from './frontMatter.ts';
import { isDraft, type Draft } from './draft.ts';
import { FOLDERS } from './kind.ts';
import type { Consult, Nameable } from './library.ts';
import { placeOfValue } from './locate.ts';
import { valueAt } from './path.ts';
import { logOfName } from './log/readLog.ts';
import { placesIn, type PlaceOf } from './place.ts';
import { plausibilityProblems } from './plausible/problems.ts';
import { errorAt, sortProblems, type Place, type Problem } from './problem.ts';
import { readFile } from './readFile.ts';
import { readScreen, screenPart, type Said, type ScreenPart } from './readScreen.ts';
import { consultSchema, type ConsultFrontMatter } from './schema/consult.ts';
import { ID_PATTERN } from './schema/words.ts';
import { decode, type SourceFile } from './source.ts';
import { topOf } from './sourceText.ts';

export interface ConsultsReading {
  /** Every revision without a Problem, by alias, then by revision; no drafts. */
  readonly consults: readonly Consult[];
  /** Of each alias the highest revision, unless that one, or one that may be higher, has a Problem. */
  readonly current: readonly Consult[];
  /** Aliases whose programme must not be written because of a Problem. */
  readonly stopped: readonly string[];
  /** Of each stopped alias what the files that stop it say of the screen; null where one does not let it be read. */
  readonly stoppedScreens: ReadonlyMap<string, readonly (ScreenPart | null)[]>;
  /** Stopped aliases of which a file that stops them says `withdraw: yes`, whatever else is wrong with it. */
  readonly stoppedWithdrawn: readonly string[];
  /** Whose each file is, right or wrong, as far as that can be told: alias by file. */
  readonly aliases: ReadonlyMap<string, string>;
  /** Files that say `draft: yes`: they stop nothing and displace nothing. */
  readonly drafts: readonly Draft[];
  /** Files that stand but whose screen cannot be read as keys; what its lines say holds all the same. */
  readonly unreadable: readonly Draft[];
  /** Of every file but the drafts. */
  readonly problems: readonly Problem[];
  readonly draftProblems: readonly Problem[];
  /** A consult goes by its id `alias-r2`, or by its alias for the highest revision. */
  readonly placeOf: PlaceOf;
  readonly count: number;
}

/**
 * Reads the `.md` files below `consults/`; the keys in a file decide whose it is, not its name. `known`: the library, or
 * what is known of one with an error.
 */
export function readConsults(files: readonly SourceFile[], known: Nameable): ConsultsReading {
  const inFolder = files.filter(({ file }) => file.startsWith(`${FOLDERS.consult}/`) && !isHidden(file));
  const own = inFolder
    .filter(({ file }) => file.endsWith('.md'))
    .toSorted((a, b) => (a.file < b.file ? -1 : 1));
  const sheets = plausible(withoutTwins(own.map((file) => sheetOf(file, known))), known);
  const drafts = sheets.filter((sheet) => sheet.isDraft);
  const standing = sheets.filter((sheet) => !sheet.isDraft);
  const consults = standing
    .flatMap(({ consult }) => (consult === null ? [] : [consult]))
    .toSorted(byRevision);
  const aliases = [...new Set(standing.map(({ alias }) => alias))].sort();
  const stopped = aliases.filter((alias) => isStopped(standing.filter((sheet) => sheet.alias === alias)));
  return {
    consults,
    current: consults.filter(
      ({ alias }, index) => !stopped.includes(alias) && consults[index + 1]?.alias !== alias,
    ),
    stopped,
    stoppedScreens: new Map(
      stopped.map((alias) => [
        alias,
        stopping(standing.filter((sheet) => sheet.alias === alias)).map(({ screen }) => screen),
      ]),
    ),
    stoppedWithdrawn: stopped.filter((alias) =>
      stopping(standing.filter((sheet) => sheet.alias === alias)).some(({ withdraws }) => withdraws),
    ),
    aliases: new Map(sheets.map(({ file, alias }) => [file.file, alias])),
    drafts: drafts.map(unfinished),
    unreadable: standing.filter(({ screen }) => screen === null).map(unfinished),
    problems: sortProblems([...misnamed(inFolder), ...standing.flatMap(({ problems }) => problems)]),
    draftProblems: sortProblems(drafts.flatMap(({ problems }) => problems)),
    placeOf: placesIn((kind, id) => (kind === 'consult' ? fileOf(sheets, id) : null)),
    count: own.length,
  };
}

/** One file with the alias and revision it is for, as far as they can be told. */
interface Sheet {
  readonly file: SourceFile;
  readonly alias: string;
  readonly revision: number | null;
  /** Its keys, where they are what a consult asks for. */
  readonly keys: ConsultFrontMatter | null;
  /** Null where there is any Problem. */
  readonly consult: Consult | null;
  /** What can be read of its screen, whatever else is wrong with the file. */
  readonly screen: ScreenPart | null;
  readonly isDraft: boolean;
  readonly withdraws: boolean;
  readonly said: Said;
  /** Of its revision, or of its top. The head itself is not kept: of hundreds of consults it would fill the memory. */
  readonly place: Place;
  readonly problems: readonly Problem[];
}

function sheetOf(file: SourceFile, known: Nameable): Sheet {
  const { value, body, front, problems: own } = readFile(file, 'consult');
  const references = value && front ? consultReferences(front, value, known) : [];
  const problems = [...own, ...references];
  const consult = value !== null && problems.length === 0 ? consultOf(value, body) : null;
  const place = front === null ? topOf(file.file) : placeOfValue(front, ['revision']);
  const { alias, revision } = whose(file.file, front);
  const said = readScreen(file, front);
  const screen = screenPart(revision === null ? alias : consultId(alias, revision), said);
  return {
    file,
    alias,
    revision,
    keys: value,
    consult,
    screen,
    isDraft: isDraft(file, front),
    withdraws: answersYes(file, front, 'withdraw'),
    said,
    place,
    problems,
  };
}

function unfinished({ alias, revision, file, consult, said }: Sheet): Draft {
  return { alias, revision, file: file.file, consult, said };
}

/** The sheets without those that hold something implausible, be it against the revision before. */
function plausible(sheets: readonly Sheet[], known: Nameable): readonly Sheet[] {
  return sheets.map((sheet) => {
    if (sheet.keys === null) return sheet;
    const doubts = doubtsOf(sheet.file, sheet.keys, lastBefore(sheet, sheets)?.keys ?? null, known);
    return doubts.length === 0
      ? sheet
      : { ...sheet, consult: null, problems: [...sheet.problems, ...doubts] };
  });
}

function doubtsOf(
  file: SourceFile,
  keys: ConsultFrontMatter,
  last: ConsultFrontMatter | null,
  known: Nameable,
): Problem[] {
  return plausibilityProblems(() => readFile(file, 'consult').front, keys, last, known);
}

/** The newest revision before this one whose keys can be read; a draft is nothing to compare with. */
function lastBefore({ alias, revision }: Sheet, sheets: readonly Sheet[]): Sheet | undefined {
  return sheets
    .filter(
      (one) =>
        one.alias === alias && !one.isDraft && one.keys !== null && one.keys.revision < (revision ?? 0),
    )
    .toSorted((a, b) => (b.revision ?? 0) - (a.revision ?? 0))[0];
}

/** Whose a consult file is, right or wrong, as `readConsults` would say. */
export function aliasOf(file: SourceFile): string {
  const { source } = decode(file);
  return whose(file.file, source === null ? null : splitFile(source).front).alias;
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

// Which of two files with one alias and revision is the right one, nobody can tell: neither is used. A draft beside a
// file that stands displaces nothing, so it alone is wrong.
function withoutTwins(sheets: readonly Sheet[]): readonly Sheet[] {
  return sheets.map((sheet, index) => {
    const twins = sheets.filter((other) => other !== sheet && isTwin(other, sheet));
    const standing = twins.filter((twin) => !twin.isDraft);
    const [first] = !sheet.isDraft ? standing : [...standing, ...twins];
    if (first === undefined) return sheet;
    const later = sheets.indexOf(first) < index || (sheet.isDraft && !first.isDraft);
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
    if (name.endsWith('.md') || logOfName(file) !== null || !/-r\d+\.|\.md\b/i.test(name)) return [];
    if (/\.(log|csv)\b/i.test(name)) return [misnamedLog(file)];
    return [
      errorAt(topOf(file), 'wrong-file-name', {
        found: `a file called ${name}`,
        expected: 'called by alias and revision, ending in .md',
        fix: `rename it to ${name.replace(/\..*$/, '')}.md`,
      }),
    ];
  });
}

function misnamedLog(file: string): Problem {
  return errorAt(topOf(file), 'wrong-file-name', {
    found: `a file called ${nameOf(file)}`,
    expected: 'called by alias and revision, ending in .log.csv',
    fix: `rename it to ${nameOf(file).replace(/\..*$/, '').toLowerCase()}.log.csv`,
  });
}
