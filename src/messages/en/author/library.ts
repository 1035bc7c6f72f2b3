/** What an author is told of a card among its neighbours, its evidence, its reviews and its use. */
import type { Mark } from '../../../units/source.ts';
import type { CannotDo } from '../../../content/schema/words.ts';
import { roundTo } from '../../../units/round.ts';
import type { CureWords } from '../../shapes.ts';

export function evidenceWeak(marks: readonly Mark[]): CureWords {
  return {
    found: `nothing but ${marks.join(' and ')}`,
    expected: 'at least one source marked read, secondary or common-practice',
    fix: 'name what the trade or a paper says of it; when nothing does, write so: { cite: "Common practice, no source", mark: common-practice }',
  };
}

/** `onDay`: the day of the check. */
export function reviewOverdue(nextReviewOn: string, onDay: string): CureWords {
  return {
    found: nextReviewOn,
    expected: `${onDay}, the day of this check, or later`,
    fix: 'look through pose, words and evidence, then write the day in reviewedOn and the next one here',
  };
}

export function cardUnused(id: string): CureWords {
  return {
    found: 'on a card that no protocol uses',
    expected: 'on a card that stands in a slot, a test or the morning check of a protocol',
    fix: `name ${id} in a slot of a protocol, or take the file out`,
  };
}

/** The figures of two cards that are compared. */
export type ComparedFigure = 'compressionBw' | 'hipMomentNm' | 'tensionBw' | 'demand';

const FIGURES: Readonly<Record<ComparedFigure, (value: number) => string>> = {
  compressionBw: (value) => `squeezes with ${roundTo(value, 0.01)} body weights`,
  hipMomentNm: (value) => `asks for ${roundTo(value, 1)} N·m at the hip`,
  tensionBw: (value) => `pulls with ${roundTo(value, 0.01)} body weights`,
  demand: (value) => `takes ${roundTo(value, 0.01)} of a muscle's strength`,
};

/** A neighbour on the wrong side of a card. */
export function misplaced(
  neighbour: string,
  { figure, own, its }: { readonly figure: ComparedFigure; readonly own: number; readonly its: number },
  key: 'easier' | 'harder',
): CureWords {
  return {
    found: `${neighbour}, which ${FIGURES[figure](its)} where this card has ${roundTo(own, 0.01)}`,
    expected: `a card that the model does not put ${key === 'easier' ? 'above' : 'below'} this one`,
    fix: `name another card, mend the pose of one of the two, or take ${key} out`,
  };
}

/** What one of the invented people for whom every stage must have something cannot do. */
export type CannotOne = Extract<CannotDo, 'kneel' | 'lie-prone' | 'lie-supine' | 'get-to-the-floor'>;

const CANNOT: Readonly<Record<CannotOne, string>> = {
  kneel: 'cannot kneel',
  'lie-prone': 'cannot lie face down',
  'lie-supine': 'cannot lie face up',
  'get-to-the-floor': 'cannot get to the floor',
};

/** `cannot`: what each person left out cannot do; null for who could do every card and is left out by the kit alone. */
export function stageLeavesOut(cannot: readonly (CannotOne | null)[], reasons: readonly string[]): CureWords {
  const named = cannot.flatMap((one) => (one === null ? [] : [CANNOT[one]]));
  // Whoever could do every card is left out by the kit alone, and everybody else with them.
  const who = cannot.includes(null) ? 'without kit' : `without kit who ${named.join(', or ')}`;
  return {
    found: `a slot that leaves out someone ${who} (${reasons.join('; ')})`,
    expected: 'a slot with a card for everybody, for the stage needs it',
    fix: 'add a card that asks for less behind the others, or write needed: no if the stage can do without this slot',
  };
}
