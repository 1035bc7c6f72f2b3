/** What one moment of an exercise asks of the body: the whole forward model, from angles to tension and squeeze. */
import { GRAVITY } from './anthropometry.ts';
import { beltForceN, wrapDeg } from './belt.ts';
import type { Body } from './body.ts';
import { closePose } from './closure.ts';
import { FRICTION, leastEffortN } from './friction.ts';
import { forcesOf, legOf, type Leg } from './leg.ts';
import { legMoments, type LegMoments } from './moment.ts';
import type { Movement } from './movement.ts';
import { LUMPS, STRENGTH_N, type Lump } from './muscle.ts';
import type { LegPose, Posture } from './pose.ts';
import { reactionsOf, type Reaction } from './reaction.ts';
import { restsOn } from './rest.ts';
import { poseAt } from './trajectory.ts';
import { weightsOf, type Weights } from './weight.ts';

/** Model estimates for one leg; body weights are those of the body without its load. */
export interface LegLoading {
  readonly hipFlexionDeg: number;
  readonly kneeFlexionDeg: number;
  /** Net moments in N·m the muscles must supply: hip extension, knee flexion, ankle plantarflexion positive. */
  readonly hipMomentNm: number;
  readonly kneeMomentNm: number;
  readonly ankleMomentNm: number;
  readonly forcesN: Readonly<Record<Lump, number>>;
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

/** Model estimates for a posture under load. */
export interface Loading {
  readonly posture: Posture;
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
 * rest on its supports (`obstacleAt` says which). `friction` is the card's own mode unless given: least effort, or
 * vertical reactions only (the heels dragged in, an upper estimate for bridges).
 */
export function loadingAt(
  movement: Movement,
  body: Body,
  loadKg: number,
  t: number,
  friction: Movement['horizontal'] = movement.horizontal,
): Loading | null {
  return loadingsAt(movement, body, t, friction)(loadKg);
}

/** The same for several loads at one place: what no load changes there is worked out once. */
export function loadingsAt(
  movement: Movement,
  body: Body,
  t: number,
  friction: Movement['horizontal'] = movement.horizontal,
): (loadKg: number) => Loading | null {
  const pose = poseAt(movement, t);
  const work = legOf(pose.work, body);
  const closed = (loadKg: number) => closePose(movement, pose, body, loadKg);
  // A load moves the body only where it must be balanced.
  const still = movement.solve?.kind === 'balance' ? undefined : closed(0);
  return (loadKg) => {
    const posture = still === undefined ? closed(loadKg) : still;
    if (!posture) return null;
    const weights = weightsOf(posture, body, movement.loadAt, loadKg);
    if (!restsOn(movement, posture, weights)) return null;
    return loadingUnder(weights, movement, posture, work, body, friction);
  };
}

/** The loading of a posture that is known to be closed and at rest. */
export function loadingOf(
  movement: Movement,
  posture: Posture,
  body: Body,
  loadKg: number,
  friction: Movement['horizontal'],
): Loading {
  const weights = weightsOf(posture, body, movement.loadAt, loadKg);
  return loadingUnder(weights, movement, posture, legOf(posture.pose.work, body), body, friction);
}

function loadingUnder(
  weights: Weights,
  movement: Movement,
  posture: Posture,
  work: Leg,
  body: Body,
  friction: Movement['horizontal'],
): Loading {
  const { pose } = posture;
  const frictionN = friction === 'none' ? 0 : frictionOf(movement, posture, weights, work);
  const reactions = reactionsOf(posture, movement.supports, weights, frictionN);
  const loadingOn = (which: 'work' | 'other', legPose: LegPose, leg: Leg) =>
    legLoading(
      legPose,
      leg,
      legMoments(which, posture[which], weights[which], reactions),
      movement.mode,
      body,
    );
  return {
    posture,
    trunkLeanDeg: pose.trunk,
    reactions,
    frictionN,
    work: loadingOn('work', pose.work, work),
    other: pose.other ? loadingOn('other', pose.other, legOf(pose.other, body)) : null,
  };
}

/** Least-effort friction between two supports, newtons; 0 where there is none to choose. */
function frictionOf(movement: Movement, posture: Posture, weights: Weights, leg: Leg): number {
  if (movement.supports.length < 2 || movement.mode !== 'active') return 0;
  const reactionsAt = (frictionN: number) => reactionsOf(posture, movement.supports, weights, frictionN);
  const momentsUnder = (reactions: readonly Reaction[]) =>
    legMoments('work', posture.work, weights.work, reactions);
  const still = reactionsAt(0);
  const leastUpN = Math.min(...still.map(({ upN }) => upN));
  return leastEffortN(leg, momentsUnder(still), momentsUnder(reactionsAt(1)), FRICTION * leastUpN);
}

function legLoading(
  { hip, knee }: LegPose,
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
    hipMomentNm: moments.hipNm,
    kneeMomentNm: moments.kneeNm,
    ankleMomentNm: moments.ankleNm,
    forcesN: byLump(forcesN),
    tensionN,
    tensionBw: tensionN / bodyWeightN,
    wrapDeg: bendDeg,
    compressionN,
    compressionBw: compressionN / bodyWeightN,
    demand: mode === 'passive' ? 0 : largestShare(forcesN),
    effort: cost,
  };
}

function byLump(forcesN: readonly number[]): Readonly<Record<Lump, number>> {
  const forces = {} as Record<Lump, number>;
  for (let i = 0; i < LUMPS.length; i++) forces[LUMPS[i] as Lump] = forcesN[i] as number;
  return forces;
}

function largestShare(forcesN: readonly number[]): number {
  let most = -Infinity;
  for (let i = 0; i < forcesN.length; i++)
    most = Math.max(most, (forcesN[i] as number) / (STRENGTH_N[i] as number));
  return most;
}
