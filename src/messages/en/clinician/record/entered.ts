/**
 * The numbers as they were typed, high up in the note: what no rule can doubt, an age of 84 for 34 or a kit in pounds
 * throughout, the clinician can still see.
 */
import type { Consult } from '../../../../content/library.ts';
import { numberText } from '../../plain.ts';
import { kitListText } from './findings.ts';

/** @example 'As entered: age 34, 1.72 m, 61 kg; began 14 weeks ago. Sets: Deep bow (right) 10 × 20 kg, 4 left. Kit: dumbbells 4, 4 kg.' */
export function enteredLine(consult: Consult, nameOf: (id: string) => string): string {
  const { ageYears, heightM, massKg, symptomWeeks, testedSets, kit, running } = consult;
  const told = [
    `age ${ageYears}`,
    heightM === undefined ? 'height not recorded' : `${numberText(heightM)} m`,
    massKg === undefined ? 'mass not recorded' : `${numberText(massKg)} kg`,
  ].join(', ');
  const began = symptomWeeks === undefined ? '' : `; began ${numberText(symptomWeeks)} weeks ago`;
  const sets = testedSets.map(
    ({ card, side, loadKg, repetitions, reserve }) =>
      `${nameOf(card)} (${side}) ${repetitions} × ${numberText(loadKg)} kg, ${reserve} left`,
  );
  return [
    `As entered: ${told}${began}.`,
    ...(sets.length === 0 ? [] : [`Sets: ${sets.join('; ')}.`]),
    `Kit: ${kitListText(kit)}.`,
    ...(running.runs ? [`Runs: ${runsText(running)}.`] : []),
  ].join(' ');
}

function runsText({ weeklyKm, longestIn30DaysKm }: Consult['running']): string {
  return `${km(weeklyKm)} a week, longest of 30 days ${km(longestIn30DaysKm)}`;
}

function km(amount: number | undefined): string {
  return amount === undefined ? 'not recorded' : `${numberText(amount)} km`;
}
