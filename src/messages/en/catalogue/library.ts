/** Words of the public pages: what is said of a card when no person is known. For clinicians and for the curious. */
import type { AdviceCard, ExerciseCard } from '../../../content/library.ts';
import type { CannotDo, Equipment, Position, Muscle } from '../../../content/schema/words.ts';
import type { Mark } from '../../../units/source.ts';
import type { IsoDate } from '../../../units/date.ts';
import type { Marks, Word, FilterKey } from '../../../decisions/terms/scale.ts';
import { capital, countText, dayAndYear, listText, numberText } from '../plain.ts';
import type { Origin } from '../../../content/layers.ts';

export const KIND_WORDS: Readonly<Record<ExerciseCard['kind'], string>> = {
  isometric: 'Hold (isometric)',
  isotonic: 'Slow strength (isotonic)',
  'energy-storage': 'Fast (energy storage)',
  mobility: 'Mobility',
  'running-drill': 'Running drill',
};

export const POSITION_WORDS: Readonly<Record<Position, string>> = {
  lying: 'lying on the back',
  prone: 'lying face down',
  'raised-bridge': 'bridge from a raised pelvis',
  bridge: 'bridge from the floor',
  standing: 'standing',
  hinge: 'hinge',
  squat: 'squat',
  lunge: 'lunge',
  step: 'step',
  nordic: 'kneeling lean (Nordic)',
  kneeling: 'kneeling',
  seated: 'seated',
  ballistic: 'ballistic',
  'side-lying': 'side-lying',
};

export const MUSCLE_WORDS: Readonly<Record<Muscle, string>> = {
  hamstrings: 'hamstrings',
  'gluteus-maximus': 'gluteus maximus',
  'gluteus-medius': 'gluteus medius',
  adductors: 'adductors',
  quadriceps: 'quadriceps',
  calf: 'calf',
  'hip-flexors': 'hip flexors',
  trunk: 'trunk',
};

export function musclesText(muscles: readonly Muscle[]): string {
  return capital(listText(muscles.map((muscle) => MUSCLE_WORDS[muscle])));
}

/** What a card asks for, after `asks you to` or `cannot`; conditions stand alone. */
export const NEED_WORDS: Readonly<Record<CannotDo, string>> = {
  kneel: 'kneel',
  'lie-prone': 'lie face down',
  'lie-supine': 'lie on the back',
  'get-to-the-floor': 'get to the floor',
  grip: 'grip',
  'stand-on-one-leg': 'stand on one leg',
  'hip-replacement': 'hip replacement',
  'pregnant-or-postpartum': 'pregnant or postpartum',
  'uncontrolled-blood-pressure': 'uncontrolled blood pressure',
  osteoporosis: 'osteoporosis',
  dizziness: 'dizziness',
};

const AMOUNTS: Readonly<Record<Exclude<Word, 'unknown'>, string>> = {
  low: 'low',
  middle: 'middling',
  high: 'high',
};

export const MARK_WORDS: Readonly<Record<Mark, string>> = {
  read: 'read',
  secondary: 'on a secondary page',
  memory: 'from memory',
  choice: 'house choice',
  'common-practice': 'common practice',
};

export function kitWord(word: Equipment): string {
  const words: Partial<Record<Equipment, string>> = { books: 'stack of books', floor: 'room on the floor' };
  return words[word] ?? word;
}

export function degText(deg: number): string {
  const whole = Math.round(deg);
  return `${whole < 0 ? '−' : ''}${Math.abs(whole)}°`;
}

/** @example squeezeWithUnit(0.32) // => '0.32 body weights' */
export function squeezeWithUnit(bodyWeights: number): string {
  return `${bwText(bodyWeights)} body weights`;
}

/** Two decimals always, so that columns of estimates line up. @example bwText(0.5) // => '0.50' */
export function bwText(bodyWeights: number): string {
  return (Math.round(Math.abs(bodyWeights) * 100) / 100).toFixed(2);
}

