/**
 * The exact search behind the week: every way to put lifts, hard runs and other hard things on seven days that the
 * recovery clock allows, and the best of them. No rule of thumb, no chance: the same wish gives the same week.
 */
import { arrangements, type HardEvent } from './arrange.ts';
import { ahead, count, crowding, daysIn, type DayMask, EVERY_DAY, keepsApart, lateness } from './circle.ts';

/** House rules 6: three lifts become two before a hard run is dropped; one lift only when no hard run is left. */
const LIFTS_WORTH_A_RUN = 2;

export interface Puzzle {
  readonly lifts: {
    readonly perWeek: number;
    readonly days: DayMask;
    readonly gapDays: number;
    /** False for light holds, which no run disturbs. */
    readonly onClock: boolean;
  };
  readonly events: readonly HardEvent[];
  readonly easyRuns: { readonly perWeek: number; readonly days: DayMask; readonly gapDays: number };
}

export interface Placement {
  readonly lifts: DayMask;
  /** Lifts that follow a hard run on the same day. */
  readonly pairs: DayMask;
  /** A day for each event, null for a run that was dropped. */
  readonly events: readonly (number | null)[];
  readonly easyRuns: DayMask;
  /** Days with time on which a lift agrees with the events as they stand. */
  readonly openLiftDays: DayMask;
}

/**
 * The best placement, or null when not even one lift fits (or an event that must stand finds no day). Better means,
 * in this order: lifts not below two, fewer hard runs dropped, fewer lifts dropped, fewer pairs, the later-named run
 * dropped, fewer easy runs dropped, hard days better spread, lifts better spread, earlier days.
 */
export function place(puzzle: Puzzle): Placement | null {
  const liftSets = subsets(puzzle.lifts.days, puzzle.lifts.perWeek, puzzle.lifts.gapDays).filter(
    (set) => set !== 0 || puzzle.lifts.perWeek === 0,
  );
  const easySets = subsets(puzzle.easyRuns.days, puzzle.easyRuns.perWeek, puzzle.easyRuns.gapDays);
  let best: { placement: Placement; rank: readonly number[] } | null = null;
  for (const events of arrangements(puzzle.events)) {
    const open = openDays(puzzle, events);
    for (const lifts of liftSets) {
      if ((lifts & ~open) !== 0) continue;
      const placement = complete(puzzle, events, lifts, open);
      const cost = costOf(puzzle, placement);
      if (best !== null && compare(cost, best.rank) > 0) continue;
      const easyRuns = easyDays(puzzle, placement, easySets);
      const whole = { ...placement, easyRuns };
      const rank = [...cost, ...finer(puzzle, whole)];
      if (best === null || compare(rank, best.rank) < 0) best = { placement: whole, rank };
    }
  }
  return best?.placement ?? null;
}

/** Every set of at most `most` of the days with `gapDays` from each to the next. */
function subsets(days: DayMask, most: number, gapDays: number): DayMask[] {
  const sets: DayMask[] = [];
  for (let set = EVERY_DAY; set >= 0; set -= 1) {
    if ((set & ~days) === 0 && count(set) <= most && keepsApart(set, gapDays)) sets.push(set);
  }
  return sets;
}

function openDays({ lifts, events: hardEvents }: Puzzle, events: readonly (number | null)[]): DayMask {
  if (!lifts.onClock) return lifts.days;
  return daysIn(lifts.days).reduce((mask, day) => {
    const clear = events.every((eventDay, index) => {
      const event = hardEvents[index];
      if (event === undefined || eventDay === null) return true;
      if (eventDay === day) return event.hold === 'run';
      return ahead(eventDay, day) >= event.recoveryDays && ahead(day, eventDay) >= lifts.gapDays;
    });
    return clear ? mask | (1 << day) : mask;
  }, 0);
}

function complete(
  { lifts: { onClock } }: Puzzle,
  events: readonly (number | null)[],
  lifts: DayMask,
  openLiftDays: DayMask,
): Placement {
  const pairs = onClock ? eventMask(events) & lifts : 0;
  return { lifts, pairs, events, easyRuns: 0, openLiftDays };
}

function eventMask(events: readonly (number | null)[]): DayMask {
  return events.reduce<DayMask>((mask, day) => (day === null ? mask : mask | (1 << day)), 0);
}

function costOf(puzzle: Puzzle, { lifts, pairs, events }: Placement): number[] {
  const { perWeek } = puzzle.lifts;
  const placed = count(lifts);
  const dropped = events.filter((day) => day === null).length;
  return [
    Math.max(0, Math.min(LIFTS_WORTH_A_RUN, perWeek) - placed),
    dropped,
    perWeek - placed,
    count(pairs),
    // Dropping an earlier-named run weighs more than dropping all later-named ones.
    events.reduce<number>((sum, day, index) => (day === null ? sum + 2 ** (events.length - index) : sum), 0),
  ];
}

function finer({ lifts: { onClock }, easyRuns }: Puzzle, placement: Placement): number[] {
  const hardDays = eventMask(placement.events) | (onClock ? placement.lifts : 0);
  return [
    easyRuns.perWeek - count(placement.easyRuns),
    ...crowding(hardDays),
    ...crowding(placement.lifts),
    lateness(placement.lifts),
    ...placement.events.map((day) => day ?? 7),
  ];
}

/** The days left that suit easy runs best: as many as wished, well apart from the hard runs and each other, early. */
function easyDays(
  { lifts: { onClock }, easyRuns }: Puzzle,
  placement: Placement,
  easySets: readonly DayMask[],
): DayMask {
  const runDays = eventMask(placement.events);
  const hardDays = runDays | (onClock ? placement.lifts : 0);
  const clear = daysIn(easyRuns.days & ~hardDays).reduce(
    (mask, day) =>
      daysIn(hardDays).every((hard) => ahead(day, hard) >= easyRuns.gapDays) ? mask | (1 << day) : mask,
    0,
  );
  let best: { set: DayMask; rank: readonly number[] } | null = null;
  for (const set of easySets) {
    if ((set & ~clear) !== 0) continue;
    const rank = [-count(set), ...crowding(set | runDays), lateness(set)];
    if (best === null || compare(rank, best.rank) < 0) best = { set, rank };
  }
  return best?.set ?? 0;
}

/** First difference decides; `one` may be the beginning only. */
function compare(one: readonly number[], other: readonly number[]): number {
  for (const [index, value] of one.entries()) {
    const difference = value - (other[index] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}
