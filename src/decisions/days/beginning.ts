/** Exercises that begin later than the programme: the day stands with their days. */
import type { IsoDate } from '../../units/date.ts';
import type { Shown } from './work.ts';
import type { PlanOf } from './datedPlan.ts';
import type { Prescription } from '../session/prescribe.ts';

/** The first day of an exercise that has to wait for its turn; null when it stands in the plan from the beginning. */
export function beginsOn({ plan }: PlanOf, exercise: string): IsoDate | null {
  const first = plan.days.find(({ part, session }) => part === 0 && session?.begins.includes(exercise));
  return first?.on ?? null;
}

/** The rung with the day in the `days` cell of what begins later. */
export function beginning(shown: Shown, dated: PlanOf): Shown {
  return { ...shown, prescriptions: shown.prescriptions.map((one) => withDay(one, dated)) };
}

function withDay(one: Prescription, dated: PlanOf): Prescription {
  const on = one.exercise.slot.when === 'session' ? beginsOn(dated, one.exercise.slot.name) : null;
  if (on === null) return one;
  const cells = one.cells.map((cell) =>
    cell.cell === 'days' ? { ...cell, inputs: { ...cell.inputs, fromDay: on } } : cell,
  );
  return { ...one, cells, beginsOn: on };
}
