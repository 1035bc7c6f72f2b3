/**
 * The one dated plan: every day from the start to the day before the review, and a race on the review day as its last.
 * Decided once; table, week, log, calendar and every later output are views of it. Nobody else works out what a day holds.
 */
import { addDays, daysBetween, type IsoDate, weekdayOf } from '../units/date.ts';
import { roundDown } from '../units/round.ts';
import { WEEKDAYS, type Weekday } from '../units/weekday.ts';
import { furthestFirst } from './beforeRace.ts';
import { runLoad } from './hardRun.ts';
import type { Lost } from './lost.ts';
import type { DayPlan, WeekPlan } from './plan.ts';
import type { PlanDay, PlannedSession } from './planDay.ts';
import type { PlannedRun } from './plannedRun.ts';
import type { JudgedRace } from './race.ts';
import { raceDay, type RaceDay, type RaceDayRules } from './raceDays.ts';
import { order } from './run.ts';
import type { RunWeek } from './runningPlan.ts';
import { planWeeks, type PlanWeek } from './planWeek.ts';
import type { Turn } from './turns.ts';
import type { WishedLifts } from './wish.ts';

/** An exercise of a part, as far as its days go. */
export interface DatedExercise {
  /** The slot's name. */
  readonly exercise: string;
  readonly card: string;
  readonly when: 'session' | 'between' | 'daily';
  /** First week of it, from 1; null when it has not begun by the review. */
  readonly fromWeek: number | null;
  /** The clinician's own days for it; null for all days of its kind. */
  readonly ownDays: readonly Weekday[] | null;
}

/** A stretch of the plan with one week and one set of exercises. */
export interface PlanPart {
  readonly from: IsoDate;
  readonly week: WeekPlan;
  readonly kind: WishedLifts['kind'];
  readonly exercises: readonly DatedExercise[];
}

export interface PlanFacts {
  readonly startOn: IsoDate;
  readonly reviewOn: IsoDate;
  /** In the order of their dates; the first begins at the start. */
  readonly parts: readonly [PlanPart, ...PlanPart[]];
  /** Runs of every week, by the ids under which the parts' weeks place them. */
  readonly runWeeks: readonly Pick<RunWeek, 'runs'>[];
  /** Those that stand. */
  readonly races: readonly JudgedRace[];
  /** The shortest run of a usual week, km: in the easy days after a race none is longer. Null where none goes by distance. */
  readonly shortestKm: number | null;
  readonly turns: readonly Turn[];
  readonly rules: RaceDayRules;
}

export interface DatedPlan {
  readonly days: readonly PlanDay[];
  readonly weeks: readonly PlanWeek[];
  /** What the races took from the days. */
  readonly lost: readonly Lost[];
}

/** The last day there is: the day before the review, or the review day when a race is run on it. */
function lastDay(reviewOn: IsoDate, races: readonly Pick<JudgedRace, 'on'>[]): IsoDate {
  return races.some(({ on }) => on === reviewOn) ? reviewOn : addDays(reviewOn, -1);
}

/** Every day decided, with what the races took. */
export function datedPlan(facts: PlanFacts): DatedPlan {
  const { startOn, reviewOn, races } = facts;
  const length = daysBetween(startOn, lastDay(reviewOn, races)) + 1;
  const begun = new Set<string>();
  const made = Array.from({ length: Math.max(0, length) }, (_, index) =>
    dayOf(addDays(startOn, index), Math.floor(index / 7), facts, begun),
  );
  const days = furthestFirst(
    made.map(({ day }) => day),
    races,
    facts.rules,
  );
  return {
    days,
    weeks: planWeeks(days, facts.turns),
    lost: made.flatMap(({ lost }) => lost),
  };
}

interface MadeDay {
  readonly day: PlanDay;
  readonly lost: readonly Lost[];
}

