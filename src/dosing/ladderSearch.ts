/** Whether one exercise may take a step, beside what the others of the session have become. */
import { triesOf } from './tries.ts';
import type { ChangeKind } from './dose.ts';
import {
  burdenOf,
  exerciseGrowth,
  sessionGrowth,
  type Burden,
  type GrowthLimits,
  type Measure,
} from './growth.ts';
import type { Amount, ProgressionEntry, Limit, Prescribed, Stopped } from './rung.ts';
import { mayChange } from './kinds.ts';
import { daySeconds } from './session.ts';
import { cardOf, type LadderExercise, type Standing, type StepRules, type Tries } from './step.ts';

export interface LadderLimits extends GrowthLimits {
  /** The stage's cap of squeeze, body weights; null where it is lifted. */
  readonly compressionCapBw: number | null;
  /** Exercises of one session above half that cap, at most. */
  readonly cardsAboveHalfCap: number;
  /** Minutes there are on a day; null where they do not count. */
  readonly minutes: number | null;
}

/** What stays the same on the way up, and what each exercise has been through. */
export interface LadderSearch {
  readonly exercises: readonly LadderExercise[];
  readonly limits: LadderLimits;
  readonly rules: StepRules;
  readonly measure: Measure;
  readonly history: readonly ExerciseHistory[];
}

export interface ExerciseHistory {
  /** Steps in which the exercise took part. */
  moves: number;
  heaviestKg: number;
  /** States it has been in, so that easing never leads in a circle. */
  readonly states: Set<string>;
}

/** The next rung half put together: the burdens of the rung below, the exercises as they are so far, their burdens. */
export interface Trial {
  readonly below: readonly Burden[];
  readonly exercises: readonly Prescribed[];
  readonly burdens: readonly Burden[];
}

export interface Move {
  readonly change: ChangeKind;
  readonly after: Prescribed;
  readonly wished: Amount;
  /** What stood against the wish, where less was taken. */
  readonly stoppedBy: Limit | null;
}

/** The first entry of an exercise's progression that can move, and the entries before it with what stopped them. */
export function firstMove(
  climb: LadderSearch,
  index: number,
  trial: Trial,
): { readonly move: Move | null; readonly stopped: readonly Stopped[] } {
  const stopped: Stopped[] = [];
  const exercise = climb.exercises[index] as LadderExercise;
  const at = trial.exercises[index] as Prescribed;
  for (const entry of entriesOf(exercise, at)) {
    const found = moveOf(climb, index, trial, entry);
    if (found === 'end') continue;
    if ('after' in found) return { move: found, stopped };
    stopped.push({ exercise: at.exercise, change: entry.change, ...found });
  }
  return { move: null, stopped };
}

/** What one entry can do now: a move, its end, or what stops even its gentlest form. */
export function moveOf(
  climb: LadderSearch,
  index: number,
  trial: Trial,
  entry: ProgressionEntry,
): Move | 'end' | { readonly wished: Amount; readonly stoppedBy: Limit } {
  return tried(climb, index, trial, triesOf(entry, standingOf(climb, index, trial)));
}

function tried(climb: LadderSearch, index: number, trial: Trial, tries: Tries): ReturnType<typeof moveOf> {
  if (tries.kind === 'end') return 'end';
  if (tries.kind === 'stopped') return { wished: tries.wished, stoppedBy: tries.stoppedBy };
  const { change, wished } = tries;
  let first: Limit | null = null;
  let last: Limit = 'alreadyLeft';
  for (const after of tries.attempts) {
    const limit = limitOf(climb, index, trial, after);
    if (limit === null) return { change, after, wished, stoppedBy: first };
    first ??= limit;
    last = limit;
  }
  if (last === 'minutes' && tries.forLackOfMinutes !== undefined)
    return tried(climb, index, trial, tries.forLackOfMinutes);
  return { wished, stoppedBy: last };
}

