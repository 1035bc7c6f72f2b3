/** How much an exercise, a session and a week squeeze and pull, and whether a step grows too fast. */
import type { Cap, Limit, Prescribed } from './rung.ts';
import { tensionSeconds } from './work.ts';

/** What the model says of a card at a range, load and tempo, margins for two supports included. */
export interface Measured {
  /** Peak squeeze N at any load up to this one, body weights. */
  readonly compressionBw: number;
  /** Peak pull T, body weights. */
  readonly tensionBw: number;
  /** Largest hip moment of the working leg, N·m. */
  readonly hipMomentNm: number;
  /** N over the time of one repetition, or of one second of a hold: body weights x seconds. */
  readonly compressionTimeBwS: number;
  /** Pull T over the same time: body weights x seconds. */
  readonly tensionTimeBwS: number;
  /** The cap that forbids it, null when admitted. */
  readonly refusedBy: Cap | null;
}

/** Null for a card without a pose: its growth is judged by work and kilograms. */
export type Measure = (
  card: string,
  at: Pick<Prescribed, 'rangeDeg' | 'loadKg'> & Pick<Prescribed['dose'], 'tempo' | 'kind'>,
) => Measured | null;

/** Squeeze and pull so small that growing to them harms nothing, body weights: growth is reckoned from here. */
export interface GrowthFloor {
  readonly compressionBw: number;
  readonly tensionBw: number;
}

export interface GrowthLimits {
  /** Times at most a step, for example 1.3. */
  readonly stepGrowth: number;
  readonly weekGrowth: number;
  readonly floor: GrowthFloor;
}

/** One exercise's burden, once through and over a week. */
export interface Burden {
  readonly measured: Measured | null;
  readonly loadKg: number;
  readonly compressionTimeBwS: number;
  readonly tensionTimeBwS: number;
  readonly workSeconds: number;
  readonly perWeek: number;
}

/**
 * Below these the model cannot tell two values apart, so no floor of growth lies lower: squeeze and pull are shown to 0.1
 * body weights, and 5 N·m is a few percent of what a hip can do [choice].
 */
export const RESOLUTION = { compressionBw: 0.1, hipMomentNm: 5, tensionBw: 0.1 } as const;

// Binary dust: 1.3 x 30 / 30 is 1.3000000000000000444.
const DUST = 1e-9;

/** The burden of a prescribed exercise with what the model measured of it. */
export function burdenOf(at: Prescribed, measured: Measured | null): Burden {
  const { dose } = at;
  const units = dose.sets * (dose.holdSeconds ?? dose.repetitions ?? 0);
  return {
    measured,
    loadKg: at.loadKg,
    compressionTimeBwS: units * (measured?.compressionTimeBwS ?? 0),
    tensionTimeBwS: units * (measured?.tensionTimeBwS ?? 0),
    workSeconds: tensionSeconds(dose),
    perWeek: dose.timesPerDay * at.daysPerWeek,
  };
}

/** The limit that one exercise's step breaks, or null: squeeze, hip moment, squeeze and pull over the session, work, week. */
export function exerciseGrowth(before: Burden, after: Burden, limits: GrowthLimits): Limit | null {
  const grows = (from: number, to: number, floor = 0, by = limits.stepGrowth) =>
    to > by * Math.max(from, floor) * (1 + DUST) + DUST;
  if (!after.measured !== !before.measured) return 'unmodelled';
  if (after.measured && before.measured) {
    const [from, to] = [before.measured, after.measured];
    if (to.refusedBy) return to.refusedBy;
    const { floor } = limits;
    if (grows(from.compressionBw, to.compressionBw, floor.compressionBw)) return 'compressionGrowth';
    // The moment matters to the tendon by its pull alone.
    if (to.tensionBw > floor.tensionBw && grows(from.hipMomentNm, to.hipMomentNm, RESOLUTION.hipMomentNm))
      return 'hipMomentGrowth';
  } else if (grows(before.loadKg, after.loadKg)) return 'loadGrowth';
  const { timeFloor, pullFloor } = floorsOver(limits);
  if (grows(before.compressionTimeBwS, after.compressionTimeBwS, timeFloor(before)))
    return 'compressionTimeGrowth';
  if (grows(before.tensionTimeBwS, after.tensionTimeBwS, pullFloor(before))) return 'tensionTimeGrowth';
  if (grows(before.workSeconds, after.workSeconds)) return 'workGrowth';
  return weekGrowth([before], [after], limits);
}

/** The limit that a whole session's step breaks in squeeze or pull over time, once through or over the week, or null. */
export function sessionGrowth(
  before: readonly Burden[],
  after: readonly Burden[],
  limits: GrowthLimits,
): Limit | null {
  const grows = (of: (burden: Burden) => number, floor: (burden: Burden) => number) =>
    sum(after, of) > limits.stepGrowth * Math.max(sum(before, of), sum(before, floor)) * (1 + DUST) + DUST;
  const { timeFloor, pullFloor } = floorsOver(limits);
  if (grows(timeOf, timeFloor)) return 'compressionTimeGrowth';
  if (grows(pullOf, pullFloor)) return 'tensionTimeGrowth';
  return weekGrowth(before, after, limits);
}

function weekGrowth(before: readonly Burden[], after: readonly Burden[], limits: GrowthLimits): Limit | null {
  const { timeFloor, pullFloor } = floorsOver(limits);
  const week = (of: (burden: Burden) => number) => (burden: Burden) => of(burden) * burden.perWeek;
  const grows = (of: (burden: Burden) => number, floor: (burden: Burden) => number) => {
    const from = Math.max(sum(before, week(of)), sum(before, week(floor)));
    return sum(after, week(of)) > limits.weekGrowth * from * (1 + DUST) + DUST;
  };
  const tooMuch = grows(timeOf, timeFloor) || grows(pullOf, pullFloor) || grows(workOf, workOf);
  return tooMuch ? 'weekGrowth' : null;
}

const timeOf = (burden: Burden) => burden.compressionTimeBwS;
const pullOf = (burden: Burden) => burden.tensionTimeBwS;
const workOf = (burden: Burden) => burden.workSeconds;

/** The floors over the time of one exercise's work. */
function floorsOver({ floor }: GrowthLimits) {
  const over = (bw: number) => (burden: Burden) => (burden.measured ? bw * burden.workSeconds : 0);
  return { timeFloor: over(floor.compressionBw), pullFloor: over(floor.tensionBw) };
}

function sum(burdens: readonly Burden[], of: (burden: Burden) => number): number {
  return burdens.reduce((total, burden) => total + of(burden), 0);
}
