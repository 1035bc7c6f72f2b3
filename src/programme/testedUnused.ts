/** Exercises that were tested with a weight, tolerated, and are not in the session all the same: nobody should have to look for why. */
import type { Decided } from './decide.ts';
import { cardOf } from './person.ts';
import type { TestedUnused } from './phrases/entry.ts';

/** In the order they were passed over in the present stage, each once. */
export function testedUnused({ person, passedOver, shown, stage }: Decided): TestedUnused[] {
  const [{ prescriptions }] = shown;
  const used = new Set(prescriptions.flatMap(({ exercise }) => exercise.fits.map(({ card }) => card.id)));
  const here = passedOver.filter(({ stage: of, card }) => of === stage.chosen && !used.has(card));
  const once = [...new Map(here.map((one) => [one.card, one])).values()];
  return once.flatMap(({ card, slot, because }) => {
    const loadKg = heaviestKg(card, person);
    if (loadKg === null) return [];
    const instead = prescriptions.find(({ exercise }) => exercise.slot.name === slot)?.card.title ?? null;
    return [{ title: cardOf(person, card).title, loadKg, because, instead }];
  });
}

function heaviestKg(card: string, { consult, protocol }: Decided['person']): number | null {
  const loads = consult.testedSets
    .filter((set) => set.card === card && set.pain <= protocol.limits.testPainAtMost.value)
    .map(({ loadKg }) => loadKg);
  return loads.length === 0 ? null : Math.max(...loads);
}
