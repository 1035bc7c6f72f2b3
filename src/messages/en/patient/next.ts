/** What comes next: the steps ahead, or how to keep what has been won. */
import type { Protocol } from '../../../content/library.ts';
import type { Course } from '../../../decisions/stage/course.ts';
import type { Months, OpenEnd } from '../../../decisions/days/outlook.ts';
import { type Part, type Section, list, paragraph, section } from '../../shapes.ts';
import type { IsoDate } from '../../../units/date.ts';
import { TENDON_SITES } from './tendonSite.ts';
import { dayAndYear } from '../plain.ts';

export interface NextWords {
  readonly course: Course;
  readonly stepsAhead: number;
  /** They stand above with their dates. */
  readonly dated: boolean;
  /** How long the whole way usually takes; not asked once it is behind. */
  readonly months: Months;
  /** Why that cannot be said yet; null where it can. */
  readonly openEnd: OpenEnd | null;
  readonly reviewOn: IsoDate;
  readonly goals: readonly string[];
  readonly sameStepUnder: number;
  readonly oneBackUpTo: number;
  /** Speed comes back to those who had it. */
  readonly runs: boolean;
  /** The way goes through the part for fast work and sport. */
  readonly fastWork: boolean;
  /** What the protocol holds small at first, and so what comes back. */
  readonly angle: Protocol['angle'];
}

/** The steps ahead in treatment; afterwards how it grows, early signs, and how to start again. */
export function whatComesNextText(words: NextWords): Section {
  const { course, goals, reviewOn } = words;
  return section('what-comes-next', 'What comes next', [
    ...(course === 'treatment' ? wayParts(words) : keepParts(words)),
    ...(goals.length === 0 ? [] : [list(goals.map((what) => `Your goal: ${what}.`))]),
    paragraph(
      course === 'discharge'
        ? `Come for a last look on ${dayAndYear(reviewOn)}.`
        : `We meet again on ${dayAndYear(reviewOn)}.`,
    ),
  ]);
}

/** In place of months. */
const OPEN_ENDS: Readonly<Record<OpenEnd, string>> = {
  medicine:
    'How long the whole way takes, nobody can say yet: it waits until more than light holds are allowed.',
  birth:
    'How long the whole way takes is left open for now. After a birth there is a time without running and jumping, and we plan it with you.',
};

/** @example monthsText({ from: 3, to: 6 }) // => '3 to 6 months' */
function monthsText({ from, to }: Months): string {
  if (from !== to) return `${from} to ${to} months`;
  return to === 1 ? 'about a month' : `about ${to} months`;
}

function wayParts({ stepsAhead, dated, months, openEnd, fastWork, angle }: NextWords): Part[] {
  return [
    paragraph(stepsAheadText(stepsAhead, dated)),
    paragraph(
      `${openEnd === null ? `From here the whole way usually takes ${monthsText(months)}.` : OPEN_ENDS[openEnd]} Ups and downs are normal. ${TENDON_SITES[angle].comesBack} comes back${fastWork ? ', and so does speed' : ''}.`,
    ),
  ];
}

// Of a long ladder the count would frighten and say nothing: nobody need climb all of it.
function stepsAheadText(stepsAhead: number, dated: boolean): string {
  if (dated)
    return 'The next steps stand above with their dates. At the review we look together at what you can go on to.';
  switch (stepsAhead) {
    case 0:
      return 'This is the last step of this part. At the review we look together at what you can go on to.';
    case 1:
      return 'After this step there is one more in this part. Then we look together at what you can go on to.';
    default:
      return 'This part goes on in small steps, one new thing at a time. You need not do them all: at each review we look together at what you can go on to.';
  }
}

// House rules 3, keep: how it grows, early signs, how to start again after a break.
function keepParts({ course, sameStepUnder, oneBackUpTo, runs, angle }: NextWords): Part[] {
  return [
    paragraph(
      'There is no end date. Strength once or twice a week keeps the tendon used to its work.',
      'strong',
    ),
    list([
      'Add weight only when every set leaves you two more than your plan says, two sessions running. Add the smallest step you have.',
      `Early signs: ${TENDON_SITES[angle].earlySigns}. Then use the easier numbers for a week.`,
      `After a break of ${sameStepUnder} to ${oneBackUpTo} days, start with the easier numbers. After a longer one, stay with them for two weeks${runs ? ', and run easy and flat first' : ''}.`,
      ...(course === 'discharge' ? ['You can come back to us at any time.'] : []),
    ]),
  ];
}
