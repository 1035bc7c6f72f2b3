/** What each kind of dose may change from step to step. */
import type { ChangeKind, DoseKind } from './dose.ts';

/**
 * Holds go by seconds, everything else by repetitions; jumps and moving stretches carry no weight [choice].
 * `repetition-maximum`: as the load rises the repetitions fall along `REPETITION_MAXIMA`.
 */
const MAY_CHANGE: Readonly<Record<DoseKind, readonly ChangeKind[]>> = {
  hold: ['range', 'load', 'hold', 'sets', 'days', 'lever'],
  slow: ['range', 'load', 'repetitions', 'sets', 'tempo', 'days', 'lever'],
  'repetition-maximum': ['range', 'load', 'repetitions', 'sets', 'tempo', 'days', 'lever'],
  eccentric: ['range', 'load', 'repetitions', 'sets', 'tempo', 'days', 'lever'],
  contacts: ['repetitions', 'sets', 'days', 'lever'],
  mobility: ['range', 'repetitions', 'hold', 'sets', 'tempo', 'days'],
};

/** Whether a step may change this in a dose of this kind. @example mayChange('contacts', 'load') // => false */
export function mayChange(kind: DoseKind, change: ChangeKind): boolean {
  return MAY_CHANGE[kind].includes(change);
}
