/** How hard a set may be at most for someone who must not strain: blood pressure, a hernia, the first weeks after birth. */
import type { StrainBar } from '../terms/strainBar.ts';
import type { Person } from './person.ts';

/** What asks for it; empty for everybody else. */
export function strainBarredBy({
  effects,
  maternity,
}: Pick<Person, 'effects' | 'maternity'>): readonly StrainBar[] {
  const early = maternity !== null && (maternity.kind === 'not-recorded' || isEarly(maternity));
  return [...effects.shortHolds, ...(early ? (['afterBirth'] as const) : [])];
}

// Cleared for running and jumping is not cleared for straining.
function isEarly({ kind, jumps, clearedBy }: NonNullable<Person['maternity']>): boolean {
  return kind === 'after-birth' && (!jumps || clearedBy !== null);
}

/** Repetitions in hand at least; 0 where nothing asks for more than the dose. */
export function reserveAtLeast(person: Pick<Person, 'effects' | 'maternity' | 'protocol'>): number {
  return strainBarredBy(person).length === 0 ? 0 : person.protocol.limits.screenedReserve.value;
}