/** @example 'Slow strength (isotonic). Hip bend up to 60°. Low squeeze, middling pull.' */
export function summaryText(
  kind: ExerciseCard['kind'],
  hipBendDeg: number,
  squeeze: Word,
  pull: Word,
): string {
  const bend = hipBendDeg <= 0 ? 'Hip straight' : `Hip bend up to ${degText(hipBendDeg)}`;
  return `${KIND_WORDS[kind]}. ${bend}. ${amountsText(squeeze, pull)}.`;
}

function amountsText(squeeze: Word, pull: Word): string {
  if (squeeze === 'unknown' || pull === 'unknown') return 'No estimate of squeeze';
  return `${capital(AMOUNTS[squeeze])} squeeze, ${AMOUNTS[pull]} pull`;
}

export function positionsText(positions: readonly Position[]): string {
  return capital(listText(positions.map((position) => POSITION_WORDS[position])));
}

export function kitText(equipment: readonly Equipment[]): string {
  return equipment.length === 0 ? 'Nothing' : capital(listText(equipment.map(kitWord)));
}

/** What a person must be able to do, then the conditions it is not for. */
export function needsText(needs: readonly CannotDo[]): string {
  const able = needs.filter((need) => ABILITIES.includes(need)).map((need) => NEED_WORDS[need]);
  const barred = needs.filter((need) => !ABILITIES.includes(need)).map((need) => NEED_WORDS[need]);
  const parts = [
    ...(able.length === 0 ? [] : [`One must be able to ${listText(able)}.`]),
    ...(barred.length === 0 ? [] : [`Not with ${listText(barred, 'or')}.`]),
  ];
  return parts.length === 0 ? 'No cannot-do word rules it out.' : parts.join(' ');
}

const ABILITIES: readonly CannotDo[] = [
  'kneel',
  'lie-prone',
  'lie-supine',
  'get-to-the-floor',
  'grip',
  'stand-on-one-leg',
];

/** Null for what has no tempo of its own, such as a run. */
export function cardTempoText({ goSeconds, holdSeconds, backSeconds }: ExerciseCard['tempo']): string | null {
  if (goSeconds + holdSeconds + backSeconds === 0) return null;
  const still = holdSeconds === 0 ? 'no pause' : `${numberText(holdSeconds)} s still at the gentle end`;
  return `${numberText(goSeconds)} s out, ${numberText(backSeconds)} s back, ${still}`;
}

export const RANGE_WORDS: Readonly<Record<'continuous' | 'steps' | 'fixed', string>> = {
  continuous: 'Anywhere between its ends',
  steps: 'By the height of a step',
  fixed: 'Done as it is, or not at all',
};

export const LEGS_WORDS: Readonly<Record<ExerciseCard['legs'], string>> = {
  together: 'Both together',
  each: 'One after the other',
};

export function reviewedText(reviewedOn: IsoDate, nextReviewOn: IsoDate): string {
  return `Reviewed on ${dayAndYear(reviewedOn)}; next review by ${dayAndYear(nextReviewOn)}.`;
}

export const FACT_LABELS = {
  also: 'Also called',
  kind: 'Kind',
  muscles: 'Muscles',
  position: 'Position',
  legs: 'Legs',
  tempo: 'Tempo',
  kit: 'Kit',
  needs: 'Who can',
  range: 'Range',
  weight: 'Weight',
  landmark: 'How far',
} as const;

export function weightText(at: NonNullable<NonNullable<ExerciseCard['movement']>['loadAt']>): string {
  const PLACES: Readonly<Record<typeof at, string>> = {
    hands: 'in the hands',
    shoulder: 'on the shoulders',
    pelvisFront: 'across the front of the pelvis',
    'work.ankle': 'at the working ankle',
    'both.ankle': 'at both ankles',
    'work.knee': 'on the working knee',
  };
  return `Can carry one ${PLACES[at]}`;
}

