/** An exercise counted through at its own pace: bouts that the person starts, and the phases of each, to the millisecond. */
import type { Tempo } from './dose.ts';

export interface Paced {
  readonly sets: number;
  readonly repetitions: number | null;
  readonly holdSeconds: number | null;
  readonly tempo: Tempo | null;
  readonly restSeconds: number;
  /** `each`: one leg after the other within a set, the first one first. */
  readonly legs: 'together' | 'turns' | 'each';
  readonly firstSide: 'left' | 'right';
}

/** What is started by the person and runs through by itself. */
export interface Bout {
  readonly set: number;
  readonly side: 'left' | 'right' | null;
  /** Rest after it, seconds; none before the other leg and after the last. */
  readonly restSeconds: number;
}

export type PhaseKind = 'ready' | 'go' | 'hold' | 'back' | 'rest';

export interface Phase {
  readonly kind: PhaseKind;
  /** From 1; 0 before the first and in the rest. */
  readonly repetition: number;
  readonly fromMs: number;
  readonly toMs: number;
}

/** Time to put the phone down and get into place, seconds [choice]; no dose, and counted in none. */
const READY_SECONDS = 5;

/** Whether there is anything to count: a hold, or repetitions with a pace. */
export function isPaced({ repetitions, holdSeconds, tempo }: Paced): boolean {
  return holdSeconds !== null || (repetitions !== null && tempo !== null && secondsOf(tempo) > 0);
}

/** All bouts in their order: set by set, and in a set leg by leg where each works alone. */
export function boutsOf({ sets, legs, firstSide, restSeconds }: Paced): readonly Bout[] {
  const second = firstSide === 'left' ? 'right' : 'left';
  return Array.from({ length: sets }, (_, at) => at + 1).flatMap((set): Bout[] => {
    const rest = set === sets ? 0 : restSeconds;
    return legs === 'each'
      ? [
          { set, side: firstSide, restSeconds: 0 },
          { set, side: second, restSeconds: rest },
        ]
      : [{ set, side: null, restSeconds: rest }];
  });
}

/** The phases of one bout from its start at 0 ms, without gaps: getting ready, the work, the rest. */
export function phasesOf(paced: Paced, { restSeconds }: Bout): readonly Phase[] {
  const steps: [PhaseKind, number, number][] = [
    ['ready', 0, READY_SECONDS],
    ...workOf(paced),
    ['rest', 0, restSeconds],
  ];
  let at = 0;
  return steps
    .filter(([, , seconds]) => seconds > 0)
    .map(([kind, repetition, seconds]) => {
      const fromMs = at;
      at += seconds * 1000;
      return { kind, repetition, fromMs, toMs: at };
    });
}

function workOf({ repetitions, holdSeconds, tempo }: Paced): [PhaseKind, number, number][] {
  if (holdSeconds !== null) return [['hold', 1, holdSeconds]];
  if (repetitions === null || tempo === null) return [];
  return Array.from({ length: repetitions }, (_, at) => at + 1).flatMap(
    (one): [PhaseKind, number, number][] => [
      ['go', one, tempo.goSeconds],
      ['hold', one, tempo.holdSeconds],
      ['back', one, tempo.backSeconds],
    ],
  );
}

function secondsOf({ goSeconds, holdSeconds, backSeconds }: Tempo): number {
  return goSeconds + holdSeconds + backSeconds;
}

/** The phase that runs at this time; null when the bout is over. */
export function phaseAt(phases: readonly Phase[], elapsedMs: number): Phase | null {
  return phases.find(({ toMs }) => elapsedMs < toMs) ?? null;
}

/** How much of the way from the start to the far end is gone at this time of a phase, evenly in time: 0 to 1. */
export function wayAt({ kind, fromMs, toMs }: Phase, elapsedMs: number): number {
  const share = Math.min(Math.max((elapsedMs - fromMs) / (toMs - fromMs), 0), 1);
  if (kind === 'hold') return 1;
  if (kind === 'go') return share;
  return kind === 'back' ? 1 - share : 0;
}
