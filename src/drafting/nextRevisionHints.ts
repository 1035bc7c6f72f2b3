/** What a draft says before a key: what to ask again, and what it was last time. */
import { provokedDeg } from '../content/guardedAngle.ts';
import type { ConsultFrontMatter } from '../content/schema/consult.ts';

/** By key; of what is taken over it says what may have changed. */
export const HINTS: readonly (readonly [string, string])[] = [
  ['draft', 'A draft is checked, never built. Take this line out when everything has been asked.'],
  ['ageYears', 'Taken over: has there been a birthday?'],
  ['massKg', 'Taken over: is it still right?'],
  [
    'screen',
    'Ask every item again, and write no or yes. A yes that stops every programme withdraws the leaflet in use.',
  ],
  ['clearances', 'Taken over with their dates: does each still hold?'],
  ['cannotDo', 'Taken over: is there more now, or less?'],
  ['kit', 'Taken over: has anything come or gone?'],
  ['days', 'Taken over: ask again.'],
  ['running', 'Taken over: ask kilometres, longest run, weeks off, races and the decision again.'],
  ['sitting', 'Taken over: ask the tolerance again.'],
  ['recovery', 'Taken over: ask again.'],
  ['doesNow', 'Taken over: ask again.'],
  ['goals', 'Taken over: how often has each been done?'],
  ['outcomes', 'Taken over: add the scores of today.'],
  ['overrides', 'Taken over: does each still hold?'],
];

export function lastTime(what: string): string {
  return `Ask again. Last time: ${what}.`;
}

export function describeTest({
  test,
  pain,
  side,
  seconds,
  repetitions,
  ...from
}: ConsultFrontMatter['tests'][number]): string {
  const painFromDeg = provokedDeg(from);
  return [
    test,
    ...(side === undefined ? [] : [side]),
    ...(seconds === undefined ? [] : [`${seconds} s`]),
    ...(repetitions === undefined ? [] : [`${repetitions} times`]),
    `pain ${pain}`,
    ...(painFromDeg === undefined ? [] : [`from ${painFromDeg}°`]),
  ].join(' ');
}

export function describeSet({
  card,
  side,
  loadKg,
  repetitions,
  reserve,
  pain,
}: ConsultFrontMatter['testedSets'][number]): string {
  return `${card} ${side} ${loadKg} kg, ${repetitions} times with ${reserve} left, pain ${pain}`;
}
