/** The dated plan of one person: races judged, turns taken, parts put together, every day decided once. */
import { datedPlan, type DatedPlan, type PlanPart } from '../../scheduling/datedPlan.ts';
import type { NewStress } from '../../scheduling/newStress.ts';
import type { JudgedRace } from '../../scheduling/race.ts';
import { touchesRace } from '../../scheduling/raceDays.ts';
import { order, type RunKind } from '../../scheduling/run.ts';
import { weekFrames } from '../../scheduling/runningPlan.ts';
import type { RunWeekRule } from '../../scheduling/runWeek.ts';
import { takeTurns, type Turn, type Waiting } from '../../scheduling/turns.ts';
import { ownDays, ownEntries } from '../session/overrides.ts';
import type { Outlook } from './outlook.ts';
import type { Bounds, Person } from '../person/person.ts';
import type { Earlier } from '../terms/earlier.ts';
import { racesOf } from './races.ts';
import { datedRunning, type RunningFacts } from './running.ts';
import type { Session } from '../session/session.ts';
import type { SittingPlan } from './sitting.ts';
import { stressesToBegin } from './stresses.ts';
import { type WeekFacts } from './weekPlan.ts';

/** One part of the plan as it was decided: the present one, or a later rung of a protocol that goes by weeks. */
export interface PartFacts {
  readonly from: PlanPart['from'];
  readonly week: WeekFacts;
  readonly session: Session;
}

export interface PlanOf {
  readonly plan: DatedPlan;
  readonly running: RunningFacts;
  readonly races: readonly JudgedRace[];
  /** Exercises (slot names) whose turn comes only after the review. */
  readonly waits: readonly string[];
}

/** What a plan is made from beside the person. */
export interface PlanMakings {
  readonly bounds: Bounds;
  readonly parts: readonly [PartFacts, ...PartFacts[]];
  readonly step: number;
  readonly running: RunningFacts;
  readonly sitting: SittingPlan;
  readonly outlook: Outlook;
  readonly earlier: Earlier | null;
}

/** Decided in this order: races, what grows in which week, the runs of each week, and then each day. */
export function planOf(person: Person, makings: PlanMakings): PlanOf {
  const { consult, protocol } = person;
  const { bounds, parts, running } = makings;
  const [present] = parts;
  const kept = present.session.exercises.map(({ slot, fits: [fit] }) => ({ slot, fit }));
  const begins = stressesToBegin(kept, running, present.week.plan, person, bounds, makings.earlier);
  const races = racesOf(person, bounds.name, running, makings.outlook, begins);
  const standing = races.filter(({ inPlan }) => inPlan);
  const turns = turnsOf(person, makings, begins, standing);
  const dates = { startOn: consult.startOn, reviewOn: consult.reviewOn };
  const dated = datedRunning(running, person, dates, weekRules(person, turns, begins));
  const made = datedPlan({
    ...dates,
    parts: parts.map((part, index) =>
      partOf(part, person, index === 0 ? startsOf(begins, turns) : new Map()),
    ) as [PlanPart, ...PlanPart[]],
    runWeeks: dated.plan.weeks,
    races: standing,
    shortestKm: shortestKm(running),
    turns,
    rules: protocol.runningRules,
  });
  const begun = new Set(
    made.days.flatMap(({ part, session }) => (part === 0 ? (session?.exercises ?? []) : [])),
  );
  const waits = begins.flatMap(({ exercises }) => exercises).filter((exercise) => !begun.has(exercise));
  return { plan: made, running: dated, races, waits };
}

function shortestKm({ pattern }: RunningFacts): number | null {
  const kms = pattern.flatMap(({ km }) => km ?? []);
  return kms.length === 0 ? null : Math.min(...kms);
}

function turnsOf(
  { consult, protocol }: Person,
  { parts, step, running, sitting }: PlanMakings,
  begins: readonly NewStress[],
  races: readonly JudgedRace[],
): Turn[] {
  const { raceTaperDays } = protocol.runningRules;
  const rooms = weekFrames(consult).map((frame) => ({
    newRung: parts.some(({ from }, index) => index > 0 && from === frame.from),
    disturbed: touchesRace(frame, races, raceTaperDays.value),
  }));
  const [{ session, week }] = parts;
  const sessions = Math.max(1, week.plan.days.filter((day) => day.session).length);
  const { leastDays, leastSessions } = protocol.goingOn;
  const stepDays = Math.max(leastDays.value, Math.ceil((leastSessions.value * 7) / sessions));
  const { mayGrow } = running.plan;
  const waiting: Waiting[] = [
    {
      what: 'exercises',
      // A protocol that goes by weeks takes its own steps.
      times: parts.length > 1 ? 0 : session.ladder.rungs.length - step,
      weeksApart: Math.ceil(stepDays / 7),
    },
    { what: 'running', times: mayGrow.what === 'nothing' ? 0 : Infinity, weeksApart: mayGrow.weeksApart },
    { what: 'sitting', times: sitting.now === null ? 0 : sitting.budget.steps.length - 1, weeksApart: 1 },
    { what: 'stepRate', times: running.stepRate === null ? 0 : 1, weeksApart: 1 },
  ];
  return takeTurns(rooms, begins, waiting);
}

function weekRules({ consult }: Person, turns: readonly Turn[], begins: readonly NewStress[]): RunWeekRule[] {
  const newRuns = begins
    .filter(({ exercises }) => exercises.length === 0)
    .map(({ stress }) => stress as RunKind);
  return weekFrames(consult).map((_, index) => {
    const begun = turns.slice(0, index + 1).map((turn) => turn.begins);
    const closed = newRuns.filter((kind) => !begun.some((one) => one === kind));
    const turn = turns[index];
    return {
      // What a race does to a run is decided day by day.
      keptEasy: false,
      grows: turn?.grows === 'running' && turn.because === 'turn',
      opens: hardestBelow(closed),
    };
  });
}

/** The hardest kind of run that is not beyond the first of those that have not begun. */
function hardestBelow(closed: readonly RunKind[]): RunKind {
  if (closed.length === 0) return 'fast';
  return Math.min(...closed.map(order)) === order('fast') ? 'hills-or-strides' : 'steady';
}

/** The first week of every exercise that has to wait for its turn; null when it has none before the review. */
function startsOf(begins: readonly NewStress[], turns: readonly Turn[]): ReadonlyMap<string, number | null> {
  return new Map(
    begins.flatMap(({ stress, exercises }) =>
      exercises.map((exercise) => [exercise, turns.find((turn) => turn.begins === stress)?.week ?? null]),
    ),
  );
}

function partOf(
  { from, week, session }: PartFacts,
  { consult }: Person,
  starts: ReadonlyMap<string, number | null>,
): PlanPart {
  return {
    from,
    week: week.plan,
    kind: week.kind,
    exercises: session.exercises.map(({ slot, fits: [{ card }] }) => ({
      exercise: slot.name,
      card: card.id,
      when: slot.when,
      fromWeek: starts.has(slot.name) ? (starts.get(slot.name) ?? null) : 1,
      ownDays: ownDays(ownEntries(card.id, consult)),
    })),
  };
}
