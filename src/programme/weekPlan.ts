/** The week of one person: sessions, runs and other hard things on one clock, and their dates up to the review. */
import type { Consult, Stage } from '../content/library.ts';
import { judgeActivities, type JudgedActivity } from '../week/activities.ts';
import { planWeek, type NoWeek, type WeekPlan } from '../week/plan.ts';
import { hardDays } from '../week/recovery.ts';
import type { WeekWish } from '../week/wish.ts';
import { WEEKDAYS } from '../units/weekday.ts';
import { courseOf } from './course.ts';
import type { RunningFacts } from './running.ts';
import type { Choice } from './choose.ts';
import type { Person } from './person.ts';
import { stageNumber, type StageName } from './stageChoice.ts';

export interface WeekFacts {
  readonly plan: WeekPlan;
  /** How hard a session counts on the clock. */
  readonly kind: WeekWish['lifts']['kind'];
  readonly activities: readonly JudgedActivity[];
}

/** The week, or why not even one session finds a day. */
export function weekFacts(
  { consult, protocol }: Person,
  name: StageName,
  stage: Stage,
  kept: readonly Choice[],
  running: RunningFacts,
): WeekFacts | NoWeek {
  const activities = judgeActivities(
    consult.doesNow.map(({ what, times }) => ({ what, timesPerWeek: times })),
    protocol.activities,
    // Nothing is left until later by somebody whom nothing hurts.
    courseOf(protocol, name) === 'prevention' ? Infinity : stageNumber(protocol, name),
    hardDays(recoverer(consult), protocol.week),
  );
  const kind = sessionKind(kept, stage.hoursBetween < protocol.week.heavyHours.value);
  const plan = planWeek(
    wish(consult, stage, kept, kind, running, activities),
    recoverer(consult),
    protocol.week,
  );
  return plan.fits ? { plan, kind, activities } : plan;
}

/**
 * `energy-storage` as soon as anything springs; `light` where everything that is needed is held or only moved, or where
 * the stage spaces its sessions closer than the clock does heavy ones (`closer`) and nothing carries a weight.
 */
export function sessionKind(chosen: readonly Choice[], closer: boolean): WeekWish['lifts']['kind'] {
  const onSession = chosen.filter(({ slot }) => slot.when === 'session');
  if (onSession.some(({ slot }) => slot.dose.kind === 'contacts')) return 'energy-storage';
  const needed = onSession.filter(({ slot }) => slot.needed);
  const still = needed.every(({ slot: { dose } }) => dose.kind === 'hold' || dose.kind === 'mobility');
  const unloaded = onSession.every(({ fit: { load } }) => load.load.loadKg === 0);
  return still || (closer && unloaded) ? 'light' : 'heavy';
}

function wish(
  consult: Consult,
  stage: Stage,
  kept: readonly Choice[],
  kind: WeekWish['lifts']['kind'],
  running: RunningFacts,
  activities: readonly JudgedActivity[],
): WeekWish {
  const when = kept.map(({ slot }) => slot.when);
  return {
    lifts: {
      perWeek: stage.sessionsPerWeek,
      kind,
      hoursBetween: stage.hoursBetween,
      days: consult.days,
    },
    // Once hilly routes are left, an everyday run is not a hard one.
    runs: running.pattern.map(({ id, kind }) => ({ id, kind, features: [] })),
    runDays: WEEKDAYS,
    hillsAndFast: running.plan.hillsAndFast.rule,
    fixed: activities.flatMap(({ what, hardDaysPerWeek }) =>
      Array.from({ length: hardDaysPerWeek }, () => ({ id: what, day: null, recovery: 'heavy' as const })),
    ),
    betweenDays: when.includes('between') ? consult.days : [],
    daily: when.includes('daily'),
  };
}

/** What slows or helps this person's recovery. */
export function recoverer(consult: Consult) {
  const { trainingYears, weeksOff } = consult.running;
  return {
    trainingYears: trainingYears ?? null,
    weeksAway: weeksOff ?? null,
    tired: consult.recovery.tired,
    sleep: consult.recovery.sleep,
  };
}
