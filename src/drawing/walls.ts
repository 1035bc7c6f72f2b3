/** The wall a body pushes, leans on or has behind it, and the towel between. */
import { wall } from './blocks.ts';
import { edged, type Stroke } from './strokes.ts';
import { rectangle } from './outline.ts';
import type { Stance } from './stance.ts';
import { torsoKnots } from './torso.ts';

const WALL_M = 0.5;
const TOWEL_M = 0.07;

/** Ahead of hands that push, else behind the body; `towelled` keeps it a folded towel away. */
export function wallFor(stances: readonly Stance[], pushed: boolean, towelled: boolean): readonly Stroke[] {
  const reachesForward = stances.every(({ pose }) => typeof pose.arms === 'number' && pose.arms > 60);
  const top = Math.max(...stances.map(({ shoulder, hip }) => Math.max(shoulder.y, hip.y))) + WALL_M;
  if (pushed || reachesForward) {
    // The palm lies half a hand behind the finger tips.
    return wall(Math.max(...stances.map(({ hands, heightM }) => hands.x + 0.05 * heightM)), top, 'right');
  }
  return wall(wallBehind(stances, towelled), top, 'left');
}

// A folded towel between heel and wall keeps the body a hand away from it.
function wallBehind(stances: readonly Stance[], towelled: boolean): number {
  return Math.min(...stances.flatMap(skinXs)) - (towelled ? TOWEL_M : 0);
}

function skinXs(stance: Stance): readonly number[] {
  return torsoKnots(stance.pose, stance.hip, stance.heightM).map(({ x }) => x);
}

/** The folded towel between heel and wall. */
export function heelTowel(stances: readonly Stance[]): (stance: Stance) => readonly Stroke[] {
  const face = wallBehind(stances, true);
  return ({ work }) => [
    edged(
      rectangle({ x: face + 0.008, y: 0.13 }, { x: Math.max(work.heel.x + 0.01, face + TOWEL_M), y: 0.01 }),
      'prop',
      'paperWhite',
      0.008,
    ),
  ];
}
