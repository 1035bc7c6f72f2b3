/**
 * How far the list of every person went when a build was last done with it: `private/issued.json`. A chain shows what was
 * changed in it, but not that its last lines are gone; only what stands beside it does.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { onDisk, putFile } from './disk.ts';
import { ISSUED, linesOf } from './issued.ts';
import { isRegularFile, peopleIn, peopleWith } from './people.ts';
import { personFolder } from './swap.ts';

/** The last line of a list. */
export interface End {
  /** Its number, from 1. */
  readonly lines: number;
  readonly hash: string;
}

export type Ends = Readonly<Record<string, End>>;

const NAME = 'issued.json';

/** By alias; none where the file is lost or is no such list: the next build begins it anew. */
export function readEnds(out: string): Ends {
  const place = join(out, 'private', NAME);
  if (!isRegularFile(place)) return {};
  try {
    const ends = JSON.parse(onDisk(place, () => readFileSync(place, 'utf8'))) as unknown;
    return Object.fromEntries(
      Object.entries(typeof ends === 'object' && ends !== null ? ends : {}).filter(([, end]) => isEnd(end)),
    ) as Ends;
  } catch (error) {
    if (error instanceof SyntaxError) return {};
    throw error;
  }
}

/** Whether a list still holds the line that was its last. */
export function reaches(text: string, { lines, hash }: End): boolean {
  return linesOf(text).some((line) => line.number === lines && line.hash === hash);
}

/**
 * Writes how far the lists go now. Only those of `touched` people and of new ones are read. A list that does not reach its
 * end keeps it, so that what is missing is told until it is put back.
 */
export function writeEnds(out: string, touched: ReadonlySet<string>): void {
  const known = readEnds(out);
  const there = new Set(peopleIn(out));
  const now = peopleWith(out).flatMap((alias): [string, End][] => {
    const before = known[alias];
    if (before !== undefined && !(touched.has(alias) && there.has(alias))) return [[alias, before]];
    const end = endNow(personFolder(out, alias), before);
    return end === undefined ? [] : [[alias, end]];
  });
  const ends = Object.fromEntries(now);
  if (JSON.stringify(ends) === JSON.stringify(known)) return;
  putFile(join(out, 'private', NAME), `${JSON.stringify(ends, null, 2)}\n`, true);
}

function endNow(folder: string, before: End | undefined): End | undefined {
  const place = join(folder, ISSUED);
  const text = isRegularFile(place) ? onDisk(place, () => readFileSync(place, 'utf8')) : '';
  if (before !== undefined && !reaches(text, before)) return before;
  const last = linesOf(text).at(-1);
  return last === undefined ? undefined : { lines: last.number, hash: last.hash };
}

function isEnd(value: unknown): value is End {
  const { lines, hash } = (value ?? {}) as Partial<End>;
  return Number.isInteger(lines) && typeof hash === 'string';
}
