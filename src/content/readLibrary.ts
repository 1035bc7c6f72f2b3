/** All files of a clinic's library, read and resolved: a Library, or everything that is wrong with them. */
import { createHash } from 'node:crypto';
import { adviceCard } from './advice.ts';
import { clinicOf } from './clinic.ts';
import { readDress } from './dress.ts';
import { exerciseCard } from './exercise.ts';
import type { Extending } from './extending/extension.ts';
import { readProtocols } from './extending/readProtocols.ts';
import { checkFolders, isHidden, idOf } from './fileName.ts';
import { isPicture } from './fileSize.ts';
import { languageFile } from './inLanguage/languageFile.ts';
import { readLanguages, wordsByLanguage } from './inLanguage/readLanguages.ts';
import type { FrontMatter } from './frontMatter.ts';
import { cardWithoutHidden, hiddenProblems, protocolWithoutHidden, type Hidden } from './hidden.ts';
import { CLINIC_FILE, FOLDERS } from './kind.ts';
import { BELOW, layered, type Layered } from './layers.ts';
import type { Nameable, Library, OwnPage, LibraryFiles } from './library.ts';
import { exerciseReferences, protocolReferences, type Placed } from './libraryReferences.ts';
import { linkProblems } from './links.ts';
import { nearest } from './nearest.ts';
import { adviceWords, exerciseWords } from './ownWords.ts';
import { pictureProblems } from './pictures.ts';
import { placesIn, type PlaceOf } from './place.ts';
import { errorAt, sortProblems, type Problem } from './problem.ts';
import type { ProseSection } from './prose/block.ts';
import { protocolOf } from './protocol.ts';
import { readFile, type FileReading, type FrontValue } from './readFile.ts';
import { readFolder } from './readFolder.ts';
import { decode, type SourceFile } from './source.ts';
import { topOf } from './sourceText.ts';

export interface LibraryReading {
  /** Null as soon as there is one error. */
  readonly library: Library | null;
  /** The cards and protocols whose keys are right, whatever is wrong with the others. */
  readonly shelves: LibraryFiles;
  /** What consults may name, so that theirs is checked too when the library has an error. */
  readonly known: Nameable;
  readonly problems: readonly Problem[];
  readonly placeOf: PlaceOf;
  /** Files found of each kind, right or wrong. */
  readonly counts: { readonly exercises: number; readonly advice: number; readonly protocols: number };
  /** What was read of all folders, each id once; Problems name these files. */
  readonly files: readonly SourceFile[];
  /** What protocols change of others, by their id. */
  readonly extending: ReadonlyMap<string, Extending>;
}

/**
 * Reads `exercises/`, `advice/`, `protocols/` and `clinic.md`; other files are passed over. Of several folders, lowest
 * first, those above lie over those below.
 */
export function readLibrary(...folders: readonly (readonly SourceFile[])[]): LibraryReading {
  const layers = layered(folders.map((files) => files.filter(({ file }) => !isHidden(file))));
  const own = layers.files.toSorted((a, b) => (a.file < b.file ? -1 : 1));
  const hidden = hiddenCards(layers);
  const pictures = own.filter(({ file }) => isCardPicture(file));
  const isWords = ({ file }: SourceFile) => languageFile(file) !== null;
  const cards = own.filter((file) => !pictures.includes(file) && !isWords(file));
  const exercises = readFolder(cards, 'exercise');
  // A picture of a card that was replaced lies below unnamed, and a card with a slip may name any: nobody's fault.
  const areRead = exercises.cards.length === exercises.count;
  const uppermost = areRead ? pictures.filter((file) => folders.at(-1)?.includes(file)) : [];
  const advice = readFolder(cards, 'advice');
  const words = readLanguages(own.filter(isWords), exercises, advice);
  const { folder: protocols, extending } = readProtocols(own, layers.bases);
  const clinic = readClinic(own);
  // Pages and dress are the clinic's whose file `clinic.md` is: those of the folder below would speak of another one.
  const uppermostFiles = folders.at(-1) ?? [];
  const pages = readFolder(uppermostFiles, 'page');
  const { problems: dressProblems, ...dress } = readDress(uppermostFiles);
  const ids = [...exercises.files.keys(), ...hidden.keys()];
  const problems = sortProblems([
    ...layers.problems,
    ...[exercises, advice, protocols, clinic, pages, words].flatMap((reading) => reading.problems),
    ...dressProblems,
    ...checkFolders(own, Object.values(FOLDERS)),
    ...exerciseReferences(exercises.cards, ids),
    ...[...exercises.cards, ...words.exercises.map(({ card }) => card)].flatMap(exerciseWords),
    ...[...advice.cards, ...words.advice.map(({ card }) => card)].flatMap(adviceWords),
    ...protocols.cards.flatMap((protocol) => protocolReferences(protocol, ids)),
    ...protocols.cards.flatMap((protocol) => hiddenProblems(protocol, hidden)),
    ...pictureProblems(exercises.cards, pictures, uppermost),
    ...linkProblems(
      [exercises, advice, protocols, clinic, pages, words].flatMap(({ links }) => links),
      [exercises, advice, protocols, pages].flatMap(({ files }) =>
        [...files.values()].map(({ file }) => file),
      ),
    ),
  ]);
  const fronts = {
    exercise: frontsOf(exercises),
    advice: frontsOf(advice),
    protocol: frontsOf(protocols),
    page: frontsOf(pages),
  };
  const placeOf = placesIn(
    (kind, id) => {
      if (kind === 'clinic') return clinicFile(own);
      return (
        { exercise: exercises, advice, protocol: protocols, consult: null, page: pages }[kind]?.files.get(
          id,
        ) ?? null
      );
    },
    (kind, id) => (kind === 'clinic' || kind === 'consult' ? null : (fronts[kind].get(id) ?? null)),
  );
  const counts = { exercises: exercises.count, advice: advice.count, protocols: protocols.count };
  const files = [...own, ...layers.hidden.values(), ...layers.bases.values()];
  const shelves = {
    exercises: built(
      exercises.cards.map((card) => cardWithoutHidden(card, hidden)),
      exerciseCard,
    ),
    advice: built(advice.cards, adviceCard),
    protocols: built(
      protocols.cards.map((protocol) => protocolWithoutHidden(protocol, hidden)),
      (id, value, body) => protocolOf(id, value, body, extending.get(id) ?? null),
    ),
  };
  const ownClinic = clinic.value === null ? null : clinicOf(clinic.value, clinic.body);
  const known = {
    exercises: byId(exercises.files, shelves.exercises),
    protocols: byId(protocols.files, shelves.protocols),
    clinic: ownClinic,
  };
  const library =
    problems.length > 0 || ownClinic === null
      ? null
      : {
          ...shelves,
          inLanguage: wordsByLanguage(words, hidden),
          pages: pages.cards.map(({ id, value, body }) => ({ ...value, id, body })).sort(byPlace),
          dress,
          clinic: ownClinic,
          origins: layers.origins,
          version: versionOf([...own.filter((file) => !pictures.includes(file)), ...layers.bases.values()]),
        };
  return { library, shelves, known, problems, placeOf, counts, files, extending };
}

