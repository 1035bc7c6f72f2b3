/** Poses that no body could take: they do not close, cannot rest, or bend an ankle beyond its reach. */
import type { ExerciseCard, LibraryFiles } from '../content/library.ts';
import type { PlaceOf } from '../content/place.ts';
import type { Problem } from '../content/problem.ts';
import { REFERENCE_BODY, type Body } from '../mechanics/body.ts';
import { closePose } from '../mechanics/closure.ts';
import { ankleDegOf } from '../mechanics/kinematics.ts';
import type { Movement } from '../mechanics/movement.ts';
import type { LegPose } from '../mechanics/pose.ts';
import { equilibriumFaultAt, type EquilibriumFault } from '../mechanics/equilibrium.ts';
import { poseAt } from '../mechanics/trajectory.ts';
import { ankleBent, cannotRest } from '../messages/en/author/poses.ts';
import type { CureWords } from '../messages/shapes.ts';
import { refuse } from './fieldPlace.ts';

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
export function impossiblePoses({ exercises }: LibraryFiles, placeOf: PlaceOf): Problem[] {
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
  readonly words: CureWords;
}

function faultOf({ movement }: ExerciseCard): Fault | null {
  if (movement === null) return null;
  for (const heightM of HEIGHTS_M) {
    const body = { ...REFERENCE_BODY, heightM };
    for (const t of movement.end ? PLACES : [0]) {
      const fault = equilibriumFaultAt(movement, body, 0, t);
      if (fault !== null) return restFault(fault, movement, heightM, t);
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

function restFault(fault: EquilibriumFault, movement: Movement, heightM: number, t: number): Fault {
  return {
    path: [fault === 'ankleBeyondReach' ? poseKey(t) : fault === 'notClosed' ? 'solve' : 'supports'],
    words: cannotRest(fault, movement, { heightM, t, heightsM: HEIGHTS_M }),
  };
}

function ankleFault(ankleDeg: number, t: number): Fault {
  return { path: [poseKey(t)], words: ankleBent(ankleDeg, t, ANKLE_DEG) };
}

function poseKey(t: number): 'start' | 'end' {
  return t === 0 ? 'start' : 'end';
}
