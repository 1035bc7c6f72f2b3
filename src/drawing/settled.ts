/** A body set over its feet where the model lets it lean. */
import type { LegPoints, Point, Posture } from '../mechanics/pose.ts';
import type { SideScene } from '../mechanics/scene.ts';
import { toDegrees } from '../units/angle.ts';
import { turned } from './plane.ts';

/**
 * A model that carries the body on the balls of the feet throughout lets it lean while the heels are still down. Nobody
 * stands so: with the whole foot on the ground the body is drawn over its front half.
 */
export function settled({ supports }: SideScene, posture: Posture): Posture {
  const { pose, work } = posture;
  if (!supports.every((support) => support.endsWith('.fore')) || supports.length !== 1) return posture;
  if (pose.work.pitch !== 0) return posture;
  const leanRad = Math.atan2(-(work.mid.x + work.fore.x) / 2, -work.ankle.y);
  const turnedBack = (point: Point) => turned(point, work.ankle, leanRad);
  const hip = turnedBack({ x: 0, y: 0 });
  const back = (point: Point): Point => {
    const { x, y } = turnedBack(point);
    return { x: x - hip.x, y: y - hip.y };
  };
  const foot = ({ x, y }: Point): Point => ({ x: x - hip.x, y: y - hip.y });
  const { shoulder, hands, upperBack, seat, pelvisFront, other } = posture;
  const leg = (points: LegPoints): LegPoints => ({
    ...points,
    knee: back(points.knee),
    ankle: back(points.ankle),
    heel: foot(points.heel),
    mid: foot(points.mid),
    fore: foot(points.fore),
    footCom: foot(points.footCom),
  });
  const hanging = (points: LegPoints): LegPoints => ({
    knee: back(points.knee),
    ankle: back(points.ankle),
    heel: back(points.heel),
    mid: back(points.mid),
    fore: back(points.fore),
    footCom: back(points.footCom),
  });
  return {
    pose: { ...pose, trunk: pose.trunk - toDegrees(leanRad) },
    shoulder: back(shoulder),
    hands: back(hands),
    upperBack: back(upperBack),
    seat: back(seat),
    pelvisFront: back(pelvisFront),
    work: leg(work),
    other: pose.other === undefined ? leg(other) : hanging(other),
  };
}
