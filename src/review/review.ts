/** From what was written down to what comes next: for each exercise, the step and the stage, with every ground. */
import type { StageName } from '../decisions/terms/stageName.ts';
import { exerciseReview, sourceOf } from './exercise.ts';
import { periodOf, type Period, type ReviewFacts } from './facts.ts';
import type { Work } from './goingOn.ts';
import { morningsOf } from './mornings.ts';
import { runningReview, runsDone } from './running.ts';
import { sessionDays } from './sessions.ts';
import { standsApart } from './betweenWork.ts';
import { seriesOf } from './series.ts';
import { sittingReview } from './sitting.ts';
import { nextStage, stepGrounds } from './step.ts';
import {
  gentler,
  gentlestOf,
  type Ask,
  type Because,
  type ExerciseReview,
  type GoalReview,
  type Move,
  type Review,
} from './terms.ts';
import { weeksOf } from './weeks.ts';
import { ask, asksOf } from './unknown.ts';

/** Missing or contradictory data never move anything on; more pain or fewer sessions never do sooner. */
export function reviewOf(facts: ReviewFacts): Review {
  const period = periodOf(facts);
  const work: Work = { sessions: sessionDays(period), mornings: morningsOf(period) };
  const own = period.entries.length === 0 ? [] : exercisesOf(period);
  const grounds = [...stepGrounds(work, period), ...heldBy(own, work, period)];
  const whole = gentlestOf(grounds);
  const place = placeAfter(whole, grounds, period);
  const exercises = own.length > 0 ? own : facts.earlier.exercises.map((one) => exerciseReview(one, period));
  const scores = work.mornings.flatMap(({ score }) => score ?? []);
  return {
    alias: facts.consult.alias,
    revision: facts.earlier.revision,
    from: period.from,
    until: period.until,
    decision: place.decision,
    stage: place.stage,
    step: place.step,
    before: { stage: facts.earlier.stage, step: facts.earlier.step },
    because: [...grounds, ...place.because].filter(
      ({ rule }) => place.decision === 'moveOn' || rule !== 'all-met',
    ),
    exercises: exercises.map((one) => within(one, whole)),
    running: runningReview(period, grounds),
    sitting: sittingReview(period, whole),
    goals: goalsOf(period),
    weeks: weeksOf(work.sessions, period),
    series: seriesOf(work, period),
    runsDone: runsDone(period),
    asks: [...asksOf(work, exercises, grounds, period), ...place.asks],
    counts: {
      sessionsDone: work.sessions.filter(({ done }) => done).length,
      sessionsPlanned: work.sessions.filter(({ planned }) => planned).length,
      stageSessions: facts.stageSessionsBefore + work.sessions.filter(({ done }) => done).length,
      worstMorning: scores.length === 0 ? null : Math.max(...scores),
      lastMorning: scores.at(-1) ?? null,
    },
  };
}

function exercisesOf(period: Period): readonly ExerciseReview[] {
  return period.earlier.exercises.map((one) => exerciseReview(one, period));
}

// A step is one thing for the whole session: an exercise that hurt holds it. How much was done the session says itself.
function heldBy(exercises: readonly ExerciseReview[], work: Work, period: Period): Because[] {
  const hurts = ({ rule, move }: Because) =>
    move !== 'moveOn' && rule !== 'missing-doneSessions' && rule !== 'between-not-written';
  const holding = exercises.filter(
    ({ card, because }) => because.some(hurts) && !standsApart(card, work, period),
  );
  if (holding.length === 0) return [];
  return [
    {
      rule: 'exercise-holds',
      move: 'stay',
      inputs: { cards: holding.map(({ card }) => card).join(' ') },
      source: sourceOf(period.protocol.painRule.duringAtMost, 'house rules 4 and 5'),
      entries: holding.flatMap(({ because }) => because.filter(hurts).flatMap(({ entries }) => entries)),
    },
  ];
}

// An exercise by itself never goes on beyond the whole; what eases by itself eases more.
function within(one: ExerciseReview, whole: Move): ExerciseReview {
  return { ...one, decision: gentler(one.decision, whole) };
}

interface PlaceAfter {
  readonly decision: Move;
  readonly stage: StageName;
  readonly step: number;
  readonly because: readonly Because[];
  readonly asks: readonly Ask[];
}

function placeAfter(whole: Move, grounds: readonly Because[], period: Period): PlaceAfter {
  const { stage, step } = period.earlier;
  const back = Math.max(1, step - 1);
  const toStart = grounds.some(({ rule, move }) => rule === 'long-away' && move === 'startAgain');
  if (whole === 'moveOn') return period.isLastStep ? pastLastStep(period) : at(whole, stage, step + 1);
  if (whole === 'stay') return at(whole, stage, step);
  return at(whole, stage, toStart ? 1 : back);
}

function at(decision: Move, stage: StageName, step: number): PlaceAfter {
  return { decision, stage, step, because: [], asks: [] };
}

// The next stage opens by its tests as well, which no log can hold: they are asked for, and decide in the consult.
function pastLastStep(period: Period): PlaceAfter {
  const { stage, step } = period.earlier;
  const next = nextStage(period);
  const source = sourceOf(period.protocol.goingOn.leastSessions, 'house rules 4');
  if (next.name === null) {
    const inputs = { stage: String(stage) };
    return {
      ...at('stay', stage, step),
      because: [{ rule: 'last-stage', move: 'stay', inputs, source, entries: [] }],
    };
  }
  return {
    ...at('moveOn', next.name, 1),
    because: [
      { rule: 'stage-met', move: 'moveOn', inputs: { stage: String(next.name) }, source, entries: [] },
    ],
    asks: [ask('tests', [], { stage: String(next.name) })],
  };
}

function goalsOf({ consult, protocol }: Period): readonly GoalReview[] {
  return consult.goals.map(({ what, on, doneTimes }) => ({
    what,
    on: on ?? null,
    doneTimes: doneTimes ?? null,
    neededTimes: protocol.discharge.goalDoneTimes.value,
  }));
}
