/** The hip bend an exercise is built to. */
import type { ExerciseCard } from './library.ts';

/** As the pose is written, whole degrees; what a range or a solver makes of it is asked elsewhere. Null where nothing says it. */
export function mostHipDeg({ movement, statedHipFlexion }: ExerciseCard): number | null {
  if (movement === null) return statedHipFlexion?.deg ?? null;
  return Math.round(Math.max(movement.start.work.hip, movement.end?.work.hip ?? -Infinity));
}
