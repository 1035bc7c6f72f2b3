/** Who the leaflet is for and why it began, in a few sentences. */
import type { Consult, Protocol, Clinic } from '../../../content/library.ts';
import type { EmergencyBox } from '../../shapes.ts';
import type { Course } from '../../../decisions/stage/course.ts';
import { beganTexts, besideTexts } from './began.ts';
import { dayAndYear, dayText } from '../plain.ts';

const SIDE_WORDS = { left: 'left side', right: 'right side', both: 'both sides' } as const;

/** @example titleText('otter') // => 'Home exercises for otter' */
export function titleText(alias: string): string {
  return `Home exercises for ${alias}`;
}

/** Alias, revision and dates in one line, for headers and footers. */
export function runningLineText(consult: Consult): string {
  return `${consult.alias} · revision ${consult.revision} · ${dayText(consult.startOn)} to ${dayAndYear(consult.reviewOn)}`;
}

/** From when to when it holds; at the end of treatment there is nothing left to review but a last look. */
export function datesText({ startOn, reviewOn }: Consult, course: Course): string {
  const then: Readonly<Record<Course, string>> = {
    treatment: 'Next review',
    discharge: 'A last look',
    prevention: 'We look at it again',
  };
  return `Start on ${dayText(startOn)}. ${then[course]} on ${dayAndYear(reviewOn)}.`;
}

/** House rules 2: what a patient has to know of it, and whom to ask. */
const LIGHT_HOLDS =
  'Because of a medicine or an injection, only light holds for now. Talk to the doctor who prescribed it.';

/** The first programme after a cleared sudden start: why it is so light (house rules 11.6). */
const SUDDEN =
  'It has been looked at since it began. So this first plan is light, with less than you could lift.';

/** A lower stage or step than in the revision before: said plainly, so that nobody wonders. */
const TURNED_DOWN =
  'This plan asks a little less than the last one. Ups and downs are part of the way, not a new start.';

/** What the opening says beside who and why. */
export interface OpeningFacts {
  /** The screen allows no more than light holds. */
  readonly lightHolds: boolean;
  /** Strong or heavy work would contradict what the patient is told to heed. */
  readonly gentle: boolean;
  /** The stage holds the bend small no more. */
  readonly bends: boolean;
  /** It began with a pop or a sudden pain, and this is the first plan after it was cleared. */
  readonly sudden: boolean;
  /** It began in one moment, in this plan or before it. */
  readonly beganSuddenly: boolean;
  /** The revision before stood further on. */
  readonly turnedDown: boolean;
  /** What changed since the last leaflet, and why; empty where no log was kept. */
  readonly changed: readonly string[];
}

/** Who, why (the protocol's words), and why it began; at the end of treatment and for prevention, what it is for instead. */
export function openingText(
  consult: Consult,
  protocol: Protocol,
  course: Course,
  { lightHolds, gentle, bends, sudden, beganSuddenly, turnedDown, changed }: OpeningFacts,
): string[] {
  const where = `your ${protocol.tendon}, ${SIDE_WORDS[consult.side]}`;
  const why = whyTexts(protocol, { gentle, bends, beganSuddenly });
  switch (course) {
    case 'treatment':
      return [
        `This is for ${where}.`,
        ...changed,
        ...why,
        ...(turnedDown && changed.length === 0 ? [TURNED_DOWN] : []),
        ...(lightHolds ? [LIGHT_HOLDS] : []),
        ...(sudden ? [SUDDEN] : []),
        // Why it began was said in the first leaflet; now it is how it goes that matters.
        ...(changed.length > 0 ? [] : (beganSuddenly ? besideTexts : beganTexts)(consult.changedBefore)),
      ];
    case 'discharge':
      return [
        `This is for ${where}.`,
        'You have worked your way back. What helped now keeps you there.',
        'Bending is normal, and so is an odd sore day.',
      ];
    case 'prevention':
      return [`This is for ${where}, while nothing hurts.`, ...why];
  }
}

/** The protocol's words that fit; without gentle ones the sentences that promise strong or heavy work are left out. */
function whyTexts(
  { why, whyGentle, whyLater, whySudden }: Protocol,
  { gentle, bends, beganSuddenly }: Pick<OpeningFacts, 'gentle' | 'bends' | 'beganSuddenly'>,
): readonly string[] {
  const told = (gentle ? whyGentle : bends ? whyLater : why) ?? why;
  const fitting = beganSuddenly ? [...whySudden, ...told.slice(1)] : told;
  return gentle && whyGentle === undefined
    ? fitting.filter((sentence) => !PROMISES_MUCH.test(sentence))
    : fitting;
}

const PROMISES_MUCH = /\b(?:strong|heav)/i;

/** The emergency box in the words of the patient's country. */
export function emergencyText(clinic: Clinic, country: string): EmergencyBox {
  const local = clinic.emergency[country];
  if (local === undefined) throw new Error(`country ${country}: content checks it against the clinic file`);
  return {
    country: local.country,
    heading: `Emergency: ${local.emergencyNumber}`,
    call: `Call ${local.emergencyNumber} or go to ${local.department} at once for:`,
    lines: [
      'new numbness between the legs',
      'new trouble with bladder or bowel',
      'weakness in both legs, or getting worse',
      'a foot that drops',
      'sudden chest pain or short breath',
      'a leg that is swollen, warm and throbbing',
    ],
    then: [
      'A sudden pop with a big bruise, or you cannot walk: do not exercise, and be seen the same day.',
      `Urgent but no emergency: ${local.urgentAdvice}.`,
    ],
    foreign: Object.entries(local.foreign).flatMap(([language, words]) =>
      words.map((word) => ({ word, language })),
    ),
  };
}

export const NOTICE = [
  'For use by or under a licensed clinician. Local rules come first.',
  'Made for one person. Please do not pass it on as advice for someone else.',
] as const;
