/** What the record says of the strength a body is counted with, and of hamstrings that work along. */
import type { Body } from '../../../mechanics/body.ts';
import { strengthFactor } from '../../../mechanics/strength.ts';
import type { WorkedTogether } from '../../../decisions/candidates/together.ts';
import { numberText } from '../plain.ts';

/** @example 'Share of strength: a body of 60 kg is counted with 0.8 times the muscle force of one of 75 kg.' Empty for the published model. */
export function strengthText(body: Body): readonly string[] {
  const { massKg, muscles } = body;
  if (muscles === undefined) return [];
  const { baseMassKg, massFromKg, massToKg } = muscles;
  const held =
    massKg < massFromKg
      ? `, as one of ${numberText(massFromKg)} kg`
      : massKg > massToKg
        ? `, as one of ${numberText(massToKg)} kg`
        : '';
  return [
    `Share of strength: a body of ${numberText(massKg)} kg is counted with ${numberText(strengthFactor(body))} times the muscle force of one of ${numberText(baseMassKg)} kg${held}.`,
  ];
}

/** @example 'The hamstrings are counted with at least 20 % of the turning effect at the hip: squeeze 0.55 and pull 0.7 body weights, where least effort alone would say 0.26 and 0.3.' */
export function togetherText(
  { compressionBw, tensionBw, leastEffort }: WorkedTogether,
  share: number,
): string {
  return `The hamstrings are counted with at least ${numberText(100 * share)} % of the turning effect at the hip: squeeze ${numberText(compressionBw)} and pull ${numberText(tensionBw)} body weights, where least effort alone would say ${numberText(leastEffort.compressionBw)} and ${numberText(leastEffort.tensionBw)}.`;
}
