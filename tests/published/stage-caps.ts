/** The stage limits of the house rules, section 3, at the first step of each stage [choice; 20-30° of stage 1 secondary]. */
import type { Caps } from '../../src/mechanics/cap.ts';

const caps = (angleDeg: number, compressionBw: number, tensionBw: number, demand: number): Caps => ({
  angle: 'hipFlexion',
  angleDeg,
  compressionBw,
  tensionBw,
  demand,
  supportMargin: 1.25,
});

export const STAGE_CAPS = {
  '1 hold': caps(30, 0.35, 1.5, 0.3),
  '2 slow': caps(45, 0.8, 2.5, 0.6),
  '2 slow, opened': caps(60, 0.8, 2.5, 0.6),
  '3 more bend': caps(60, 2.0, 3.5, 0.9),
  '3 more bend, opened': caps(90, 2.0, 3.5, 0.9),
} as const;
