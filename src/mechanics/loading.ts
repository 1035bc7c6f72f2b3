/** What one moment of an exercise asks of the body: the whole forward model, from angles to tension and squeeze. */
import { GRAVITY } from './anthropometry.ts';
import { beltForceN, wrapDeg } from './belt.ts';
import type { Body } from './body.ts';
import { closingOf, type ClosedBody } from './closure.ts';
import { FRICTION, leastEffortN } from './friction.ts';
import { anglesOf, dorsiflexionDeg, type LegAngles } from './kinematics.ts';
import { forcesOf, legOf, type Leg } from './leg.ts';
import { legMoments, type LegMoments } from './moment.ts';
import type { Movement } from './movement.ts';
import type { BodyPoints, Posture } from './pose.ts';
import { reactionsOf, type Reaction } from './reaction.ts';
import { restsOn } from './equilibrium.ts';
import { demandOf, strengthFactor } from './strength.ts';
import { poseAt } from './trajectory.ts';
import { weightsOf, type Weights } from './weight.ts';

/** Model estimates for one leg; body weights are those of the body without its load. */
export interface LegLoading {
  readonly hipFlexionDeg: number;
  readonly kneeFlexionDeg: number;
  readonly ankleDorsiflexionDeg: number;
  /** Net moments in N·m the muscles must supply: hip extension, knee flexion, ankle plantarflexion positive. */
  readonly hipMomentNm: number;
  readonly kneeMomentNm: number;
  readonly ankleMomentNm: number;
  /** In the order of LUMPS. */
  readonly forcesN: readonly number[];
  /** Pull of the three hamstring heads together, with its passive part. */
  readonly tensionN: number;
  readonly tensionBw: number;
  /** Degrees by which the tendon bends over the sit bone. */
  readonly wrapDeg: number;
  /** Squeeze of the tendon against the sit bone. */
  readonly compressionN: number;
  readonly compressionBw: number;
  /** Largest share of its strength any lump is asked for; above 1 is beyond typical strength. 0 when relaxed. */
  readonly demand: number;
  /** Sum of (force / area)² over the lumps, N²/cm⁴. */
  readonly effort: number;
}

/**
 * What two supports do against each other: the least effort within the house's coefficient of friction or within
 * another one, or nothing but pushes straight up.
 */
export type Friction = Movement['horizontal'] | number;

/** Model estimates for a closed body under load. */
export interface Loading extends ClosedBody {
  /** Hip-to-shoulder line from upright, forward positive. */
  readonly trunkLeanDeg: number;
  readonly reactions: readonly Reaction[];
  /** Friction forward on the working foot, newtons. */
  readonly frictionN: number;
  readonly work: LegLoading;
  /** The other leg under the same friction; null in a symmetric pose. */
  readonly other: LegLoading | null;
}

/**
 * The loading at a fraction `t` of the movement with `loadKg` in place; null when the pose cannot be closed or cannot
 * rest on its supports (`equilibriumFaultAt` says which). `friction` is the card's own mode unless given: least effort, or
 * vertical reactions only (the heels dragged in, an upper estimate for bridges).
 */
export function loadingAt(
  movement: Movement,
  body: Body,
  loadKg: number,
  t: number,
  friction: Friction = movement.horizontal,
): Loading | null {
  return loadingsAt(movement, body, t, friction)(loadKg);
}

/** The same for several loads at one place: what no load changes there is worked out once. */
export function loadingsAt(
  movement: Movement,
  body: Body,
  t: number,
  friction: Friction = movement.horizontal,
): (loadKg: number) => Loading | null {
  const pose = poseAt(movement, t);
  const work = legOf(pose.work, body);
  const closed = closingOf(movement, pose, body);
  return (loadKg) => {
    const closedBody = closed(loadKg);
    if (!closedBody) return null;
    const weights = weightsOf(closedBody.points, body, movement.loadAt, loadKg);
    if (!restsOn(movement, closedBody.points, weights)) return null;
    return loadingUnder(weights, movement, closedBody, work, body, friction);
  };
}

/**
 * The loading of a posture that is known to be closed and at rest. The house takes postures from movements; the published
 * statics give the posture itself.
 */
export function loadingOf(
  movement: Movement,
  posture: Posture,
  body: Body,
  loadKg: number,
  friction: Friction,
): Loading {
  const weights = weightsOf(posture, body, movement.loadAt, loadKg);
  const closed = { angles: anglesOf(posture.pose), points: posture };
  return loadingUnder(weights, movement, closed, legOf(posture.pose.work, body), body, friction);
}

function loadingUnder(
  weights: Weights,
  movement: Movement,
  { angles, points }: ClosedBody,
  work: Leg,
  body: Body,
  friction: Friction,
): Loading {
  const coefficient = typeof friction === 'number' ? friction : FRICTION;
  const frictionN = leavesFriction(movement, friction)
    ? frictionOf(movement, points, weights, work, coefficient)
    : 0;
  const reactions = reactionsOf(points, movement.supports, weights, frictionN);
  const pelvisDeg = angles.trunk - angles.lumbar;
  const loadingOn = (which: 'work' | 'other', bend: LegAngles, leg: Leg) =>
    legLoading(
      bend,
      dorsiflexionDeg(bend, pelvisDeg),
      leg,
      legMoments(which, points[which], weights[which], reactions),
      movement.mode,
      body,
    );
  return {
    angles,
    points,
    trunkLeanDeg: angles.trunk,
    reactions,
    frictionN,
    work: loadingOn('work', angles.work, work),
    other: angles.other ? loadingOn('other', angles.other, legOf(angles.other, body)) : null,
  };
}

/** Whether statics leaves a friction between two supports to the person. */
export function leavesFriction(
  { supports, mode, horizontal }: Movement,
  friction: Friction = horizontal,
): boolean {
  return supports.length > 1 && mode === 'active' && friction !== 'none';
}

/** Least-effort friction between two supports, newtons. */
function frictionOf(
  movement: Movement,
  points: BodyPoints,
  weights: Weights,
  leg: Leg,
  coefficient: number,
): number {
  const reactionsAt = (frictionN: number) => reactionsOf(points, movement.supports, weights, frictionN);
  const momentsUnder = (reactions: readonly Reaction[]) =>
    legMoments('work', points.work, weights.work, reactions);
  const still = reactionsAt(0);
  const leastUpN = Math.min(...still.map(({ upN }) => upN));
  return leastEffortN(leg, momentsUnder(still), momentsUnder(reactionsAt(1)), coefficient * leastUpN);
}

function legLoading(
  { hip, knee }: LegAngles,
  ankleDorsiflexionDeg: number,
  leg: Leg,
  moments: LegMoments,
  mode: Movement['mode'],
  body: Body,
): LegLoading {
  const { forcesN, cost } = forcesOf(leg, moments, mode);
  const bodyWeightN = body.massKg * GRAVITY;
  const [tensionN = 0] = forcesN;
  const bendDeg = wrapDeg(hip);
  const compressionN = beltForceN(tensionN, bendDeg);
  return {
    hipFlexionDeg: hip,
    kneeFlexionDeg: knee,
    ankleDorsiflexionDeg,
    hipMomentNm: moments.hipNm,
    kneeMomentNm: moments.kneeNm,
    ankleMomentNm: moments.ankleNm,
    forcesN,
    tensionN,
    tensionBw: tensionN / bodyWeightN,
    wrapDeg: bendDeg,
    compressionN,
    compressionBw: compressionN / bodyWeightN,
    demand: mode === 'passive' ? 0 : demandOf(forcesN, strengthFactor(body)),
    effort: cost,
  };
}
