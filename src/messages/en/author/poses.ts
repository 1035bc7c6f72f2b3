/** What an author is told of a pose that no body could take, and of a figure that shows something else than the words. */
import type { EquilibriumFault } from '../../../mechanics/equilibrium.ts';
import type { Movement } from '../../../mechanics/movement.ts';
import type { SeenFrame } from '../../../mechanics/seen.ts';
import type { CureWords } from '../../shapes.ts';

function placeText(t: number): string {
  return t === 0 ? 'at the start' : t === 1 ? 'at the end' : `${Math.round(t * 100)} % of the way`;
}

/** `t`: place along the movement, 0 to 1; `heightsM`: every card must fit these and between. */
export function cannotRest(
  fault: EquilibriumFault,
  { solve }: Movement,
  {
    heightM,
    t,
    heightsM,
  }: { readonly heightM: number; readonly t: number; readonly heightsM: readonly [number, number] },
): CureWords {
  const who = `${placeText(t)} for a body of ${heightM} m`;
  const [low, high] = solve?.range ?? [];
  switch (fault) {
    case 'notClosed':
      return {
        found: `without an answer ${who}: no ${solve?.unknown} from ${low}° to ${high}° closes the pose`,
        expected: `a way to close the pose for every body from ${heightsM[0]} to ${heightsM[1]} m`,
        fix: 'mend hip, knee or pitch until the body reaches its supports, or widen range',
      };
    case 'supportInTheAir':
      return {
        found: `a pair of which one would have to hold the body down ${who}`,
        expected: 'points on which the body rests by its weight',
        fix: 'put the supports to both sides of the weight, or name the one that carries it',
      };
    case 'offBalance':
      return {
        found: `beside the weight of the body ${who}`,
        expected: 'a point below the weight of the body',
        fix: 'let a solve of kind balance turn the trunk, or name a second support',
      };
    case 'ankleBeyondReach':
      return {
        found: `a pose that bends the standing ankle beyond its reach ${who}`,
        expected: 'a pose whose standing ankle bends by 40° at most',
        fix: 'bend the knee less, or the hip more',
      };
  }
}

export function ankleBent(ankleDeg: number, t: number, [least, most]: readonly [number, number]): CureWords {
  return {
    found: `a pose that bends an ankle to ${Math.round(ankleDeg)}° ${placeText(t)}`,
    expected: `a pose with its ankles from ${least}° to ${most}°`,
    fix: 'mend hip, knee or pitch of that leg; pitch is the angle of the foot to the ground',
  };
}

export const FIGURE_MISSING: CureWords = {
  found: 'a card without a figure',
  expected: 'a card with a start pose, or with a picture that is only drawn',
  fix: 'give it a start pose, or a picture with its frames',
};

export function entersThing({ part, prop, depthM }: SeenFrame['entered'][number]): CureWords {
  return {
    found: `a pose whose ${part} is drawn ${Math.round(depthM * 100)} cm inside the ${prop}`,
    expected: 'a pose that touches things from outside',
    fix: 'move the limb, or take the thing out of props',
  };
}

/** `withinDeg`: how far arc and number may differ; `fromDeg`: under it there is no arc. */
export function arcAgainstNumber(
  arcDeg: number,
  shownDeg: number | null,
  { withinDeg, fromDeg }: { readonly withinDeg: number; readonly fromDeg: number },
): CureWords {
  return {
    found: `a pose drawn with an arc of ${Math.round(arcDeg)}° beside the number ${shownDeg ?? 'none'}`,
    expected: `an arc that agrees with its number within ${withinDeg}°, and none under ${fromDeg}°`,
    fix: 'mend the hip of the pose',
  };
}

export function footFloats(floatsM: number): CureWords {
  return {
    found: `a pose whose standing foot hangs ${Math.round(floatsM * 100)} cm over the ground`,
    expected: 'a pose with its standing feet on the ground',
    fix: 'mend hip and knee of that leg, or give the foot in the air an ankle instead of a pitch',
  };
}

/** `thing`: as the picture's words name it. */
export function handInTheAir(thing: string): CureWords {
  return {
    found: `text that puts a hand on ${thing}, and the figure has it elsewhere`,
    expected: `text whose hand is drawn on ${thing}`,
    fix: 'name the thing in props, or say with hands or arms where the hand is',
  };
}

export function saidToMove(thing: string): CureWords {
  return {
    found: `text in which ${thing} moves, and the figure does not show it`,
    expected: `text whose ${thing} is seen to move, with the arrow beside it`,
    fix: 'mend the poses, or give the frame its arrow',
  };
}
