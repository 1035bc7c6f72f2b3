/** What the build lays out for the desk: the library's own texts, and what dresses the outputs made from them. */
import type { SourceFile } from '../content/source.ts';
import type { PageFiles } from '../outputs/html/assets.ts';
import type { PackedPhotos } from './photos.ts';

export interface DeskData {
  readonly loadleaf: string;
  /** As `readLibrary` takes them: the files of each folder, lowest first. */
  readonly folders: readonly (readonly DeskFile[])[];
  /** The clinic's logo as the build made it, base64 of a PNG; null where there is none. */
  readonly logo: string | null;
  /** Of what dresses the pages, as much as is seen at the desk. */
  readonly pages: Pick<PageFiles, 'tokens' | 'fonts'>;
  /** What the clinic's own photos of a card add to a leaflet. */
  readonly photoBytes: Readonly<Record<string, number>>;
  /** Code points the printed typeface has, first and last of each run. */
  readonly letters: readonly Run[];
}

/** The rest of what dresses the pages, fetched with the first that is made. */
export interface DeskDress extends Omit<PageFiles, 'tokens' | 'fonts'> {
  /** None where the clinic shows none on leaflets. */
  readonly photos: PackedPhotos;
}

export interface DeskFile {
  readonly file: string;
  /** Null for a picture, which is only there. */
  readonly text: string | null;
}

export type Run = readonly [first: number, last: number];

export function sourceOf({ file, text }: DeskFile): SourceFile {
  return { file, bytes: new TextEncoder().encode(text ?? ''), link: 'no' };
}

/** Ascending code points as runs. @example runsOf([65, 66, 70]) // => [[65, 66], [70, 70]] */
export function runsOf(codePoints: readonly number[]): Run[] {
  const runs: [number, number][] = [];
  for (const one of codePoints) {
    const last = runs.at(-1);
    if (last !== undefined && last[1] === one - 1) last[1] = one;
    else runs.push([one, one]);
  }
  return runs;
}

export function isInRuns(runs: readonly Run[], codePoint: number): boolean {
  return runs.some(([first, last]) => first <= codePoint && codePoint <= last);
}
