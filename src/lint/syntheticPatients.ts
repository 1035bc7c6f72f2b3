/** Invented people whom every stage of a protocol must have something for. */
import type { Consult } from '../content/library.ts';
import { SCREEN_ITEMS, type ConsultKit, type Screen } from '../content/schema/consult.ts';
import type { CannotOne } from '../messages/en/author/library.ts';
import { addDays, isoDate, type IsoDate } from '../units/date.ts';

export interface SyntheticPatient {
  /** One thing each, or nothing. */
  readonly cannotDo: readonly CannotOne[];
}

/** None of them has more than stands in every home. */
export const SYNTHETIC_PATIENTS: readonly SyntheticPatient[] = [
  { cannotDo: [] },
  { cannotDo: ['kneel'] },
  { cannotDo: ['lie-prone'] },
  { cannotDo: ['lie-supine'] },
  { cannotDo: ['get-to-the-floor'] },
];

/** A home without a thing beyond the household's. */
export const NO_KIT: ConsultKit = {
  dumbbellsKg: [],
  kettlebellsKg: [],
  platesKg: [],
  bands: [],
  rucksack: false,
  bottlesL: [],
  bench: false,
  ball: false,
  stepCm: [],
};

// Days no answer hangs on; a consult cannot be without them.
const SEEN_ON = isoDate('2026-01-05') as IsoDate;

/** A consult of the reference body, nothing tested, nothing hurting, every question of the screen answered no. */
export function syntheticConsult({ cannotDo }: SyntheticPatient, protocol: string): Consult {
  return {
    id: 'panel-r1',
    alias: 'panel',
    revision: 1,
    clinician: 'nobody',
    seenOn: SEEN_ON,
    startOn: SEEN_ON,
    reviewOn: addDays(SEEN_ON, 14),
    country: 'GB',
    ageYears: 40,
    side: 'right',
    protocol,
    stage: 'auto',
    irritability: 'low',
    response24h: 'settled',
    usualMorningPain: 0,
    screen: Object.fromEntries(SCREEN_ITEMS.map((item) => [item, 'no'])) as Screen,
    clearances: [],
    cannotDo: [...cannotDo],
    tests: [],
    testedSets: [],
    kit: NO_KIT,
    days: ['mon', 'wed', 'fri'],
    minutesPerDay: 60,
    running: { runs: false, decision: 'none', races: [] },
    sitting: { toleranceMinutes: 60 },
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
    notes: [],
  };
}
