/**
 * Folders of content laid one over the other: a clinic's own over the shipped library. A file whose name gives the id
 * of one below takes its place, a file of another id is added, and one whose only key is `hide` takes the one below away.
 */
import { idOf } from './fileName.ts';
import { splitFile, type FrontMatter } from './frontMatter.ts';
import { CLINIC_FILE, FOLDERS } from './kind.ts';
import { placeOfValue, writtenAt } from './locate.ts';
import { languageFile } from './inLanguage/languageFile.ts';
import { saysExtends } from './extending/saysExtends.ts';
import { nearest } from './nearest.ts';
import { errorAt, type Problem } from './problem.ts';
import { yesNo } from './schema/words.ts';
import { decode, type SourceFile } from './source.ts';

/** How a file of an upper folder stands to those below it. */
export type Origin = 'added' | 'replaced' | 'changed';

export interface Layered {
  /** What is left to be read, each id once. */
  readonly files: readonly SourceFile[];
  /** By folder and id, for example `exercises/hip-hinge`; nothing for what stands in the lowest folder. */
  readonly origins: ReadonlyMap<string, Origin>;
  /** The file that hides, by folder and id of what it hides. */
  readonly hidden: ReadonlyMap<string, SourceFile>;
  /** The protocol below, by the file that changes it and has its name; the names of these begin with `below/`. */
  readonly bases: ReadonlyMap<SourceFile, SourceFile>;
  readonly problems: readonly Problem[];
}

/** Lowest folder first. One folder alone stays as it is, and may hide nothing. */
export function layered(layers: readonly (readonly SourceFile[])[]): Layered {
  const start: Layered = { files: [], origins: new Map(), hidden: new Map(), bases: new Map(), problems: [] };
  return layers.reduce((below, layer, index) => laidOver(below, layer, index > 0), start);
}

/** Where a file stands as others see it: folder and id, or its whole name when it has none. */
export function keyOf(file: string): string {
  const folder = file.slice(0, file.indexOf('/'));
  const isOurs = (Object.values(FOLDERS) as string[]).includes(folder);
  // Letter case makes no other card: such twins are refused within one folder, too.
  const id = isOurs ? idOf(file.toLowerCase()) : null;
  return id === null ? file : `${folder}/${id}`;
}

function laidOver(below: Layered, layer: readonly SourceFile[], isUpper: boolean): Layered {
  const hiders = layer.flatMap((file) => hiderOf(file) ?? []);
  const standing = layer.filter((file) => !hiders.some((hider) => hider.file === file));
  const under = new Set(below.files.map(({ file }) => keyOf(file)));
  const over = new Set(layer.map(({ file }) => keyOf(file)));
  const hidden = new Map(below.hidden);
  const origins = new Map(below.origins);
  const bases = new Map(below.bases);
  for (const key of over) origins.delete(key);
  for (const { file } of hiders) hidden.set(keyOf(file.file), file);
  for (const file of standing) {
    const key = keyOf(file.file);
    const base = extendsSame(file) ? below.files.find((one) => keyOf(one.file) === key) : undefined;
    if (base !== undefined) bases.set(file, renamed(base, bases));
    if (isUpper) origins.set(key, originOf(base, under.has(key) || hidden.has(key)));
    hidden.delete(key);
  }
  return {
    files: [...below.files.filter(({ file }) => !isUnder(file, over)), ...standing],
    origins,
    hidden,
    bases,
    problems: [...below.problems, ...hiders.flatMap((hider) => hideProblems(hider, [...under]))],
  };
}

/** Whether a file, or the card whose words it has in another language, is replaced, changed or hidden. */
function isUnder(file: string, over: ReadonlySet<string>): boolean {
  const base = languageFile(file)?.base;
  return over.has(keyOf(file)) || (base !== undefined && over.has(keyOf(base)));
}

/** Before the name of a file that is there only for the one above it. */
export const BELOW = 'below/';

function originOf(base: SourceFile | undefined, isOver: boolean): Origin {
  if (base !== undefined) return 'changed';
  return isOver ? 'replaced' : 'added';
}

function extendsSame(file: SourceFile): boolean {
  return file.file.startsWith(`${FOLDERS.protocol}/`) && saysExtends(file) === idOf(file.file);
}

// What it lay over itself stays with it under its new name.
function renamed(base: SourceFile, bases: Map<SourceFile, SourceFile>): SourceFile {
  const file = { ...base, file: `${BELOW}${base.file}` };
  const lower = bases.get(base);
  if (lower !== undefined) bases.set(file, lower);
  return file;
}

interface Hider {
  readonly file: SourceFile;
  readonly front: FrontMatter;
}

const SAYS_HIDE = /^["']?hide["']?[ \t]*:/m;

/** A card's file whose head says `hide`; null for every other file, broken ones too. */
function hiderOf(file: SourceFile): Hider | null {
  if (keyOf(file.file) === file.file && file.file !== CLINIC_FILE) return null;
  if (!SAYS_HIDE.test(new TextDecoder().decode(file.bytes))) return null;
  const { source } = decode(file);
  const front = source === null ? null : splitFile(source).front;
  return front !== null && isKeys(front.value) && Object.hasOwn(front.value, 'hide') ? { file, front } : null;
}

function hideProblems({ file: { file }, front }: Hider, under: readonly string[]): Problem[] {
  const place = placeOfValue(front, ['hide']);
  const keys = isKeys(front.value) ? front.value : {};
  const wrong = (found: string, expected: string, fix: string) => [
    errorAt(place, 'does-not-fit', { path: 'hide', found, expected, fix }),
  ];
  const beside = Object.keys(keys).filter((key) => key !== 'hide');
  if (beside.length > 0)
    return wrong(
      `beside ${beside.join(', ')}`,
      'the only key of its file',
      'take the other keys out to hide the file below, or take hide out to replace it',
    );
  if (yesNo.safeParse(keys['hide']).data !== true)
    return wrong(writtenAt(front, ['hide']), 'yes', 'write hide: yes, or delete this file');
  return under.includes(keyOf(file)) && file !== CLINIC_FILE ? [] : nothingBelow(file, wrong, under);
}

function nothingBelow(
  file: string,
  wrong: (found: string, expected: string, fix: string) => Problem[],
  under: readonly string[],
): Problem[] {
  const folder = file.slice(0, file.indexOf('/') + 1);
  const meant = nearest(
    keyOf(file),
    under.filter((key) => key.startsWith(folder)),
  );
  return wrong(
    'in a file with nothing of its name below',
    'in a file named like a card, protocol or advice card of the library below',
    meant === null ? 'delete this file' : `rename it to ${meant}.md, or delete it`,
  );
}

function isKeys(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
