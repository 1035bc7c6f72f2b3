/** The cells of the dosage table a clinician may set, and what each may hold; the same bounds as in doses and tests. */
import * as z from 'zod';
import { HEAVIEST_WRITTEN_KG } from '../../units/load.ts';
import { from, line, wholeFrom } from './words.ts';

export const OVERRIDES = {
  sets: wholeFrom(1, 10),
  repetitions: wholeFrom(1, 60),
  holdSeconds: from(1, 120, 'seconds'),
  tempo: line,
  restSeconds: from(0, 600, 'seconds'),
  loadKg: from(0, HEAVIEST_WRITTEN_KG, 'kg'),
  reserve: wholeFrom(0, 10),
  hipFlexionDeg: from(0, 140, '°'),
  kneeFlexionDeg: from(0, 150, '°'),
  ankleDorsiflexionDeg: from(-50, 40, '°'),
  howFar: line,
  timesPerDay: wholeFrom(1, 4),
  days: line,
} as const;

/** An entry that is no cell of a card: the clinician's own decision on running, over the house rules. */
export const RUNNING_DECISION = 'running.decision';
export const RUN_CHOICE = z.enum(['keep', 'walk-run', 'none']);

/** The other: that a programme is written although usual pain is high, decided by the clinician. */
export const PAIN_DECISION = 'pain.decision';
export const PAIN_CHOICE = z.enum(['goOn']);

/** Entries that are no cell of a card. */
export const DECISIONS = [RUNNING_DECISION, PAIN_DECISION] as const;
