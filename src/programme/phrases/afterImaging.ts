/** Words of the first programme after a sudden start. */
import type { ScreenItem } from '../../content/schema/consult.ts';
import { stageWord, type StageName } from '../stageChoice.ts';
import { SCREEN_WORDS } from './screen.ts';

export function afterImagingText(items: readonly ScreenItem[], most: StageName): string {
  return `The first programme after ${named(items)}: ${stageWord(most)} at most, with light loads.`;
}

/** For a stage written by the clinician that is later. */
export function notSoFarYet(
  items: readonly ScreenItem[],
  most: StageName,
): { readonly expected: string; readonly fix: string } {
  return {
    expected: `${stageWord(most)} at most in the first programme after ${named(items)}`,
    fix: `Write stage: ${most} or less, or auto; the next revision may go on.`,
  };
}

/** Among the effects of the screen, in the record. */
export function lightLoadsText(items: readonly ScreenItem[]): string {
  return `Light loads: the first programme after ${named(items)}, cleared by a picture.`;
}

export function lightLoadWords(items: readonly ScreenItem[], share: number): string {
  return `${Math.round(share * 100)} % of it, in the first programme after ${named(items)}`;
}

export function nothingFelt(items: readonly ScreenItem[]): string {
  return `nothing tested with this card, and nothing is felt for in the first programme after ${named(items)}`;
}

export function lightLoadLimit(items: readonly ScreenItem[], mostKg: number): string {
  return `at most ${mostKg}: loads are light in the first programme after ${named(items)}`;
}

function named(items: readonly ScreenItem[]): string {
  return items.map((item) => SCREEN_WORDS[item]).join(', ');
}
