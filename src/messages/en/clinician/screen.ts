/** What the clinician reads when the screen stops a programme, and in the record when it limits one. */
import type { Clinic } from '../../../content/library.ts';
import type { ScreenItem } from '../../../content/schema/consult.ts';
import type { Maternity } from '../../../decisions/screen/maternity.ts';
import type { SuddenStart } from '../../../decisions/terms/suddenStart.ts';
import type { StrainBar } from '../../../decisions/terms/strainBar.ts';
import type { IsoDate } from '../../../units/date.ts';
import type { JointAngle } from '../../../mechanics/jointAngle.ts';
import { ANGLE_WORDS } from '../angle.ts';

export const SCREEN_WORDS: Readonly<Record<ScreenItem, string>> = {
  saddleNumbness: 'numbness between the legs',
  bladderBowel: 'new bladder or bowel change',
  bothLegWeakness: 'weakness in both legs',
  worseningWeakness: 'weakness that is getting worse',
  footDrop: 'foot drop',
  fever: 'fever',
  weightLoss: 'weight loss without a reason',
  cancerNightPain: 'history of cancer with night pain',
  clotSigns: 'signs of a clot in leg or lung',
  popBruise: 'sudden pop with a bruise, or not able to walk',
  suspectedFracture: 'suspected fracture',
  hopPain: 'bone pain on hopping',
  focalBonePain: 'pain on one spot of bone',
  nightBonePain: 'bone pain at night or at rest',
  missedPeriods: 'missed periods',
  lowEnergy: 'low energy intake',
  fluoroquinolone: 'fluoroquinolone antibiotic in the last six months',
  oralSteroid: 'steroid tablets',
  recentInjection: 'injection in the last two weeks',
  uncontrolledBloodPressure: 'blood pressure not under control',
  hernia: 'hernia',
  suddenOnsetUnder18: 'under 18 with a sudden start',
};

export const ANSWER_WORDS = { no: 'no', yes: 'yes', notAsked: 'not asked' } as const;
type Answer = keyof typeof ANSWER_WORDS;

interface Wording {
  readonly expected: string;
  readonly fix: string;
}

const ASK = 'Not asked acts like yes: ask, and record the answer.';

/** For an item that stops the programme: what to do now, with the country's own number. */
export function blockText(
  item: ScreenItem,
  answer: Answer,
  effect: 'emergency' | 'block',
  local: Clinic['emergency'][string] | null,
): Wording {
  const expected = `no: with ${SCREEN_WORDS[item]} no exercise programme is written`;
  const urgent =
    local === null
      ? 'call the local emergency number'
      : `call ${local.emergencyNumber} or go to ${local.department}`;
  const ask = local === null ? 'the local urgent line' : local.urgentAdvice;
  if (answer === 'notAsked')
    return {
      expected,
      fix:
        effect === 'emergency'
          ? `${ASK} If it is yes: emergency assessment now, ${urgent}.`
          : `${ASK} If it is yes: have it assessed first, ${ask}; in an emergency ${urgent}.`,
    };
  return effect === 'emergency'
    ? {
        expected,
        fix: `Send the person for emergency assessment now: ${urgent}. No entry in the file lifts this.`,
      }
    : {
        expected,
        fix: `Have it assessed first: ${ask}; in an emergency ${urgent}. Then record who cleared it, when and on what ground under clearances${item === 'popBruise' ? ', with the picture under imaging (kind, on, result)' : ''}.`,
      };
}

/** For an item that allows light holds at most, while no decision is recorded. */
export function lightHoldsText(item: ScreenItem, answer: Answer): Wording {
  return {
    expected: `no, or a recorded decision: with ${SCREEN_WORDS[item]} light holds at most`,
    fix:
      answer === 'notAsked'
        ? ASK
        : `Contact the prescriber, then record the decision on light holds under clearances (flag: ${item}).`,
  };
}

/** For a file that is not built itself, but newer than what is in use. */
export function withdrawnText(fix: string): string {
  return `${fix} The leaflet in use is withdrawn meanwhile.`;
}

