/** What a consult's screen says, however wrong the rest of its file is. */
import { answersYes } from './answersYes.ts';
import type { FrontMatter } from './frontMatter.ts';
import type { Consult } from './library.ts';
import { valueAt } from './path.ts';
import { consultSchema, SCREEN_ITEMS, type Screen, type ScreenItem } from './schema/consult.ts';
import type { SourceFile } from './source.ts';

/** All that the screen is judged by. */
export type ScreenPart = Pick<Consult, 'id' | 'screen' | 'clearances' | 'cannotDo' | 'ageYears' | 'country'>;

export interface Said extends Omit<ScreenPart, 'id' | 'screen'> {
  /** Every item answered yes; where no key of the file can be read, by its lines. */
  readonly yes: readonly ScreenItem[];
  /** Null where the screen as a whole cannot be read: it may say anything. */
  readonly screen: Screen | null;
}

/** What cannot be read counts for nothing: no clearance then lifts an item, and someone of no age is young. */
export function readScreen(file: SourceFile, front: FrontMatter | null): Said {
  const { screen, clearances, cannotDo, ageYears, country } = consultSchema.shape;
  const at = (key: string) => valueAt(front?.value, [key]);
  return {
    yes: SCREEN_ITEMS.filter((item) => answersYes(file, front, item, 'screen')),
    screen: screen.safeParse(at('screen')).data ?? null,
    clearances: clearances.safeParse(at('clearances')).data ?? [],
    cannotDo: cannotDo.safeParse(at('cannotDo')).data ?? [],
    ageYears: ageYears.safeParse(at('ageYears')).data ?? 0,
    country: country.safeParse(at('country')).data ?? '',
  };
}

/** The whole screen of one consult, to be judged; null where it cannot be read. */
export function screenPart(
  id: string,
  { screen, clearances, cannotDo, ageYears, country }: Said,
): ScreenPart | null {
  return screen === null ? null : { id, screen, clearances, cannotDo, ageYears, country };
}

/** Only what was answered yes, to be judged: what was not asked yet, or cannot be read, is passed over. */
export function answeredYes(id: string, { yes, clearances, ageYears, country }: Said): ScreenPart {
  const screen = Object.fromEntries(SCREEN_ITEMS.map((one) => [one, yes.includes(one) ? 'yes' : 'no']));
  return { id, screen: screen as Screen, clearances, cannotDo: [], ageYears, country };
}
