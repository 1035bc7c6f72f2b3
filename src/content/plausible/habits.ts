/** Days, running and what is done besides. */
import { activityRule } from '../../scheduling/activities.ts';
import type { Nameable } from '../library.ts';
import type { ConsultFrontMatter } from '../schema/consult.ts';
import type { Plausible } from '../schema/plausible.ts';
import { runningDoubts } from './running.ts';
import { above, outside, type Doubt } from './doubt.ts';

export function habitDoubts(consult: ConsultFrontMatter, limits: Plausible, known: Nameable): Doubt[] {
  const { running, ageYears, minutesPerDay } = consult;
  return [
    ...outside(minutesPerDay, [limits.minutesFromPerDay.value, limits.minutesToPerDay.value], {
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
    ...weekAboveRuns(running, limits),
    ...runningDoubts(consult, limits),
    ...unknownActivities(consult, known),
  ];
}

/** A week cannot hold more than all its runs at their longest; where their number is not told, more than a few such runs are asked about. */
function weekAboveRuns(
  { weeklyKm, runsPerWeek, longestIn30DaysKm }: ConsultFrontMatter['running'],
  { weekToTimesLongest: { value: times }, weeklyToKm }: Plausible,
): Doubt[] {
  if (longestIn30DaysKm === undefined) return [];
  if (longestIn30DaysKm > 0 && runsPerWeek === undefined) {
    // Asked about as it is.
    if ((weeklyKm ?? 0) > weeklyToKm.value) return [];
    return above(weeklyKm, longestIn30DaysKm * times, {
      rule: 'weekAboveLongest',
      path: ['running', 'weeklyKm'],
      inputs: { longestIn30DaysKm, times },
    });
  }
  const most = longestIn30DaysKm * (runsPerWeek ?? 0);
  return above(weeklyKm, most, {
    rule: 'weekAboveRuns',
    path: ['running', 'weeklyKm'],
    inputs: { runsPerWeek: runsPerWeek ?? 'any', longestIn30DaysKm },
  });
}

/** What the protocol's table does not hold is a slip, or confirmed and then asked about first. */
function unknownActivities({ doesNow, protocol }: ConsultFrontMatter, { protocols }: Nameable): Doubt[] {
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
