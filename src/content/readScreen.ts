/** What a consult's screen says, however wrong the rest of its file is. */
import type { FrontMatter } from './frontMatter.ts';
import type { Consult } from './library.ts';
import { valueAt } from './path.ts';
import { consultSchema } from './schema/consult.ts';

/** All that the screen is judged by. */
export type ScreenPart = Pick<Consult, 'id' | 'screen' | 'clearances' | 'cannotDo' | 'ageYears' | 'country'>;

/**
 * Null where the screen itself cannot be read: it may say anything. Of the rest what cannot be read counts for nothing:
 * no clearance then lifts an item, and someone of no age is young.
 */
export function readScreen(id: string, front: FrontMatter | null): ScreenPart | null {
  const { shape } = consultSchema;
  const written = (key: keyof typeof shape) => valueAt(front?.value, [key]);
  const screen = shape.screen.safeParse(written('screen'));
  if (!screen.success) return null;
  return {
    id,
    screen: screen.data,
    clearances: shape.clearances.safeParse(written('clearances')).data ?? [],
    cannotDo: shape.cannotDo.safeParse(written('cannotDo')).data ?? [],
    ageYears: shape.ageYears.safeParse(written('ageYears')).data ?? 0,
    country: shape.country.safeParse(written('country')).data ?? '',
  };
}
