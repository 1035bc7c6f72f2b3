/** All files of one folder of the library. */
import { checkName, checkTwins, idOf } from './fileName.ts';
import type { FrontMatter } from './frontMatter.ts';
import { FOLDERS } from './kind.ts';
import type { Problem } from './problem.ts';
import type { ProseSection } from './prose/block.ts';
import type { FileLink } from './prose/body.ts';
import { readFile, type FileReading, type FrontValue } from './readFile.ts';
import type { SourceFile } from './source.ts';

export interface Folder<K extends keyof typeof FOLDERS> {
  /** Files whose front matter is right, by id. */
  readonly cards: readonly Card<K>[];
  /** Every file that has an id, right or wrong, by id: what may be named. */
  readonly files: ReadonlyMap<string, SourceFile>;
  readonly problems: readonly Problem[];
  /** Links of all bodies to files of the content folder. */
  readonly links: readonly FileLink[];
  readonly count: number;
}

export interface Card<K extends keyof typeof FOLDERS> {
  readonly id: string;
  readonly value: FrontValue<K>;
  readonly front: FrontMatter;
  readonly body: readonly ProseSection[];
}

/** Reads every file below the kind's folder; each is read, whatever is wrong with the others; `read`: how. */
export function readFolder<K extends keyof typeof FOLDERS>(
  files: readonly SourceFile[],
  kind: K,
  read: (file: SourceFile) => FileReading<K> = (file) => readFile(file, kind),
): Folder<K> {
  const own = files.filter(({ file }) => file.startsWith(`${FOLDERS[kind]}/`));
  const readings = own.map((file) => ({ file, reading: read(file) }));
  const named = byId(own);
  const cards = [...named].flatMap(([id, file]) => {
    const reading = readings.find((other) => other.file === file)?.reading;
    if (!reading?.value || reading.front === null) return [];
    return [{ id, value: reading.value, front: reading.front, body: reading.body }];
  });
  const problems = [
    ...own.filter(isFile).flatMap(({ file }) => checkName(file)),
    ...checkTwins(own.filter(isFile)),
    ...readings.flatMap(({ reading }) => reading.problems),
  ];
  const links = readings.flatMap(({ reading }) => reading.links);
  return { cards, files: named, problems, links, count: own.length };
}

// A link to a folder, with `/` at its end, has a Problem of its own and no name to speak of.
function isFile({ file }: SourceFile): boolean {
  return !file.endsWith('/');
}

// Of two files with one id the first counts; the second has its Problem.
function byId(files: readonly SourceFile[]): ReadonlyMap<string, SourceFile> {
  const named = new Map<string, SourceFile>();
  for (const file of files) {
    const id = idOf(file.file);
    if (id !== null && !named.has(id)) named.set(id, file);
  }
  return new Map([...named].sort(([a], [b]) => (a < b ? -1 : 1)));
}