/** For a yes that a person wrote in the log; null where the line says alarm and no more of it can be read. */
export function alarmText(item: ScreenItem | null, on: IsoDate | null): Wording & { readonly found: string } {
  const what = item === null ? 'an alarm that cannot be read' : `yes to ${SCREEN_WORDS[item]}`;
  return {
    found: `${what}${on === null ? '' : ` on ${on}`}`,
    expected: 'no alarm in the log of a leaflet in use',
    fix: withdrawnText(
      'Speak with the person today, ask the whole screen again, and write the next revision; or write done: no with a higher edit where it was a slip.',
    ),
  };
}

/** For an item whose clearance holds no picture. */
export function noPictureText(item: ScreenItem): Wording {
  return {
    expected: `no, or cleared by a picture: after ${SCREEN_WORDS[item]} words alone lift nothing`,
    fix: `Add imaging to the clearance of ${item}: kind, on and result of the picture that was taken.`,
  };
}

/** For someone under 18 without a recorded clearance. */
export function under18Text(answer: Answer): Wording {
  return {
    expected: 'a clearance for someone under 18',
    fix:
      answer === 'no'
        ? 'Record under clearances (flag: suddenOnsetUnder18) who considered a growth-plate cause, when and with what result.'
        : 'A sudden start under 18 needs imaging before any loading: record it under clearances (flag: suddenOnsetUnder18) with imaging: kind, on and result.',
  };
}

export function youngText(angle: JointAngle): string {
  return `Under 18: lighter dose, no maximum worked out, no caps from the model; position and ${ANGLE_WORDS[angle].bend} alone.`;
}

/** A sentence of the record for an effect that limits the programme. */
export function effectText(
  effect: 'noRunning' | 'lightHolds' | 'shortHolds',
  items: readonly ScreenItem[],
  answers: Readonly<Record<ScreenItem, Answer>>,
): string {
  const because = items.map((item) => `${SCREEN_WORDS[item]} (${whence(answers[item])})`).join(', ');
  const what = {
    noRunning: 'No running',
    lightHolds:
      'Light holds at most, no weight and no running, as decided and recorded; contact the prescriber',
    shortHolds: 'Short holds only',
  }[effect];
  return `${what}: ${because}.`;
}

/** A decision that lifts an item, for the note. A gradual start under 18 is cleared of its growth-plate cause. */
export function clearedText(item: ScreenItem, answer: Answer, by: string, on: IsoDate): string {
  const gradual = item === 'suddenOnsetUnder18' && answer === 'no';
  return `Cleared: ${gradual ? 'growth-plate cause considered' : SCREEN_WORDS[item]} (${by}, ${on}).`;
}

/** What holds in the first programme after a cleared sudden start. */
export function suddenLimitText({ stageAtMost, loadShare }: SuddenStart): string {
  return `First programme after it: stage ${stageAtMost} at most, ${Math.round(loadShare * 100)} % of the load at most.`;
}

// An item that was answered no acts only when the cannot-do list names the same thing.
function whence(answer: Answer): string {
  return answer === 'no' ? 'cannot-do list' : ANSWER_WORDS[answer];
}

/** What pregnancy or the time after birth does to the programme, for the record. */
export function maternityText({ kind, weeks, liesFlat, jumps, runMost, clearedBy }: Maternity): string {
  const who = {
    pregnant: `Pregnant, week ${weeks} by the review`,
    'after-birth': `After birth, ${weeks} weeks at the start`,
    'not-recorded':
      'Pregnant or after birth, weeks not recorded, so as in the second half and the first weeks',
  }[kind];
  const what = [
    ...(liesFlat ? [] : ['nothing lying flat on the back or face down']),
    ...(jumps ? [] : ['nothing fast or springy']),
    ...(runMost === null ? [] : [runMost === 'none' ? 'no running' : `${runMost} running at most`]),
    ...(clearedBy === null ? [] : [`running and jumping cleared early by ${clearedBy}`]),
  ];
  return `${who}${what.length === 0 ? '' : `: ${what.join(', ')}`}.`;
}

/** What bars straining, for the clinician. */
export function strainWord(bar: StrainBar): string {
  if (bar === 'pregnancy') return 'pregnancy';
  return bar === 'afterBirth' ? 'the first weeks after birth, or not recorded' : SCREEN_WORDS[bar];
}
