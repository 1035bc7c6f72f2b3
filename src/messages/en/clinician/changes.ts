/** What has changed since the revision before, in sentences for the record. */
import type { CellName } from '../../../decisions/terms/cell.ts';
import type { StageName } from '../../../decisions/terms/stageName.ts';
import { listText } from '../plain.ts';
import { stageWord } from './stage.ts';

interface Point {
  readonly stage: StageName;
  readonly step: number;
}

/** @example 'From stage 1 step 2 (revision 1) to stage 2 step 1.' */
export function movedText(from: Point & { readonly revision: number }, to: Point): string {
  return `From ${stageWord(from.stage)} step ${from.step} (revision ${from.revision}) to ${stageWord(to.stage)} step ${to.step}.`;
}

/** Exercises that came and went; none where none did. */
export function exchangedTexts(added: readonly string[], gone: readonly string[]): readonly string[] {
  return [
    ...(added.length === 0 ? [] : [`New: ${listText(added)}.`]),
    ...(gone.length === 0 ? [] : [`No longer: ${listText(gone)}.`]),
  ];
}

/** @example 'Short bow, sets: 3 sets to 4 sets.' */
export function cellChangeText(title: string, cell: CellName, from: string, to: string): string {
  return `${title}, ${cell}: ${from || '-'} to ${to || '-'}.`;
}
