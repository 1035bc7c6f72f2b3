/** The weight: a step's, carried over from an easier card, felt for, or as the stage begins. */
import { feelText, loadText } from '../phrases/dose.ts';
import { stepWhy } from './dosed.ts';
import { houseRules, type CellFacts, type Made } from './facts.ts';

/** In kilograms with the thing of the house; no number where it is felt for. */
export function loadCell(facts: CellFacts): Made {
  const { fit, load, byFeel, at, isFirstCard, slot } = facts;
  const { load: start } = fit;
  const { rule, inputs, source, decidedBy } = {
    rule: start.because,
    inputs: start.inputs,
    source: start.source ?? slot.doseSource,
    decidedBy: start.decidedBy,
  };
  if (byFeel)
    return {
      value: null,
      text: feelText(at.dose.reserve, load?.made ?? start.load.made),
      rule,
      inputs: { ...inputs, reserve: at.dose.reserve },
      source,
      decidedBy,
    };
  const said = { value: at.loadKg, text: loadText(at.loadKg, load?.made ?? null) };
  const stepped = stepWhy(facts, 'loadKg');
  if (stepped !== null) return { ...said, ...stepped };
  if (!isFirstCard && at.loadKg > 0) {
    const carried = 'carried on from the easier exercise, no heavier';
    return { ...said, rule: carried, inputs: {}, source: houseRules('4'), decidedBy: 'step' };
  }
  return { ...said, rule, inputs, source, decidedBy };
}
