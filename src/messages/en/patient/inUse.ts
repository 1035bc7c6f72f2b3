/** What the page says once it is in use: what today is, what an entry of the log means, where the log is kept. */
import type { LogSide } from '../../../content/log/columns.ts';
import type { MorningDecision, PainGate } from '../../../scheduling/morning.ts';
import type { Today, TodayKind } from '../../../scheduling/today.ts';
import type { IsoDate } from '../../../units/date.ts';
import { capital, countText, weekdayAndDay } from '../plain.ts';

const HEADINGS: Readonly<Record<TodayKind, string>> = {
  before: 'Not begun yet',
  session: 'Today: exercises',
  between: 'Today: between sessions',
  run: 'Today: running',
  free: 'Today: a free day',
  after: 'This sheet has ended',
};

export interface TodayWords {
  readonly heading: string;
  /** What today is, what comes next, and why it is not as planned, a sentence each. */
  readonly lines: readonly string[];
}

export interface DatesOfSheet {
  readonly startOn: IsoDate;
  readonly reviewOn: IsoDate;
  /** From one session to the next at least. */
  readonly gapDays: number;
}

/** What a day has by the plan; `runText` its runs and races alone. */
export interface DayTexts {
  readonly text: string;
  readonly runText: string;
}

/** `planned`: what the plan has today, before the start what it has on the first day. */
export function todayWords(
  { kind, on, moved, lastDoneOn, missedOn, nextOn, nextIfDoneOn }: Today,
  dates: DatesOfSheet,
  { text, runText }: DayTexts,
): TodayWords {
  const clear = dates.gapDays - 1;
  const leave = clear < 1 ? '' : ` Leave ${countWord(clear, 'clear day')} between two sessions.`;
  if (kind === 'before')
    return {
      heading: HEADINGS.before,
      lines: [
        `You begin on ${weekdayAndDay(dates.startOn)}.${text === '' ? '' : ` ${capital(text)}.`}`,
        ...(nextOn === dates.startOn ? [] : [nextLine(nextOn, 'Your first session', dates)]),
        `Today is ${weekdayAndDay(on)}.`,
      ],
    };
  if (kind === 'after') return afterWords(on, dates.reviewOn);
  const next = nextLine(nextOn, 'Your next session', dates);
  const opening = `${weekdayAndDay(on)}.${dayText(kind, text)}`;
  const alsoRun = runText === '' ? '' : ` Today you have: ${runText}.`;
  if (moved === 'waits' && lastDoneOn !== null)
    return {
      heading: 'Today: no exercises yet',
      lines: [
        `${weekdayAndDay(on)}. Your last session was on ${weekdayAndDay(lastDoneOn)}, so the one planned for today waits.${leave}${alsoRun}`,
        next,
      ],
    };
  if (moved === 'moved' && missedOn !== null)
    return {
      heading: HEADINGS.session,
      lines: [
        `${weekdayAndDay(on)}. The session of ${weekdayAndDay(missedOn)} moved to today.${text === '' ? '' : ` Also: ${text}.`}`,
        next,
      ],
    };
  if (moved === 'late' && missedOn !== null) {
    const moves = nextIfDoneOn !== null && nextIfDoneOn !== nextOn;
    const then = moves ? `; your next one is then on ${weekdayAndDay(nextIfDoneOn)}` : '';
    return {
      heading: HEADINGS[kind],
      lines: [
        opening,
        `The session of ${weekdayAndDay(missedOn)} is not in your log. If you did not do it, you can do it today${then}.${leave} Do not do two to catch up.`,
        moves ? nextLine(nextOn, 'If you do not, your next session', dates) : next,
      ],
    };
  }
  return { heading: HEADINGS[kind], lines: [opening, next] };
}

// The heading says already that there are exercises.
function dayText(kind: TodayKind, text: string): string {
  if (text === '') return ' Nothing is planned.';
  return kind === 'session' && text === 'exercises' ? '' : ` ${capital(text)}.`;
}

function afterWords(on: IsoDate, reviewOn: IsoDate): TodayWords {
  return on === reviewOn
    ? {
        heading: 'Today: your review',
        lines: [
          `${weekdayAndDay(on)}. Bring your log, or share it before. The plan of this sheet ends here.`,
        ],
      }
    : {
        heading: HEADINGS.after,
        lines: [`Your review was on ${weekdayAndDay(reviewOn)}. Ask for a new sheet before you go on.`],
      };
}

function nextLine(
  nextOn: IsoDate | null,
  what: string,
  { reviewOn }: { readonly reviewOn: IsoDate },
): string {
  return nextOn === null
    ? `No session is left before ${weekdayAndDay(reviewOn)}, the day of your review.`
    : `${what}: ${weekdayAndDay(nextOn)}.`;
}

function countWord(count: number, what: string): string {
  return count === 1 ? `one ${what}` : countText(count, what);
}

