/**
 * What is plausible for one person: soft limits inside the hard ones. A value beyond them is an error until the
 * consult confirms it. A clinic file that leaves one out has the house's; content/clinic.md prints the same.
 */
import * as z from 'zod';
import type { Mark } from '../../units/source.ts';
import { about, date, from, setting, wholeFrom } from './words.ts';

const HOUSE: { readonly mark: Mark } = { mark: 'choice' };

const heights = z
  .array(
    z.strictObject({
      fromYears: about('From this age on, up to the next row.', wholeFrom(0, 110, 'years')),
      leastM: about('No shorter than this, metres.', from(0.5, 2.5, 'm')),
      mostM: about('No taller than this, metres.', from(0.5, 2.5, 'm')),
    }),
  )
  .min(1, 'at least one row');

const HEIGHTS = [
  { fromYears: 0, leastM: 1.05, mostM: 1.55 },
  { fromYears: 10, leastM: 1.15, mostM: 1.72 },
  { fromYears: 12, leastM: 1.25, mostM: 1.86 },
  { fromYears: 14, leastM: 1.38, mostM: 1.98 },
  { fromYears: 16, leastM: 1.42, mostM: 2.05 },
  { fromYears: 18, leastM: 1.4, mostM: 2.1 },
];

const HEIGHT_SOURCE =
  'About four standard deviations either side of the median of the WHO growth reference for 5 to 19 years (2007)';

