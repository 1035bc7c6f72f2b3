/** The ladder of steps within a stage: one kind of thing a step, on as many exercises as it fits, until nothing may grow. */
import {
  burdenAt,
  entriesOf,
  firstMove,
  moveOf,
  sessionLimit,
  stateOf,
  withMove,
  type LadderSearch,
  type LadderLimits,
  type Move,
  type ExerciseHistory,
  type Trial,
} from './ladderSearch.ts';
import { CHANGE_KINDS, type ChangeKind } from './dose.ts';
import type { Measure } from './growth.ts';
import { memoized } from './memoizedMeasure.ts';
import { refuseDose, type DoseRefusal } from './doseRefusal.ts';
import {
  CAPS,
  amountOf,
  type Amount,
  type ProgressionEntry,
  type StepChange,
  type Limit,
  type Prescribed,
  type Rung,
  type Stopped,
} from './rung.ts';
import { STEP_RULES, type LadderExercise, type StepRules } from './step.ts';

/** A consult names a step of at most 60. */
export const MOST_STEPS = 60;

/** How one entry of a progression ended. `cap`: a cap of the stage or of the person stood against more. */
export interface LadderEnd {
  readonly exercise: string;
  readonly change: ChangeKind;
  readonly at: Amount | null;
  readonly reached: 'end' | 'cap' | 'stopped';
  /** Null when it came to its end. */
  readonly stoppedBy: Limit | null;
}

/** The start itself breaks a limit: it is not the ladder's to lower it. `exercise` null: the session as a whole. */
export interface StartFault {
  readonly exercise: string | null;
  readonly limit: Limit;
}

export type Ladder =
  | { readonly rungs: readonly [Rung, ...Rung[]]; readonly ends: readonly LadderEnd[] }
  | DoseRefusal<readonly StartFault[]>;

/**
 * Every rung from the start to where the stage ends, and for every entry of every progression why it went no further.
 * A step raises one kind of thing; what else moves is taken down. No step is more than the limits' growth of the one
 * before in peak squeeze, hip moment, squeeze over time and work, for each exercise, the session and the week, and
 * `measure` admits every rung. The exercise that has moved least chooses; those that want the same join in.
 * None, with every fault, where the start itself breaks a cap or does not fit the session (rules 4).
 */
export function ladderOfSteps(
  exercises: readonly LadderExercise[],
  limits: LadderLimits,
  measure: Measure,
  rules: StepRules = STEP_RULES,
): Ladder {
  const start = exercises.map((exercise) => exercise.start);
  const past = start.map((at) => ({ moves: 0, heaviestKg: at.loadKg, states: new Set([stateOf(at)]) }));
  const climb: LadderSearch = { exercises, limits, rules, measure: memoized(measure), history: past };
  const faults = faultsOf(climb, start);
  if (faults.length > 0) return refuseDose(faults);
  let now: Rung = { step: 1, exercises: start, change: null, changed: [], stopped: [] };
  const rungs: [Rung, ...Rung[]] = [now];
  while (rungs.length < MOST_STEPS) {
    const next = nextRung(climb, now);
    if (!next) break;
    rungs.push(next);
    remember(past, now, next);
    now = next;
  }
  return { rungs, ends: endsOf(climb, now.exercises) };
}

function remember(past: readonly ExerciseHistory[], now: Rung, next: Rung): void {
  past.forEach((one, index) => {
    const at = next.exercises[index] as Prescribed;
    if (at === now.exercises[index]) return;
    one.moves += 1;
    one.heaviestKg = Math.max(one.heaviestKg, at.loadKg);
    one.states.add(stateOf(at));
  });
}

function faultsOf(climb: LadderSearch, start: readonly Prescribed[]): StartFault[] {
  const burdens = start.map((at) => burdenAt(climb, at));
  const faults = start.flatMap(({ exercise }, index): StartFault[] => {
    const limit = burdens[index]?.measured?.refusedBy ?? null;
    return limit === null ? [] : [{ exercise, limit }];
  });
  const limit = sessionLimit(climb, { exercises: start, burdens });
  return limit === null ? faults : [...faults, { exercise: null, limit }];
}

function nextRung(climb: LadderSearch, now: Rung): Rung | null {
  const still = stillOn(climb, now.exercises);
  const moves = (index: number) => climb.history[index]?.moves ?? 0;
  const order = [...climb.history.keys()].sort((a, b) => moves(a) - moves(b) || a - b);
  const stopped: Stopped[] = [];
  for (const leader of order) {
    const first = firstMove(climb, leader, still);
    stopped.push(...first.stopped);
    if (first.move) return joined(climb, now, still, leader, first.move, stopped);
  }
  return null;
}

// The leader's move, and every other exercise whose own next move is of the same kind and still fits beside it.
function joined(
  climb: LadderSearch,
  now: Rung,
  still: Trial,
  leader: number,
  lead: Move,
  stopped: readonly Stopped[],
): Rung {
  let trial = withMove(leader, still, lead.after, burdenAt(climb, lead.after));
  const taken = new Map([[leader, lead]]);
  for (const index of now.exercises.keys()) {
    if (index === leader) continue;
    const { move } = firstMove(climb, index, trial);
    if (move?.change !== lead.change) continue;
    trial = withMove(index, trial, move.after, burdenAt(climb, move.after));
    taken.set(index, move);
  }
  const changed = now.exercises.flatMap((from, index) => {
    const move = taken.get(index);
    return move ? [changedBy(move, from)] : [];
  });
  return { step: now.step + 1, exercises: trial.exercises, change: lead.change, changed, stopped };
}

function changedBy({ change, after, wished, stoppedBy }: Move, before: Prescribed): StepChange {
  const eased = CHANGE_KINDS.flatMap((kind) => {
    const [from, to] = [amountOf(kind, before), amountOf(kind, after)];
    return kind === change || from === to ? [] : [{ change: kind, from, to }];
  });
  const from = amountOf(change, before) as Amount;
  const to = amountOf(change, after) as Amount;
  return { exercise: before.exercise, from, to, wished, stoppedBy, eased };
}

function endsOf(climb: LadderSearch, last: readonly Prescribed[]): LadderEnd[] {
  const still = stillOn(climb, last);
  return last.flatMap((at, index) =>
    entriesOf(climb.exercises[index] as LadderExercise, at).map((entry) =>
      endOf(climb, index, still, at, entry),
    ),
  );
}

function endOf(
  climb: LadderSearch,
  index: number,
  still: Trial,
  at: Prescribed,
  entry: ProgressionEntry,
): LadderEnd {
  const found = moveOf(climb, index, still, entry);
  const end = { exercise: at.exercise, change: entry.change, at: amountOf(entry.change, at) };
  if (found === 'end') return { ...end, reached: 'end', stoppedBy: null };
  // A move that is still open was cut off by the length of the ladder.
  const stoppedBy = 'after' in found ? 'steps' : found.stoppedBy;
  const capped = (CAPS as readonly Limit[]).includes(stoppedBy);
  return { ...end, reached: capped ? 'cap' : 'stopped', stoppedBy };
}

function stillOn(climb: LadderSearch, exercises: readonly Prescribed[]): Trial {
  const below = exercises.map((at) => burdenAt(climb, at));
  return { below, exercises, burdens: below };
}
