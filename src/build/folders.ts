/** Where a command reads and writes, and the walls between a library, real patients and the output. */
import { existsSync, realpathSync } from 'node:fs';
import { dirname, join, resolve, sep } from 'node:path';
import { EXIT } from './exit.ts';
import { Stop } from './fault.ts';
import type { Flags } from './flags.ts';
import { isFolder } from './folder.ts';

export interface Folders {
  readonly content: string;
  readonly consults: string;
  readonly out: string;
}

/** The folders of a command; stops with 66 where one is missing, with 64 where patients would end up in a repository. */
export function foldersOf(flags: Flags): Folders {
  const content = resolve(flags.content);
  if (!isFolder(content))
    throw new Stop(
      EXIT.noSuchFile,
      `there is no folder ${flags.content}; name the library folder with --content`,
    );
  const consults = flags.consults === undefined ? join(content, 'consults') : resolve(flags.consults);
  if (flags.consults !== undefined && !isFolder(consults))
    throw new Stop(EXIT.noSuchFile, `there is no folder ${flags.consults}`);
  const out = resolve(flags.out);
  if (contains(content, out) || contains(consults, out)) {
    throw new Stop(EXIT.usage, `--out ${flags.out} lies inside a folder of content; choose another place`);
  }
  keepPatientsApart(content, consults, out);
  return { content, consults, out };
}

// Consults outside the library's repository are real people: their leaflets must not land in it and be committed.
function keepPatientsApart(content: string, consults: string, out: string): void {
  const repository = repositoryOf(content);
  if (repository === null || contains(repository, real(consults)) || !contains(repository, real(out))) return;
  throw new Stop(
    EXIT.usage,
    `the consults lie outside the repository ${repository}, so --out must lie outside it too: their leaflets are private`,
  );
}

function repositoryOf(folder: string): string | null {
  for (let at = real(folder); ; at = dirname(at)) {
    if (existsSync(join(at, '.git')) || existsSync(join(at, 'package.json'))) return at;
    if (at === dirname(at)) return null;
  }
}

/** The real path of a folder, or of its nearest ancestor that is there. */
function real(path: string): string {
  if (existsSync(path)) return realpathSync(path);
  const parent = dirname(path);
  return parent === path ? path : join(real(parent), path.slice(parent.length));
}

function contains(outer: string, inner: string): boolean {
  return inner === outer || inner.startsWith(outer.endsWith(sep) ? outer : outer + sep);
}
