/** The numbers of an exercise, by name, and what can decide one. */

export const CELLS = [
  'sets',
  'repetitions',
  'holdSeconds',
  'tempo',
  'restSeconds',
  'loadKg',
  'reserve',
  'hipFlexionDeg',
  'howFar',
  'timesPerDay',
  'days',
] as const;
export type CellName = (typeof CELLS)[number];

export const DECIDED_BY = [
  'hipFlexion',
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
