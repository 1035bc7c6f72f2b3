/** The rule behind a number of the dosage table, as codes and numbers. */
import type { SessionLength } from './sessionLength.ts';
import type { StrainBar } from './strainBar.ts';
import type { Amount } from '../../dosing/rung.ts';
import type { EntryRule } from './entryRule.ts';
import type { LimitReason } from './cardLimit.ts';
import type { TestedReason } from './testedReason.ts';

export type Rule = DoseRule | LoadRule | RangeRule | EntryRule;

export type DoseRule =
  | { readonly rule: 'slot'; readonly slot: string }
  | {
      readonly rule: 'ladder';
      readonly eased: boolean;
      readonly from: Amount | null;
      readonly to: Amount | null;
    }
  | {
      readonly rule: 'fit-minutes';
      readonly from: number;
      readonly to: number;
      readonly length: SessionLength;
    }
  | { readonly rule: 'few-at-first'; readonly repetitions: number }
  | { readonly rule: 'young' | 'held-share' | 'held-untested' | 'held-longer' | 'held-longest' }
  | { readonly rule: 'short-holds' | 'no-straining'; readonly bars: readonly StrainBar[] }
  | { readonly rule: 'card-tempo' | 'hold-reserve' | 'recovery-clock' }
  | { readonly rule: 'clinician'; readonly reason: string };

export type LoadRule =
  | { readonly rule: 'no-weight' | 'weighed-later' | 'light-holds' | 'no-weight-in-house' }
  | { readonly rule: 'sets-say-nothing'; readonly tested: readonly TestedReason[] }
  | {
      readonly rule:
        'untested' | 'untested-sudden' | 'felt' | 'none-admitted' | 'bare-between' | 'carried-on';
    }
  /** `growth`: over the exercise without a weight. */
  | { readonly rule: 'felt-first'; readonly growth: number; readonly isFelt: boolean }
  | {
      readonly rule: 'tested';
      readonly tested: TestedReason;
      /** Share taken after a sudden start; null where there was none. */
      readonly lightShare: number | null;
      /** The set that hurt, kg; null where it does not bound the load. */
      readonly hurtFromKg: number | null;
    }
  /** The log shows less than the tests would allow. */
  | {
      readonly rule: 'logged';
      readonly wanted: LoadRule | EntryRule;
      readonly doneKg: number;
      readonly on: string;
    }
  /** A cap refused the next heavier load. */
  | {
      readonly rule: 'lighter';
      readonly wanted: LoadRule | EntryRule;
      readonly heavierKg: number;
      readonly bar: LimitReason;
    };

export type RangeRule = {
  readonly rule: 'in-full' | 'smallest' | 'provoked' | 'tested-range' | 'highest-step' | 'whole-range';
};
