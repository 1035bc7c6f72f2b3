/** A sitting budget in two numbers, and its steps up to the goal (house rules 8). */
import { roundDown } from '../units/round.ts';
import { type Reason, reason, type Setting } from '../units/reason.ts';

export interface SittingRules {
  readonly shareOfTolerance: Setting;
  readonly leastMinutes: Setting;
  readonly mostMinutes: Setting;
  readonly stepMinutes: Setting;
  readonly hardSeatShare: Setting;
  readonly noBudgetUnder: Setting;
}

export interface SittingFacts {
  readonly toleranceMinutes: number;
  readonly goalMinutes: number | null;
  /** Stretches of sitting that cannot be broken, such as a shift at the wheel. */
  readonly fixedBlocksMinutes: readonly number[];
}

/** Minutes at a time. */
export interface SittingStep {
  readonly uprightMinutes: number;
  /** On a hard seat or leaning forward. */
  readonly hardMinutes: number;
}

export interface SittingBudget {
  /** The present step first, then one for every settled step up to the goal; empty when there is no budget. */
  readonly steps: readonly SittingStep[];
  readonly because: Reason<'share-of-tolerance' | 'tolerance-too-short'>;
  /** What to do instead of sitting when there is no budget; empty otherwise. */
  readonly instead: readonly Instead[];
  readonly overBlocks: readonly OverBlock[];
}

export type Instead = 'stand' | 'lie-on-side' | 'cut-out-cushion';

/** A fixed block longer than the budget, and what eases it. */
export interface OverBlock {
  readonly minutes: number;
  /** Minutes above the budget; the whole block when there is none. */
  readonly overMinutes: number;
  readonly ease: readonly Ease[];
  /** Shift the weight this often, minutes; null when there is no budget to measure by. */
  readonly shiftEveryMinutes: number | null;
}

export type Ease = 'cut-out-cushion' | 'shift-weight' | 'stand-before-and-after' | 'ask-for-shorter-blocks';

const EASE: readonly Ease[] = [
  'cut-out-cushion',
  'shift-weight',
  'stand-before-and-after',
  'ask-for-shorter-blocks',
];

/**
 * How long to sit at a time: a share of what is tolerated, never more than that. No budget where tolerance is under the
 * limit, or under the least budget there is. Without a goal the steps end at the house's most.
 * @example sittingBudget({ toleranceMinutes: 40, goalMinutes: 35, fixedBlocksMinutes: [] }, rules).steps[0] // => { uprightMinutes: 25, hardMinutes: 12 }
 */
export function sittingBudget(facts: SittingFacts, rules: SittingRules): SittingBudget {
  const { toleranceMinutes } = facts;
  const inputs = { toleranceMinutes, share: rules.shareOfTolerance.value };
  if (toleranceMinutes < Math.max(rules.noBudgetUnder.value, rules.leastMinutes.value)) {
    return {
      steps: [],
      because: reason('tolerance-too-short', inputs, rules.noBudgetUnder.mark),
      instead: ['stand', 'lie-on-side', 'cut-out-cushion'],
      overBlocks: facts.fixedBlocksMinutes.map((minutes) => overBlock(minutes, null)),
    };
  }
  const start = startMinutes(facts, rules);
  return {
    steps: stepsUp(start, facts.goalMinutes ?? rules.mostMinutes.value, rules),
    because: reason('share-of-tolerance', inputs, rules.shareOfTolerance.mark),
    instead: [],
    overBlocks: facts.fixedBlocksMinutes
      .filter((minutes) => minutes > start)
      .map((minutes) => overBlock(minutes, start)),
  };
}

function startMinutes({ toleranceMinutes, goalMinutes }: SittingFacts, rules: SittingRules): number {
  const share = roundDown(toleranceMinutes * rules.shareOfTolerance.value, rules.stepMinutes.value);
  const bounded = Math.min(rules.mostMinutes.value, Math.max(rules.leastMinutes.value, share));
  return Math.min(bounded, goalMinutes ?? bounded);
}

function stepsUp(start: number, goal: number, rules: SittingRules): SittingStep[] {
  const rungs = Math.max(0, Math.ceil((goal - start) / rules.stepMinutes.value - 1e-9));
  return Array.from({ length: rungs + 1 }, (_, rung) => {
    const uprightMinutes = rung === 0 ? start : Math.min(goal, start + rung * rules.stepMinutes.value);
    return { uprightMinutes, hardMinutes: roundDown(uprightMinutes * rules.hardSeatShare.value, 1) };
  });
}

function overBlock(minutes: number, budget: number | null): OverBlock {
  return { minutes, overMinutes: minutes - (budget ?? 0), ease: EASE, shiftEveryMinutes: budget };
}