/** The entries of a progression in the order in which they are asked. Without a weight: repetitions, lever, range, load (rules 4). */
export function entriesOf(
  { progression }: LadderExercise,
  { loadKg, dose }: Prescribed,
): readonly ProgressionEntry[] {
  const loadable = mayChange(dose.kind, 'load') && progression.some((entry) => entry.change === 'load');
  const unloaded = loadable && loadKg === 0 && dose.repetitions !== null;
  if (!unloaded) return progression;
  const order: readonly ChangeKind[] = ['repetitions', 'lever', 'range', 'load'];
  const first = order.flatMap(
    (change) => progression.find((entry) => entry.change === change) ?? implied(change),
  );
  return [...first, ...progression.filter((entry) => !order.includes(entry.change))];
}

/** The trial with one exercise as it would be after its move. */
export function withMove(index: number, trial: Trial, after: Prescribed, burden: Burden): Trial {
  return {
    below: trial.below,
    exercises: trial.exercises.with(index, after),
    burdens: trial.burdens.with(index, burden),
  };
}

/** The burden of an exercise as the climb's model measures it. */
export function burdenAt({ measure }: LadderSearch, at: Prescribed): Burden {
  const { tempo, kind } = at.dose;
  return burdenOf(at, measure(at.card, { rangeDeg: at.rangeDeg, loadKg: at.loadKg, tempo, kind }));
}

/** What stands against a session as a whole: too many cards above half the cap, or too many minutes; or null. */
export function sessionLimit(
  climb: LadderSearch,
  { exercises, burdens }: Omit<Trial, 'below'>,
): Limit | null {
  const { compressionCapBw, cardsAboveHalfCap, minutes } = climb.limits;
  for (const other of ['session', 'between'] as const) {
    const together = [...exercises.keys()].filter((index) => climb.exercises[index]?.when !== other);
    const above = together.filter(
      (index) => (burdens[index]?.measured?.compressionBw ?? 0) > (compressionCapBw ?? Infinity) / 2,
    );
    if (above.length > cardsAboveHalfCap) return 'cardsAboveHalfCap';
    if (
      minutes !== null &&
      daySeconds(together.map((index) => timed(climb, exercises, index))) > minutes * 60
    )
      return 'minutes';
  }
  return null;
}

/** One state of one exercise as text, to know it again. */
export function stateOf({ card, rangeDeg, loadKg, daysPerWeek, dose }: Prescribed): string {
  const { sets, repetitions, holdSeconds, tempo } = dose;
  return `${card} ${rangeDeg} ${loadKg} ${daysPerWeek} ${sets} ${repetitions} ${holdSeconds} ${tempo.goSeconds} ${tempo.backSeconds}`;
}

function standingOf(climb: LadderSearch, index: number, trial: Trial): Standing {
  return {
    exercise: climb.exercises[index] as LadderExercise,
    at: trial.exercises[index] as Prescribed,
    heaviestKg: climb.history[index]?.heaviestKg ?? 0,
    rules: climb.rules,
    capOn: (at) => burdenAt(climb, at).measured?.refusedBy ?? null,
  };
}

// The exercise alone first: most attempts fail there, and the session need not be put together for them.
function limitOf(climb: LadderSearch, index: number, trial: Trial, after: Prescribed): Limit | null {
  const burden = burdenAt(climb, after);
  const alone = exerciseGrowth(trial.below[index] as Burden, burden, climb.limits);
  if (alone !== null) return alone;
  if (climb.history[index]?.states.has(stateOf(after))) return 'alreadyLeft';
  const next = withMove(index, trial, after, burden);
  return sessionGrowth(trial.below, next.burdens, climb.limits) ?? sessionLimit(climb, next);
}

function timed({ exercises }: LadderSearch, now: readonly Prescribed[], index: number) {
  const at = now[index] as Prescribed;
  const exercise = exercises[index] as LadderExercise;
  const { setUpSeconds, sideChangeSeconds } = exercise;
  const { legs } = cardOf(exercise, at);
  return { exercise: at.exercise, dose: at.dose, legs, setUpSeconds, sideChangeSeconds };
}

// Repetitions and a harder card come before a first weight even where the progression does not name them.
function implied(change: ChangeKind): ProgressionEntry[] {
  return change === 'repetitions' || change === 'lever' ? [{ change, by: null, to: null }] : [];
}
