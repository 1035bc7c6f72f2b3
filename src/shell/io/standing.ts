/** What stands in one person's folder: the set that may be followed, one that was set aside, and what is not ours. */
import { lstatSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Output } from '../../set/output.ts';
import { OUTPUTS } from '../../set/outputs.ts';
import { onDisk, refuseLink } from './disk.ts';
import { hashOf, ISSUED, linesOf } from './issued.ts';
import { folderNow } from './swap.ts';

export const ASIDE = 'set-aside';
export const WHY = 'why.txt';

/** Without a manifest, a file that an output is called by is ours if it carries a mark; without one, beside marked files. */
const NAMES: readonly string[] = OUTPUTS.map(({ file }) => file);
const WITHOUT_MARK: readonly string[] = OUTPUTS.flatMap((one: Output) =>
  one.hasNoMark === true ? [one.file] : [],
);

export interface Found {
  readonly name: string;
  readonly sha256: string;
  /** Since we wrote it. */
  readonly isChanged: boolean;
}

export interface Standing {
  /** The set in force, by name; none when nothing was made or it was set aside. */
  readonly present: readonly Found[];
  /** Everything else at the top that is no part of a set and stays: other people's files, earlier revisions. */
  readonly kept: readonly string[];
  readonly aside: readonly Found[];
  /** Within `set-aside/`. */
  readonly keptAside: readonly string[];
  /** Text of `issued.jsonl`; empty when there is none. */
  readonly issued: string;
}

/** `hashesOf` gives what the manifest and the journal know of a name in the person's folder; undefined when nothing. */
export type HashesOf = (name: string) => ReadonlySet<string> | undefined;

/** Stops with 73 where a link stands for what must be ours. */
export function standingOf(out: string, alias: string, known: HashesOf): Standing {
  const folder = folderNow(out, alias);
  for (const name of [ISSUED, ASIDE]) refuseLink(join(folder, name));
  const issued = textAt(join(folder, ISSUED));
  const names = namesIn(folder).filter((name) => name !== ISSUED);
  const judge = judgeOf(folder, issued, known);
  const present = names.flatMap((name) => judge(folder, name) ?? []);
  const asideFolder = join(folder, ASIDE);
  const asideNames = namesIn(asideFolder).filter((name) => name !== WHY);
  const aside = asideNames.flatMap((name) => judge(asideFolder, name) ?? []);
  return {
    present,
    kept: names.filter((name) => name !== ASIDE && present.every((one) => one.name !== name)),
    aside,
    keptAside: asideNames.filter((name) => aside.every((one) => one.name !== name)),
    issued,
  };
}

/** What a file is to us; null for what is not ours. */
function judgeOf(
  folder: string,
  issued: string,
  known: HashesOf,
): (at: string, name: string) => Found | null {
  const lines = linesOf(issued);
  const listed = new Set(lines.flatMap(({ files }) => files.map(({ path, sha256 }) => `${path} ${sha256}`)));
  const marks = new Set([
    ...lines.flatMap(({ mark }) => mark ?? []),
    ...marksShown(folder),
    ...marksShown(join(folder, ASIDE)),
  ]);
  return (at, name) => {
    const bytes = bytesAt(join(at, name));
    if (bytes === null) return null;
    const sha256 = hashOf(bytes);
    const hashes = known(name);
    if (hashes?.has(sha256) === true || listed.has(`${name} ${sha256}`))
      return { name, sha256, isChanged: false };
    if (hashes !== undefined) return { name, sha256, isChanged: true };
    const isMarked = WITHOUT_MARK.includes(name)
      ? [...marks].length > 0
      : [...marks].some((mark) => bytes.includes(mark));
    if (!NAMES.includes(name) || !isMarked) return null;
    // Where nothing else is left to know it by, the mark must do.
    return { name, sha256, isChanged: listed.size > 0 };
  };
}

/** Marks that pages and record of a folder show. */
function marksShown(folder: string): string[] {
  return ['record.json', 'leaflet.html', 'record.html'].flatMap((name) => {
    const text = bytesAt(join(folder, name))?.toString('utf8') ?? '';
    return /(?:data-mark="|^  "mark": ")([0-9a-f]{8})"/m.exec(text)?.[1] ?? [];
  });
}

/** The revision of a set; null when its record does not say. */
export function revisionIn(folder: string): number | null {
  try {
    const { revision } = JSON.parse(textAt(join(folder, 'record.json'))) as { readonly revision?: unknown };
    return typeof revision === 'number' && Number.isInteger(revision) ? revision : null;
  } catch {
    return null;
  }
}

export function namesIn(folder: string): string[] {
  if (lstatSync(folder, { throwIfNoEntry: false })?.isDirectory() !== true) return [];
  return onDisk(folder, () => readdirSync(folder)).sort();
}

function textAt(place: string): string {
  return bytesAt(place)?.toString('utf8') ?? '';
}

/** Of a regular file; null for anything else, and for nothing. */
function bytesAt(place: string): Buffer | null {
  if (lstatSync(place, { throwIfNoEntry: false })?.isFile() !== true) return null;
  return onDisk(place, () => readFileSync(place));
}