/** `begun`: exercises (part and slot) that have been done by then; grows as the days go by. */
function dayOf(on: IsoDate, weekIndex: number, facts: PlanFacts, begun: Set<string>): MadeDay {
  const weekday = weekdayOf(on);
  const part = facts.parts.findLastIndex(({ from }) => from <= on);
  const { week, kind, exercises } = facts.parts[part] as PlanPart;
  const pattern = week.days[WEEKDAYS.indexOf(weekday)] as DayPlan;
  const around = raceDay(on, facts.races, facts.rules);
  const isReview = on >= facts.reviewOn;
  const bare = { on, weekday, week: weekIndex + 1, part, raceKm: around.race?.km ?? null };
  if (around.race !== null || isReview)
    return {
      day: { ...bare, ...NOTHING, easyAfterRace: around.after !== null },
      lost: isReview || around.race === null ? [] : lostOnRaceDay(pattern, on, around.race),
    };
  const due = (when: DatedExercise['when']) =>
    exercises.filter((one) => one.when === when && (one.ownDays?.includes(weekday) ?? true));
  const runs = runsOn(pattern, on, facts.runWeeks[weekIndex], around, facts);
  const isEasy = (id: string) => pattern.easyOther.includes(id);
  const nearRace = around.before !== null || around.after !== null;
  const other = nearRace ? pattern.other.filter(isEasy) : pattern.other;
  // A heavy lift is as hard as a hard run (house rules 6): none in the days before a race and in the easy days after it.
  const barred = pattern.session && kind !== 'light' && nearRace;
  const session =
    pattern.session && !barred
      ? sessionOn(due('session'), bare, begun, {
          afterRun: pattern.afterRun && runs.planned.length > 0,
          afterOther: pattern.afterOther && other.some((id) => !isEasy(id)),
        })
      : null;
  // Light holds take the place of a session that a race takes away.
  const between = pattern.between || barred ? namesOf(due('between')) : [];
  return {
    day: {
      ...bare,
      session,
      between,
      daily: pattern.daily ? namesOf(due('daily')) : [],
      runs: runs.planned,
      other,
      easyOther: other.filter(isEasy),
      easyAfterRace: around.after !== null,
    },
    lost: [
      ...(barred ? lostFor(on, around, 'session', between.length > 0 ? 'holds' : '') : []),
      ...runs.lost,
      ...pattern.other.filter((id) => !other.includes(id)).flatMap((id) => lostFor(on, around, 'other', id)),
    ],
  };
}

const NOTHING = { session: null, between: [], daily: [], runs: [], other: [], easyOther: [] } as const;

function sessionOn(
  due: readonly DatedExercise[],
  { week, part }: Pick<PlanDay, 'week' | 'part'>,
  begun: Set<string>,
  order: Pick<PlannedSession, 'afterRun' | 'afterOther'>,
): PlannedSession | null {
  const has = ({ fromWeek }: DatedExercise) => fromWeek !== null && fromWeek <= week;
  const done = due.filter(has);
  if (done.length === 0) return null;
  // On the first day of all nothing is told as new; later it is what had to wait, or what a later part brings.
  const fresh = done.filter(({ card, fromWeek }) => !begun.has(card) && (part > 0 || (fromWeek ?? 1) > 1));
  done.forEach(({ card }) => begun.add(card));
  return {
    exercises: namesOf(done),
    begins: namesOf(fresh),
    without: namesOf(due.filter((one) => !has(one))),
    ...order,
  };
}

function namesOf(exercises: readonly DatedExercise[]): string[] {
  return exercises.map(({ exercise }) => exercise);
}

