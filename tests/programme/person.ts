/** An invented person for tests: all in order, everything at home, stage 2; each test says what is different. */
import type { Consult } from '../../src/content/library.ts';
import { SCREEN_ITEMS, type Screen } from '../../src/content/schema/consult.ts';
import { isoDate, type IsoDate } from '../../src/units/date.ts';
import { WEEKDAYS } from '../../src/units/weekday.ts';

export const day = (text: string): IsoDate => {
  const date = isoDate(text);
  if (date === null) throw new Error(`${text} is no day`);
  return date;
};

export const ALL_CLEAR = Object.fromEntries(SCREEN_ITEMS.map((item) => [item, 'no'])) as Screen;

const SLOW = { go: 3, hold: 0, back: 3 };

/** A tested set of the painful side, slow, with little pain. */
export function testedSet(
  card: string,
  loadKg: number,
  repetitions: number,
  reserve: number,
  more: Partial<Consult['testedSets'][number]> = {},
): Consult['testedSets'][number] {
  return { card, side: 'right', loadKg, repetitions, reserve, tempo: SLOW, pain: 1, ...more };
}

export const RUNNER: Consult['running'] = {
  runs: true,
  decision: 'keep',
  weeklyKm: 24,
  runsPerWeek: 3,
  longestIn30DaysKm: 9,
  hills: false,
  speed: false,
  hillyRoutes: false,
  overStriding: 'no',
  trainingYears: 6,
  weeksOff: 0,
};

export const FULL_KIT: Consult['kit'] = {
  dumbbellsKg: [2, 2, 4, 4, 6, 6, 8, 8],
  kettlebellsKg: [12, 16],
  platesKg: [2.5, 2.5, 5, 5],
  barKg: 10,
  bands: ['light-loop'],
  rucksack: true,
  bottlesL: [0.5, 1, 2],
  bench: true,
  ball: true,
  stepCm: [18, 28],
};

export { NO_KIT } from '../../src/lint/syntheticPatients.ts';

const BASE: Consult = {
  id: 'vole-r1',
  notes: [],
  alias: 'vole',
  revision: 1,
  clinician: 'R. Sample, physiotherapist',
  seenOn: day('2026-11-23'),
  startOn: day('2026-11-24'),
  reviewOn: day('2026-12-15'),
  country: 'GB',
  ageYears: 40,
  side: 'right',
  heightM: 1.72,
  massKg: 68,
  protocol: 'proximal-hamstring',
  stage: 'auto',
  stageBecause: 'the stage that the test is about',
  irritability: 'moderate',
  response24h: 'settled',
  usualMorningPain: 2,
  screen: ALL_CLEAR,
  clearances: [],
  cannotDo: [],
  tests: [
    { test: 'single-leg-bridge-raised', pain: 2 },
    { test: 'hip-hinge', pain: 4, painFreeHipFlexionDeg: 70 },
  ],
  testedSets: [],
  kit: FULL_KIT,
  days: [...WEEKDAYS],
  minutesPerDay: 60,
  running: { runs: false, decision: 'none' },
  sitting: { toleranceMinutes: 30 },
  recovery: { sleep: 'good', stress: 'low', tired: false },
  changedBefore: [],
  doesNow: [],
  goals: [],
  outcomes: [],
  notExamined: [],
  confirmed: [],
  chosen: [],
  leftOut: [],
  added: [],
  overrides: [],
};

/** The person with some of it different; fast work is asked for with tests that hurt nobody. */
export function person(different: Partial<Consult> = {}): Consult {
  return { ...BASE, ...(different.stage === 4 ? { tests: MILD } : {}), ...different };
}

const MILD: Consult['tests'] = [
  { test: 'single-leg-bridge-raised', pain: 2 },
  { test: 'hip-hinge', pain: 3, painFreeHipFlexionDeg: 70 },
];
