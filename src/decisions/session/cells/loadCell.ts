/** The weight: a step's, carried over from an easier card, felt for, or as the stage begins. */
import { houseRules } from '../../terms/houseSources.ts';
import { stepWhy } from './dosed.ts';
import { type CellFacts, type Made } from './facts.ts';

/** In kilograms with the thing of the house; no number where it is felt for. */
export function loadCell(facts: CellFacts): Made {
  const { fit, byFeel, at, isFirstCard, slot } = facts;
  const { load: start } = fit;
  const { rule, inputs, source, decidedBy } = {
    rule: start.rule,
    inputs: start.inputs,
    source: start.source ?? slot.doseSource,
    decidedBy: start.decidedBy,
  };
  if (byFeel)
    return { value: null, rule, inputs: { ...inputs, reserve: at.dose.reserve }, source, decidedBy };
  const value = at.loadKg;
  const stepped = stepWhy(facts, 'loadKg');
  if (stepped !== null) return { value, ...stepped };
  if (!isFirstCard && at.loadKg > 0) {
    return { value, rule: { rule: 'carried-on' }, inputs: {}, source: houseRules('4'), decidedBy: 'step' };
  }
  return { value, rule, inputs, source, decidedBy };
}
