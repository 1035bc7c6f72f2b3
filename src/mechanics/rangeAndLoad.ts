/** Range and load together: the load first, then how far it may go, a lighter one where that is too little. */
import type { Body } from './body.ts';
import type { Caps } from './cap.ts';
import { liftBarredBy } from './lift.ts';
import type { Movement } from './movement.ts';
import { admits, largestRange, rangeTo, type AdmittedRange } from './range.ts';
import { largestStep, type AdmittedStep, type NoStep } from './step.ts';

/** What is to be solved. Loads as the kit can make them, heaviest first, the first at or below the dose. */
export interface RangeAndLoadRequest {
  readonly movement: Movement;
  readonly body: Body;
  readonly loadsKgDescending: readonly number[];
  readonly caps: Caps;
  /** Share of the whole range below which an exercise is of no use. */
  readonly leastFraction: number;
  /** Heights of steps in the house, metres; asked only by movements graded in steps. */
  readonly stepHeightsM: readonly number[];
  /** Where the weight is lifted from, metres; null when it is handed over or put on lying down. */
  readonly pickUpHeightM: number | null;
}

export interface RangeAndLoad {
  readonly admitted: true;
  readonly loadKg: number;
  readonly range: AdmittedRange | AdmittedStep;
  /** Heavier loads that were tried, heaviest first, each with what refused it. */
  readonly refused: readonly RefusedLoad[];
}

export interface RefusedLoad {
  readonly loadKg: number;
  readonly barredBy: NoStep['barredBy'];
  /** `lift`: getting the weight off its place; `range`: the exercise itself, or too little of it. */
  readonly where: 'lift' | 'range';
}

export interface NoRangeAndLoad {
  readonly admitted: false;
  readonly refused: readonly RefusedLoad[];
}

/**
 * The heaviest of the loads at which the exercise can be lifted into place and done over a useful range.
 *
 * At the first load the range is the largest the caps admit. At a lighter one it stops at the least useful range: a
 * lighter weight would reach further, and a tighter cap would then have widened the range. So neither load nor range
 * ever rises when a cap is tightened; the ladder of steps opens the range again.
 */
export function fitRangeAndLoad(request: RangeAndLoadRequest): RangeAndLoad | NoRangeAndLoad {
  const refused: RefusedLoad[] = [];
  for (const loadKg of request.loadsKgDescending) {
    const tried = tryLoad(request, loadKg);
    if (tried.admitted) {
      const range = refused.length === 0 ? tried.range : narrowest(request, loadKg, tried.range);
      return { admitted: true, loadKg, range, refused };
    }
    refused.push({ loadKg, barredBy: tried.barredBy, where: tried.where });
  }
  return { admitted: false, refused };
}

/** Whether the exercise can be done over its whole movement at this load, or of steps on one in the house. */
export function fitsInFull(
  {
    movement,
    body,
    caps,
    stepHeightsM,
  }: Pick<RangeAndLoadRequest, 'movement' | 'body' | 'caps' | 'stepHeightsM'>,
  loadKg: number,
): boolean {
  return movement.range === 'steps'
    ? largestStep(movement, body, loadKg, caps, stepHeightsM).admitted
    : admits(movement, body, loadKg, caps).admitted;
}

type Tried =
  | { readonly admitted: true; readonly range: AdmittedRange | AdmittedStep }
  | { readonly admitted: false; readonly barredBy: NoStep['barredBy']; readonly where: 'lift' | 'range' };

function tryLoad(
  { movement, body, caps, leastFraction, ...home }: RangeAndLoadRequest,
  loadKg: number,
): Tried {
  const lifted = movement.loadAt !== undefined && loadKg > 0 ? home.pickUpHeightM : null;
  const liftBar = lifted === null ? null : liftBarredBy(lifted, body, loadKg, caps);
  if (liftBar) return { admitted: false, barredBy: liftBar, where: 'lift' };
  const range = gradeOf(movement, body, loadKg, caps, home.stepHeightsM);
  if (!range.admitted) return { admitted: false, barredBy: range.barredBy, where: 'range' };
  if (movement.range === 'continuous' && range.fraction < leastFraction && range.decidedBy !== 'full')
    return { admitted: false, barredBy: range.decidedBy, where: 'range' };
  return { admitted: true, range };
}

function gradeOf(
  movement: Movement,
  body: Body,
  loadKg: number,
  caps: Caps,
  stepHeightsM: readonly number[],
): AdmittedRange | AdmittedStep | NoStep {
  switch (movement.range) {
    case 'continuous':
      return largestRange(movement, body, loadKg, caps);
    case 'steps':
      return largestStep(movement, body, loadKg, caps, stepHeightsM);
    case 'fixed':
      return admits(movement, body, loadKg, caps);
  }
}

/** After a heavier load was refused: the least useful range, or the lowest step. */
function narrowest(
  { movement, body, caps, leastFraction, stepHeightsM }: RangeAndLoadRequest,
  loadKg: number,
  range: AdmittedRange | AdmittedStep,
): AdmittedRange | AdmittedStep {
  if (movement.range === 'fixed' || !movement.end) return range;
  if (movement.range === 'continuous') {
    const fraction = Math.min(leastFraction, range.fraction);
    return { ...range, ...rangeTo(fraction, range.gentleEnd, movement, body, loadKg, caps.angle) };
  }
  const lowestFirst = [...stepHeightsM].sort((left, right) => left - right);
  for (const heightM of lowestFirst) {
    const step = largestStep(movement, body, loadKg, caps, [heightM]);
    if (step.admitted) return step;
  }
  return range;
}
