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

/** The place of a kind in the order of return, 0 for none. */
export function order(kind: RunKind): number {
  return RUN_KINDS.indexOf(kind);
}
