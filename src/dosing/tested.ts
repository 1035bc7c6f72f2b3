/** A set that was done to find the load, and whether it may be used. */
import type { Tempo } from './dose.ts';
import { repetitionSeconds } from './work.ts';

/** `rangeDeg`: hip bend reached; null where it was not recorded, as `tempo`. `pain` 0-10 during the set. */
export interface TestedSet {
  readonly loadKg: number;
  readonly repetitions: number;
  /** Repetitions that could still have been done. */
  readonly reserve: number;
  readonly rangeDeg: number | null;
  readonly tempo: Tempo | null;
  readonly pain: number;
}

/** What is asked of the load; `rangeDeg` and `tempo` as they will be prescribed, null where the card has none. */
export interface WantedSet {
  readonly repetitions: number;
  readonly reserve: number;
  readonly rangeDeg: number | null;
  readonly tempo: Tempo | null;
  /** The stage's own limit, kg; null where there is none. */
  readonly atMostKg: number | null;
}

export type Unusable = {
  readonly rule: 'pain' | 'range' | 'tempo';
  readonly tested: number;
  /** What the test would have had to be: pain at most, degrees at least, seconds a repetition at least. */
  readonly needed: number;
};

/**
 * Why a tested set may not be used for the wanted one, or null when it may: it hurt more than `painAtMost`
 * (rules 4), went less far (never across ranges), or was quicker (a repetition maximum holds only at its tempo:
 * Morrison and Cook 2022, Sports Med 52(6), read).
 */
export function unusable(tested: TestedSet, wanted: WantedSet, painAtMost: number): Unusable | null {
  if (tested.pain > painAtMost) return { rule: 'pain', tested: tested.pain, needed: painAtMost };
  if (tested.rangeDeg !== null && wanted.rangeDeg !== null && tested.rangeDeg < wanted.rangeDeg)
    return { rule: 'range', tested: tested.rangeDeg, needed: wanted.rangeDeg };
  if (tested.tempo && wanted.tempo && repetitionSeconds(tested.tempo) < repetitionSeconds(wanted.tempo))
    return {
      rule: 'tempo',
      tested: repetitionSeconds(tested.tempo),
      needed: repetitionSeconds(wanted.tempo),
    };
  return null;
}
