/** What is decided before the days: who and where, and what is done on which days of a week. */
import type { FittedDays } from '../session/fitDays.ts';
import type { Bounds, Person } from '../person/person.ts';
import type { Prescription } from '../session/prescribe.ts';
import type { PassedOver } from '../terms/passedOver.ts';
import type { StageChoice } from '../terms/stageChoice.ts';
import type { RunningFacts } from './running.ts';
import type { Session } from '../session/session.ts';
import type { SessionLength } from '../terms/sessionLength.ts';
import type { Rung } from '../../dosing/rung.ts';
import type { WeekFacts } from './weekPlan.ts';

/** The person, and the point of the protocol. */
export interface Where {
  readonly person: Person;
  readonly stage: StageChoice;
  readonly bounds: Bounds;
}

/** The cards, the minutes, the week, the ladder and the rung of today. */
export interface Work {
  readonly passedOver: readonly PassedOver[];
  readonly gaveUp: FittedDays['gaveUp'];
  readonly length: SessionLength;
  readonly running: RunningFacts;
  readonly week: WeekFacts;
  readonly session: Session;
  readonly step: number;
  /** The present rung first, then up to two more. */
  readonly shown: readonly [Shown, ...Shown[]];
}

/** A rung that is printed, put in numbers. */
export interface Shown {
  readonly rung: Rung;
  readonly prescriptions: readonly Prescription[];
}
