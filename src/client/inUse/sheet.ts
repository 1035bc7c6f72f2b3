/** The block of data in the page, and the device's day. */
import type { PackedFigures } from '../../drawing/moving/packed.ts';
import {
  type SaidDay,
  type SaidExercise,
  type SheetInUse,
  wholeDays,
  wholeExercises,
} from '../../programme/sheetInUse.ts';
import { isoDate, type IsoDate } from '../../units/date.ts';

/** With the figures that move, by their cards. */
export interface PageInUse extends SheetInUse {
  readonly moving: PackedFigures;
}

interface Block extends Omit<PageInUse, 'days' | 'exercises'> {
  readonly days: readonly SaidDay[];
  readonly exercises: readonly SaidExercise[];
}

/** The page's block; null for a page without one. */
export function readSheet(): PageInUse | null {
  const element = document.getElementById('sheet-in-use');
  if (element === null) return null;
  const block = JSON.parse(element.textContent ?? '') as Block;
  return { ...block, days: wholeDays(block.days), exercises: wholeExercises(block.exercises) };
}

/** The calendar day where the device is, whatever the zone and its summer time. */
export function deviceDay(): IsoDate {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, '0');
  const text = `${String(now.getFullYear()).padStart(4, '0')}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  const day = isoDate(text);
  if (day === null) throw new RangeError(`the device's clock says ${text}`);
  return day;
}
