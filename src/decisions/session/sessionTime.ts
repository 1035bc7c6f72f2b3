/** How long a session day takes. */
import { sessionSeconds } from '../../dosing/session.ts';
import type { Person } from '../person/person.ts';
import type { Prescription } from './prescribe.ts';

/** Seconds once through everything that stands on a session day, rests, both sides and set-up counted. */
export function sessionDaySeconds(prescriptions: readonly Prescription[], { clinic }: Person): number {
  const { setUpSeconds, sideChangeSeconds } = clinic.defaults;
  return sessionSeconds(
    prescriptions
      .filter(({ exercise }) => exercise.slot.when !== 'between')
      .map(({ exercise, card, at }) => ({
        exercise: exercise.slot.name,
        dose: at.dose,
        legs: card.legs,
        setUpSeconds,
        sideChangeSeconds,
      })),
  );
}
