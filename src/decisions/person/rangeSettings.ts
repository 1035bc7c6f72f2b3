/** The guarded angles a card can be set to, from its gentle end to its far one. */
import type { ConsultKit } from '../../content/schema/consult.ts';
import { endsDeg } from '../../mechanics/jointAngle.ts';
import { largestStep } from '../../mechanics/step.ts';
import { roundDown } from '../../units/round.ts';
import type { PosedCard } from './model.ts';
import type { Person } from './person.ts';

export interface RangeSetting {
  /** Guarded angle at the far end of what is done. */
  readonly deg: number;
  /** The step it stands for, metres; null where the range is free. */
  readonly stepM: number | null;
}

const NO_CAPS = { angleDeg: null, compressionBw: null, tensionBw: null, demand: null, supportMargin: 1 };

/**
 * Ascending, in the house's rounding, or one for each step in the house. Empty where the range cannot be graded by the
 * guarded angle: a hold, a curl, a leg lifted behind, a fixed card.
 */
export function rangeSettings(card: PosedCard, person: Person): RangeSetting[] {
  if (!isGraded(card, person)) return [];
  return card.movement.range === 'steps' ? stepSettings(card, person) : freeSettings(card, person);
}

/** Whether the range is told by the guarded angle, whatever stands at home. */
export function isGraded({ movement }: PosedCard, { model }: Pick<Person, 'model'>): boolean {
  return (
    movement.end !== undefined && movement.range !== 'fixed' && endsDeg(movement, model.guardedBy) !== null
  );
}

/** Heights of the steps in a house, metres, ascending, each once. */
export function stepHeightsM({ stepCm }: ConsultKit): number[] {
  return [...new Set(stepCm)].sort((a, b) => a - b).map((cm) => cm / 100);
}

function freeSettings(card: PosedCard, { model, protocol }: Person): RangeSetting[] {
  const ends = endsDeg(card.movement, model.guardedBy);
  if (ends === null) return [];
  const [gentleDeg, farDeg] = model.gentleEnd(card) === 'start' ? ends : [ends[1], ends[0]];
  const stepDeg = protocol.limits.roundAngleDeg.value;
  const first = roundDown(gentleDeg, stepDeg) + stepDeg;
  return Array.from({ length: Math.max(0, Math.floor((farDeg - first) / stepDeg) + 1) }, (_, i) => ({
    deg: first + i * stepDeg,
    stepM: null,
  }));
}

function stepSettings({ movement }: PosedCard, { body, consult, model }: Person): RangeSetting[] {
  const noCaps = { ...NO_CAPS, angle: model.guardedBy };
  return stepHeightsM(consult.kit).flatMap((stepM) => {
    const step = largestStep(movement, body, 0, noCaps, [stepM]);
    return step.admitted ? [{ deg: step.angleDeg, stepM }] : [];
  });
}
