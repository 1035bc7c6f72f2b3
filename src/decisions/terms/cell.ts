/** The numbers of an exercise, by name, and what can decide one. */
import type { Rule } from './rule.ts';
import type { Source } from '../../units/source.ts';

export const CELLS = [
  'sets',
  'repetitions',
  'holdSeconds',
  'tempo',
  'restSeconds',
  'loadKg',
  'reserve',
  // Of these three the one of the protocol's angle.
  'hipFlexionDeg',
  'kneeFlexionDeg',
  'ankleDorsiflexionDeg',
  'howFar',
  'timesPerDay',
  'days',
] as const;
export type CellName = (typeof CELLS)[number];

export const DECIDED_BY = [
  'hipFlexion',
  'kneeFlexion',
  'ankleDorsiflexion',
  'compression',
  'tension',
  'demand',
  'provokedAngle',
  'testedSet',
  'step',
  'dose',
  'kit',
  'minutes',
  'clinician',
] as const;
export type DecidedBy = (typeof DECIDED_BY)[number];

/** One number of the dosage table with its reason. */
export interface DecidedCell extends Why {
  readonly step: number;
  readonly slot: string;
  readonly card: string;
  readonly cell: CellName;
  /** Null where the cell does not apply or a number would be invented. */
  readonly value: number | string | null;
}

/** Why a number is what it is. */
export interface Why {
  readonly rule: Rule;
  readonly inputs: Readonly<Record<string, number | string | null>>;
  readonly source: Source;
  readonly decidedBy: DecidedBy;
}
