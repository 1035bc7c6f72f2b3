/** What the drawings of a scene from the front or from above show. */
import type { FrontScene } from '../../mechanics/scene.ts';
import type { SeenFrame, Touched } from '../../mechanics/seen.ts';
import { frontArms } from './arms.ts';
import { wallX } from './props.ts';
import { frontStance, type FrontStance } from './stance.ts';

const TOUCHES: Readonly<Record<string, readonly Touched[]>> = {
  sides: [],
  hips: ['hips'],
  chest: ['chest'],
  ahead: [],
  elbow: ['floor', 'hips'],
};

/** One entry a frame. Beside the wall, arms and head must stay on this side of it; nothing else stands in the way. */
export function frontSeen(scene: FrontScene): readonly SeenFrame[] {
  const stances = scene.frames.map(({ front, offGroundM = 0 }) =>
    frontStance(front, scene.body.heightM, offGroundM),
  );
  const face = scene.props.includes('wall') ? wallX(stances) : null;
  return scene.frames.map(({ front, arrow, name }, index) => {
    const stance = stances[index] as FrontStance;
    const reach = Math.max(...frontArms(stance).flatMap(({ elbow, hand }) => [elbow.x, hand.x]));
    const floats = Math.abs(stance.work.ankle.y - stance.other.ankle.y);
    return {
      hands: [
        ...(TOUCHES[front.hands] ?? []),
        ...(scene.props.includes('band') && front.hands !== 'hips' ? (['band'] as const) : []),
      ],
      entered: face !== null && reach > face ? [{ part: 'forearm', prop: 'wall', depthM: reach - face }] : [],
      heel: stance.work.ankle,
      ball: null,
      arrowAt: arrow?.at ?? (index > 0 && name === 'end' ? 'foot' : null),
      arcDeg: null,
      shownDeg: null,
      floatsM: stance.lies ? 0 : floats,
      drawn: scene.props,
    };
  });
}
