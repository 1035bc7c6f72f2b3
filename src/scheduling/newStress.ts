/** What is new to a tendon that comes back to sport, in the order in which it begins (house rules 7 and 11.3). */

/** `springs`: jumps and hops · `strides`: fast drills on foot · then hilly and fast runs. */
const STRESSES = ['springs', 'strides', 'hills-or-strides', 'fast'] as const;
export type Stress = (typeof STRESSES)[number];

export interface NewStress {
  readonly stress: Stress;
  /** The exercises (slot names) that bring it; empty for a run. */
  readonly exercises: readonly string[];
}

/** The stresses of a programme that are not known to the person yet, as they begin: one after the other. */
export function newStresses(there: readonly NewStress[], known: ReadonlySet<Stress>): NewStress[] {
  return STRESSES.flatMap((stress) => {
    const exercises = there.filter((one) => one.stress === stress).flatMap((one) => one.exercises);
    const comes = there.some((one) => one.stress === stress);
    return comes && !known.has(stress) ? [{ stress, exercises }] : [];
  });
}
