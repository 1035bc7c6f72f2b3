/** A jump from one revision to the next: perhaps it is another person's file. */
import { daysBetween } from '../../units/date.ts';
import type { ConsultFrontMatter } from '../schema/consult.ts';
import type { Plausible } from '../schema/plausible.ts';
import { outside, type Doubt } from './doubt.ts';

/** `last`: the revision before. */
export function revisionDoubts(
  now: ConsultFrontMatter,
  last: ConsultFrontMatter,
  limits: Plausible,
): Doubt[] {
  const { revision } = last;
  const years = Math.max(0, daysBetween(last.seenOn, now.seenOn) / 365.25);
  return [
    ...orderDoubts(now, last),
    ...outside(now.ageYears, [last.ageYears, last.ageYears + Math.floor(years) + 1], {
      rule: 'ageSince',
      path: ['ageYears'],
      inputs: { revision, last: last.ageYears, seenOn: last.seenOn },
    }),
    ...heightDoubt(now, last, years, limits),
    ...massDoubt(now, last, limits),
    ...now.testedSets.flatMap((set, index) => loadDoubt(set, index, last, limits)),
    ...(now.side === last.side ? [] : [other('otherSide', 'side', now, last)]),
    ...(now.country === last.country ? [] : [other('otherCountry', 'country', now, last)]),
  ];
}

function orderDoubts(now: ConsultFrontMatter, last: ConsultFrontMatter): Doubt[] {
  const key = now.seenOn < last.seenOn ? 'seenOn' : now.startOn < last.startOn ? 'startOn' : null;
  if (key === null) return [];
  return [
    {
      rule: 'beforeLast',
      path: [key],
      value: now[key],
      least: last[key],
      inputs: { revision: last.revision },
    },
  ];
}

function heightDoubt(
  now: ConsultFrontMatter,
  { heightM: before, ageYears, revision }: ConsultFrontMatter,
  years: number,
  { heightChangeM, growthMPerYear }: Plausible,
): Doubt[] {
  if (before === undefined) return [];
  const growth = ageYears < 18 ? growthMPerYear.value * years : 0;
  return outside(now.heightM, [cm(before - heightChangeM.value), cm(before + heightChangeM.value + growth)], {
    rule: 'heightSince',
    path: ['heightM'],
    inputs: { revision, last: before },
  });
}

function massDoubt(
  now: ConsultFrontMatter,
  { massKg: before, revision }: ConsultFrontMatter,
  { massChangeShare: { value: share } }: Plausible,
): Doubt[] {
  if (before === undefined) return [];
  return outside(now.massKg, [cm(before * (1 - share)), cm(before * (1 + share))], {
    rule: 'massSince',
    path: ['massKg'],
    inputs: { revision, last: before },
  });
}

/** The heaviest of the same exercise on the same leg, at the visit before: more than its double or less than its half is asked about. */
function loadDoubt(
  { card, side, loadKg }: ConsultFrontMatter['testedSets'][number],
  index: number,
  { testedSets, revision }: ConsultFrontMatter,
  { testedLoadTimes: { value: times } }: Plausible,
): Doubt[] {
  const before = Math.max(
    0,
    ...testedSets.filter((one) => one.card === card && one.side === side).map((one) => one.loadKg),
  );
  if (before === 0 || loadKg === 0) return [];
  return outside(loadKg, [cm(before / times), cm(before * times)], {
    rule: 'loadSince',
    path: ['testedSets', index, 'loadKg'],
    inputs: { revision, last: before, card },
  });
}

function other(
  rule: 'otherSide' | 'otherCountry',
  key: 'side' | 'country',
  now: ConsultFrontMatter,
  last: ConsultFrontMatter,
): Doubt {
  return { rule, path: [key], value: now[key], inputs: { revision: last.revision, last: last[key] } };
}

// Two decimals: a centimetre, or ten grams.
const cm = (value: number) => Math.round(value * 100) / 100;
