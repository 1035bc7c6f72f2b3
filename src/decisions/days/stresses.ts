/** Which stresses a programme holds, and which of them this person knows already. */
import type { ExerciseCard, Slot } from '../../content/library.ts';
import { type NewStress, newStresses, type Stress } from '../../scheduling/newStress.ts';
import { type RunKind, order } from '../../scheduling/run.ts';
import type { WeekPlan } from '../../scheduling/plan.ts';
import type { Choice } from '../candidates/choose.ts';
import type { Bounds, Person } from '../person/person.ts';
import type { Earlier } from '../terms/earlier.ts';
import type { RunningFacts } from './running.ts';
import { stageNumber } from '../stage/stageChoice.ts';

/** Jumps and fast drills: what rests in the easy days after a race, and begins one at a time. */
export function springs({ kind }: Pick<ExerciseCard, 'kind'>, { dose }: Pick<Slot, 'dose'>): boolean {
  return stressOf({ kind }, { dose }) !== null;
}

function stressOf({ kind }: Pick<ExerciseCard, 'kind'>, { dose }: Pick<Slot, 'dose'>): Stress | null {
  if (kind === 'running-drill') return 'strides';
  return kind === 'energy-storage' || dose.kind === 'contacts' ? 'springs' : null;
}

/** The new stresses among the exercises and among the runs that found a day, in the order in which they begin. */
export function stressesToBegin(
  kept: readonly Choice[],
  { pattern, plan }: RunningFacts,
  week: WeekPlan,
  person: Person,
  bounds: Bounds,
  earlier: Earlier | null,
): NewStress[] {
  const placed = new Set(week.days.flatMap(({ runs }) => runs));
  const kinds = new Set(
    plan.weeks.flatMap(({ runs }) => runs.filter(({ id }) => placed.has(id)).map(({ kind }) => kind)),
  );
  const runs = pattern.length === 0 ? [] : RUN_STRESSES.filter((kind) => kinds.has(kind));
  return newStresses(
    [
      ...kept.flatMap(({ slot, fit }) => {
        const stress = stressOf(fit.card, slot);
        return stress === null ? [] : [{ stress, exercises: [slot.name] }];
      }),
      ...runs.map((stress) => ({ stress, exercises: [] })),
    ],
    knownStresses(person, bounds, earlier),
  );
}

const RUN_STRESSES = ['hills-or-strides', 'fast'] as const;
/** What was done in the revision before, and what is done now and was admitted by the stage before. */
function knownStresses(person: Person, bounds: Bounds, earlier: Earlier | null): ReadonlySet<Stress> {
  return new Set([...knownRuns(person, bounds), ...doneBefore(person, earlier)]);
}

function knownRuns({ consult, protocol }: Person, { name }: Bounds): Stress[] {
  const before = protocol.stages[stageNumber(protocol, name) - 2];
  // Where no stage comes before, what is done now was never held back.
  const admitted = (kind: RunKind) => before === undefined || order(before.running.most) >= order(kind);
  const { hills, speed } = consult.running;
  return RUN_STRESSES.filter((kind) => admitted(kind) && (kind === 'fast' ? speed : hills) === true);
}

function doneBefore({ protocol, library }: Person, earlier: Earlier | null): Stress[] {
  if (earlier === null || earlier.protocol !== protocol.id) return [];
  const slots = new Map(protocol.stages.flatMap(({ slots: all }) => all.map((slot) => [slot.name, slot])));
  const exercises = earlier.plan.flatMap(({ sessions }) => sessions.flatMap((one) => one.exercises));
  return [
    ...exercises.flatMap(({ card, slot }) => {
      const [its, place] = [library.exercises.get(card), slots.get(slot)];
      return its === undefined || place === undefined ? [] : (stressOf(its, place) ?? []);
    }),
    ...RUN_STRESSES.filter((kind) => earlier.plan.some(({ runs }) => runs.some((run) => run.kind === kind))),
  ];
}
