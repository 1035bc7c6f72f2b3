/**
 * The exact search behind the week: every way to put lifts, hard runs and other hard things on seven days that the
 * recovery clock allows, and the best of them. No rule of thumb, no chance: the same wish gives the same week.
 */
import { arrangements, type GivenUpCount, type HardEvent, type Taken, takenDays } from './arrange.ts';
import { ahead, count, crowding, daysIn, type DayMask, EVERY_DAY, keepsApart, lateness } from './circle.ts';
import { compare } from './compare.ts';
import { type EasyDays, easyDays, type EasyRuns } from './easyDays.ts';

export interface WeekProblem {
  readonly lifts: {
    readonly perWeek: number;
    /** So many lifts are kept before a hard run is dropped; fewer only when no hard run is left. */
    readonly least: number;
    readonly days: DayMask;
    readonly gapDays: number;
    /** Days from a lift to the next run or sport at the earliest. */
    readonly toOthersDays: number;
    /** False for light holds, which no run disturbs. */
    readonly onClock: boolean;
  };
  readonly events: readonly HardEvent[];
  readonly easyRuns: EasyRuns;
  /** The day on which it all starts, and on how many days from it, itself counted, the first lift should come. */
  readonly start: { readonly day: number; readonly withinDays: number } | null;
}

/** A day for each event, null for one that was given up. */
export type Events = readonly (number | null)[];

export interface Placement {
  readonly lifts: DayMask;
  /** Lifts that follow a hard run on the same day. */
  readonly pairs: DayMask;
  /** Lifts that follow another hard thing on the same day, one that cannot wait. */
  readonly shared: DayMask;
  readonly events: Events;
  readonly easyRuns: DayMask;
  readonly longest: EasyDays['longest'];
  /** Days with time on which a lift agrees with the events as they stand, without sharing a day that it does not share yet. */
  readonly openLiftDays: DayMask;
}

/**
 * The best placement, or null when not even one lift fits (or an event that must stand finds no day). Better means,
 * in this order: fewer things that may wait left out, no lift on the day of another hard thing, lifts not below their
 * least, the first lift soon, fewer lifts on such days, fewer hard runs dropped, fewer lifts dropped, fewer pairs with a
 * hard run, the later-named thing or run given up, fewer easy runs dropped, the longest
 * run clear of other hard things, hard days better spread, lifts better
 * spread, earlier days.
 */
export function solveWeek(problem: WeekProblem): Placement | null {
  const liftSets = subsets(problem.lifts.days, problem.lifts.perWeek, problem.lifts.gapDays).filter(
    (set) => set !== 0 || problem.lifts.perWeek === 0,
  );
  const easySets = subsets(problem.easyRuns.days, problem.easyRuns.perWeek, problem.easyRuns.gapDays);
  let best: Ranked | null = null;
  for (const givenUp of givenUpCounts(problem)) {
    if (best !== null && givenUp.waits > best.givenUp.waits) break;
    // With the least lifts placed soon and on days of their own, dropping one run more cannot make the week better.
    if (best !== null && best.short === 0 && best.late === 0 && best.placement.shared === 0) break;
    for (const way of waysWith(problem, givenUp))
      best = bestWith(way, problem, givenUp, liftSets, easySets, best);
  }
  return best?.placement ?? null;
}

/** From nothing given up to all of it, what may wait last. */
function givenUpCounts({ events }: WeekProblem): GivenUpCount[] {
  const none = (hold: HardEvent['hold']) =>
    Array.from({ length: events.filter((event) => event.hold === hold).length + 1 }, (_, count) => count);
  return none('waits').flatMap((waits) => none('run').map((run) => ({ waits, run })));
}

/** A way to put the events on days: the days they take, and those on which a lift agrees with them. */
interface Arrangement {
  readonly events: Events;
  readonly taken: Taken;
  readonly open: DayMask;
}

/** Lifts and easy runs feel only which days are taken and open: of the ways that are alike in that, the best. */
function waysWith(problem: WeekProblem, givenUp: GivenUpCount): Iterable<Arrangement> {
  const ways = new Map<number, Arrangement>();
  for (const events of arrangements(problem.events, givenUp)) {
    const taken = takenDays(problem.events, events);
    const open = openDays(problem, events);
    const alike = (taken.runs << 14) | (taken.others << 7) | open;
    const there = ways.get(alike);
    if (there === undefined || compare(finest(events), finest(there.events)) < 0)
      ways.set(alike, { events, taken, open });
  }
  return ways.values();
}

