/** Phrases of exercise cards that promise an angle: few, and only such as can hardly mean anything else. */
import type { Angles, Span } from './angles.ts';

export interface AnglePromise {
  readonly phrase: RegExp;
  readonly joint: keyof Angles;
  readonly isKept: (span: Span) => boolean;
  /** What would keep it; reads after "a pose with". */
  readonly kept: string;
}

/** As a message names them. */
export const NAMES = { hip: 'a hip bend', knee: 'a knee bend', lean: 'a trunk lean' } as const;

/** What a reader takes for straight or upright, for almost straight, for a bend and for a bow, degrees [choice]. */
const STRAIGHT_DEG = 20;
const ALMOST_DEG = 35;
const BENT_DEG = 10;
const BOWED_DEG = 30;
const RIGHT_ANGLE_DEG = [75, 105] as const;

// Between verb and joint only words that name no other joint; behind "straight" none that makes it a direction.
const OWN = '(?:(?:your|the|both|that|this|working|sore|of) )*';
const NO_WAY = '(?! (?:up|down|back|out|ahead|forward|through|towards)\\b)';

/** The first row that fits a place counts. */
export const PROMISES: readonly AnglePromise[] = [
  staysWithin(STRAIGHT_DEG, 'hip', `(?:keep|hold|with|and) ${OWN}hips? straight${NO_WAY}`),
  staysWithin(STRAIGHT_DEG, 'hip', `hips? (?:stays?|remains?) straight|(?:keep|with) (?:a )?straight hips?`),
  staysWithin(STRAIGHT_DEG, 'hip', `keep (?:the )?front ${OWN}hips? (?:open|on)`),
  staysWithin(
    STRAIGHT_DEG,
    'hip',
    'keep (?:a|one) (?:straight )?line from (?:knees? to shoulder|shoulders? to knee)s?',
  ),
  staysWithin(STRAIGHT_DEG, 'hip', `(?:without bending|(?:do not|don't|never) bend) (?:at |in )?${OWN}hips?`),
  comesWithin(STRAIGHT_DEG, 'hip', `until ${OWN}hips? (?:is|are) straight`),
  comesWithin(STRAIGHT_DEG, 'hip', `(?:snap|drive|bring|push) ${OWN}hips? straight${NO_WAY}`),
  comesWithin(STRAIGHT_DEG, 'hip', 'hips and knees make one line|trunk and thighs? are level'),
  reaches(BOWED_DEG, 'hip', `push ${OWN}hips? (?:straight )?back`),
  reaches(BOWED_DEG, 'hip', '(?:bow|hinge|fold) (?:forward|down|over|from the hips?|at the hips?)'),
  reaches(BENT_DEG, 'hip', `bend (?:at |from |in )?${OWN}hips?`),
  staysWithin(STRAIGHT_DEG, 'lean', '(?:stay|keep|remain) (?:tall|upright)'),
  staysWithin(STRAIGHT_DEG, 'lean', 'trunk (?:tall|upright|vertical)'),
  comesWithin(STRAIGHT_DEG, 'lean', '(?:^|and |you |then )(?:stand|sit) (?:up )?(?:tall|upright)'),
  staysWithin(STRAIGHT_DEG, 'knee', `(?:keep|hold|with|and) ${OWN}(?:knee|leg)s? straight${NO_WAY}`),
  staysWithin(STRAIGHT_DEG, 'knee', `(?:without bending|(?:do not|don't|never) bend) ${OWN}knees?`),
  staysWithin(ALMOST_DEG, 'knee', `(?:keep|hold|with) ${OWN}(?:knee|leg)s? (?:almost|nearly) straight`),
  comesWithin(STRAIGHT_DEG, 'knee', `until ${OWN}(?:knee|leg)s? (?:is|are) straight`),
  comesWithin(ALMOST_DEG, 'knee', `until ${OWN}(?:knee|leg)s? (?:is|are) (?:almost|nearly) straight`),
  reaches(BENT_DEG, 'knee', `bend ${OWN}knees?`),
  isAbout(RIGHT_ANGLE_DEG, 'knee', `knees? (?:bent )?(?:at|to) (?:a )?right angles?`),
];

/** Whether a text holds any of the phrases: most hold none, and one look says so. */
export function promisesAny(text: string): boolean {
  return ANY_PHRASE.test(text);
}

const ANY_PHRASE = new RegExp(PROMISES.map(({ phrase }) => phrase.source).join('|'), 'i');

function staysWithin(deg: number, joint: keyof Angles, words: string): AnglePromise {
  const isKept = ({ mostDeg }: Span) => mostDeg <= deg;
  return { phrase: phraseOf(words), joint, isKept, kept: `${NAMES[joint]} of ${deg}° at most` };
}

function comesWithin(deg: number, joint: keyof Angles, words: string): AnglePromise {
  const isKept = ({ leastDeg }: Span) => leastDeg <= deg;
  return { phrase: phraseOf(words), joint, isKept, kept: `${NAMES[joint]} that comes down to ${deg}°` };
}

function reaches(deg: number, joint: keyof Angles, words: string): AnglePromise {
  const isKept = ({ mostDeg }: Span) => mostDeg >= deg;
  return { phrase: phraseOf(words), joint, isKept, kept: `${NAMES[joint]} of at least ${deg}°` };
}

function isAbout(
  [lowDeg, highDeg]: readonly [number, number],
  joint: keyof Angles,
  words: string,
): AnglePromise {
  const isKept = ({ leastDeg, mostDeg }: Span) => leastDeg <= highDeg && mostDeg >= lowDeg;
  return { phrase: phraseOf(words), joint, isKept, kept: `${NAMES[joint]} from ${lowDeg}° to ${highDeg}°` };
}

function phraseOf(words: string): RegExp {
  return new RegExp(`\\b(?:${words})\\b`, 'gi');
}
