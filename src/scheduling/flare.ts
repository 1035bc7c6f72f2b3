/** A flare, and days that were missed (house rules 5). */
import type { Mark } from '../units/source.ts';
import { roundDown } from '../units/round.ts';
import { type Reason, reason, type Setting } from '../units/reason.ts';

export interface FlareRules {
  /** Days without exercises before the holds. */
  readonly restDays: Setting;
  readonly holdsOnlyDays: { readonly from: number; readonly to: number };
  readonly sittingFactor: Setting;
  readonly mark: Mark;
}

/** Rest first, then some days of a few short holds only, runs walked, sitting shortened; then one step back once the morning check is back to usual. */
export interface FlarePlan {
  readonly restDays: number;
  readonly holdsOnlyDays: { readonly from: number; readonly to: number };
  readonly runsBecome: 'walk';
  /** Minutes at a time, whole; null when there is no budget to shorten. */
  readonly sittingMinutes: number | null;
  readonly startAgain: 'one-step-back';
  readonly startWhen: 'check-back-to-usual';
  readonly mark: Mark;
}

/** The plan for a flare; `sittingMinutes` is the present budget, null when there is none. */
export function flarePlan(sittingMinutes: number | null, rules: FlareRules): FlarePlan {
  return {
    restDays: rules.restDays.value,
    holdsOnlyDays: rules.holdsOnlyDays,
    runsBecome: 'walk',
    sittingMinutes: sittingMinutes === null ? null : roundDown(sittingMinutes * rules.sittingFactor.value, 1),
    startAgain: 'one-step-back',
    startWhen: 'check-back-to-usual',
    mark: rules.mark,
  };
}

export interface MissedRules {
  readonly sameStepUnder: Setting;
  readonly oneBackUpTo: Setting;
}

export interface AfterMissed {
  readonly start: 'same-step' | 'one-step-back' | 'stage-start';
  readonly contact: boolean;
  readonly because: Reason<'few-days' | 'some-days' | 'many-days' | 'fever'>;
}

/** Where to start again after so many missed days; a fever counts like the longest break. @example afterMissed(8, false, rules).start // => 'one-step-back' */
export function afterMissed(days: number, fever: boolean, rules: MissedRules): AfterMissed {
  const inputs = { days, sameStepUnder: rules.sameStepUnder.value, oneBackUpTo: rules.oneBackUpTo.value };
  if (fever) return { start: 'stage-start', contact: true, because: reason('fever', inputs) };
  if (days < rules.sameStepUnder.value) {
    return {
      start: 'same-step',
      contact: false,
      because: reason('few-days', inputs, rules.sameStepUnder.mark),
    };
  }
  if (days <= rules.oneBackUpTo.value) {
    return {
      start: 'one-step-back',
      contact: false,
      because: reason('some-days', inputs, rules.oneBackUpTo.mark),
    };
  }
  return {
    start: 'stage-start',
    contact: true,
    because: reason('many-days', inputs, rules.oneBackUpTo.mark),
  };
}
