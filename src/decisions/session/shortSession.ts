/** What to do on a day with little time: the two exercises that matter most, with as many sets as fit (house rules 11.9). */
import { sessionSeconds, type TimedExercise } from '../../dosing/session.ts';
import type { Person } from '../person/person.ts';
import { countedAs, setKind, type SetKind } from './counted.ts';
import type { Prescription } from './prescribe.ts';
import { sessionDaySeconds } from './sessionTime.ts';

export interface ShortSession {
  /** The minutes it is for. */
  readonly minutes: number;
  /** In the order of the session. `sets`: as many as fit, no more than the plan has. */
  readonly exercises: readonly {
    readonly card: string;
    readonly title: string;
    readonly sets: number;
    readonly setsInPlan: number;
    readonly setKind: SetKind;
  }[];
  /** The whole session takes no longer than that. */
  readonly wholeFits: boolean;
  /** There is no more to a session than these. */
  readonly isAll: boolean;
}

/** Null where a session day has no exercise at all. The most important first: needed slots, in the protocol's order. */
export function shortSession(prescriptions: readonly Prescription[], person: Person): ShortSession | null {
  const { shortMinutes, shortExercises } = person.protocol.session;
  const onSession = prescriptions.filter(({ exercise }) => exercise.slot.when === 'session');
  const rest = prescriptions.filter(({ exercise }) => exercise.slot.when === 'daily');
  const ranked = [...onSession.filter(isNeeded), ...onSession.filter((one) => !isNeeded(one)), ...rest];
  const most = new Set(ranked.slice(0, shortExercises.value));
  const chosen = prescriptions.filter((one) => most.has(one));
  if (chosen.length === 0) return null;
  const timed = withinMinutes(
    chosen.map((one) => timedOf(one, person)),
    shortMinutes.value,
  );
  return {
    minutes: shortMinutes.value,
    exercises: chosen.map(({ card, at }, index) => ({
      card: card.id,
      title: card.title,
      sets: timed[index]?.dose.sets ?? at.dose.sets,
      setsInPlan: at.dose.sets,
      setKind: setKind(at.dose, countedAs(card)),
    })),
    isAll: ranked.length === chosen.length,
    wholeFits: sessionDaySeconds(prescriptions, person) <= shortMinutes.value * 60,
  };
}

function isNeeded({ exercise }: Prescription): boolean {
  return exercise.slot.needed;
}

/** A set less from the one with most sets, the last of those first, until it fits; one set of each is left. */
function withinMinutes(exercises: readonly TimedExercise[], minutes: number): readonly TimedExercise[] {
  let now = exercises;
  while (sessionSeconds(now) > minutes * 60) {
    const most = Math.max(...now.map(({ dose }) => dose.sets));
    if (most <= 1) break;
    const index = now.findLastIndex(({ dose }) => dose.sets === most);
    const one = now[index] as TimedExercise;
    now = now.with(index, { ...one, dose: { ...one.dose, sets: most - 1 } });
  }
  return now;
}

function timedOf({ exercise, card, at }: Prescription, { clinic }: Person): TimedExercise {
  const { setUpSeconds, sideChangeSeconds } = clinic.defaults;
  return { exercise: exercise.slot.name, dose: at.dose, legs: card.legs, setUpSeconds, sideChangeSeconds };
}
