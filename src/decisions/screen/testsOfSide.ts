/** The tests of a card that speak for the leg that is treated. */
import type { Consult, ExerciseCard } from '../../content/library.ts';
import { painfulSide } from './painfulSide.ts';

/** Tests of a card; of one that works one leg at a time, none that was done on the other leg alone. */
export function testsOfSide(
  { id, legs }: Pick<ExerciseCard, 'id' | 'legs'>,
  consult: Consult,
): Consult['tests'] {
  const side = painfulSide(consult);
  return consult.tests.filter(
    (one) =>
      one.test === id &&
      (legs === 'together' || one.side === undefined || one.side === 'both' || one.side === side),
  );
}
