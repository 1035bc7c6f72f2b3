/** What the record says of one exercise beside its numbers. */
import { numberText } from '../../plain.ts';

/** What decided range and weight, by their rules. */
export function becauseText(rangeRule: string, loadRule: string): string {
  return `Range: ${rangeRule}. Weight: ${loadRule}.`;
}

/** What there is to bear in mind of an estimate, or why there is none. */
export type ExerciseRemark =
  | { readonly remark: 'felt' | 'no-pose' | 'no-pose-stated-hip' | 'other-tendon' | 'fast' | 'own-entry' }
  /** Squeeze in body weights if the heels are dragged in. */
  | { readonly remark: 'heels-dragged'; readonly compressionBw: number }
  | { readonly remark: 'beyond-caps'; readonly caps: readonly CapName[] };

export type CapName = 'hipFlexion' | 'compression' | 'tension' | 'demand';

const CAP_WORDS: Readonly<Record<CapName, string>> = {
  hipFlexion: 'hip bend',
  compression: 'squeeze',
  tension: 'pull',
  demand: 'strength',
};

export function exerciseRemarkText(one: ExerciseRemark): string {
  switch (one.remark) {
    case 'felt':
      return 'The estimate is for the heaviest weight that is admitted, not for the one that is felt for.';
    case 'no-pose':
      return 'No pose: it takes no part in squeeze and pull, and is guarded by position.';
    case 'no-pose-stated-hip':
      return 'No pose: it takes no part in squeeze and pull, and is guarded by position and its stated hip bend.';
    case 'other-tendon':
      return 'The model knows the hamstring tendon alone: no estimate.';
    case 'fast':
      return 'Fast: the model is for slow movement and says nothing of it.';
    case 'own-entry':
      return "Holds the clinician's own entry, beside the rule.";
    case 'heels-dragged':
      return `If the heels are dragged in, the squeeze may be ${numberText(one.compressionBw)} body weights: push away, do not drag the heels in.`;
    case 'beyond-caps':
      return `With it the estimate is above the stage's cap on ${one.caps.map((cap) => CAP_WORDS[cap]).join(', ')}.`;
  }
}