function runsOn(
  { runs, longestShare }: DayPlan,
  on: IsoDate,
  week: PlanFacts['runWeeks'][number] | undefined,
  around: RaceDay,
  { rules, shortestKm }: PlanFacts,
): { planned: PlannedRun[]; lost: Lost[] } {
  const due = (week?.runs ?? []).filter(({ id }) => runs.includes(id));
  if (around.rests) return { planned: [], lost: due.length === 0 ? [] : lostFor(on, around, 'run') };
  // Walking into running leaves a day between, and a race counts as an outing.
  const outings = isBesideRace(on, around) ? due.filter(({ walkRun }) => walkRun !== null) : [];
  const wished = due.filter((run) => !outings.includes(run));
  const easy = around.before !== null || around.after !== null;
  const planned = wished
    .map((run) => (easy ? easyRun(run) : run))
    .map((run) => (around.after === null ? run : noLonger(run, shortestKm)))
    .map((run) => (around.taper === null ? run : shorter(run, rules.raceTaperShare.value)))
    .map((run) =>
      longestShare === null ? run : shorter(run, besideShare(run, longestShare, week?.runs ?? [])),
    )
    .filter(({ km, minutes, walkRun }) => (km ?? minutes ?? walkRun?.cycles ?? 0) > 0);
  const hard = easy ? wished.filter(({ kind }) => runLoad(kind).hard) : [];
  return {
    planned,
    lost: [
      ...hard.flatMap(({ kind }) => lostFor(on, around, 'hard-run', kind)),
      ...outings.flatMap(() => lostFor(on, around, 'outing')),
    ],
  };
}

function isBesideRace(on: IsoDate, { before, daysAfter }: RaceDay): boolean {
  return daysAfter === 1 || (before !== null && daysBetween(on, before.on) === 1);
}

function easyRun(run: PlannedRun): PlannedRun {
  return order(run.kind) <= order('easy') ? run : { ...run, kind: 'easy', fastMinutes: null, climbM: null };
}

function noLonger(run: PlannedRun, mostKm: number | null): PlannedRun {
  return run.km === null || mostKm === null ? run : { ...run, km: Math.min(run.km, mostKm) };
}

/** What is left of the longest run beside something hard: not less than the other runs of its week, which may stand there in full. */
function besideShare({ id, km }: PlannedRun, share: number, runs: readonly PlannedRun[]): number {
  if (km === null || km === 0) return share;
  const due = runs.find((run) => run.id === id)?.km ?? km;
  const others = runs.flatMap((run) => (run.id === id ? [] : (run.km ?? [])));
  return Math.min(1, Math.max(share, ...others.map((other) => other / due)));
}

/** A share of a run (of a longer one it is no longer one), rounded down to 0.1 km, whole minutes, whole turns of walk and run. */
function shorter(run: PlannedRun, share: number): PlannedRun {
  if (run.walkRun !== null) {
    const cycles = Math.max(1, Math.floor(run.walkRun.cycles * share));
    const { runMinutes, walkMinutes } = run.walkRun;
    const walkRun = {
      ...run.walkRun,
      cycles,
      totalRunMinutes: cycles * runMinutes,
      totalWalkMinutes: cycles * walkMinutes,
    };
    return { ...run, walkRun };
  }
  const part = (amount: number | null, grain: number) =>
    amount === null ? null : roundDown(amount * share, grain);
  return {
    ...run,
    kind: run.kind === 'longer' ? 'easy' : run.kind,
    km: part(run.km, 0.1),
    minutes: part(run.minutes, 1),
    fastMinutes: part(run.fastMinutes, 0.1),
    climbM: part(run.climbM, 1),
  };
}

function lostOnRaceDay({ session, other }: DayPlan, on: IsoDate, race: JudgedRace): Lost[] {
  const entry = (what: Lost['what'], name = ''): Lost => ({
    on,
    what,
    name,
    because: 'race-day',
    raceOn: race.on,
  });
  return [...(session ? [entry('session')] : []), ...other.map((id) => entry('other', id))];
}

function lostFor(on: IsoDate, { before, after }: RaceDay, what: Lost['what'], name = ''): Lost[] {
  if (before !== null) return [{ on, what, name, because: 'before-race', raceOn: before.on }];
  return after === null ? [] : [{ on, what, name, because: 'after-race', raceOn: after.on }];
}
