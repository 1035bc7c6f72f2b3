/** What a person may tell of on the page that stops the programme, and what to do then. */
import type { AlarmItem, AlarmName, AlarmUrgency } from '../../../decisions/terms/alarmItem.ts';
import { capital, listText } from '../plain.ts';

const WORDS: Readonly<Record<AlarmName, string>> = {
  saddleNumbness: 'numbness between the legs',
  bladderBowel: 'trouble with bladder or bowel',
  bothLegWeakness: 'weakness in both legs',
  worseningWeakness: 'a weak leg that gets weaker',
  footDrop: 'a foot that drops',
  clotSigns: 'sudden chest pain or short breath, or a leg that is swollen, warm and throbbing',
  popBruise: 'a sudden pop with a big bruise, or you cannot walk',
  suspectedFracture: 'a bone that may be broken',
  fever: 'a fever, or feeling ill with it',
  weightLoss: 'losing weight without knowing why',
  cancerNightPain: 'pain that wakes you at night, and you have had cancer',
};

export const ALARM = {
  question: 'Something new? Numbness, weakness, a fever ...',
  hint: 'Tick what is new since you were seen. It stands in your log, and this page tells you what to do.',
  heading: 'Stop: no exercises',
  toAlarm: 'See what you ticked',
  share: 'Then share the log with us. Untick it only if it was a slip.',
} as const;

const TO_DO: Readonly<Record<AlarmUrgency, (emergencyNumber: string) => string>> = {
  call: (number) => `Call ${number} now.`,
  sameDay: () => 'Be seen by a doctor today.',
  contact: () => 'Get in touch with us today, or with your doctor.',
};

const MOST_URGENT_FIRST: readonly AlarmUrgency[] = ['call', 'sameDay', 'contact'];

/** What to do by the most urgent of what was ticked; empty when nothing was. @example ['Call 112 now. Do no exercises and no run until you have been seen.', 'You ticked: a foot that drops.'] */
export function alarmLines(ticked: readonly AlarmItem[], emergencyNumber: string): readonly string[] {
  const most = MOST_URGENT_FIRST.find((one) => ticked.some(({ urgency }) => urgency === one));
  if (most === undefined) return [];
  const named = ticked.map(({ item }) => WORDS[item]);
  return [
    `${TO_DO[most](emergencyNumber)} Do no exercises and no run until you have been seen.`,
    `You ticked: ${listText(named)}.`,
  ];
}

/** @example 'A foot that drops' */
export function alarmLabel(item: AlarmName): string {
  return capital(WORDS[item]);
}
