import type { SharingProblem } from '../../src/mechanics/sharing.ts';

export function enumerateShares(problem: SharingProblem): { forcesN: readonly number[]; cost: number } | null;
export function scanRoot(gap: (at: number) => number, low: number, high: number): number | null;
export function goldenLow(cost: (at: number) => number, low: number, high: number): number;
