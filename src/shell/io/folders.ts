/** Where a command reads and writes, and the walls between a library, real patients and the output. */
import { existsSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { contains, isFolder, realPath } from './disk.ts';
import { EXIT } from '../exit.ts';
import { Stop } from './stop.ts';
import type { Flags } from '../flags.ts';

export interface Folders {
  readonly content: string;
  readonly consults: string;
  readonly out: string;
}

/** What is read, for commands that write nothing into the site. Stops with 66 where a folder is missing. */
export function sourceFolders({
  content,
  consults,
}: Pick<Flags, 'content' | 'consults'>): Pick<Folders, 'content' | 'consults'> {
  return {
    content: contentFolder(content),
    consults: consults === null ? join(resolve(content), 'consults') : thatIsThere(consults, '--consults'),
  };
}

/** Stops with 66 where a folder is missing, with 64 where patients would end up in a repository. */
export function foldersOf(flags: Pick<Flags, 'content' | 'consults' | 'out'>): Folders {
  const folders = { ...sourceFolders(flags), out: resolve(flags.out) };
  for (const read of [folders.content, folders.consults]) {
    if (contains(realPath(read), realPath(folders.out)))
      throw new Stop(
        EXIT.usage,
        `--out ${flags.out} lies inside a folder that is read; choose another place`,
      );
  }
  if (flags.consults !== null) keepPatientsApart(folders.consults, folders.out);
  return folders;
}

/** The library folder alone, for commands that read no consult. */
export function contentFolder(content: string): string {
  return thatIsThere(content, '--content');
}

function thatIsThere(folder: string, option: string): string {
  const path = resolve(folder);
  if (!isFolder(path))
    throw new Stop(EXIT.noSuchFile, `there is no folder ${folder}; name it with ${option}`);
  return path;
}

// Consults named apart are real people: their leaflets must not land in a repository that the consults are not in.
function keepPatientsApart(consults: string, out: string): void {
  const repository = repositoryAround(realPath(out));
  if (repository === null || contains(repository, realPath(consults))) return;
  throw new Stop(
    EXIT.usage,
    `the consults lie outside the repository ${repository}, so --out must lie outside it too: their leaflets are private`,
  );
}

/** The nearest folder above that holds `.git`, else one that holds a package; null when there is none. */
function repositoryAround(path: string): string | null {
  return nearestWith(path, '.git') ?? nearestWith(path, 'package.json');
}

function nearestWith(path: string, name: string): string | null {
  for (let at = path; ; at = dirname(at)) {
    if (existsSync(join(at, name))) return at;
    if (at === dirname(at)) return null;
  }
}
