/** The command that makes one site of parts that were built apart: what a single build of everybody would have written. */
import { readFileSync } from 'node:fs';
import { join as pathOf, resolve } from 'node:path';
import { EXIT } from '../exit.ts';
import type { Flags } from '../flags.ts';
import { isFolder } from '../io/disk.ts';
import { hashOf, ISSUED, linesOf } from '../io/issued.ts';
import { locked } from '../io/lock.ts';
import { readManifest, type Written } from '../io/manifest.ts';
import type { PersonSet } from '../io/personSet.ts';
import { closePrivate, openPrivate } from '../io/privacy.ts';
import { checkPrivatePlace } from '../io/privatePlace.ts';
import { version } from '../io/assets.ts';
import { openSite, type OutFile } from '../io/site.ts';
import { Stop } from '../io/stop.ts';
import { onDay } from '../io/today.ts';
import type { Report } from '../report.ts';
import { peopleWithout, withdrawGone } from '../building/withdraw.ts';

/** Nothing is written unless every file of every part is as its build left it. Whoever is in no part has no leaflet in force. */
export async function join(flags: Flags, folders: readonly string[], report: Report): Promise<number> {
  const out = resolve(flags.out);
  const parts = folders.map((folder) => partIn(resolve(folder)));
  const shared = sharedFiles(parts);
  const people = peopleOf(parts);
  if (people.length > 0) checkPrivatePlace({ consults: resolve(folders[0] ?? ''), out });
  const outcome = await locked(out, async (hold) => {
    const site = openSite(out, { on: onDay(flags), loadleaf: version(), isHasty: false, hold });
    openPrivate(out);
    withdrawGone(
      site,
      peopleWithout(
        out,
        people.map(({ alias }) => alias),
      ),
    );
    for (const file of shared) site.write(checked(file));
    for (const person of people) site.issue(setOf(person));
    const done = site.finish();
    closePrivate(out);
    return done;
  });
  report.say(`${outcome.files.length} files of ${parts.length} parts in ${flags.out}.`);
  report.answer({ ok: true, out, files: outcome.files });
  return EXIT.good;
}

/** A file of a part that is read when its turn comes. */
interface PartFile extends Written {
  readonly place: string;
}

function partIn(folder: string): readonly PartFile[] {
  const manifest = isFolder(folder) ? readManifest(folder) : null;
  if (manifest === null)
    throw new Stop(EXIT.noSuchFile, `there is no finished site in ${folder}; build it with --part first`);
  const files = manifest.files.map((file) => ({ ...file, place: pathOf(folder, file.path) }));
  files.forEach(checked);
  return files;
}

/** The bytes of a file, which must be those that were written. */
function checked({ path, sha256, place }: PartFile): OutFile {
  const bytes = bytesAt(place);
  if (hashOf(bytes) !== sha256)
    throw new Stop(EXIT.content, `${place} is not as it was built; build that part again`);
  return { path, bytes };
}

function bytesAt(place: string): Buffer {
  try {
    return readFileSync(place);
  } catch {
    throw new Stop(EXIT.content, `${place} cannot be read; build that part again`);
  }
}

const OF_PERSON = /^private\/([^/]+)\/(.+)$/;

/** What every part has: the library's pages. Of different libraries no site can be joined. */
function sharedFiles(parts: readonly (readonly PartFile[])[]): readonly PartFile[] {
  const [first = [], ...others] = parts.map((files) => files.filter(({ path }) => !OF_PERSON.test(path)));
  const listed = (files: readonly PartFile[]) =>
    JSON.stringify(files.map(({ path, sha256 }) => [path, sha256]));
  if (others.some((files) => listed(files) !== listed(first)))
    throw new Stop(EXIT.content, 'the parts were not built from one library; build all of them again');
  return first;
}

interface Person {
  readonly alias: string;
  readonly files: readonly PartFile[];
}

function peopleOf(parts: readonly (readonly PartFile[])[]): readonly Person[] {
  const people = new Map<string, Person>();
  for (const files of parts)
    for (const [alias, own] of byAlias(files)) {
      if (people.has(alias)) throw new Stop(EXIT.content, `${alias} is in two of the parts`);
      people.set(alias, { alias, files: own });
    }
  return [...people.values()].sort((a, b) => (a.alias < b.alias ? -1 : 1));
}

function byAlias(files: readonly PartFile[]): ReadonlyMap<string, readonly PartFile[]> {
  const people = new Map<string, PartFile[]>();
  for (const file of files) {
    const [, alias] = OF_PERSON.exec(file.path) ?? [];
    if (alias !== undefined) people.set(alias, [...(people.get(alias) ?? []), file]);
  }
  return people;
}

/** One person's set, with what its part tells of its make. */
function setOf({ alias, files }: Person): PersonSet {
  const [first] = files;
  const folder = pathOf(first?.place ?? '', '..');
  const last = linesOf(bytesAt(pathOf(folder, ISSUED)).toString('utf8')).at(-1);
  if (last === undefined || last.event === 'withdrawn' || last.mark === null || last.library === null)
    throw new Stop(
      EXIT.content,
      `the list of ${alias} does not tell what is in force; build that part again`,
    );
  const { revision, mark, loadleaf, library } = last;
  return {
    alias,
    revision,
    mark,
    loadleaf,
    library,
    files: files.map((file) => ({ name: file.path.replace(OF_PERSON, '$2'), bytes: checked(file).bytes })),
  };
}
