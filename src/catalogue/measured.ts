/** What the model says of a card when no person is known: the reference body, no weight, the whole movement. */
import type { ExerciseCard } from '../content/library.ts';
import { marginOf } from '../mechanics/cap.ts';
import type { Peaks, Sweep } from '../mechanics/sweep.ts';
import { isPosed, type Model, type PosedCard } from '../decisions/person/model.ts';
import { wordOf, type Scale } from './scale.ts';
import type { Word } from '../decisions/terms/scale.ts';

export interface Measured {
  readonly card: ExerciseCard;
  /** Largest hip bend of either leg, degrees. */
  readonly hipBendDeg: number;
  /** Null for a card without a pose, for fast ones, and for one the reference body cannot take. */
  readonly swept: Sweep | null;
  /** Squeeze of the leg that has more of it, as caps count it: with the factor for two supports. Body weights. */
  readonly squeezeBw: number | null;
  readonly squeeze: Word;
  readonly pull: Word;
}

/** Movements are slow in the model, so it says nothing of fast cards even where they have a pose. */
export function isFast({ kind }: ExerciseCard): boolean {
  return kind === 'energy-storage' || kind === 'running-drill';
}

export function measure(card: ExerciseCard, model: Model, scale: Scale): Measured {
  const swept = isPosed(card) && !isFast(card) ? model.sweepTo(card, null, 0, card.tempo) : null;
  const most = (of: 'compressionBw' | 'tensionBw') =>
    swept === null || card.movement === null
      ? null
      : marginOf(card.movement, scale) * Math.max(swept.peak[of], swept.otherPeak?.[of] ?? 0);
  const squeezeBw = most('compressionBw');
  return {
    card,
    hipBendDeg: hipBendOf(card),
    swept,
    squeezeBw,
    squeeze: wordOf(squeezeBw, scale.squeezeBw),
    pull: wordOf(most('tensionBw'), scale.pullBw),
  };
}

/** With a weight in place; null when the body cannot rest so. */
export function peakWith(card: PosedCard, loadKg: number, model: Model): Peaks | null {
  return model.sweepTo(card, null, loadKg, card.tempo)?.peak ?? null;
}

// Every angle goes in a line from end to end, so its largest value stands at an end.
function hipBendOf({ movement, statedHipFlexion }: ExerciseCard): number {
  if (movement === null) return statedHipFlexion?.deg ?? 0;
  const poses = [movement.start, movement.end ?? movement.start];
  return Math.max(...poses.flatMap(({ work, other }) => [work.hip, other?.hip ?? work.hip]));
}
