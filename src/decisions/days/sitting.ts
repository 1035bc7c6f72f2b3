/** Sitting for one person: the budget of today, or that none is needed any more. */
import { sittingBudget, type SittingBudget, type SittingStep } from '../../scheduling/sitting.ts';
import type { IsoDate } from '../../units/date.ts';
import type { PlanWeek } from '../../scheduling/planWeek.ts';
import type { Bounds, Person } from '../person/person.ts';

export interface SittingPlan {
  /** Null when sitting hurts too soon for a budget, or none is needed. */
  readonly now: SittingStep | null;
  /** The way back is done: nothing is counted any more. */
  readonly free: boolean;
  readonly budget: SittingBudget;
}

/** Where squeeze has no cap any more and as much is tolerated as was wished for, sitting needs no budget. */
export function sittingPlan({ consult, protocol }: Person, { stage }: Bounds): SittingPlan {
  const { toleranceMinutes, goalMinutes, fixedBlocksMinutes } = consult.sitting;
  const budget = sittingBudget(
    { toleranceMinutes, goalMinutes: goalMinutes ?? null, fixedBlocksMinutes: fixedBlocksMinutes ?? [] },
    protocol.sittingRules,
  );
  const wished = goalMinutes ?? protocol.sittingRules.mostMinutes.value;
  const free = stage.caps.compressionBw === null && toleranceMinutes >= wished;
  return { now: free ? null : (budget.steps[0] ?? null), free, budget };
}

/** The steps of the budget that the dated plan gives a week to, each from the first day of that week. */
export function datedSitting(
  { now, budget }: SittingPlan,
  weeks: readonly PlanWeek[],
): (SittingStep & { readonly from: IsoDate })[] {
  if (now === null) return [];
  const grown = weeks.filter(({ turn }) => turn.grows === 'sitting');
  return grown.flatMap(({ from }, index) => {
    const step = budget.steps[index + 1];
    return step === undefined ? [] : [{ ...step, from }];
  });
}
