/** Whether to run now, and how hard at most (house rules 7): a recorded decision within what the rules allow. */
import { type Reason, reason, type Setting } from '../units/reason.ts';
import { mostAfterReview, type RunLedTo } from './afterReview.ts';
import { order, RUN_KINDS, type RunKind } from './run.ts';
import { easyRunPullBw } from './runPull.ts';

export interface RunDecisionRules {
  readonly usualPainNoRun: Setting;
  readonly testPainNoRun: Setting;
}

export type RunChoice = 'keep' | 'walk-run' | 'none';

export interface RunFacts {
  readonly runs: boolean;
  readonly recorded: RunChoice;
  /** The clinician's own entry over the house rules, with its reason in the consult; null when there is none. */
  readonly clinicianOwn: RunChoice | null;
  readonly irritability: 'low' | 'moderate' | 'high';
  readonly usualPain: number;
  readonly worstTestPain: number;
}

/** The hardest run in pregnancy or the first weeks after birth, and which of them it is. */
export interface MaternityLimit {
  readonly most: RunKind;
  readonly kind: string;
  readonly weeks: number | null;
}

export interface RunReview {
  readonly revision: number;
  readonly move: RunLedTo;
  /** The hardest run planned before; null where none was. */
  readonly mostBefore: RunKind | null;
}

/** What bounds running from outside: the screen's items that stop it, and the stage. */
export interface RunLimits {
  readonly noRunning: readonly string[];
  readonly stageMost: RunKind;
  /** What pregnancy or the first weeks after birth leave; null when they are no matter. */
  readonly maternity?: MaternityLimit | null;
  /** The hardest run of a first programme after a sudden start; null for everybody else. */
  readonly suddenMost?: RunKind | null;
  /** The programme before walked and ran in turn: easy running comes next, and nothing beyond it yet. */
  readonly afterWalkRun?: boolean;
  /** What the review of the programme before led to; null where it lets running go on, or there was none. */
  readonly review?: RunReview | null;
  /** The stage's cap on pull, body weights; null when lifted. */
  readonly stageTensionBw: number | null;
}

export type RunReasonCode =
  | 'does-not-run'
  | 'screen-stops-running'
  | 'stage-limits-running'
  | 'maternity-limits-running'
  | 'sudden-start'
  | 'after-walk-run'
  | 'review-of-running'
  | 'review-of-running-not-followed'
  | 'irritable'
  | 'usual-pain'
  | 'test-pain'
  | 'recorded-decision'
  | 'recorded-decision-not-followed'
  | 'clinician-own'
  | 'clinician-own-over-rules'
  | 'pull-above-stage-cap';

export interface RunDecision {
  readonly decision: RunChoice;
  /** The hardest kind of run there may be now. */
  readonly most: RunKind;
  /** Kinds that wait, in the order in which they come back. */
  readonly heldBack: readonly RunKind[];
  /** True when the clinician's own entry goes beyond the house rules: marked wherever it is printed. */
  readonly overRules: boolean;
  readonly because: readonly Reason<RunReasonCode>[];
}

/**
 * The decision on running. The recorded one may be stricter than the rules, never laxer; the clinician's own entry may
 * be, up to easy running, and is marked. The screen is lifted by nobody here.
 */
export function runDecision(facts: RunFacts, limits: RunLimits, rules: RunDecisionRules): RunDecision {
  const bounds = [...boundsOf(facts, limits, rules), ...reviewBound(facts, limits)];
  const rulesMost = least(bounds.map(({ most }) => most));
  const fixed = bounds.some(({ firm }) => firm);
  const wish = facts.clinicianOwn ?? facts.recorded;
  const overRules = facts.clinicianOwn !== null && !fixed && order(rulesMost) < order(ownMost(wish));
  const most = overRules ? ownMost(wish) : least([rulesMost, WISHED_MOST[wish]]);
  return {
    decision: most === 'none' || most === 'walk-run' ? most : 'keep',
    most,
    heldBack: RUN_KINDS.filter((kind) => order(kind) > order(most)),
    overRules,
    because: [
      ...bounds.map(({ because }) => because),
      ...wishReasons(facts, most, overRules),
      ...pullReasons(most, limits),
    ],
  };
}