export const NEIGHBOUR_HEADINGS = { easier: 'Easier', harder: 'Harder' } as const;

export function originText(how: Origin, clinic: string): string {
  const texts: Readonly<Record<Origin, string>> = {
    added: `Added by ${clinic}`,
    replaced: `${clinic}’s own, in place of the shipped one`,
    changed: `The shipped one with ${clinic}’s own changes`,
  };
  return texts[how];
}

export function frontLead(clinic: string): string[] {
  return [
    `The exercises, staged protocols and advice that ${clinic} makes home programmes from. Nothing here is about any person.`,
    'Programmes are made for one person by a clinician. These pages show what they are made of, so that it can be checked.',
  ];
}

export function countsText(exercises: number, protocols: number, advice: number) {
  return {
    exercises: countText(exercises, 'exercise'),
    protocols: countText(protocols, 'staged protocol'),
    advice: countText(advice, 'advice card'),
  };
}

export const FILTER_HEADINGS: Readonly<Record<FilterKey, string>> = {
  bend: 'Hip bend at most',
  squeeze: 'Squeeze',
  pull: 'Pull',
  kind: 'Kind',
  position: 'Position',
  stage: 'Stage of a protocol',
  kit: 'Kit that is there',
  cannot: 'For someone who cannot, or has',
};

/** Chosen alone it asks for cards that need nothing but what stands in every home. */
export const KIT_NONE = { value: 'nothing', label: 'Household things only' } as const;

/** The words with the squeeze or pull they stand for. @example 'Low, up to 0.35 body weights' */
export function wordOption(word: Word, { low, middle }: Marks): string {
  if (word === 'unknown') return 'No estimate';
  if (word === 'low') return `Low, up to ${bwText(low)} body weights`;
  return word === 'middle' ? `Middling, up to ${bwText(middle)}` : 'High, above that';
}

/** Headings of the ways into the index, where a filter has no groups of its own. */
export function byText(filter: string): string {
  return `By ${filter.toLowerCase()}`;
}

export const ROW_CAPTION =
  'From the least squeeze on the tendon to the most, in body weights: model estimates for the reference body, without a weight, as caps count it.';

/** @example stageOption(1, 'Slow strength') // => '2. Slow strength' */
export function stageOption(index: number, name: string): string {
  return `${index + 1}. ${name}`;
}

/** When an advice card stands on a leaflet, and of which tendons. @example occasionsText(['runs', 'stage-1'], undefined) // => 'Shown when: the person runs; stage 1.' */
export function occasionsText(occasions: AdviceCard['showWhen'], angle: AdviceCard['angle']): string {
  const words = occasions.map((occasion) => OCCASION_WORDS[occasion] ?? occasion.replaceAll('-', ' '));
  const tendons = angle === undefined ? '' : `, for a tendon that ${ANGLE_WORDS[angle]} squeezes`;
  return `Shown when: ${words.join('; ')}${tendons}.`;
}

const ANGLE_WORDS: Readonly<Record<NonNullable<AdviceCard['angle']>, string>> = {
  hipFlexion: 'hip flexion',
  hipAdduction: 'hip adduction',
  ankleDorsiflexion: 'ankle dorsiflexion',
  kneeFlexion: 'knee flexion',
};

const OCCASION_WORDS: Readonly<Partial<Record<AdviceCard['showWhen'][number], string>>> = {
  always: 'always',
  treatment: 'as long as treatment lasts',
  runs: 'the person runs',
  sits: 'sitting is a trouble',
  stretches: 'the person stretches',
  keep: 'in the keep-going stage',
  flare: 'in a flare',
  'both-sides': 'both sides hurt',
  'under-18': 'the person is under 18',
  drives: 'the person drives for long',
  'no-weights': 'there are no weights at home',
};

export function versionText(version: string): string {
  return `Library ${version}`;
}
