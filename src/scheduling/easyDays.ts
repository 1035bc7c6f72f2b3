/** The days of the easy runs of a week, when everything hard has its day, and which of them the longest run takes. */
import { ahead, count, crowding, type DayMask, daysIn, isBeside, lateness, longestRow } from './circle.ts';
import { compare } from './compare.ts';
import type { RunRow } from './wish.ts';

export interface EasyRuns {
  readonly perWeek: number;
  readonly days: DayMask;
  readonly gapDays: number;
  /** Whether the longest run of the week is one of them. */
  readonly hasLongest: boolean;
  readonly row: RunRow | null;
}

/** Days that are taken: by hard runs, by other hard things, and by anything hard, sessions on the clock included. */
export interface HardDaysTaken {
  readonly runs: DayMask;
  readonly others: DayMask;
  readonly hardDays: DayMask;
}

export interface EasyDays {
  readonly days: DayMask;
  /** The day of the longest run, and whether sport or the like stands on the day before or after it. */
  readonly longest: { readonly day: number; readonly besideOther: boolean } | null;
}

/**
 * The days left that suit best: as many as wished, the longest run not beside another hard thing, few run days in a
 * row, well apart from the hard runs and each other, early. More days in a row than `row` allows only for runs that
 * the person has as a habit.
 */
export function easyDays(
  { days, gapDays, hasLongest, row }: EasyRuns,
  taken: HardDaysTaken,
  sets: readonly DayMask[],
): EasyDays {
  const clear = clearOf(days, taken.hardDays, gapDays);
  let best: { days: EasyDays; rank: readonly number[] } | null = null;
  for (const set of sets) {
    if ((set & ~clear) !== 0) continue;
    const over = row === null ? 0 : Math.max(0, longestRow(set | taken.runs) - row.most);
    if (row !== null && over > 0 && count(set | taken.runs) > row.ownRuns) continue;
    const longest = hasLongest ? longestDay(set, taken) : null;
    const rank = [
      -count(set),
      Number(longest?.besideOther ?? false),
      over,
      crowding(set | taken.runs | taken.others),
      lateness(set),
    ];
    if (best === null || compare(rank, best.rank) < 0) best = { days: { days: set, longest }, rank };
  }
  return best?.days ?? { days: 0, longest: null };
}

function clearOf(days: DayMask, hardDays: DayMask, gapDays: number): DayMask {
  return daysIn(days & ~hardDays).reduce(
    (mask, day) => (daysIn(hardDays).every((hard) => ahead(day, hard) >= gapDays) ? mask | (1 << day) : mask),
    0,
  );
}

/** Not beside other hard things, then not beside anything hard, then early. */
function longestDay(set: DayMask, { others, hardDays }: HardDaysTaken): EasyDays['longest'] {
  const ranked = daysIn(set)
    .map((day) => ({ day, rank: [Number(isBeside(day, others)), Number(isBeside(day, hardDays)), day] }))
    .sort((one, other) => compare(one.rank, other.rank));
  const [first] = ranked;
  return first === undefined ? null : { day: first.day, besideOther: isBeside(first.day, others) };
}
