/** What makes a run hard, and how long it takes to recover from it (house rules 6 and 7). */
import type { RecoveryKind } from './recovery.ts';
import type { RunKind } from './run.ts';

/** What makes a run hard whatever its pace. */
export const HARD_FEATURES = [
  'hilly-route',
  'race',
  'downhill',
  'stairs',
  'treadmill-slope',
  'high-knee-drills',
] as const;
export type HardFeature = (typeof HARD_FEATURES)[number];

// Steady running is faster than easy; hills, strides, sprints, races and drills store energy in the tendon.
const RECOVERY_OF_KIND: Readonly<Record<RunKind, RecoveryKind>> = {
  none: 'easy-run',
  'walk-run': 'easy-run',
  easy: 'easy-run',
  longer: 'easy-run',
  steady: 'heavy',
  'hills-or-strides': 'energy-storage',
  fast: 'energy-storage',
};

const RECOVERY_OF_FEATURE: Readonly<Record<HardFeature, RecoveryKind>> = {
  'hilly-route': 'heavy',
  downhill: 'heavy',
  stairs: 'heavy',
  'treadmill-slope': 'heavy',
  race: 'energy-storage',
  'high-knee-drills': 'energy-storage',
};

export interface RunLoad {
  readonly recovery: RecoveryKind;
  readonly hard: boolean;
  /** The kind and the features that made it hard; empty for an easy run. */
  readonly because: readonly (RunKind | HardFeature)[];
}

/** How hard a run counts: the hardest of its kind and its features. @example runLoad('easy', ['hilly-route']).hard // => true */
export function runLoad(kind: RunKind, features: readonly HardFeature[] = []): RunLoad {
  const parts = [
    { name: kind, recovery: RECOVERY_OF_KIND[kind] },
    ...features.map((name) => ({ name, recovery: RECOVERY_OF_FEATURE[name] })),
  ];
  const hardParts = parts.filter(({ recovery }) => recovery !== 'easy-run');
  const hardest = hardParts.some(({ recovery }) => recovery === 'energy-storage')
    ? 'energy-storage'
    : 'heavy';
  return {
    recovery: hardParts.length === 0 ? 'easy-run' : hardest,
    hard: hardParts.length > 0,
    because: hardParts.map(({ name }) => name),
  };
}