function bestWith(
  { events, taken, open }: Arrangement,
  problem: WeekProblem,
  givenUp: GivenUpCount,
  liftSets: readonly DayMask[],
  easySets: readonly DayMask[],
  bestSoFar: Ranked | null,
): Ranked | null {
  let best = bestSoFar;
  for (const lifts of liftSets) {
    if ((lifts & ~open) !== 0) continue;
    const [short, late] = [shortOf(problem, lifts), lateDays(problem, lifts)];
    const cost = costOf(problem, givenUp, { short, late }, taken, lifts);
    if (best !== null && cost > best.cost) continue;
    const placement = complete(problem, events, taken, lifts, open, easySets);
    const rank = finer(problem, placement, taken);
    if (best === null || cost < best.cost || compare(rank, best.rank) < 0)
      best = { placement, givenUp, short, late, cost, rank };
  }
  return best;
}

interface Ranked {
  readonly placement: Placement;
  readonly givenUp: GivenUpCount;
  readonly short: number;
  readonly late: number;
  readonly cost: number;
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

function openDays({ lifts, events: hardEvents }: WeekProblem, events: Events): DayMask {
  if (!lifts.onClock) return lifts.days;
  return daysIn(lifts.days).reduce((mask, day) => {
    const clear = events.every((eventDay, index) => {
      const event = hardEvents[index];
      if (event === undefined || eventDay === null) return true;
      if (eventDay === day) return event.hold !== 'waits';
      return ahead(eventDay, day) >= event.recoveryDays && ahead(day, eventDay) >= lifts.toOthersDays;
    });
    return clear ? mask | (1 << day) : mask;
  }, 0);
}

/** What was given up as one number, the dearest first: each count below 64 is six bits of it. */
function costOf(
  problem: WeekProblem,
  { waits, run }: GivenUpCount,
  { short, late }: Pick<Ranked, 'short' | 'late'>,
  taken: Taken,
  lifts: DayMask,
): number {
  const { perWeek, onClock } = problem.lifts;
  const pairs = onClock ? count(taken.runs & lifts) : 0;
  const shared = onClock ? count(taken.others & lifts) : 0;
  const counts = [waits, Math.min(1, shared), short, late, shared, run, perWeek - count(lifts), pairs];
  return counts.reduce((cost, one) => cost * 64 + one, 0);
}

/** Giving up something earlier-named weighs more than giving up all later-named things. */
function whichGivenUp(events: Events): number {
  return events.reduce<number>((sum, day, index) => (day === null ? sum + 2 ** -(index + 1) : sum), 0);
}

/** What decides between ways that are alike to lifts and easy runs: what is given up, then earlier days first. */
function finest(events: Events): number[] {
  return [whichGivenUp(events), ...events.map((day) => day ?? 7)];
}

/** Lifts missing from the least there should be. */
function shortOf({ lifts: { perWeek, least } }: WeekProblem, lifts: DayMask): number {
  return Math.max(0, Math.min(least, perWeek) - count(lifts));
}

/** Days by which the first lift comes too late after the start. */
export function lateDays({ start }: Pick<WeekProblem, 'start'>, lifts: DayMask): number {
  if (start === null || lifts === 0) return 0;
  return Math.max(0, firstDay(start.day, lifts) - start.withinDays);
}

/** On which day from the start, itself counted, the first of some weekdays comes. */
export function firstDay(start: number, days: DayMask): number {
  return 1 + Math.min(...daysIn(days).map((day) => ahead(start, day) % 7));
}

function complete(
  problem: WeekProblem,
  events: Events,
  { runs, others }: Taken,
  lifts: DayMask,
  open: DayMask,
  easySets: readonly DayMask[],
): Placement {
  const { onClock } = problem.lifts;
  const hardDays = runs | others | (onClock ? lifts : 0);
  const easy = easyDays(problem.easyRuns, { runs, others, hardDays }, easySets);
  return {
    lifts,
    pairs: onClock ? runs & lifts : 0,
    shared: onClock ? others & lifts : 0,
    events,
    easyRuns: easy.days,
    longest: easy.longest,
    openLiftDays: onClock ? (open & ~others) | lifts : open,
  };
}

function finer(
  { lifts: { onClock }, easyRuns }: WeekProblem,
  placement: Placement,
  { runs, others }: Taken,
): number[] {
  const hardDays = runs | others | (onClock ? placement.lifts : 0);
  return [
    whichGivenUp(placement.events),
    easyRuns.perWeek - count(placement.easyRuns),
    placement.longest?.besideOther === true ? 1 : 0,
    crowding(hardDays),
    crowding(placement.lifts),
    lateness(placement.lifts),
    ...placement.events.map((day) => day ?? 7),
  ];
}
