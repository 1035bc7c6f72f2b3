/** House numbers as the shipped protocol sets them (house rules 4 to 8), and a rested, trained person. */
import type { Setting } from '../../src/units/reason.ts';
import type { Recoverer } from '../../src/scheduling/recovery.ts';

const choice = (value: number): Setting => ({ value, mark: 'choice' });

export const clock = {
  heavyHours: choice(48),
  energyStorageHours: choice(72),
  easyRunHours: choice(24),
  slowFactor: choice(1.5),
  weeksAwayCount: choice(4),
  noviceYears: choice(1),
  leastLifts: choice(2),
  firstSessionDays: choice(3),
  besideHardShare: choice(0.5),
  runDaysInRow: choice(2),
  runDaysInRowBelowStage: choice(4),
};

export const running = {
  usualPainNoRun: choice(4),
  testPainNoRun: choice(6),
  longestGrowth: choice(1.1),
  hillOrFastApartWeeks: choice(6),
  fastGrowth: choice(1.1),
  lowStepsPerMin: choice(165),
  stepRateGrowth: choice(1.05),
  walkRunCycleMinutes: choice(6),
  walkRunCycles: choice(5),
  runsPerWeek: choice(3),
  otherRunShare: choice(0.5),
  raceNoHeavyDays: choice(4),
  raceTaperDays: choice(7),
  raceTaperShare: choice(0.5),
  raceEasyDays: [
    { upToKm: 10, from: 5, to: 7, mark: 'memory' },
    { upToKm: 21.1, from: 7, to: 10, mark: 'memory' },
    { upToKm: 42.2, from: 14, to: 21, mark: 'memory' },
  ],
} as const;

export const sitting = {
  shareOfTolerance: choice(2 / 3),
  leastMinutes: choice(5),
  mostMinutes: choice(30),
  stepMinutes: choice(5),
  hardSeatShare: choice(0.5),
  noBudgetUnder: choice(5),
};

export const pain = {
  duringAtMost: choice(3),
  overUsualAtMost: choice(1),
  neverAbove: choice(5),
  usualOnlyFrom: choice(4),
};

/** A calm tendon with this usual pain. */
export const calm = (usualPain: number) => ({ usualPain, irritability: 'moderate' }) as const;

export const morning = {
  carryOnOver: choice(1),
  sameAgainOver: choice(2),
  easeBackAt: choice(6),
  contactAfterDays: choice(7),
  contactWhenRisingDays: choice(14),
};

export const flare = {
  restDays: choice(1),
  holdsOnlyDays: { from: 2, to: 3 },
  sittingFactor: choice(0.5),
  mark: 'choice',
} as const;

export const missed = { sameStepUnder: choice(7), oneBackUpTo: choice(14) };

export const goingOn = { leastSessions: choice(3), leastDays: choice(7), checkDays: choice(7) };

export const rested: Recoverer = { trainingYears: 10, weeksAway: 0, tired: false, sleep: 'good' };
