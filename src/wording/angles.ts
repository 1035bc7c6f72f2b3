/** The joint angles a card computes to, against which its words are held. */
import type { ExerciseCard } from '../content/library.ts';
import { REFERENCE_BODY } from '../mechanics/body.ts';
import { closePose } from '../mechanics/closure.ts';
import type { Movement } from '../mechanics/movement.ts';
import { poseAt } from '../mechanics/trajectory.ts';

/** Degrees between which an angle moves. */
export interface Span {
  readonly leastDeg: number;
  readonly mostDeg: number;
}

/** Null where the card has no pose that says it. */
export interface Angles {
  readonly hip: Span | null;
  readonly knee: Span | null;
  /** The trunk away from upright, to whichever side. */
  readonly lean: Span | null;
}

const PLACES = [0, 0.25, 0.5, 0.75, 1];

/** Of the working leg and the trunk, from start to end, on the reference body without a weight. */
export function anglesAlong(card: ExerciseCard): Angles {
  const { movement } = card;
  if (movement === null) return stated(card);
  return anglesOver(movement, movement.end ? PLACES : [0]);
}

/** Of the start pose alone; as stated for a card without a pose. */
export function anglesAtStart(card: ExerciseCard): Angles {
  return card.movement === null ? stated(card) : anglesOver(card.movement, [0]);
}

// A stated angle is the largest; that the hip is straight at the other end is not denied.
function stated({ statedHipFlexion }: ExerciseCard): Angles {
  const deg = statedHipFlexion?.deg ?? null;
  return {
    hip: deg === null ? null : { leastDeg: Math.min(0, deg), mostDeg: deg },
    knee: null,
    lean: null,
  };
}

function anglesOver(movement: Movement, times: readonly number[]): Angles {
  const poses = times.map((t) => poseAt(movement, t));
  const leans = poses.flatMap((pose) => {
    const closed = closePose(movement, pose, REFERENCE_BODY, 0);
    return closed === null ? [] : [Math.abs(closed.pose.trunk)];
  });
  return {
    hip: spanOf(poses.map(({ work }) => work.hip)),
    knee: spanOf(poses.map(({ work }) => work.knee)),
    lean: leans.length === times.length ? spanOf(leans) : null,
  };
}

function spanOf(degrees: readonly number[]): Span {
  return { leastDeg: Math.min(...degrees), mostDeg: Math.max(...degrees) };
}
