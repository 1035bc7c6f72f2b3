/** The shipped library, and programmes made from consult texts without the shell. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { Consult, Library } from '../../src/content/library.ts';
import { problemOf } from '../../src/content/place.ts';
import { lineFinder, problemText } from '../../src/content/problemText.ts';
import { readLogs } from '../../src/content/log/readLogs.ts';
import { readConsults } from '../../src/content/readConsults.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import type { SourceFile } from '../../src/content/source.ts';
import { assembleProgramme, type Workshop } from '../../src/programme/assemble.ts';
import type { Messages } from '../../src/messages/messages.ts';
import type { Programme } from '../../src/programme/programme.ts';

/** Markdown files and logs below a folder, named from it; none of `except`. */
export function filesBelow(folder: string, except?: string): SourceFile[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(md|log\.csv)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort()
    .map((path) => ({
      file: relative(folder, path).replaceAll('\\', '/'),
      bytes: readFileSync(path),
      link: 'no' as const,
    }))
    .filter(({ file }) => except === undefined || !file.startsWith(except));
}

export const shipped: Library = libraryOf();

function libraryOf(...over: readonly (readonly SourceFile[])[]): Library {
  const { library, problems } = readLibrary(filesBelow('content', 'consults/'), ...over);
  if (library === null) throw new Error(problems.map((one) => JSON.stringify(one)).join('\n'));
  return library;
}

/** One for all tests of a file, so that each body is asked about once. */
export const workshop: Workshop = { library: shipped, models: new Map(), loadleaf: '0' };

/** The same with a layer over the shipped library. */
export function workshopOver(layer: readonly SourceFile[]): Workshop {
  return { library: libraryOf(layer), models: new Map(), loadleaf: '0' };
}

export type Made = { readonly programme: Programme } | { readonly printed: string };

/** The programme of the highest revision, made after those before it; or everything that is printed instead. */
export function make(files: readonly SourceFile[], over: Workshop = workshop, say?: Messages): Made {
  const consultFiles = files.map((one) => ({ ...one, file: `consults/${one.file}` }));
  const { consults, current, problems, placeOf } = readConsults(consultFiles, over.library);
  const lineOf = lineFinder(consultFiles);
  const print = (found: typeof problems) => ({
    printed: found.map((one) => problemText(one, lineOf(one.file, one.line))).join('\n\n'),
  });
  const [now] = current;
  if (problems.length > 0 || now === undefined) return print(problems);
  const { logs } = readLogs(consultFiles, { ...over.library, clinic: null }, new Set([now.alias]));
  const before = consults.filter(({ revision }) => revision < now.revision).at(-1);
  const previous = before === undefined ? null : programmeOf(before, over, say);
  const log = before === undefined ? undefined : logs.get(before.id);
  const made = assembleProgramme(
    now,
    previous,
    over,
    before === undefined || log === undefined ? null : { consult: before, log },
    say,
  );
  return 'refusals' in made ? print(made.refusals.map((one) => problemOf(one, placeOf))) : made;
}

/** The programme of a consult; throws what stands against it. */
export function programmeOf(consult: Consult, over: Workshop = workshop, say?: Messages): Programme {
  const made = assembleProgramme(consult, null, over, null, say);
  if ('refusals' in made) throw new Error(JSON.stringify(made.refusals));
  return made.programme;
}

/** The codes of what stands against a consult; empty when it becomes a programme. */
export function refusalsOf(consult: Consult): string[] {
  const made = assembleProgramme(consult, null, workshop);
  return 'refusals' in made ? made.refusals.map(({ code, path }) => `${code} ${path.join('.')}`) : [];
}
