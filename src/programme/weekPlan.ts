/** The week of one person: sessions, runs and other hard things on one clock, and their dates up to the review. */
import type { Consult, Protocol, Stage } from '../content/library.ts';
import { judgeActivities, type JudgedActivity } from '../week/activities.ts';
import { datedSessions, type DatedEntry } from '../week/dates.ts';
import { planWeek, type NoWeek, type WeekPlan } from '../week/plan.ts';
import type { WeekWish } from '../week/wish.ts';
import { WEEKDAYS } from '../units/weekday.ts';
import type { RunningFacts } from './running.ts';
import type { StageName } from './stageChoice.ts';

export interface WeekFacts {
  readonly plan: WeekPlan;
  readonly entries: readonly DatedEntry[];
  readonly activities: readonly JudgedActivity[];
}

/** The week, or why not even one session finds a day. */
export function weekFacts(
  consult: Consult,
  protocol: Protocol,
  name: StageName,
  stage: Stage,
  running: RunningFacts,
): WeekFacts | NoWeek {
  const activities = judgeActivities(
    consult.doesNow.map(({ what, times }) => ({ what, timesPerWeek: times })),
    protocol.activities,
    name === 'keep' ? protocol.stages.length : name,
  );
  const plan = planWeek(wish(consult, stage, running, activities), recoverer(consult), protocol.week);
  return plan.fits
    ? { plan, entries: datedSessions(plan, consult.startOn, consult.reviewOn), activities }
    : plan;
}

/** `energy-storage` as soon as anything springs, `light` where everything is held or only moved. */
export function sessionKind(stage: Stage): WeekWish['lifts']['kind'] {
  const kinds = stage.slots.map(({ dose }) => dose.kind);
  if (kinds.includes('contacts')) return 'energy-storage';
  const main = stage.slots.filter(({ needed }) => needed).map(({ dose }) => dose.kind);
  return main.every((kind) => kind === 'hold' || kind === 'mobility') ? 'light' : 'heavy';
}

function wish(
  consult: Consult,
  stage: Stage,
  running: RunningFacts,
  activities: readonly JudgedActivity[],
): WeekWish {
  const when = stage.slots.map((slot) => slot.when);
  return {
    lifts: {
      perWeek: stage.sessionsPerWeek,
      kind: sessionKind(stage),
      hoursBetween: stage.hoursBetween,
      days: consult.days,
    },
    // Once hilly routes are left, an everyday run is not a hard one.
    runs: (running.plan.weeks[0]?.runs ?? []).map(({ id, kind }) => ({ id, kind, features: [] })),
    runDays: WEEKDAYS,
    hillsAndFast: running.plan.hillsAndFast.rule,
    fixed: activities.flatMap(({ what, hardDaysPerWeek }) =>
      Array.from({ length: hardDaysPerWeek }, () => ({ id: what, day: null, recovery: 'heavy' as const })),
    ),
    betweenDays: when.includes('between') ? consult.days : [],
    daily: when.includes('daily'),
  };
}

function recoverer(consult: Consult) {
  const { trainingYears, weeksOff } = consult.running;
  return {
    trainingYears: trainingYears ?? null,
    weeksAway: weeksOff ?? null,
    tired: consult.recovery.tired,
    sleep: consult.recovery.sleep,
  };
}
