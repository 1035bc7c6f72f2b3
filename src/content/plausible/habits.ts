/** Days, running and what is done besides. */
import { activityRule } from '../../week/activities.ts';
import type { Known } from '../library.ts';
import type { ConsultFrontMatter } from '../schema/consult.ts';
import type { Plausible } from '../schema/plausible.ts';
import { above, type Doubt } from './doubt.ts';

export function habitDoubts(consult: ConsultFrontMatter, limits: Plausible, known: Known): Doubt[] {
  const { running, ageYears, minutesPerDay } = consult;
  return [
    ...above(minutesPerDay, limits.minutesToPerDay.value, {
      rule: 'minutesPerDay',
      path: ['minutesPerDay'],
      inputs: {},
    }),
    ...above(running.weeklyKm, limits.weeklyToKm.value, {
      rule: 'runningKm',
      path: ['running', 'weeklyKm'],
      inputs: {},
    }),
    ...above(running.longestIn30DaysKm, limits.longestToKm.value, {
      rule: 'runningKm',
      path: ['running', 'longestIn30DaysKm'],
      inputs: {},
    }),
    ...above(running.trainingYears, Math.max(0, ageYears - limits.runningFromAgeYears.value), {
      rule: 'trainingForAge',
      path: ['running', 'trainingYears'],
      inputs: { ageYears, fromAgeYears: limits.runningFromAgeYears.value },
    }),
    ...unknownActivities(consult, known),
  ];
}

/** What the protocol's table does not hold is a slip, or confirmed and then asked about first. */
function unknownActivities({ doesNow, protocol }: ConsultFrontMatter, { protocols }: Known): Doubt[] {
  const table = protocols.get(protocol)?.activities;
  if (table === undefined) return [];
  return doesNow.flatMap(({ what }, index) =>
    activityRule(what, table) === null
      ? [
          {
            rule: 'unknownActivity' as const,
            path: ['doesNow', index, 'what'],
            value: what,
            inputs: { protocol, known: table.map((row) => row.what).join(', ') },
          },
        ]
      : [],
  );
}
