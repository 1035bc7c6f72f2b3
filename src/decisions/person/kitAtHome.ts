/** What there is at home to train with. */
import type { ConsultKit } from '../../content/schema/consult.ts';

/** Whether there is nothing that could make an exercise harder: no weight, no band. */
export function hasNoWeight({
  dumbbellsKg,
  kettlebellsKg,
  bottlesL,
  barKg,
  rucksack,
  bands,
}: ConsultKit): boolean {
  return (
    [dumbbellsKg, kettlebellsKg, bottlesL, bands].every((things) => things.length === 0) &&
    barKg === undefined &&
    !rucksack
  );
}
