/** File names: the id of a card is the name of its file. */
import { nearest } from './nearest.ts';
import { errorAt, type Problem } from './problem.ts';
import { ID_PATTERN, isDeviceName } from './schema/words.ts';
import type { SourceFile } from './source.ts';
import { topOf } from './sourceText.ts';

/** The id a file's name gives, or null when the name gives none. @example idOf('exercises/bridge.md') // => 'bridge' */
export function idOf(file: string): string | null {
  const stem = /^(.*)\.md$/.exec(nameOf(file))?.[1] ?? '';
  return ID_PATTERN.test(stem) ? stem : null;
}

/** The last part of the way to a file. */
export function nameOf(file: string): string {
  return file.slice(file.lastIndexOf('/') + 1);
}

/** Files and folders that systems and editors put beside an author's own begin with a dot. */
export function isHidden(file: string): boolean {
  return file.split('/').some((step) => step.startsWith('.'));
}

/** A Problem when the name gives no id. */
export function checkName(file: string): Problem[] {
  if (idOf(file) !== null) return [];
  const name = nameOf(file);
  const slug = name
    .replace(/\.[^.]*$/, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return [
    errorAt(topOf(file), 'wrong-file-name', {
      found: `a file called ${name}`,
      expected: isDeviceName(slug)
        ? `called by another id: ${slug} is a device on Windows`
        : 'called by an id and .md: small letters, digits and hyphens, at most 64',
      fix: ID_PATTERN.test(slug) ? `rename it to ${slug}.md` : 'rename it, or move it out of this folder',
    }),
  ];
}

/** A Problem for every file that has the id of one before it, in whatever folder and whatever case. */
export function checkTwins(files: readonly SourceFile[]): Problem[] {
  const first = new Map<string, string>();
  return files.flatMap(({ file }) => {
    const id = nameOf(file).toLowerCase();
    const twin = first.get(id);
    if (twin === undefined) first.set(id, file);
    return twin === undefined ? [] : [sameId(file, twin)];
  });
}

/** A Problem for every file that seems meant for one of the folders, but stands in another that is hardly misspelt. */
export function checkFolders(files: readonly SourceFile[], folders: readonly string[]): Problem[] {
  return files.flatMap(({ file }) => {
    const [folder = '', ...rest] = file.split('/');
    if (rest.length === 0 || folders.includes(folder) || !file.endsWith('.md')) return [];
    const meant = nearest(folder, folders);
    return meant === null ? [] : [wrongFolder(file, folder, meant)];
  });
}

function sameId(file: string, twin: string): Problem {
  return errorAt(topOf(file), 'duplicate-id', {
    found: `the id of ${twin} again`,
    expected: 'the only file of its id, in whatever folder and case',
    fix: 'give one of the two files another name',
  });
}

function wrongFolder(file: string, folder: string, meant: string): Problem {
  return errorAt(topOf(file), 'wrong-file-name', {
    found: `a folder called ${folder}`,
    expected: `called ${meant}`,
    fix: `rename the folder to ${meant}`,
  });
}
