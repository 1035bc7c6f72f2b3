/** How far: by a step, by what limits the stage's first one, or in full. */
import type { JointAngle } from '../../mechanics/jointAngle.ts';
import type { Source } from '../../units/source.ts';
import { ANGLE_WORDS } from '../phrases/angle.ts';
import { entryRule } from '../phrases/entry.ts';
import { stepWhy } from './dosed.ts';
import { houseRules, type CellFacts, type Made, type Said } from './facts.ts';

const MODEL: Source = {
  cite: 'cap of the stage, by the body model of this project (estimate; its page names the constants)',
  mark: 'choice',
};

/** Degrees and landmark alike, with what decided the range. */
export function ranged(facts: CellFacts, said: Said): Made {
  const { fit, at, rangeInputs } = facts;
  const stepped = stepWhy(facts, `${facts.angle}Deg`);
  if (stepped !== null) return { ...said, ...stepped, inputs: { ...rangeInputs, ...stepped.inputs } };
  if (at.rangeDeg === null)
    return {
      ...said,
      rule: 'done in full: every limit holds along it',
      inputs: rangeInputs,
      source: houseRules('3'),
      decidedBy: 'dose',
    };
  const { rangeDecidedBy } = fit;
  if (rangeDecidedBy === 'step')
    return {
      ...said,
      rule: fit.entry === null ? SMALLEST : entryRule(fit.entry, facts.titleOf),
      inputs: rangeInputs,
      source: houseRules('4 and 11.2'),
      decidedBy: 'step',
    };
  return {
    ...said,
    ...RANGE_WHY[rangeDecidedBy as keyof typeof RANGE_WHY],
    inputs: rangeInputs,
    decidedBy: rangeDecidedBy,
  };
}

const SMALLEST = 'smallest of the cap, the model and what hurt, rounded to the gentle end';

function angleWhy(angle: JointAngle): { readonly rule: string; readonly source: Source } {
  const cite = `${ANGLE_WORDS[angle].bend} cap of the stage, house rules 3`;
  return { rule: SMALLEST, source: { cite, mark: 'choice' } };
}

/** By what decided the range at the first step. */
const RANGE_WHY = {
  hipFlexion: angleWhy('hipFlexion'),
  kneeFlexion: angleWhy('kneeFlexion'),
  ankleDorsiflexion: angleWhy('ankleDorsiflexion'),
  compression: { rule: SMALLEST, source: MODEL },
  tension: { rule: SMALLEST, source: MODEL },
  demand: { rule: SMALLEST, source: MODEL },
  provokedAngle: { rule: `${SMALLEST}; here the angle that hurt, less the margin`, source: houseRules('3') },
  testedSet: {
    rule: 'no further than the set that was tested with this load',
    source: houseRules('3 and 4'),
  },
  kit: { rule: 'the highest step in the house that every limit admits', source: houseRules('3') },
  dose: { rule: 'the whole range of the card: every limit holds along it', source: houseRules('3') },
} as const;
