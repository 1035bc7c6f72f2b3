/** Words of the pacer that counts an exercise through. */
import type { Bout, Paced, PhaseKind } from '../../../dosing/pace.ts';
import { countText } from '../plain.ts';

export const PACER = {
  start: 'Count with me',
  begin: 'Start',
  pause: 'Pause',
  goOn: 'Go on',
  back: 'Again',
  next: 'Next',
  stop: 'Stop',
  sound: 'Sound',
  vibration: 'Vibration',
  voice: 'Voice',
  ready: 'Get ready',
  paused: 'Paused',
  waiting: 'Press Start when you are ready.',
  done: 'All sets done. Note it below.',
} as const;

/** The beat of the steps of a run. */
export const BEAT = {
  start: 'Beat of my steps',
  stop: 'Stop',
} as const;

/** @example '170 steps a minute: one beat, one foot. Try it for a minute at a time, if your mornings are settled.' */
export function beatText(stepsPerMin: number): string {
  return `${stepsPerMin} steps a minute: one beat, one foot. Try it for a minute at a time, if your mornings are settled.`;
}

/** @example "Today's run: easy run on the flat, 5 km." */
export function runOfToday(text: string): string {
  return `Today's run: ${text}.`;
}

export const PHASE_WORDS: Readonly<Record<PhaseKind, string>> = {
  ready: 'Get ready',
  go: 'Go',
  hold: 'Hold',
  back: 'Back',
  rest: 'Rest',
};

/** @example 'Set 1 of 3, right leg, 10 repetitions' */
export function boutText({ set, side }: Bout, { sets, repetitions, holdSeconds }: Paced): string {
  const leg = side === null ? '' : `, ${side} leg`;
  const amount =
    holdSeconds === null ? countText(repetitions ?? 0, 'repetition') : countText(holdSeconds, 'second');
  return `Set ${set} of ${sets}${leg}, ${amount}`;
}
