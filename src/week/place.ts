/**
 * The exact search behind the week: every way to put lifts, hard runs and other hard things on seven days that the
 * recovery clock allows, and the best of them. No rule of thumb, no chance: the same wish gives the same week.
 */
import { arrangements, type HardEvent } from './arrange.ts';
import { ahead, count, crowding, daysIn, type DayMask, EVERY_DAY, keepsApart, lateness } from './circle.ts';

export interface Puzzle {
  readonly lifts: {
    readonly perWeek: number;
    /** So many lifts are kept before a hard run is dropped; fewer only when no hard run is left. */
    readonly least: number;
    readonly days: DayMask;
    readonly gapDays: number;
    /** False for light holds, which no run disturbs. */
    readonly onClock: boolean;
  };
  readonly events: readonly HardEvent[];
  readonly easyRuns: { readonly perWeek: number; readonly days: DayMask; readonly gapDays: number };
}

/** A day for each event, null for a run that was dropped. */
export type Events = readonly (number | null)[];

export interface Placement {
  readonly lifts: DayMask;
  /** Lifts that follow a hard run on the same day. */
  readonly pairs: DayMask;
  readonly events: Events;
  readonly easyRuns: DayMask;
  /** Days with time on which a lift agrees with the events as they stand. */
  readonly openLiftDays: DayMask;
}

/**
 * The best placement, or null when not even one lift fits (or an event that must stand finds no day). Better means,
 * in this order: lifts not below their least, fewer hard runs dropped, fewer lifts dropped, fewer pairs, the later-named run
 * dropped, fewer easy runs dropped, hard days better spread, lifts better spread, earlier days.
 */
export function place(puzzle: Puzzle): Placement | null {
  const liftSets = subsets(puzzle.lifts.days, puzzle.lifts.perWeek, puzzle.lifts.gapDays).filter(
    (set) => set !== 0 || puzzle.lifts.perWeek === 0,
  );
  const easySets = subsets(puzzle.easyRuns.days, puzzle.easyRuns.perWeek, puzzle.easyRuns.gapDays);
  let best: Ranked | null = null;
  for (const events of fewestDropped(arrangements(puzzle.events))) {
    // From here on only weeks with more runs dropped are left, and the lifts cannot get better for it.
    if (best !== null && best.rank[0] === 0 && dropped(events) > (best.rank[1] ?? 0)) break;
    const open = openDays(puzzle, events);
    for (const lifts of liftSets) {
      if ((lifts & ~open) !== 0) continue;
      const cost = costOf(puzzle, events, lifts);
      if (best !== null && compare(cost, best.rank) > 0) continue;
      const placement = complete(puzzle, events, lifts, open, easySets);
      const rank = [...cost, ...finer(puzzle, placement)];
      if (best === null || compare(rank, best.rank) < 0) best = { placement, rank };
    }
  }
  return best?.placement ?? null;
}

interface Ranked {
  readonly placement: Placement;
  readonly rank: readonly number[];
}

/** Every set of at most `most` of the days with `gapDays` from each to the next. */
function subsets(days: DayMask, most: number, gapDays: number): DayMask[] {
  const sets: DayMask[] = [];
  for (let set = EVERY_DAY; set >= 0; set -= 1) {
    if ((set & ~days) === 0 && count(set) <= most && keepsApart(set, gapDays)) sets.push(set);
  }
  return sets;
}

function openDays({ lifts, events: hardEvents }: Puzzle, events: Events): DayMask {
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

function eventMask(events: Events): DayMask {
  return events.reduce<DayMask>((mask, day) => (day === null ? mask : mask | (1 << day)), 0);
}

function costOf({ lifts: { perWeek, least, onClock } }: Puzzle, events: Events, lifts: DayMask): number[] {
  const placed = count(lifts);
  return [
    Math.max(0, Math.min(least, perWeek) - placed),
    dropped(events),
    perWeek - placed,
    onClock ? count(eventMask(events) & lifts) : 0,
    // Dropping an earlier-named run weighs more than dropping all later-named ones.
    events.reduce<number>((sum, day, index) => (day === null ? sum + 2 ** (events.length - index) : sum), 0),
  ];
}

function dropped(events: Events): number {
  return events.filter((day) => day === null).length;
}

function fewestDropped(ways: readonly Events[]): Events[] {
  return [...ways].sort((one, other) => dropped(one) - dropped(other));
}

function complete(
  puzzle: Puzzle,
  events: Events,
  lifts: DayMask,
  openLiftDays: DayMask,
  easySets: readonly DayMask[],
): Placement {
  const { onClock } = puzzle.lifts;
  const runDays = eventMask(events);
  return {
    lifts,
    pairs: onClock ? runDays & lifts : 0,
    events,
    easyRuns: easyDays(puzzle, runDays, onClock ? runDays | lifts : runDays, easySets),
    openLiftDays,
  };
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
  { easyRuns }: Puzzle,
  runDays: DayMask,
  hardDays: DayMask,
  easySets: readonly DayMask[],
): DayMask {
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
  for (let index = 0; index < one.length; index += 1) {
    const difference = (one[index] ?? 0) - (other[index] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}
