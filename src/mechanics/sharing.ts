/**
 * How muscles share a hip and a knee moment: the least sum of (force / area)², each force between its bounds.
 *
 * With weights w = area², the optimum is F = w (a rh + b rk) held inside the bounds, a and b being the multipliers of
 * the two moment equations. So only two numbers are sought: the minimum of a convex, piecewise quadratic function of
 * (a, b). Newton steps with a halving line search reach it in 3-6 steps and end on the exact answer, because within one
 * set of free muscles the step is exact.
 */
import type { Arms } from './muscle.ts';

/** One case. Moments in N·m; `leastN` and `mostN` bound each force, `weights` are areas squared (cm⁴); in the order of the arms. */
export interface SharingProblem {
  readonly arms: Arms;
  readonly hipNm: number;
  readonly kneeNm: number;
  readonly leastN: readonly number[];
  readonly mostN: readonly number[];
  readonly weights: readonly number[];
}

export interface Effort {
  /** Sum of (force / area)², N²/cm⁴. */
  readonly cost: number;
  /** Half the rise of the cost with each moment, the multipliers a and b. */
  readonly multipliers: readonly [number, number];
}

export interface Shares extends Effort {
  readonly forcesN: readonly number[];
}

/** Moment equations hold to this, N·m. */
const RESIDUAL_NM = 1e-10;
const MOST_STEPS = 100;

/**
 * Forces in newtons that supply both moments at the least cost; they exist whenever the arms pull in every direction,
 * as the seven lumps do at every hip and knee angle. Throws when the moments are out of the muscles' reach.
 */
export function shareLoad(problem: SharingProblem): Shares {
  const { cost, multipliers } = leastEffort(problem);
  return { forcesN: forcesAt(problem, multipliers), cost, multipliers };
}

/**
 * What it costs at least, without the forces. `from` is where to start looking, say the multipliers of a neighbouring
 * case; it changes the time, not the answer. Throws as `shareLoad` does.
 */
export function leastEffort(problem: SharingProblem, from: readonly [number, number] = [0, 0]): Effort {
  let [a, b] = from;
  let here = lagrangianAt(problem, a, b);
  for (let step = 0; step < MOST_STEPS && worst(here) > RESIDUAL_NM; step++) {
    const [stepA, stepB] = newtonStep(here);
    const slope = here.hipGap * stepA + here.kneeGap * stepB;
    let share = 1;
    let next = lagrangianAt(problem, a + stepA, b + stepB);
    while (next.value > here.value + 1e-4 * share * slope && worst(next) > RESIDUAL_NM && share > 1e-9) {
      share /= 2;
      next = lagrangianAt(problem, a + share * stepA, b + share * stepB);
    }
    a += share * stepA;
    b += share * stepB;
    here = next;
  }
  const reached = worst(here) <= 1e-9 * Math.max(1, Math.abs(problem.hipNm) + Math.abs(problem.kneeNm));
  if (!reached)
    throw new Error(`moments ${problem.hipNm} and ${problem.kneeNm} N·m out of the muscles' reach`);
  return { cost: here.cost, multipliers: [a, b] };
}

/** The function to minimise at one (a, b): its value, its slope (the gaps in the moments), its curvature. */
interface Lagrangian {
  readonly value: number;
  readonly cost: number;
  readonly hipGap: number;
  readonly kneeGap: number;
  readonly hipHip: number;
  readonly hipKnee: number;
  readonly kneeKnee: number;
}

function lagrangianAt(problem: SharingProblem, a: number, b: number): Lagrangian {
  const { arms, hipNm, kneeNm, leastN, mostN, weights } = problem;
  let value = -(a * hipNm + b * kneeNm);
  let cost = 0;
  let hipGap = -hipNm;
  let kneeGap = -kneeNm;
  let hipHip = 0;
  let hipKnee = 0;
  let kneeKnee = 0;
  for (let i = 0; i < weights.length; i++) {
    const w = weights[i] as number;
    const rh = arms.hipM[i] as number;
    const rk = arms.kneeM[i] as number;
    const pull = a * rh + b * rk;
    const wished = w * pull;
    const least = leastN[i] as number;
    const most = mostN[i] as number;
    const force = wished < least ? least : wished > most ? most : wished;
    cost += (force * force) / w;
    value += force * pull - (force * force) / (2 * w);
    hipGap += rh * force;
    kneeGap += rk * force;
    if (force === wished) {
      hipHip += w * rh * rh;
      hipKnee += w * rh * rk;
      kneeKnee += w * rk * rk;
    }
  }
  return { value, cost, hipGap, kneeGap, hipHip, hipKnee, kneeKnee };
}

function forcesAt(
  { arms, leastN, mostN, weights }: SharingProblem,
  [a, b]: Effort['multipliers'],
): readonly number[] {
  return weights.map((w, i) => {
    const wished = w * (a * (arms.hipM[i] as number) + b * (arms.kneeM[i] as number));
    return Math.min(Math.max(wished, leastN[i] as number), mostN[i] as number);
  });
}

/** Step to the minimum of the quadratic at hand; a direction in which it is flat is stiffened, which the next step mends. */
function newtonStep({ hipGap, kneeGap, hipHip, hipKnee, kneeKnee }: Lagrangian): readonly [number, number] {
  const determinant = hipHip * kneeKnee - hipKnee * hipKnee;
  const trace = hipHip + kneeKnee;
  const stiffening = determinant > 1e-10 * trace * trace ? 0 : 1e-8 * trace + 1e-6;
  const [hh, kk] = [hipHip + stiffening, kneeKnee + stiffening];
  const det = hh * kk - hipKnee * hipKnee;
  return [(hipKnee * kneeGap - kk * hipGap) / det, (hipKnee * hipGap - hh * kneeGap) / det];
}

function worst({ hipGap, kneeGap }: Lagrangian): number {
  return Math.max(Math.abs(hipGap), Math.abs(kneeGap));
}
