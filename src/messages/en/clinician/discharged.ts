/** Words of a treatment that cannot be ended yet. */
import type { StillSore } from '../../../decisions/terms/refusal.ts';

export function notDischarged(sore: StillSore): { readonly expected: string; readonly fix: string } {
  return {
    expected: `a numbered stage, or auto: ${WHY[sore.because](sore as never)}`,
    fix: 'Write stage: auto; the treatment ends when this has settled.',
  };
}

const WHY = {
  irritable: () => 'irritability is high',
  usualPain: ({ pain, under }: { readonly pain: number; readonly under: number }) =>
    `usual morning pain is ${pain} of 10, and under ${under} is asked`,
  testPain: ({ pain, atMost }: { readonly pain: number; readonly atMost: number }) =>
    `a test hurt ${pain} of 10, and ${atMost} at most is asked`,
} as const;