function byPlace(a: OwnPage, b: OwnPage): number {
  return a.order - b.order || (a.title < b.title ? -1 : 1);
}

/** What a library without a Problem is read again from, beside its files: plain data. */
export type KeptLibrary = Pick<LibraryReading, 'counts' | 'extending'> & { readonly library: Library };

/** The reading of before; `files`: the same files, in the same order. */
export function readingAgain(
  { library, counts, extending }: KeptLibrary,
  files: readonly SourceFile[],
): LibraryReading {
  const placeOf = placesIn((kind, id) => {
    if (kind === 'clinic') return clinicFile(files);
    const before = `${FOLDERS[kind]}/`;
    const isIt = ({ file }: SourceFile) =>
      file.startsWith(before) && !isCardPicture(file) && idOf(file) === id;
    return files.find(isIt) ?? null;
  });
  return { library, shelves: library, known: library, problems: [], placeOf, counts, files, extending };
}

function isCardPicture(file: string): boolean {
  return file.startsWith(`${FOLDERS.exercise}/`) && isPicture(file);
}

function hiddenCards({ hidden }: Layered): Hidden {
  const before = `${FOLDERS.exercise}/`;
  return new Map(
    [...hidden].flatMap(([key, file]) => (key.startsWith(before) ? [[key.slice(before.length), file]] : [])),
  );
}

function built<T, V>(
  cards: readonly { readonly id: string; readonly value: V; readonly body: readonly ProseSection[] }[],
  build: (id: string, value: V, body: readonly ProseSection[]) => T,
): ReadonlyMap<string, T> {
  return new Map(cards.map(({ id, value, body }) => [id, build(id, value, body)]));
}

/** Null where the file is there, but broken. */
function byId<T>(
  files: ReadonlyMap<string, SourceFile>,
  cards: ReadonlyMap<string, T>,
): ReadonlyMap<string, T | null> {
  return new Map([...files.keys()].map((id) => [id, cards.get(id) ?? null]));
}

function frontsOf(folder: { readonly cards: readonly Placed<unknown>[] }): ReadonlyMap<string, FrontMatter> {
  return new Map(folder.cards.map(({ id, front }) => [id, front]));
}

function clinicFile(files: readonly SourceFile[]): SourceFile | null {
  return files.find(({ file }) => file === CLINIC_FILE) ?? null;
}

function readClinic(files: readonly SourceFile[]): Pick<
  FileReading<'clinic'>,
  'body' | 'problems' | 'links'
> & {
  readonly value: FrontValue<'clinic'> | null;
} {
  const file = clinicFile(files);
  return file === null
    ? { value: null, body: [], problems: [noClinic(files)], links: [] }
    : readFile(file, 'clinic');
}

function noClinic(files: readonly SourceFile[]): Problem {
  const meant = nearest(
    CLINIC_FILE,
    files.map(({ file }) => file),
  );
  return errorAt(topOf(CLINIC_FILE), 'wrong-file-name', {
    found: `no ${CLINIC_FILE}`,
    expected: `there, with the clinic's name and the emergency wording`,
    fix:
      meant === null
        ? `write ${CLINIC_FILE} in the content folder; with over: shipped in it, the folder lies over the shipped library`
        : `rename ${meant} to ${CLINIC_FILE}`,
  });
}

const FOLDERS_OF_LIBRARY = [FOLDERS.exercise, FOLDERS.advice, FOLDERS.protocol] as const;

// Over the text, so that a checkout with other line ends is the same library. Noughts part names from texts.
function versionOf(files: readonly SourceFile[]): string {
  const hash = createHash('sha256');
  for (const file of files) {
    const isOurs =
      file.file === CLINIC_FILE ||
      FOLDERS_OF_LIBRARY.some((folder) => file.file.replace(BELOW, '').startsWith(`${folder}/`));
    if (isOurs) hash.update(`${file.file}\0${decode(file).source?.text ?? ''}\0`);
  }
  return hash.digest('hex').slice(0, 12);
}