export const plausible = z.strictObject({
  bodyMassIndexFrom: about('Least body mass index, kg/m².', setting(from(8, 20, 'kg/m²'))).default({
    value: 13,
    ...HOUSE,
  }),
  bodyMassIndexTo: about('Greatest body mass index, kg/m².', setting(from(30, 120, 'kg/m²'))).default({
    value: 60,
    ...HOUSE,
  }),
  runnersMassIndexFrom: about(
    'Least body mass index of somebody who runs, kg/m².',
    setting(from(8, 20, 'kg/m²')),
  ).default({ value: 15, ...HOUSE }),
  runnersMassIndexTo: about(
    'Greatest body mass index of somebody who runs, kg/m².',
    setting(from(25, 120, 'kg/m²')),
  ).default({ value: 40, ...HOUSE }),
  heights: about('Height by age, a row from each age on.', setting(heights)).default({
    value: HEIGHTS,
    mark: 'memory',
    cite: HEIGHT_SOURCE,
  }),
  symptomsFromAgeYears: about(
    'Age before which a sore tendon does not begin.',
    setting(from(0, 18, 'years')),
  ).default({ value: 6, ...HOUSE }),
  pregnantFromYears: about('Age before which nobody is pregnant.', setting(from(8, 20, 'years'))).default({
    value: 12,
    ...HOUSE,
  }),
  pregnantToYears: about('Age after which nobody is pregnant.', setting(from(35, 80, 'years'))).default({
    value: 50,
    ...HOUSE,
  }),
  liftOnBothLegs: about(
    'Greatest lift on both legs, as a share of body mass: what a tested set says could be lifted once.',
    setting(from(0.2, 5, '')),
  ).default({ value: 1.5, ...HOUSE }),
  liftOnOneLeg: about('The same on one leg.', setting(from(0.1, 3, ''))).default({ value: 0.9, ...HOUSE }),
  liftAtOneAnkle: about('The same with the weight at one ankle.', setting(from(0.05, 1, ''))).default({
    value: 0.35,
    ...HOUSE,
  }),
  liftAtBothAnkles: about(
    'The same with the weight at both ankles, as on a machine.',
    setting(from(0.1, 3, '')),
  ).default({ value: 1.2, ...HOUSE }),
  dumbbellToKg: about('Heaviest dumbbell at home.', setting(from(1, 100, 'kg'))).default({
    value: 40,
    ...HOUSE,
  }),
  kettlebellToKg: about('Heaviest kettlebell at home.', setting(from(1, 100, 'kg'))).default({
    value: 48,
    ...HOUSE,
  }),
  plateToKg: about('Heaviest plate at home.', setting(from(1, 50, 'kg'))).default({ value: 25, ...HOUSE }),
  barToKg: about('Heaviest empty bar at home.', setting(from(1, 30, 'kg'))).default({ value: 25, ...HOUSE }),
  bottleToL: about('Largest bottle at home.', setting(from(0.5, 20, 'litres'))).default({
    value: 10,
    ...HOUSE,
  }),
  stepFromCm: about('Lowest step.', setting(from(5, 30, 'cm'))).default({ value: 8, ...HOUSE }),
  stepToCm: about('Highest step.', setting(from(20, 60, 'cm'))).default({ value: 50, ...HOUSE }),
  holdToSeconds: about('Longest hold of a test.', setting(from(30, 300, 'seconds'))).default({
    value: 180,
    ...HOUSE,
  }),
  repetitionsToFailure: about(
    'Most repetitions of a tested set, those left counted.',
    setting(wholeFrom(10, 60)),
  ).default({ value: 45, ...HOUSE }),
  rangeOverCardDeg: about(
    'How far the hip bend of a test may pass the one its card is built to.',
    setting(from(0, 60, '°')),
  ).default({ value: 15, ...HOUSE }),
  repetitionToSeconds: about('Longest repetition of a tested set.', setting(from(5, 60, 'seconds'))).default({
    value: 15,
    ...HOUSE,
  }),
  painApart: about(
    'How far apart the pain of a test and of a set of the same exercise may be.',
    setting(from(1, 10, '')),
  ).default({ value: 3, ...HOUSE }),
  usualPainOverTests: about(
    'How far usual pain may be above the worst test.',
    setting(from(0, 10, '')),
  ).default({ value: 4, ...HOUSE }),
  lowIrritabilityPainTo: about(
    'Worst pain, usual or in a test, beside low irritability.',
    setting(from(0, 10, '')),
  ).default({ value: 5, ...HOUSE }),
  soundLegPainTo: about(
    'Most pain in a test of the leg that is not treated.',
    setting(from(0, 10, '')),
  ).default({ value: 2, ...HOUSE }),
  minutesFromPerDay: about('Shortest session of a day.', setting(from(5, 30, 'minutes'))).default({
    value: 10,
    ...HOUSE,
  }),
  minutesToPerDay: about('Longest session of a day.', setting(from(30, 180, 'minutes'))).default({
    value: 90,
    ...HOUSE,
  }),
  sittingFromMinutes: about(
    'Fewest minutes of sitting that are no hours.',
    setting(from(0, 30, 'minutes')),
  ).default({ value: 3, ...HOUSE }),
  sittingApart: about(
    'How many times one number of minutes of sitting may be another of the same day.',
    setting(from(1, 10, 'times')),
  ).default({ value: 2, ...HOUSE }),
  weeklyToKm: about('Longest usual week of running.', setting(from(20, 300, 'km'))).default({
    value: 160,
    ...HOUSE,
  }),
  longestToKm: about('Longest run of 30 days.', setting(from(10, 200, 'km'))).default({
    value: 60,
    ...HOUSE,
  }),
  runsToPerWeek: about('Most runs of a week.', setting(wholeFrom(1, 14))).default({ value: 7, ...HOUSE }),
  weekIsAverageOfWeeks: about(
    'Weeks of which a usual week is the average; after so many without a run it is 0 km.',
    setting(wholeFrom(1, 12, 'weeks')),
  ).default({ value: 4, ...HOUSE }),
  stepsFromPerMin: about('Lowest step rate at easy pace.', setting(from(110, 170, 'steps a minute'))).default(
    { value: 140, ...HOUSE },
  ),
  stepsToPerMin: about('Highest step rate at easy pace.', setting(from(170, 230, 'steps a minute'))).default({
    value: 205,
    ...HOUSE,
  }),
  raceToTimesLongest: about(
    'How many times the longest run of 30 days a race may be.',
    setting(from(1, 20, 'times')),
  ).default({ value: 5, ...HOUSE }),
  runningFromAgeYears: about('Age before which nobody trains.', setting(from(0, 18, 'years'))).default({
    value: 5,
    ...HOUSE,
  }),
  seenFrom: about('First day on which a consult may have been.', setting(date)).default({
    value: '2020-01-01' as z.output<typeof date>,
    ...HOUSE,
  }),
  seenTo: about('Last day on which a consult may be.', setting(date)).default({
    value: '2039-12-31' as z.output<typeof date>,
    ...HOUSE,
  }),
  startWithinDays: about('Days from the consult to the start.', setting(wholeFrom(1, 365, 'days'))).default({
    value: 28,
    ...HOUSE,
  }),
  reviewFromDays: about(
    'Days from the start to the earliest review.',
    setting(wholeFrom(1, 28, 'days')),
  ).default({ value: 5, ...HOUSE }),
  restFromSeconds: about(
    "Shortest rest of the clinician's own, but for none.",
    setting(from(0, 60, 'seconds')),
  ).default({ value: 10, ...HOUSE }),
  reviewWithinWeeks: about('Weeks from the start to the review.', setting(wholeFrom(1, 26, 'weeks'))).default(
    {
      value: 12,
      ...HOUSE,
    },
  ),
  decidedWithinWeeks: about(
    'Weeks back from the consult in which a decision or a picture still counts.',
    setting(wholeFrom(1, 520, 'weeks')),
  ).default({ value: 52, ...HOUSE }),
  scoredWithinWeeks: about(
    'Weeks back from the consult in which a score was taken.',
    setting(wholeFrom(1, 1040, 'weeks')),
  ).default({ value: 260, ...HOUSE }),
  aimedWithinWeeks: about(
    'Weeks ahead of the consult in which a goal or a race lies.',
    setting(wholeFrom(1, 520, 'weeks')),
  ).default({ value: 156, ...HOUSE }),
  heightChangeM: about('Change of height from one revision to the next.', setting(from(0, 0.2, 'm'))).default(
    {
      value: 0.03,
      ...HOUSE,
    },
  ),
  growthMPerYear: about('Growth a year under 18, besides.', setting(from(0, 0.3, 'm'))).default({
    value: 0.12,
    ...HOUSE,
  }),
  massChangeShare: about(
    'Change of body mass from one revision to the next, as a share.',
    setting(from(0.01, 1, '')),
  ).default({ value: 0.1, ...HOUSE }),
});

export type Plausible = z.output<typeof plausible>;
