/** A consult that is still being written: what it says already, however much of it is missing or wrong. */
import { answersYes } from './answersYes.ts';
import type { FrontMatter } from './frontMatter.ts';
import type { Consult } from './library.ts';
import type { Said } from './readScreen.ts';
import type { SourceFile } from './source.ts';

export interface Draft {
  readonly alias: string;
  /** Null where neither keys nor name tell it. */
  readonly revision: number | null;
  readonly file: string;
  /** Null while anything in it has a Problem. */
  readonly consult: Consult | null;
  readonly said: Said;
}

/** Whether a file says `draft: yes`: by its key, or by its line alone where the keys cannot be read. */
export function isDraft(file: SourceFile, front: FrontMatter | null): boolean {
  return answersYes(file, front, 'draft');
}
