/** What the cells of one exercise on one rung are made of, and what a made cell is. */
import type { Slot } from '../../../content/library.ts';
import type { KitLoad } from '../../../dosing/kit.ts';
import type { GivenUp } from '../../../dosing/minutes.ts';
import type { Prescribed } from '../../../dosing/rung.ts';
import type { Weekday } from '../../../units/weekday.ts';
import type { JointAngle } from '../../../mechanics/jointAngle.ts';
import type { ChangedSince } from '../changes.ts';
import type { Candidate } from '../../candidates/candidate.ts';
import type { Own } from '../overrides.ts';
import type { Pause, Direction } from '../../../mechanics/direction.ts';
import type { DecidedCell, Why } from '../../terms/cell.ts';
import type { SessionLength } from '../../terms/sessionLength.ts';

/** Everything the cells of one exercise on one rung are made of. */
export interface CellFacts {
  readonly step: number;
  readonly slot: Slot;
  readonly fit: Candidate;
  /** False once the ladder has gone on to a harder card. */
  readonly isFirstCard: boolean;
  /** With the clinician's own numbers in it, and without. */
  readonly at: Prescribed;
  readonly byRule: Prescribed;
  readonly changes: readonly ChangedSince[];
  /** What this exercise gave up to fit the minutes. */
  readonly gaveUp: readonly GivenUp[];
  readonly length: SessionLength;
  readonly load: KitLoad | null;
  readonly byFeel: boolean;
  readonly rangeInputs: Why['inputs'];
  /** The joint angle that guards the tendon, and how far it goes; null where nobody knows. */
  readonly angle: JointAngle;
  readonly angleDeg: number | null;
  /** To so many degrees, down to the gentle end, a patient reads it (house rules 3). */
  readonly angleGrainDeg: number;
  /** For machines; the landmarks stand with the prescription. */
  readonly howFar: string;
  readonly way: Direction;
  readonly pause: Pause;
  readonly days: readonly Weekday[];
  readonly own: Own;
}

/** The value of a cell with its reason. */
export type Made = Pick<DecidedCell, 'value'> & Why;
