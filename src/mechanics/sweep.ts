/** An exercise along its movement: what it reaches at its peak, and what a repetition adds up to. */
import type { Body } from './body.ts';
import { fractionFrom, gentleEndsOf, WHOLE, type MovementEnd, type Interval } from './gentle.ts';
import type { JointAngle } from './jointAngle.ts';
import { loadingAt, loadingsAt, type Friction, type LegLoading, type Loading } from './loading.ts';
import type { Movement } from './movement.ts';

/** Moments looked at along a movement. */
export const SAMPLES = 41;

/** Seconds: the way out of the start pose, stillness, the way back. A hold spends all three in its one pose. */
export interface RepetitionTempo {
  readonly goSeconds: number;
  /** Spent at the gentler end, as the house rule wants it. */
  readonly holdSeconds: number;
  readonly backSeconds: number;
}

/** Largest values along the part that was swept. Of the two moments, the one of larger amount with its sign. */
export interface Peaks {
  readonly hipFlexionDeg: number;
  readonly kneeFlexionDeg: number;
  readonly ankleDorsiflexionDeg: number;
  readonly trunkLeanDeg: number;
  readonly tensionBw: number;
  readonly compressionBw: number;
  readonly hipMomentNm: number;
  readonly kneeMomentNm: number;
  readonly demand: number;
}

export interface Sweep {
  readonly gentleEnd: MovementEnd;
  /** The working leg under the card's own friction mode. */
  readonly peak: Peaks;
  /** The other leg of an asymmetric exercise; null when both do the same. */
  readonly otherPeak: Peaks | null;
  /** Pull and squeeze added up over one repetition, body weights times seconds. */
  readonly tensionTimeBwS: number;
  readonly compressionTimeBwS: number;
}

/**
 * Peaks and time integrals of the part of a movement, 41 samples, for one repetition at a tempo. Null when any sample
 * cannot be closed or cannot rest.
 */
export function sweep(
  movement: Movement,
  body: Body,
  loadKg: number,
  interval: Interval,
  tempo: RepetitionTempo,
): Sweep | null {
  return sweepsOf(movement, body, interval, tempo)(loadKg);
}

/** The same for several loads on one part: what no load changes along it is worked out once. */
export function sweepsOf(
  movement: Movement,
  body: Body,
  interval: Interval,
  tempo: RepetitionTempo,
  guardedBy: JointAngle = 'hipFlexion',
): (loadKg: number) => Sweep | null {
  const gentleEnd = gentleEndsOf(movement, body, guardedBy);
  const places = samplesOf(movement, interval).map((t) => loadingsAt(movement, body, t));
  return (loadKg) => {
    const loadings = allOf(places.map((under) => under(loadKg)));
    return loadings && sweepOf(loadings, gentleEnd(loadKg), tempo);
  };
}

function sweepOf(loadings: readonly Loading[], gentleEnd: MovementEnd, tempo: RepetitionTempo): Sweep {
  const gentle = loadings[gentleEnd === 'start' ? 0 : loadings.length - 1] as Loading;
  const others = allOf(loadings.map(({ other }) => other));
  const added = (value: (leg: LegLoading) => number) => {
    const meanOnTheWay = trapezoidMean(loadings.map(({ work }) => value(work)));
    return meanOnTheWay * (tempo.goSeconds + tempo.backSeconds) + value(gentle.work) * tempo.holdSeconds;
  };
  return {
    gentleEnd,
    peak: peaksOf(
      loadings,
      loadings.map(({ work }) => work),
    ),
    otherPeak: others && peaksOf(loadings, others),
    tensionTimeBwS: added((leg) => leg.tensionBw),
    compressionTimeBwS: added((leg) => leg.compressionBw),
  };
}

/**
 * The largest squeeze of the working leg under vertical reactions only, as if the heels were dragged in: an upper
 * estimate for bridges, a cue and never a cap. Body weights, over the same samples; null where `sweep` is null.
 */
export function verticalOnlySqueezeBw(
  movement: Movement,
  body: Body,
  loadKg: number,
  interval: Interval,
): number | null {
  return squeezeUnder('none', movement, body, loadKg, interval);
}

/** The largest squeeze of the working leg when two supports may push against each other so much; as `verticalOnlySqueezeBw`. */
export function squeezeUnder(
  friction: Friction,
  movement: Movement,
  body: Body,
  loadKg: number,
  interval: Interval,
): number | null {
  const loadings = allOf(
    samplesOf(movement, interval).map((t) => loadingAt(movement, body, loadKg, t, friction)),
  );
  return loadings && largest(loadings, ({ work }) => work.compressionBw);
}

/** The fractions at which a part of a movement is looked at, from its lower to its upper end; one for a hold. */
export function samplesOf(movement: Movement, { from, to }: Interval = WHOLE): readonly number[] {
  if (!movement.end || from === to) return [from];
  return Array.from({ length: SAMPLES }, (_, i) =>
    i === SAMPLES - 1 ? to : from + ((to - from) * i) / (SAMPLES - 1),
  );
}

/** The part of a movement within `fraction` (0 to 1) of its gentler end. */
export function intervalFrom(gentleEnd: MovementEnd, fraction: number): Interval {
  const [near, far] = [fractionFrom(gentleEnd, 0), fractionFrom(gentleEnd, fraction)];
  return near < far ? { from: near, to: far } : { from: far, to: near };
}

function peaksOf(loadings: readonly Loading[], legs: readonly LegLoading[]): Peaks {
  return {
    hipFlexionDeg: largest(legs, (leg) => leg.hipFlexionDeg),
    kneeFlexionDeg: largest(legs, (leg) => leg.kneeFlexionDeg),
    ankleDorsiflexionDeg: largest(legs, (leg) => leg.ankleDorsiflexionDeg),
    trunkLeanDeg: largest(loadings, (loading) => loading.trunkLeanDeg),
    tensionBw: largest(legs, (leg) => leg.tensionBw),
    compressionBw: largest(legs, (leg) => leg.compressionBw),
    hipMomentNm: largestAmount(legs.map((leg) => leg.hipMomentNm)),
    kneeMomentNm: largestAmount(legs.map((leg) => leg.kneeMomentNm)),
    demand: largest(legs, (leg) => leg.demand),
  };
}

function largest<T>(list: readonly T[], value: (entry: T) => number): number {
  return list.reduce((most, entry) => Math.max(most, value(entry)), -Infinity);
}

function largestAmount(values: readonly number[]): number {
  return values.reduce((most, value) => (Math.abs(value) > Math.abs(most) ? value : most), 0);
}

function trapezoidMean(values: readonly number[]): number {
  const [first, last] = [values[0] as number, values.at(-1) as number];
  if (values.length === 1) return first;
  const sum = values.reduce((total, value) => total + value, 0) - (first + last) / 2;
  return sum / (values.length - 1);
}

function allOf<T>(list: readonly (T | null)[]): readonly T[] | null {
  const there = list.filter((entry) => entry !== null);
  return there.length === list.length ? there : null;
}
