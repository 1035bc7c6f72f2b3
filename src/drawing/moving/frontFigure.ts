/** A body seen from the front or from above as it moves. */
import type { FrontScene } from '../../mechanics/scene.ts';
import { frontArms } from '../front/arms.ts';
import { frontBody } from '../front/body.ts';
import { carried, standing } from '../front/props.ts';
import { frontStance } from '../front/stance.ts';
import { followed } from './followed.ts';
import { noJoints } from './joints.ts';
import type { MovingFigure } from './movingFigure.ts';

/** Null where nothing moves. */
export function frontFigure(scene: FrontScene): Omit<MovingFigure, 'sheet'> | null {
  const { moments, frames, body, view, side } = scene;
  if (moments === undefined) return null;
  const behind = standing(
    scene,
    frames.map(({ front, offGroundM = 0 }) => frontStance(front, body.heightM, offGroundM)),
  );
  const joints = noJoints();
  const layers = followed(
    moments.map((pose) => {
      const stance = frontStance(pose, body.heightM, 0);
      return [...frontBody(stance, frontArms(stance), side === 'both'), ...carried(scene, stance)];
    }),
    joints,
  );
  if (layers === null) return null;
  return { still: behind.length + (view === 'above' ? 0 : 1), joints: joints.list, layers };
}
