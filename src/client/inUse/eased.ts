/** Which exercises the log sends to the easier numbers today, by the leaflet's own answers to what was written down. */
import type { LogRow } from '../../content/log/columns.ts';
import type { ExerciseInUse, SheetInUse } from '../../programme/sheetInUse.ts';
import type { IsoDate } from '../../units/date.ts';
import { answerTo } from './answers.ts';

/** By the score of this morning: all of them. */
export function isMorningEased(on: IsoDate, rows: readonly LogRow[], sheet: SheetInUse): boolean {
  const morning = rows.filter(({ kind, date }) => kind === 'morning' && date === on);
  return answerTo(morning, rows, sheet).easier;
}

/** By the morning, or by the pain of this exercise when it was last done. */
export function isEased(card: string, on: IsoDate, rows: readonly LogRow[], sheet: SheetInUse): boolean {
  return isMorningEased(on, rows, sheet) || answerTo(lastTime(card, on, rows), rows, sheet).easier;
}

/** Those that are eased, in the order of the page. */
export function easedCards(on: IsoDate, rows: readonly LogRow[], sheet: SheetInUse): readonly string[] {
  return sheet.exercises.map(({ card }) => card).filter((card) => isEased(card, on, rows, sheet));
}

/** The entries of the last day before this one on which pain in it was written down. */
function lastTime(card: string, on: IsoDate, rows: readonly LogRow[]): readonly LogRow[] {
  const earlier = rows.filter(
    (row) =>
      (row.kind === 'session' || row.kind === 'between') &&
      row.card === card &&
      row.date < on &&
      row.painDuring !== null,
  );
  const [last] = earlier.map(({ date }) => date).sort((a, b) => (a > b ? -1 : 1));
  return earlier.filter(({ date }) => date === last);
}

/** Its numbers for today. */
export function easedExercise(exercise: ExerciseInUse): ExerciseInUse {
  return { ...exercise, sets: exercise.easierSets, loadKg: exercise.easierLoadKg };
}
