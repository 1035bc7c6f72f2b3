/** Running: numbers that cannot be of the same weeks, and what nobody runs. */
import type { ConsultFrontMatter } from '../schema/consult.ts';
import type { Plausible } from '../schema/plausible.ts';
import { above, outside, type Doubt } from './doubt.ts';

type Running = ConsultFrontMatter['running'];

export function runningDoubts({ running }: ConsultFrontMatter, limits: Plausible): Doubt[] {
  const { runsPerWeek, stepsPerMin } = running;
  return [
    ...weeksOff(running, limits),
    ...above(runsPerWeek, limits.runsToPerWeek.value, {
      rule: 'runsPerWeek',
      path: ['running', 'runsPerWeek'],
      inputs: {},
    }),
    ...outside(stepsPerMin, [limits.stepsFromPerMin.value, limits.stepsToPerMin.value], {
      rule: 'stepsPerMin',
      path: ['running', 'stepsPerMin'],
      inputs: {},
    }),
    ...notRunning(running),
    ...longRaces(running, limits),
  ];
}

/** A usual week of now is an average of the last weeks: without a run in them it is 0 km. */
function weeksOff({ weeksOff: weeks, weeklyKm = 0 }: Running, { weekIsAverageOfWeeks }: Plausible): Doubt[] {
  if (weeklyKm === 0) return [];
  const ofWeeks = weekIsAverageOfWeeks.value;
  if (weeks === undefined || weeks < ofWeeks) return [];
  return [
    { rule: 'weeksOff', path: ['running', 'weeksOff'], value: weeks, most: ofWeeks, inputs: { weeklyKm } },
  ];
}

/** Somebody who does not run has no kilometres, and no running to keep. */
function notRunning({ runs, decision, weeklyKm }: Running): Doubt[] {
  if (runs) return [];
  return [
    ...above(weeklyKm, 0, { rule: 'runsNot', path: ['running', 'weeklyKm'], inputs: {} }),
    ...(decision === 'keep'
      ? [{ rule: 'keepsNothing', path: ['running', 'decision'], value: decision, inputs: {} } as const]
      : []),
  ];
}

function longRaces(
  { races = [], longestIn30DaysKm = 0 }: Running,
  { raceToTimesLongest }: Plausible,
): Doubt[] {
  if (longestIn30DaysKm === 0) return [];
  return races.flatMap(({ km }, index) =>
    above(km, Math.round(longestIn30DaysKm * raceToTimesLongest.value), {
      rule: 'raceKm',
      path: ['running', 'races', index, 'km'],
      inputs: { longestIn30DaysKm, times: raceToTimesLongest.value },
    }),
  );
}