const WISHED_MOST: Readonly<Record<RunChoice, RunKind>> = {
  keep: 'fast',
  'walk-run': 'walk-run',
  none: 'none',
};

// Against the rules the clinician's own `keep` reaches easy running and no further.
function ownMost(wish: RunChoice): RunKind {
  return wish === 'keep' ? 'easy' : wish;
}

function least(kinds: readonly RunKind[]): RunKind {
  return RUN_KINDS[Math.min(RUN_KINDS.length - 1, ...kinds.map(order))] as RunKind;
}

interface Bound {
  readonly most: RunKind;
  /** Nobody's entry goes over it. */
  readonly firm: boolean;
  readonly because: Reason<RunReasonCode>;
}

function boundsOf(facts: RunFacts, limits: RunLimits, rules: RunDecisionRules): Bound[] {
  const { usualPainNoRun, testPainNoRun } = rules;
  const bounds: (Bound | false)[] = [
    !facts.runs && { most: 'none', firm: true, because: reason('does-not-run') },
    limits.noRunning.length > 0 && {
      most: 'none',
      firm: true,
      because: reason('screen-stops-running', { items: limits.noRunning }),
    },
    limits.maternity !== undefined &&
      limits.maternity !== null && {
        most: limits.maternity.most,
        firm: true,
        because: reason('maternity-limits-running', { ...limits.maternity }, 'memory'),
      },
    limits.stageMost !== 'fast' && {
      most: limits.stageMost,
      firm: false,
      because: reason('stage-limits-running', { most: limits.stageMost }),
    },
    limits.suddenMost !== undefined &&
      limits.suddenMost !== null && {
        most: limits.suddenMost,
        firm: false,
        because: reason('sudden-start', { most: limits.suddenMost }),
      },
    limits.afterWalkRun === true && { most: 'easy', firm: false, because: reason('after-walk-run') },
    facts.irritability === 'high' && { most: 'walk-run', firm: false, because: reason('irritable') },
    facts.usualPain >= usualPainNoRun.value && {
      most: 'walk-run',
      firm: false,
      because: reason(
        'usual-pain',
        { usualPain: facts.usualPain, from: usualPainNoRun.value },
        usualPainNoRun.mark,
      ),
    },
    facts.worstTestPain >= testPainNoRun.value && {
      most: 'walk-run',
      firm: false,
      because: reason(
        'test-pain',
        { testPain: facts.worstTestPain, from: testPainNoRun.value },
        testPainNoRun.mark,
      ),
    },
  ];
  return bounds.filter((bound) => bound !== false);
}

// The clinician's own entry takes the place of runs that ease back or stay; to run after a flare is over the rules.
function reviewBound({ runs, clinicianOwn }: RunFacts, { review }: RunLimits): Bound[] {
  if (!runs || review === undefined || review === null) return [];
  const { revision, move } = review;
  const most = mostAfterReview(move, review.mostBefore);
  if (clinicianOwn !== null && (move === 'stay' || move === 'easeBack'))
    return [
      { most: 'fast', firm: false, because: reason('review-of-running-not-followed', { revision, move }) },
    ];
  return [{ most, firm: false, because: reason('review-of-running', { revision, move, most }) }];
}

function wishReasons(facts: RunFacts, most: RunKind, overRules: boolean): Reason<RunReasonCode>[] {
  const { clinicianOwn, recorded } = facts;
  if (!facts.runs) return [];
  if (clinicianOwn !== null)
    return [reason(overRules ? 'clinician-own-over-rules' : 'clinician-own', { decision: clinicianOwn })];
  const laxer = order(most) < order(ownMost(recorded));
  return [reason(laxer ? 'recorded-decision-not-followed' : 'recorded-decision', { decision: recorded })];
}

// Easy running pulls harder than the early caps: that is why it is a decision and no sum.
function pullReasons(most: RunKind, { stageTensionBw }: RunLimits): Reason<RunReasonCode>[] {
  const pullBw = easyRunPullBw();
  if (most === 'none' || stageTensionBw === null || pullBw <= stageTensionBw) return [];
  return [reason('pull-above-stage-cap', { pullBw, capBw: stageTensionBw }, 'read')];
}