/** What pain during an exercise means, by the leaflet's own rule. @example '5: finish the set. Next time do the same again, add nothing.' */
export function painAnswer(pain: number, { allowed, stop, next }: PainGate): string {
  if (stop) return `${pain}: stop this exercise for today. Use the easier numbers next time.`;
  if (!allowed) return `${pain}: finish the set. Next time do the same again, add nothing.`;
  return next === 'carry-on'
    ? `${pain}: all right.`
    : `${pain}: all right. Next time do the same again, add nothing.`;
}

const MORNING_WORDS = {
  'within-usual': 'carry on as planned.',
  'over-usual-once': 'do the same again, add nothing.',
  'over-usual-twice': 'two mornings running. Ease back: use the easier numbers.',
  'far-over-usual': 'ease back: use the easier numbers.',
  'pain-too-high': 'ease back: use the easier numbers.',
  'not-settled': 'it has not settled. Get in touch, and use the easier numbers until then.',
  rising: 'it has been rising for weeks. Get in touch, and add nothing until then.',
} as const satisfies Record<MorningDecision['because'][number]['code'], string>;

/** What the morning's score means. @example '4: do the same again, add nothing.' */
export function morningAnswer(score: number, { because }: MorningDecision): string {
  const [first] = because;
  return first === undefined ? '' : `${score}: ${MORNING_WORDS[first.code]}`;
}

/** Labels of the page in use. */
export const IN_USE = {
  thisWeek: 'This week',
  free: 'Free',
  today: 'today',
  why: 'Why, and what for',
  more: 'How to do it',
  notToday: 'Not today',
  toExercises: 'Go to the exercises',
  weight: 'Weight',
  log: 'Your log of today',
  logAlone: 'Share your log',
  day: 'Day',
  morning: 'Morning check',
  morningScore: 'Pain this morning, 0 to 10',
  done: 'Done?',
  doneWords: { yes: 'Done', part: 'In part', no: 'Not done' },
  notNoted: 'Not noted',
  painDuring: 'Pain 0-10',
  sets: 'Sets',
  repetitions: 'In a set',
  seconds: 'Seconds',
  loadKg: 'Weight kg',
  minutes: 'Minutes',
  satMinutes: 'Sat at a time, minutes',
  satPain: 'Pain while sitting, 0-10',
  runDone: 'Run done?',
  leftLeg: 'Left leg',
  rightLeg: 'Right leg',
  km: 'Kilometres',
  note: 'A line of your own',
  run: 'Running',
  sitting: 'Sitting',
  line: 'Your line for the day',
  between: 'Done on the days between',
  seeEasier: 'See the easier numbers',
  easedToday: 'Your morning score says: ease back. Today use the easier numbers.',
  eased: 'Use the easier numbers today.',
  share: 'Share the log',
  clear: 'Delete the log',
  undo: 'Bring it back',
  cleared: 'The log is deleted from this phone.',
  sharedText: 'The log as text',
  copied: 'The log is copied. Paste it into a message to us.',
  shared: 'The log is shared.',
  filed: 'The log is saved as a file. Send it to us.',
  selectIt: 'Copy the text below into a message to us.',
  nothingYet: 'Nothing is in the log yet.',
  morningsPicture: 'Your mornings and sessions',
} as const;

/** A group or a field of one leg, for those who hear the page. @example 'Pain 0-10, left leg' */
export function ofLegText(what: string, side: LogSide | null): string {
  return `${what}, ${(side === 'left' ? IN_USE.leftLeg : IN_USE.rightLeg).toLowerCase()}`;
}

/** Where the log is kept. */
export type Kept = 'kept' | 'disk' | 'denied' | 'full';

const KEPT: Readonly<Record<Kept, string>> = {
  kept: 'The log is kept on this phone only, in this browser. Nothing is sent until you share it.',
  disk: 'Opened from a file: the log stays in this browser, where other files could read it. Share it often.',
  denied: 'This browser keeps nothing. The log is gone when you close the page: share it before.',
  full: 'The storage of this browser is full. What you write now is gone when you close the page: share it before.',
};

/** `damaged`: something kept could not be read and was laid aside. */
export function keptText(kept: Kept, damaged: boolean): string {
  return damaged
    ? `${KEPT[kept]} A part of the log could not be read. It is laid aside, not deleted; tell us.`
    : KEPT[kept];
}

/** Beside the picture of the weeks. @example 'Sessions done: 4 of 6 planned so far. Your usual morning score is 2.' */
export function soFarText(done: number, planned: number, usual: number): string {
  return `Sessions done: ${done} of ${planned} planned so far. Your usual morning score is ${usual}.`;
}

/** @example '12 entries of an earlier sheet are kept as well.' */
export function earlierText(count: number): string {
  return count === 0
    ? ''
    : `${countText(count, 'entry', 'entries')} of an earlier sheet ${count === 1 ? 'is' : 'are'} kept as well.`;
}

/** What cannot be meant in a field. @example noNumberText(20, true) // => 'Not kept: write a whole number from 0 to 20.' */
export function noNumberText(most: number, isWhole: boolean): string {
  return `Not kept: write a ${isWhole ? 'whole ' : ''}number from 0 to ${most}${isWhole ? '' : ', for example 7.5'}.`;
}
