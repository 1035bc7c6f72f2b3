/** Tested sets that hurt: what they hold the load below, and where they contradict a heavier one that did not hurt. */
import { isPosed, type PosedCard } from '../person/model.ts';
import { cardOf, type Person } from '../person/person.ts';
import type { ConsultSet } from '../terms/testedReason.ts';
import { ownSets } from './tested.ts';

/** The lightest load that hurt at this range or before it, kg; Infinity where none did. Null: over every range. */
export function painfulFromKg(card: PosedCard, rangeDeg: number | null, person: Person): number {
  const hurt = painfulSets(card, person).filter(
    (set) => rangeDeg === null || set.rangeDeg === undefined || set.rangeDeg <= rangeDeg,
  );
  return Math.min(Infinity, ...hurt.map(({ loadKg }) => loadKg));
}

function painfulSets(card: PosedCard, person: Person): readonly ConsultSet[] {
  return ownSets(card, person).filter(({ pain }) => pain > person.protocol.limits.testPainAtMost.value);
}

/** A lighter set that hurt beside a heavier one of the same card that did not. */
export interface Contradiction {
  readonly card: string;
  readonly painful: ConsultSet;
  readonly painless: ConsultSet;
}

/** Every card whose sets contradict each other, with its lightest painful and its heaviest painless set. */
export function contradictions(person: Person): readonly Contradiction[] {
  const cards = new Set(person.consult.testedSets.map(({ card }) => card));
  return [...cards].flatMap((id) => {
    const card = cardOf(person, id);
    if (!isPosed(card)) return [];
    const sets = ownSets(card, person);
    const hurt = painfulSets(card, person);
    const painful = hurt.toSorted((a, b) => a.loadKg - b.loadKg).at(0);
    const painless = sets
      .filter((set) => !hurt.includes(set))
      .toSorted((a, b) => a.loadKg - b.loadKg)
      .at(-1);
    if (painful === undefined || painless === undefined) return [];
    return contradict(painful, painless) ? [{ card: id, painful, painless }] : [];
  });
}

function contradict(painful: ConsultSet, painless: ConsultSet): boolean {
  const further = painful.rangeDeg !== undefined && painless.rangeDeg !== undefined;
  return (
    painful.loadKg <= painless.loadKg &&
    !(further && (painful.rangeDeg as number) > (painless.rangeDeg as number))
  );
}
