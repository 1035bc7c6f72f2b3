/** Height, mass and the length of the trouble against the age. */
import type { ConsultFrontMatter } from '../schema/consult.ts';
import type { Plausible } from '../schema/plausible.ts';
import { above, outside, type Doubt } from './doubt.ts';

const WEEKS_PER_YEAR = 52.18;

export function bodyDoubts(consult: ConsultFrontMatter, limits: Plausible): Doubt[] {
  return [
    ...heightDoubt(consult, limits),
    ...bodyMassIndexDoubt(consult, limits),
    ...symptomsDoubt(consult, limits),
    ...underAge(consult),
    ...childDoubt(consult, limits),
  ];
}

function heightDoubt({ ageYears, heightM }: ConsultFrontMatter, { heights }: Plausible): Doubt[] {
  const row = heights.value
    .toSorted((a, b) => a.fromYears - b.fromYears)
    .findLast(({ fromYears }) => fromYears <= ageYears);
  if (row === undefined) return [];
  return outside(heightM, [row.leastM, row.mostM], {
    rule: 'heightForAge',
    path: ['heightM'],
    inputs: { ageYears },
  });
}

/** Told of the mass: of the two it is the one that is asked again most easily. Compared as kilograms of this height. */
function bodyMassIndexDoubt({ heightM, massKg, running }: ConsultFrontMatter, limits: Plausible): Doubt[] {
  if (heightM === undefined || massKg === undefined) return [];
  const kgOf = (index: number) => Math.round(index * heightM ** 2);
  const [from, to] = running.runs
    ? [limits.runnersMassIndexFrom.value, limits.runnersMassIndexTo.value]
    : [limits.bodyMassIndexFrom.value, limits.bodyMassIndexTo.value];
  const index = massKg / heightM ** 2;
  if (index >= from && index <= to) return [];
  const inputs = {
    heightM,
    bodyMassIndex: Math.round(index * 10) / 10,
    from,
    to,
    runs: running.runs ? 'yes' : 'no',
  };
  return [
    { rule: 'bodyMassIndex', path: ['massKg'], value: massKg, least: kgOf(from), most: kgOf(to), inputs },
  ];
}

function symptomsDoubt(
  { ageYears, symptomWeeks }: ConsultFrontMatter,
  { symptomsFromAgeYears }: Plausible,
): Doubt[] {
  const most = Math.max(0, Math.floor((ageYears + 1 - symptomsFromAgeYears.value) * WEEKS_PER_YEAR));
  return above(symptomWeeks, most, {
    rule: 'symptomsForAge',
    path: ['symptomWeeks'],
    inputs: { ageYears, fromAgeYears: symptomsFromAgeYears.value },
  });
}

/** The screen says under 18, the age does not. */
function underAge({ ageYears, screen }: ConsultFrontMatter): Doubt[] {
  if (screen.suddenOnsetUnder18 !== 'yes' || ageYears < 18) return [];
  return [{ rule: 'underAge', path: ['ageYears'], value: ageYears, most: 17, inputs: {} }];
}

function childDoubt(
  { ageYears, pregnancy, afterBirth }: ConsultFrontMatter,
  { pregnantFromYears, pregnantToYears }: Plausible,
): Doubt[] {
  const sinceBirth = Math.floor((afterBirth?.weeks ?? 0) / WEEKS_PER_YEAR);
  if (pregnancy === undefined && afterBirth === undefined) return [];
  return outside(ageYears, [pregnantFromYears.value, pregnantToYears.value + sinceBirth + 1], {
    rule: 'childAtAge',
    path: ['ageYears'],
    inputs: {},
  });
}
