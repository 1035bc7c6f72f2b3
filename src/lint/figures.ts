/** What the model says of a card as a whole: without a weight, on one body. */
import type { ExerciseCard } from '../content/library.ts';
import type { Body } from '../mechanics/body.ts';
import { WHOLE } from '../mechanics/gentle.ts';
import { loadingAt } from '../mechanics/loading.ts';
import { sweep } from '../mechanics/sweep.ts';

/** Peaks of the working leg. */
export interface Figures {
  readonly compressionBw: number;
  readonly tensionBw: number;
  /** Amount of the moment the muscles must supply; 0 where bench or floor carries the thigh. */
  readonly hipMomentNm: number;
  readonly demand: number;
}

/** Ends and middle, where nearly every peak lies. */
const PLACES = [0, 0.5, 1];

/** From three moments of the movement: never above `figuresOf`, and a tenth of its work. Null without a pose that rests. */
export function quickFigures({ movement }: ExerciseCard, body: Body): Figures | null {
  if (movement === null) return null;
  const legs = (movement.end ? PLACES : [0]).flatMap((t) => loadingAt(movement, body, 0, t)?.work ?? []);
  if (legs.length === 0) return null;
  return {
    compressionBw: Math.max(...legs.map((leg) => leg.compressionBw)),
    tensionBw: Math.max(...legs.map((leg) => leg.tensionBw)),
    hipMomentNm: movement.mode === 'active' ? Math.max(...legs.map((leg) => Math.abs(leg.hipMomentNm))) : 0,
    demand: Math.max(...legs.map((leg) => leg.demand)),
  };
}

/** From the whole movement, as every page gives it. Null without a pose that rests. */
export function figuresOf({ movement, tempo }: ExerciseCard, body: Body): Figures | null {
  const peak = movement === null ? null : (sweep(movement, body, 0, WHOLE, tempo)?.peak ?? null);
  if (peak === null) return null;
  return { ...peak, hipMomentNm: movement?.mode === 'active' ? Math.abs(peak.hipMomentNm) : 0 };
}
