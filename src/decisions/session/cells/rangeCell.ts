/** How far: by a step, by what limits the stage's first one, or in full. */
import { BODY_MODEL, houseRules, jointCap } from '../../terms/houseSources.ts';
import { stepWhy } from './dosed.ts';
import { type CellFacts, type Made } from './facts.ts';

/** Degrees and landmark alike, with what decided the range. */
export function ranged(facts: CellFacts, value: Made['value']): Made {
  const { fit, at, rangeInputs } = facts;
  const stepped = stepWhy(facts, `${facts.angle}Deg`);
  if (stepped !== null) return { value, ...stepped, inputs: { ...rangeInputs, ...stepped.inputs } };
  if (at.rangeDeg === null)
    return {
      value,
      rule: { rule: 'in-full' },
      inputs: rangeInputs,
      source: houseRules('3'),
      decidedBy: 'dose',
    };
  const { rangeDecidedBy } = fit;
  if (rangeDecidedBy === 'step')
    return {
      value,
      rule: fit.entry ?? SMALLEST,
      inputs: rangeInputs,
      source: houseRules('4 and 11.2'),
      decidedBy: 'step',
    };
  return {
    value,
    ...RANGE_WHY[rangeDecidedBy as keyof typeof RANGE_WHY],
    inputs: rangeInputs,
    decidedBy: rangeDecidedBy,
  };
}

const SMALLEST = { rule: 'smallest' } as const;

const angleWhy = (joint: 'hip' | 'knee' | 'ankle') =>
  ({
    rule: SMALLEST,
    source: jointCap(joint),
  }) as const;

/** By what decided the range at the first step. */
const RANGE_WHY = {
  hipFlexion: angleWhy('hip'),
  kneeFlexion: angleWhy('knee'),
  ankleDorsiflexion: angleWhy('ankle'),
  compression: { rule: SMALLEST, source: BODY_MODEL },
  tension: { rule: SMALLEST, source: BODY_MODEL },
  demand: { rule: SMALLEST, source: BODY_MODEL },
  provokedAngle: { rule: { rule: 'provoked' }, source: houseRules('3') },
  testedSet: {
    rule: { rule: 'tested-range' },
    source: houseRules('3 and 4'),
  },
  kit: { rule: { rule: 'highest-step' }, source: houseRules('3') },
  dose: { rule: { rule: 'whole-range' }, source: houseRules('3') },
} as const;
