/** A foot that stands on its ground, bends its toes there, and never sinks into it. */
import type { Point } from '../mechanics/pose.ts';
import { toRadians } from '../units/angle.ts';
import { type Knot, corner } from './outline.ts';
import { along, clamp, directionFrom, turned } from './plane.ts';
import { FOOT_KNOTS } from './proportions.ts';
import type { Leg } from './stance.ts';

// A hanging foot gives way to the ground by turning at the ankle, the smaller turn first.
const GIVE_STEP_DEG = 4;
const GIVE_MOST_DEG = 96;
const TOE_BEND_MOST_RAD = 1.3;
const ORIGIN: Point = { x: 0, y: 0 };
const SKIN_KNOTS = Object.values(FOOT_KNOTS);

/** The foot's skin from the front of the ankle round the toes and the sole to the back of the heel, metres. */
export function footKnots(leg: Leg, heightM: number): readonly Knot[] {
  const { ankle, forward } = placed(leg, heightM);
  const dorsal = { x: -forward.y, y: forward.x };
  const at = (name: keyof typeof FOOT_KNOTS): Point => {
    const knot = FOOT_KNOTS[name];
    return along(along(ankle, knot.forward * heightM, forward), -knot.down * heightM, dorsal);
  };
  const ball = at('ball');
  const bend = toeBend(ball, at('tip'), at('toeSole'), leg.groundY);
  const toe = (name: keyof typeof FOOT_KNOTS) => turned(at(name), ball, bend);
  return [
    at('instep'),
    toe('toeTop'),
    toe('tip'),
    corner(toe('toeSole')),
    corner(ball),
    corner(at('heel')),
    at('heelBack'),
  ];
}

/** By how much the toes are bent up about the ball of the foot by the ground, radians. */
export function toeBendOf(leg: Leg, heightM: number): number {
  const { ankle, forward } = placed(leg, heightM);
  const dorsal = { x: -forward.y, y: forward.x };
  const at = ({ forward: ahead, down }: (typeof FOOT_KNOTS)[keyof typeof FOOT_KNOTS]) =>
    along(along(ankle, ahead * heightM, forward), -down * heightM, dorsal);
  return toeBend(at(FOOT_KNOTS.ball), at(FOOT_KNOTS.tip), at(FOOT_KNOTS.toeSole), leg.groundY);
}

/** Ankle and direction of the sole after a hanging foot has given way to the ground. */
export function placed(leg: Leg, heightM: number): { readonly ankle: Point; readonly forward: Point } {
  const forward = directionFrom(leg.heel, leg.fore);
  if (leg.planted) return { ankle: leg.ankle, forward };
  for (let deg = 0; deg <= GIVE_MOST_DEG; deg += GIVE_STEP_DEG) {
    for (const turn of [-deg, deg]) {
      const given = turned(forward, ORIGIN, toRadians(turn));
      if (lowestOf(leg.ankle, given, heightM) >= leg.groundY) return { ankle: leg.ankle, forward: given };
    }
  }
  return { ankle: leg.ankle, forward };
}

function lowestOf(ankle: Point, forward: Point, heightM: number): number {
  const drop = SKIN_KNOTS.reduce(
    (low, { forward: f, down }) => Math.min(low, f * forward.y - down * forward.x),
    0,
  );
  return ankle.y + drop * heightM;
}

// Toes under the ground bend up about the ball of the foot until they lie along it.
function toeBend(ball: Point, tip: Point, toeSole: Point, groundY: number): number {
  if (Math.min(tip.y, toeSole.y) >= groundY - 1e-9) return 0;
  const toes = directionFrom(ball, toeSole);
  const needed = Math.asin(clamp(-toes.y, -1, 1));
  return clamp(needed, 0, TOE_BEND_MOST_RAD);
}
