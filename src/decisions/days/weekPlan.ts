/** The week of one person: sessions, runs and other hard things on one clock, and their dates up to the review. */
import type { Consult, Stage } from '../../content/library.ts';
import {
  activityPoints,
  asEverydayLoad,
  judgeActivities,
  type JudgedActivity,
} from '../../scheduling/activities.ts';
import { planWeek, type NoWeek, type WeekPlan } from '../../scheduling/plan.ts';
import { reason } from '../../units/reason.ts';
import { hardDays } from '../../scheduling/recovery.ts';
import { longestOf } from '../../scheduling/plannedRun.ts';
import type { RunRow, WeekWish } from '../../scheduling/wish.ts';
import { weekdayOf } from '../../units/date.ts';
import { WEEKDAYS } from '../../units/weekday.ts';
import { courseOf } from '../stage/course.ts';
import type { RunningFacts } from './running.ts';
import type { Choice } from '../candidates/choose.ts';
import type { Person } from '../person/person.ts';
import { stageNumber } from '../stage/stageChoice.ts';
import type { StageName } from '../terms/stageName.ts';

export interface WeekFacts {
  readonly plan: WeekPlan;
  /** How hard a session counts on the clock. */
  readonly kind: WeekWish['lifts']['kind'];
  readonly activities: readonly JudgedActivity[];
  /** Springing work that makes way for sport. */
  readonly setAside: readonly Choice[];
}

/**
 * The week, or why not even one session finds a day. Where sport would have to be left out, the springing work of the
 * session makes way for it first, as sport springs enough, and a session keeps from it what the clock asks instead of
 * the stage's longer spacing [choice]. Where what cannot wait leaves no session a day, it counts as everyday load.
 */
export function weekFacts(
  person: Person,
  name: StageName,
  stage: Stage,
  kept: readonly Choice[],
  running: RunningFacts,
): WeekFacts | NoWeek {
  const { consult, protocol } = person;
  const hard = hardDays(recoverer(consult), protocol.week);
  const judged = judgeActivities(
    consult.doesNow.map(({ what, times, days }) => ({ what, timesPerWeek: times, days: days ?? [] })),
    protocol.activities,
    // Nothing is left until later by somebody whom nothing hurts.
    courseOf(protocol, name) === 'prevention' ? Infinity : stageNumber(protocol, name),
    hard,
    person.maternity?.jumps === false,
  );
  const kindOf = (session: readonly Choice[]) =>
    sessionKind(session, stage.hoursBetween < protocol.week.heavyHours.value);
  const plan = (activities: readonly JudgedActivity[]) =>
    roomiest((session, clearOfOthers) => {
      const asked = wish(
        person,
        name,
        stage,
        kept,
        { kind: kindOf(session), clearOfOthers },
        running,
        activities,
      );
      return planWeek(asked, recoverer(consult), protocol.week);
    }, kept);
  const beside = plan(judged);
  const activities = beside.plan.fits ? judged : asEverydayLoad(judged, hard);
  const best = beside.plan.fits ? beside : plan(activities);
  return best.plan.fits
    ? {
        plan: best.plan,
        kind: kindOf(kept.filter((choice) => !best.setAside.includes(choice))),
        activities,
        setAside: best.setAside,
      }
    : best.plan;
}

interface Roomiest {
  readonly plan: WeekPlan | NoWeek;
  readonly setAside: readonly Choice[];
}

/** The week with the whole session, or the one with the plain session where that leaves more sport in. */
function roomiest(
  planWith: (session: readonly Choice[], clearOfOthers: 'stage' | 'clock') => WeekPlan | NoWeek,
  kept: readonly Choice[],
): Roomiest {
  const whole = planWith(kept, 'stage');
  if (timesLeftOut(whole) === 0) return { plan: whole, setAside: [] };
  const setAside = kept.filter(springs);
  const plain = planWith(
    kept.filter((choice) => !springs(choice)),
    'clock',
  );
  if (!plain.fits || timesLeftOut(plain) >= timesLeftOut(whole)) return { plan: whole, setAside: [] };
  const because = reason('plain-session', {
    slots: setAside.map(({ slot }) => slot.name),
    daysToSport: plain.liftToOthersDays,
    daysBetween: plain.liftGapDays,
  });
  return { plan: { ...plain, gaveUp: [...plain.gaveUp, because] }, setAside };
}

// No week at all leaves out more than any.
function timesLeftOut(plan: WeekPlan | NoWeek): number {
  return plan.fits ? plan.sport.reduce((sum, { leftTimes }) => sum + leftTimes, 0) : Infinity;
}

function springs({ slot }: Choice): boolean {
  return slot.when === 'session' && slot.dose.kind === 'contacts';
}

/**
 * `energy-storage` as soon as anything springs; `light` where everything that is needed is held or only moved, or where
 * the stage spaces its sessions closer than the clock does heavy ones (`closer`) and nothing carries a weight.
 */
function sessionKind(chosen: readonly Choice[], closer: boolean): WeekWish['lifts']['kind'] {
  const onSession = chosen.filter(({ slot }) => slot.when === 'session');
  if (chosen.some(springs)) return 'energy-storage';
  const needed = onSession.filter(({ slot }) => slot.needed);
  const still = needed.every(({ slot: { dose } }) => dose.kind === 'hold' || dose.kind === 'mobility');
  const unloaded = onSession.every(({ fit: { load } }) => load.load.loadKg === 0);
  return still || (closer && unloaded) ? 'light' : 'heavy';
}

function wish(
  person: Person,
  name: StageName,
  stage: Stage,
  kept: readonly Choice[],
  lifts: Pick<WeekWish['lifts'], 'kind' | 'clearOfOthers'>,
  running: RunningFacts,
  activities: readonly JudgedActivity[],
): WeekWish {
  const { consult } = person;
  const when = kept.map(({ slot }) => slot.when);
  return {
    lifts: {
      ...lifts,
      perWeek: stage.sessionsPerWeek,
      hoursBetween: stage.hoursBetween,
      days: consult.days,
    },
    // Once hilly routes are left, an everyday run is not a hard one.
    runs: running.pattern.map(({ id, kind }) => ({ id, kind, features: [] })),
    // The days of the consult are those with time for a session; a run may fall on any.
    runDays: WEEKDAYS,
    longestRun: longestOf(running.pattern),
    runRow: runRowOf(person, name),
    hillsAndFast: running.plan.hillsAndFast.rule,
    ...activityPoints(activities),
    startDay: weekdayOf(consult.startOn),
    betweenDays: when.includes('between') ? consult.days : [],
    daily: when.includes('daily'),
  };
}

/** With a painful tendon few run days follow each other until the stage that opens all running. */
function runRowOf({ consult, protocol }: Person, name: StageName): RunRow | null {
  const { runDaysInRow, runDaysInRowBelowStage } = protocol.week;
  const free =
    courseOf(protocol, name) !== 'treatment' || stageNumber(protocol, name) >= runDaysInRowBelowStage.value;
  return free ? null : { most: runDaysInRow.value, ownRuns: consult.running.runsPerWeek ?? 0 };
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
