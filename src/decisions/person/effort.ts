/** How hard a set, and how long a hold, may be for someone who must not strain: blood pressure, a hernia, pregnancy, the first weeks after birth. */
import type { StrainBar } from '../terms/strainBar.ts';
import type { Person } from './person.ts';

/** What asks for short holds; empty for everybody else. */
export function shortHoldsBy({
  effects,
  maternity,
}: Pick<Person, 'effects' | 'maternity'>): readonly StrainBar[] {
  const early = maternity !== null && (maternity.kind === 'not-recorded' || isEarly(maternity));
  return [...effects.shortHolds, ...(early ? (['afterBirth'] as const) : [])];
}

/** What asks to end a set early: the same, and pregnancy, in which no breath is held for the last repetitions [choice]. */
export function strainBarredBy(person: Pick<Person, 'effects' | 'maternity'>): readonly StrainBar[] {
  const pregnant = person.maternity?.kind === 'pregnant';
  return [...shortHoldsBy(person), ...(pregnant ? (['pregnancy'] as const) : [])];
}

// Cleared for running and jumping is not cleared for straining.
function isEarly({ kind, jumps, clearedBy }: NonNullable<Person['maternity']>): boolean {
  return kind === 'after-birth' && (!jumps || clearedBy !== null);
}

/** Repetitions in hand at least; 0 where nothing asks for more than the dose. */
export function reserveAtLeast(person: Pick<Person, 'effects' | 'maternity' | 'protocol'>): number {
  return strainBarredBy(person).length === 0 ? 0 : person.protocol.limits.screenedReserve.value;
}
