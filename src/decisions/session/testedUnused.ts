/** Exercises that were tested with a weight, tolerated, and are not in the session all the same: nobody should have to look for why. */
import type { StageChoice } from '../terms/stageChoice.ts';
import type { PassedOver } from '../terms/passedOver.ts';
import { cardOf, type Person } from '../person/person.ts';
import type { Prescription } from './prescribe.ts';

export interface TestedUnused {
  readonly title: string;
  readonly loadKg: number;
  readonly why: PassedOver['why'];
  /** Title of what stands in its slot; null where nothing does. */
  readonly instead: string | null;
}

interface Looked {
  readonly person: Person;
  readonly stage: StageChoice;
  readonly passedOver: readonly PassedOver[];
  readonly shown: readonly [
    { readonly prescriptions: readonly Prescription[] },
    ...{ readonly prescriptions: readonly Prescription[] }[],
  ];
}

/** In the order they were passed over in the present stage, each once. */
export function testedUnused({ person, passedOver, shown, stage }: Looked): TestedUnused[] {
  const [{ prescriptions }] = shown;
  const used = new Set(prescriptions.flatMap(({ exercise }) => exercise.fits.map(({ card }) => card.id)));
  const here = passedOver.filter(({ stage: of, card }) => of === stage.chosen && !used.has(card));
  const once = [...new Map(here.map((one) => [one.card, one])).values()];
  return once.flatMap(({ card, slot, why }) => {
    const loadKg = heaviestKg(card, person);
    if (loadKg === null) return [];
    const instead = prescriptions.find(({ exercise }) => exercise.slot.name === slot)?.card.title ?? null;
    return [{ title: cardOf(person, card).title, loadKg, why, instead }];
  });
}

function heaviestKg(card: string, { consult, protocol }: Person): number | null {
  const loads = consult.testedSets
    .filter((set) => set.card === card && set.pain <= protocol.limits.testPainAtMost.value)
    .map(({ loadKg }) => loadKg);
  return loads.length === 0 ? null : Math.max(...loads);
}
