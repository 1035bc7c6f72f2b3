/** What of a site stands already, by the hash of what it was made from: those persons' files are neither read nor made again. */
import { nameOf } from '../../content/fileName.ts';
import type { Flags } from '../flags.ts';
import { isFolder } from './disk.ts';
import { engineHash } from './engine.ts';
import { keyOf, type Finished, type FinishedLibrary, type Ledger, type ReadConsult } from './ledger.ts';
import { peopleWith } from './people.ts';
import { isConsult, libraryHash, readConsult, type Sources } from './sources.ts';

export interface Reuse {
  /** Of the library with all that decides about bytes beside it. */
  readonly libraryKey: string;
  /** Its pages, made from just that by a build of the whole site; null where there are none. */
  readonly library: FinishedLibrary | null;
  /** By file, what was read of every consult. */
  readonly reads: ReadonlyMap<string, ReadConsult>;
  /** What a person's set would be made from now: key by alias. */
  readonly keys: ReadonlyMap<string, string>;
  /** Of those asked for, whose set was made from just that. */
  readonly finished: ReadonlyMap<string, Finished>;
  /** Consult files that need not be looked into. */
  readonly leftOut: ReadonlySet<string>;
}

export interface Ask {
  /** None for the whole site. */
  readonly aliases: readonly string[];
  /** Persons, and '' for the library, whose files do not stand as the ledger says. */
  readonly distrusted: ReadonlySet<string>;
  readonly flags: Flags;
}

/** Those that decide where to read and write or how it is told, but not about the bytes of an output. */
const BESIDE_BYTES: readonly (keyof Flags)[] = [
  'content',
  'consults',
  'out',
  'on',
  'json',
  'quiet',
  'color',
  'port',
  'part',
  'verify',
];

export function reuseOf(out: string, sources: Sources, ledger: Ledger, ask: Ask): Reuse {
  const { aliases, distrusted, flags } = ask;
  const libraryKey = keyOf(engineHash(), flagsText(flags), libraryHash(sources));
  const looks = sources.consults.filter(isConsult);
  const reads = new Map(looks.map((look) => [look.file, readConsult(look, ledger, flags.verify)]));
  const files = filesByAlias(reads);
  const keys = new Map([...files].map(([alias, own]) => [alias, personKey(libraryKey, own, reads)]));
  const isAsked = (alias: string) => aliases.length === 0 || aliases.includes(alias);
  const isFinished = (alias: string) =>
    !distrusted.has(alias) && finishedIn(ledger, alias)?.key === keys.get(alias);
  // Of somebody who has no folder here there is nothing to take out of force.
  const here = new Set(isFolder(out) ? peopleWith(out) : []);
  const isLeftOut = (alias: string) => isFinished(alias) || !(isAsked(alias) || here.has(alias));
  return {
    libraryKey,
    library: ledger.library?.key === libraryKey && !distrusted.has('') ? ledger.library : null,
    reads,
    keys,
    finished: new Map(
      [...files.keys()].flatMap((alias) => {
        const finished = finishedIn(ledger, alias);
        return finished !== null && isAsked(alias) && isFinished(alias) ? [[alias, finished]] : [];
      }),
    ),
    leftOut: new Set([...files].flatMap(([alias, own]) => (isLeftOut(alias) ? own : []))),
  };
}

function finishedIn({ people }: Ledger, alias: string): Finished | null {
  return (Object.hasOwn(people, alias) ? people[alias] : undefined) ?? null;
}

function flagsText(flags: Flags): string {
  return JSON.stringify(
    Object.entries(flags).filter(([name]) => !BESIDE_BYTES.includes(name as keyof Flags)),
  );
}

function filesByAlias(reads: Reuse['reads']): ReadonlyMap<string, readonly string[]> {
  const files = new Map<string, string[]>();
  for (const [file, { alias }] of reads) {
    const own = files.get(alias);
    if (own === undefined) files.set(alias, [file]);
    else own.push(file);
  }
  return files;
}

// A newer file takes the place of an older one by its name too, and a Problem names it.
function personKey(libraryKey: string, files: readonly string[], reads: Reuse['reads']): string {
  return keyOf(libraryKey, ...files.flatMap((file) => [nameOf(file), reads.get(file)?.sha256 ?? '']));
}
