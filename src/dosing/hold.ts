/** How long a hold lasts, from how long it could be held. */
import { roundDown } from '../units/round.ts';
import { refuseDose, type DoseRefusal } from './doseRefusal.ts';

export interface HoldRules {
  /** Share of the tested seconds a hold takes at most, for example 0.7. */
  readonly shareTo: number;
  readonly longestSeconds: number;
  /** Longest hold for someone who must not hold long; null for everybody else. */
  readonly screenedSeconds: number | null;
  /** What a hold that was not tested starts with; null where it is asked how far a hold may grow. */
  readonly untestedSeconds: number | null;
  /** Share of the tested seconds a first hold takes at least; null where the dose stands as it is published. */
  readonly shareFrom: number | null;
}

export interface HoldReason {
  readonly decidedBy: 'dose' | 'testedHold' | 'untested' | 'shareFrom' | 'longest' | 'screen';
  readonly testedSeconds: number | null;
  readonly shareTo: number;
}

export type HoldAnswer =
  | { readonly holdSeconds: number; readonly why: HoldReason }
  | DoseRefusal<{ readonly rule: 'tooShort'; readonly testedSeconds: number; readonly needed: number }>;

// Seconds to which a hold is rounded down: what a person counts without a watch [choice].
export const GRAIN_SECONDS = 5;

/**
 * Seconds of a hold, a multiple of 5: the smallest of the protocol's dose, the share of the tested seconds, the
 * longest hold and, for someone screened, theirs (rules 4). A dose under the least share of what was held is raised to
 * it; a hold that was not tested starts at the shortest (rules 11.4).
 * None when it would be under 5 s: the lever has to be easier then.
 */
export function holdFor(doseSeconds: number, testedSeconds: number | null, rules: HoldRules): HoldAnswer {
  const leastSeconds =
    testedSeconds === null || rules.shareFrom === null
      ? 0
      : Math.ceil((testedSeconds * rules.shareFrom) / GRAIN_SECONDS) * GRAIN_SECONDS;
  const limits = [
    leastSeconds > doseSeconds
      ? ({ decidedBy: 'shareFrom', seconds: leastSeconds } as const)
      : ({ decidedBy: 'dose', seconds: doseSeconds } as const),
    { decidedBy: 'testedHold', seconds: testedSeconds === null ? Infinity : testedSeconds * rules.shareTo },
    {
      decidedBy: 'untested',
      seconds: testedSeconds === null ? (rules.untestedSeconds ?? Infinity) : Infinity,
    },
    { decidedBy: 'longest', seconds: rules.longestSeconds },
    { decidedBy: 'screen', seconds: rules.screenedSeconds ?? Infinity },
  ] as const;
  const { seconds, decidedBy } = limits.reduce((least, next) =>
    next.seconds < least.seconds ? next : least,
  );
  const holdSeconds = roundDown(seconds, GRAIN_SECONDS);
  if (holdSeconds > 0) return { holdSeconds, why: { decidedBy, testedSeconds, shareTo: rules.shareTo } };
  return refuseDose({
    rule: 'tooShort',
    testedSeconds: testedSeconds ?? seconds,
    needed: GRAIN_SECONDS / rules.shareTo,
  });
}
