/** Kinds of run in the order in which they come back. */
export const RUN_KINDS = [
  'none',
  'walk-run',
  'easy',
  'longer',
  'steady',
  'hills-or-strides',
  'fast',
] as const;
export type RunKind = (typeof RUN_KINDS)[number];
