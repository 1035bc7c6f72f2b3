/** What a person may answer yes to on the page of the leaflet. Imports nothing: the page's script knows the words of each. */

/** Items of the screen that stop a programme by themselves. */
export const ALARM_ITEMS = [
  'saddleNumbness',
  'bladderBowel',
  'bothLegWeakness',
  'worseningWeakness',
  'footDrop',
  'clotSigns',
  'popBruise',
  'suspectedFracture',
  'fever',
  'weightLoss',
  'cancerNightPain',
] as const;
export type AlarmName = (typeof ALARM_ITEMS)[number];

/** How soon somebody has to look at it. `call`: the emergency number now · `sameDay`: be seen today · `contact`: get in touch today. */
export type AlarmUrgency = 'call' | 'sameDay' | 'contact';

export interface AlarmItem {
  readonly item: AlarmName;
  readonly urgency: AlarmUrgency;
}
