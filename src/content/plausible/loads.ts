/** Tested sets against the body: what a set says could be lifted once (Epley), as a share of body mass. */
import { REFERENCE_BODY } from '../../mechanics/body.ts';
import type { ExerciseCard, Nameable } from '../library.ts';
import { mostHipDeg } from '../hipBend.ts';
import type { ConsultFrontMatter } from '../schema/consult.ts';
import type { Plausible } from '../schema/plausible.ts';
import { above, type Doubt } from './doubt.ts';

type TestedSet = ConsultFrontMatter['testedSets'][number];

export function loadDoubts(
  { testedSets, massKg = REFERENCE_BODY.massKg }: ConsultFrontMatter,
  limits: Plausible,
  { exercises }: Nameable,
): Doubt[] {
  return testedSets.flatMap((set, index) => [
    ...setTwice(set, index, testedSets),
    ...liftDoubt(set, index, massKg, shareFor(exercises.get(set.card) ?? null, limits)),
    ...rangeDoubt(set.rangeDeg, ['testedSets', index, 'rangeDeg'], exercises.get(set.card) ?? null, limits),
    ...slowDoubt(set, index, limits),
    ...countDoubt(set, index, limits),
  ]);
}

/** More often than anybody can, or than a weight is worth that was put on to find the load. */
function countDoubt(
  { loadKg, repetitions, reserve }: TestedSet,
  index: number,
  { repetitionsToFailure, loadedRepetitions }: Plausible,
): Doubt[] {
  const path = ['testedSets', index, 'repetitions'];
  const any = above(repetitions, repetitionsToFailure.value - reserve, {
    rule: 'repetitionsToFailure',
    path,
    inputs: { reserve },
  });
  if (loadKg === 0 || any.length > 0) return any;
  const inputs = { reserve, loadKg };
  return above(repetitions, loadedRepetitions.value - reserve, { rule: 'loadedRepetitions', path, inputs });
}

/** How strong a lift of this card may be: by where the weight is and how many legs carry it. */
function shareFor(card: ExerciseCard | null, limits: Plausible): number | null {
  if (card?.movement?.loadAt === undefined) return null;
  const oneLeg = card.legs === 'each' || card.movement.loadAt.startsWith('work');
  const atAnkle = card.movement.loadAt.endsWith('ankle');
  if (atAnkle) return (oneLeg ? limits.liftAtOneAnkle : limits.liftAtBothAnkles).value;
  return (oneLeg ? limits.liftOnOneLeg : limits.liftOnBothLegs).value;
}

/** A hip bend that the card is not built for. */
export function rangeDoubt(
  deg: number | undefined,
  path: Doubt['path'],
  card: ExerciseCard | null,
  { rangeOverCardDeg }: Plausible,
): Doubt[] {
  const builtToDeg = card === null ? null : mostHipDeg(card);
  if (card === null || builtToDeg === null) return [];
  const inputs = { card: card.id, builtToDeg };
  return above(deg, builtToDeg + rangeOverCardDeg.value, { rule: 'rangeOverCard', path, inputs });
}

/** Told of the longest part of the tempo. */
function slowDoubt({ tempo }: TestedSet, index: number, { repetitionToSeconds }: Plausible): Doubt[] {
  if (tempo === undefined) return [];
  const most = repetitionToSeconds.value;
  const { go, hold, back } = tempo;
  if (go + hold + back <= most) return [];
  const part = (['go', 'hold', 'back'] as const).toSorted((a, b) => tempo[b] - tempo[a])[0] ?? 'go';
  return [
    {
      rule: 'repetitionSeconds',
      path: ['testedSets', index, 'tempo', part],
      value: tempo[part],
      most,
      inputs: { seconds: go + hold + back },
    },
  ];
}

/** The same weight as far on the same leg with another pain: one of the two is a slip, or the weight is. */
function setTwice(set: TestedSet, index: number, sets: readonly TestedSet[]): Doubt[] {
  const before = sets.slice(0, index).findIndex((one) => isSame(one, set) && one.pain !== set.pain);
  const first = sets[before];
  if (first === undefined) return [];
  return [
    {
      rule: 'setTwice',
      path: ['testedSets', index, 'pain'],
      value: set.pain,
      inputs: { before, pain: first.pain },
    },
  ];
}

function isSame(a: TestedSet, b: TestedSet): boolean {
  return a.card === b.card && a.side === b.side && a.loadKg === b.loadKg && a.rangeDeg === b.rangeDeg;
}

// One repetition is the load itself; over 30 to failure Epley says nothing more of strength.
const MOST_TO_FAILURE = 30;

function liftDoubt(set: TestedSet, index: number, massKg: number, share: number | null): Doubt[] {
  const { loadKg, repetitions, reserve } = set;
  const toFailure = Math.min(MOST_TO_FAILURE, repetitions + reserve);
  const factor = toFailure <= 1 ? 1 : 1 + toFailure / 30;
  if (share === null || loadKg * factor <= share * massKg) return [];
  return [
    {
      rule: 'liftForMass',
      path: ['testedSets', index, 'loadKg'],
      value: loadKg,
      most: Math.floor((share * massKg) / factor),
      inputs: { repetitions, reserve, massKg, share, onceKg: Math.round(loadKg * factor) },
    },
  ];
}
