/** Poses that no body could take: they do not close, cannot rest, or bend an ankle beyond its reach. */
import type { ExerciseCard, Shelves } from '../content/library.ts';
import type { PlaceOf } from '../content/place.ts';
import type { Problem } from '../content/problem.ts';
import { REFERENCE_BODY, type Body } from '../mechanics/body.ts';
import { closePose } from '../mechanics/closure.ts';
import { ankleDegOf } from '../mechanics/kinematics.ts';
import type { Movement } from '../mechanics/movement.ts';
import type { LegPose } from '../mechanics/pose.ts';
import { obstacleAt, type Obstacle } from '../mechanics/equilibrium.ts';
import { poseAt } from '../mechanics/trajectory.ts';
import { refuse, type Words } from './spot.ts';

/**
 * Metres; every card must fit people of these heights and between. Lengths of the body grow with height and only steps
 * and sway do not, so that what fits the smallest and the tallest fits all. Mass plays no part without a weight.
 */
const HEIGHTS_M = [1.55, 1.95] as const;

/** The ends first: a fault there is easiest to mend. */
const PLACES = [0, 1, 0.5];

/** Dorsiflexion an ankle can reach with or without weight on it, degrees: the bounds of the card's own key. */
const ANKLE_DEG = [-60, 40] as const;

/** The first fault of each posed card, without a weight. */
export function impossiblePoses({ exercises }: Shelves, placeOf: PlaceOf): Problem[] {
  return [...exercises.values()].flatMap((card) => {
    const fault = faultOf(card);
    return fault === null
      ? []
      : [
          refuse(
            placeOf,
            { kind: 'exercise', id: card.id, path: fault.path },
            'pose-cannot-close',
            fault.words,
          ),
        ];
  });
}

interface Fault {
  readonly path: readonly string[];
  readonly words: Words;
}

function faultOf({ movement }: ExerciseCard): Fault | null {
  if (movement === null) return null;
  for (const heightM of HEIGHTS_M) {
    const body = { ...REFERENCE_BODY, heightM };
    for (const t of movement.end ? PLACES : [0]) {
      const obstacle = obstacleAt(movement, body, 0, t);
      if (obstacle !== null) return restFault(obstacle, movement, heightM, t);
      const ankleDeg = wildAnkleDeg(movement, body, t);
      if (ankleDeg !== null) return ankleFault(ankleDeg, t);
    }
  }
  return null;
}

/** A foot on the ground bends its ankle by what is left over; null when both ankles can. */
function wildAnkleDeg(movement: Movement, body: Body, t: number): number | null {
  const pose = closePose(movement, poseAt(movement, t), body, 0)?.pose;
  if (pose === undefined) return null;
  const pelvisDeg = pose.trunk - (pose.lumbar ?? 0);
  const legs: readonly LegPose[] = pose.other ? [pose.work, pose.other] : [pose.work];
  return (
    legs.map((leg) => ankleDegOf(leg, pelvisDeg)).find((deg) => deg < ANKLE_DEG[0] || deg > ANKLE_DEG[1]) ??
    null
  );
}

function restFault(obstacle: Obstacle, movement: Movement, heightM: number, t: number): Fault {
  const who = `${whereText(t)} for a body of ${heightM} m`;
  const [low, high] = movement.solve?.range ?? [];
  switch (obstacle) {
    case 'notClosed':
      return {
        path: ['solve'],
        words: {
          found: `without an answer ${who}: no ${movement.solve?.unknown} from ${low}° to ${high}° closes the pose`,
          expected: `a way to close the pose for every body from ${HEIGHTS_M[0]} to ${HEIGHTS_M[1]} m`,
          fix: 'mend hip, knee or pitch until the body reaches its supports, or widen range',
        },
      };
    case 'supportInTheAir':
      return {
        path: ['supports'],
        words: {
          found: `a pair of which one would have to hold the body down ${who}`,
          expected: 'points on which the body rests by its weight',
          fix: 'put the supports to both sides of the weight, or name the one that carries it',
        },
      };
    case 'offBalance':
      return {
        path: ['supports'],
        words: {
          found: `beside the weight of the body ${who}`,
          expected: 'a point below the weight of the body',
          fix: 'let a solve of kind balance turn the trunk, or name a second support',
        },
      };
    case 'ankleBeyondReach':
      return {
        path: [poseKey(t)],
        words: {
          found: `a pose that bends the standing ankle beyond its reach ${who}`,
          expected: 'a pose whose standing ankle bends by 40° at most',
          fix: 'bend the knee less, or the hip more',
        },
      };
  }
}

function ankleFault(ankleDeg: number, t: number): Fault {
  return {
    path: [poseKey(t)],
    words: {
      found: `a pose that bends an ankle to ${Math.round(ankleDeg)}° ${whereText(t)}`,
      expected: `a pose with its ankles from ${ANKLE_DEG[0]}° to ${ANKLE_DEG[1]}°`,
      fix: 'mend hip, knee or pitch of that leg; pitch is the angle of the foot to the ground',
    },
  };
}

function whereText(t: number): string {
  return t === 0 ? 'at the start' : t === 1 ? 'at the end' : `${Math.round(t * 100)} % of the way`;
}

function poseKey(t: number): 'start' | 'end' {
  return t === 0 ? 'start' : 'end';
}
