/** Easier and harder cards against what the model says of them. */
import type { ExerciseCard, Library } from '../../content/library.ts';
import type { PlaceOf } from '../../content/place.ts';
import type { Problem } from '../../content/problem.ts';
import { REFERENCE_BODY } from '../../mechanics/body.ts';
import { NOT_SEPARABLE } from '../../mechanics/bracket.ts';
import { WHOLE } from '../../mechanics/gentle.ts';
import { sweep, type Peaks } from '../../mechanics/sweep.ts';
import { roundTo } from '../../units/round.ts';
import { warn } from './spot.ts';

/** A figure of the model that is compared, and below what difference it says nothing [choice]. */
interface Measure {
  readonly of: (peak: Peaks, card: ExerciseCard) => number;
  readonly least: number;
  readonly words: (value: number) => string;
}

const SQUEEZE: Measure = {
  of: ({ compressionBw }) => compressionBw,
  least: 0.1,
  words: (value) => `squeezes with ${roundTo(value, 0.01)} body weights`,
};
const HIP_MOMENT: Measure = {
  // Where bench or floor carries the thigh, its moment is no work of the muscles.
  of: ({ hipMomentNm }, { movement }) => (movement?.mode === 'active' ? Math.abs(hipMomentNm) : 0),
  least: 5,
  words: (value) => `asks for ${roundTo(value, 1)} N·m at the hip`,
};
const PULL: Measure = {
  of: ({ tensionBw }) => tensionBw,
  least: 0.1,
  words: (value) => `pulls with ${roundTo(value, 0.01)} body weights`,
};
const STRENGTH: Measure = {
  of: ({ demand }) => demand,
  least: 0.05,
  words: (value) => `takes ${roundTo(value, 0.01)} of a muscle's strength`,
};

/**
 * Easier cards that squeeze or load the hip more, and harder ones that ask for less of everything, by more than the
 * model can tell apart. Both whole movements, without a weight, on the reference body; cards without a pose are left out.
 */
export function misplacedNeighbours({ exercises }: Library, placeOf: PlaceOf): Problem[] {
  const peakOf = rememberedPeaks();
  return [...exercises.values()].flatMap((card) => {
    const [easier, harder] = [card.easier, card.harder].map((id) => exercises.get(id ?? '') ?? null);
    return [
      ...(easier ? easierIsHarder(card, easier, peakOf, placeOf) : []),
      ...(harder ? harderIsEasier(card, harder, peakOf, placeOf) : []),
    ];
  });
}

type PeakOf = (card: ExerciseCard) => Peaks | null;

/** Cards that share a movement share its answer. */
function rememberedPeaks(): PeakOf {
  const answers = new Map<string, Peaks | null>();
  return ({ movement, tempo }) => {
    if (movement === null) return null;
    const question = JSON.stringify(movement);
    const known = answers.get(question);
    if (known !== undefined) return known;
    const peak = sweep(movement, REFERENCE_BODY, 0, WHOLE, tempo)?.peak ?? null;
    answers.set(question, peak);
    return peak;
  };
}

function easierIsHarder(
  card: ExerciseCard,
  easier: ExerciseCard,
  peakOf: PeakOf,
  placeOf: PlaceOf,
): Problem[] {
  const [own, other] = [peakOf(card), peakOf(easier)];
  if (own === null || other === null) return [];
  const measure = [SQUEEZE, HIP_MOMENT].find(({ of, least }) =>
    isMore(of(other, easier), of(own, card), least),
  );
  if (measure === undefined) return [];
  const { of, words } = measure;
  return [
    warn(placeOf, { kind: 'exercise', id: card.id, path: ['easier'] }, 'easier-is-harder', {
      found: `${easier.id}, which ${words(of(other, easier))} where this card has ${roundTo(of(own, card), 0.01)}`,
      expected: 'a card that the model does not put above this one',
      fix: 'name a gentler card, mend the pose of one of the two, or take easier out',
    }),
  ];
}

function harderIsEasier(
  card: ExerciseCard,
  harder: ExerciseCard,
  peakOf: PeakOf,
  placeOf: PlaceOf,
): Problem[] {
  const [own, other] = [peakOf(card), peakOf(harder)];
  if (own === null || other === null) return [];
  const less = MEASURES.find(({ of, least }) => isMore(of(own, card), of(other, harder), least));
  const isMoreOfAny = MEASURES.some(({ of }) => of(other, harder) > of(own, card));
  if (less === undefined || isMoreOfAny) return [];
  const { of, words } = less;
  return [
    warn(placeOf, { kind: 'exercise', id: card.id, path: ['harder'] }, 'harder-is-easier', {
      found: `${harder.id}, which ${words(of(other, harder))} where this card has ${roundTo(of(own, card), 0.01)}`,
      expected: 'a card that the model does not put below this one',
      fix: 'name a harder card, mend the pose of one of the two, or take harder out',
    }),
  ];
}

const MEASURES = [SQUEEZE, HIP_MOMENT, PULL, STRENGTH];

function isMore(value: number, than: number, least: number): boolean {
  return value > than * (1 + NOT_SEPARABLE) && value - than > least;
}
