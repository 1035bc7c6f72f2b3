/** What a build keeps of an earlier one, and what it writes down for the next. */
import {
  finishedNow,
  keptNow,
  ledgerText,
  standing,
  standingFiles,
  writeLedger,
  type Finished,
  type FinishedLibrary,
  type Ledger,
  type ReadConsult,
} from '../io/ledger.ts';
import type { Written } from '../io/manifest.ts';
import type { Reuse } from '../io/reuse.ts';
import type { Site } from '../io/site.ts';
import { settled, type Sources } from '../io/sources.ts';
import type { Workspace } from '../io/workspace.ts';
import type { BuildAsk, Chosen } from './buildAsk.ts';

/** Files do not stand as they were left: of these persons, and of the library where one is ''. They are to be made again. */
export class NotAsLeft extends Error {
  readonly whose: readonly string[];
  /** Aliases whose sets this build had put aside before it saw it. */
  readonly setAside: readonly string[];

  constructor(whose: readonly string[], setAside: readonly string[]) {
    super('files of the site were changed since they were written');
    this.whose = whose;
    this.setAside = setAside;
  }
}

/** What is kept, as it looks now. */
export type Kept = Pick<Ledger, 'library' | 'people'>;

/**
 * Tells the site what stands already; throws `NotAsLeft` where it does not. Of single persons the library's pages are not
 * asked for. `verify`: by the bytes of every file.
 */
export function keepFinished(
  site: Site,
  out: string,
  { library, finished }: Reuse,
  { aliases, flags: { verify: isRead } }: Pick<BuildAsk, 'aliases' | 'flags'>,
): Kept {
  const lost: string[] = [];
  const people: Record<string, Finished> = {};
  const isWhole = aliases.length === 0;
  const keptNow = library !== null && isWhole ? keptLibrary(site, out, library, isRead) : library;
  if (library !== null && keptNow === null) lost.push('');
  for (const [alias, one] of finished) {
    const now = standing(out, alias, one, isRead);
    if (now !== null && site.keep(setIn(now))) people[alias] = now;
    else lost.push(alias);
  }
  if (lost.length > 0) throw new NotAsLeft(lost, site.setAside());
  return { library: keptNow, people };
}

function keptLibrary(
  site: Site,
  out: string,
  library: FinishedLibrary,
  isRead: boolean,
): FinishedLibrary | null {
  const files = standingFiles(out, library.files, isRead);
  return files !== null && site.keep(files) ? { ...library, files } : null;
}

// The list of what was issued is no file of the site.
function setIn({ files }: Finished): readonly Written[] {
  return files.slice(0, -1);
}

/** Of those who are kept, what a build tells of everybody. */
export function keptProgrammes({ finished }: Reuse): Chosen[] {
  return [...finished].map(([alias, { revision, stage, step }]) => ({
    alias,
    revision,
    stage: { chosen: stage },
    step,
  }));
}

/** A set that was put in force a moment ago, for the next build; none where hands have left something in it. */
export function finishedSet(
  out: string,
  files: readonly Written[],
  key: string,
  { alias, revision, stage, step }: Chosen,
): readonly [string, Finished][] {
  const stands = finishedNow(out, alias, files);
  return stands === null ? [] : [[alias, { key, revision, stage: stage.chosen, step, ...stands }]];
}

/** The library's part as it was just written. */
export function finishedLibrary(
  out: string,
  { libraryKey: key }: Reuse,
  { counts }: Workspace,
  written: readonly Written[],
): FinishedLibrary | null {
  const files = keptNow(out, written);
  return files === null ? null : { key, counts, files };
}

/** By file, every consult that was read. */
export function consultsRead({ atMs }: Sources, { reads }: Reuse): Record<string, ReadConsult> {
  return Object.fromEntries([...reads].map(([file, read]) => [file, settled(read, atMs)]));
}

/** The entries of all but these people. */
export function without(people: Ledger['people'], aliases: readonly string[]): Ledger['people'] {
  return Object.fromEntries(Object.entries(people).filter(([alias]) => !aliases.includes(alias)));
}

/** Writes down what the next build may keep, where that is anything else than before. */
export function writeNext(out: string, before: Ledger, next: Ledger): void {
  // Of thousands it is tens of megabytes: made once.
  const text = ledgerText(next);
  if (text !== ledgerText(before)) writeLedger(out, text);
}
