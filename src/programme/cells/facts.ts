/** What the cells of one exercise on one rung are made of, and what a made cell is. */
import type { Slot } from '../../content/library.ts';
import type { KitLoad } from '../../dosing/kit.ts';
import type { GivenUp } from '../../dosing/minutes.ts';
import type { Prescribed } from '../../dosing/rung.ts';
import type { JointAngle } from '../../mechanics/jointAngle.ts';
import type { Source } from '../../units/source.ts';
import type { Weekday } from '../../units/weekday.ts';
import type { ChangedSince } from '../changes.ts';
import type { Why } from '../firstDose.ts';
import type { Fit } from '../fit.ts';
import type { Own } from '../overrides.ts';
import type { Pause, Way } from '../phrases/dose.ts';
import type { Cell } from '../programme.ts';

/** Everything the cells of one exercise on one rung are made of. */
export interface CellFacts {
  readonly step: number;
  readonly slot: Slot;
  readonly fit: Fit;
  /** False once the ladder has gone on to a harder card. */
  readonly isFirstCard: boolean;
  /** With the clinician's own numbers in it, and without. */
  readonly at: Prescribed;
  readonly byRule: Prescribed;
  readonly changes: readonly ChangedSince[];
  /** What this exercise gave up to fit the minutes. */
  readonly gaveUp: readonly GivenUp[];
  readonly load: KitLoad | null;
  readonly byFeel: boolean;
  readonly rangeInputs: Cell['inputs'];
  /** The joint angle that guards the tendon, and how far it goes; null where nobody knows. */
  readonly angle: JointAngle;
  readonly angleDeg: number | null;
  readonly howFar: { readonly value: string; readonly text: string };
  readonly way: Way;
  readonly pause: Pause;
  readonly days: readonly Weekday[];
  readonly own: Own;
  readonly titleOf: (card: string) => string;
}

/** Value and words of a cell, without its reason. */
export type Said = Pick<Cell, 'value' | 'text'>;
export type Made = Said & Why;

/** The house rules by their sections, as a source. */
export function houseRules(sections: string): Source {
  return { cite: `house rules ${sections}`, mark: 'choice' };
}
