/** The picture of a card without a pose of the model: its drawn-only frames in a person's proportions. */
import type { ExerciseCard } from '../../content/library.ts';
import type { Body } from '../../mechanics/body.ts';
import type { DrawnFrontFrame, DrawnSideFrame } from '../../mechanics/drawnPose.ts';
import { postureOf } from '../../mechanics/kinematics.ts';
import type { FrontFrame, Scene, SideFrame, SideScene } from '../../mechanics/scene.ts';

/** Null for a card that has no drawn picture. No angle stands in it: the model has not seen these poses. */
export function drawnScene(card: ExerciseCard, { massKg, heightM }: Body, side: Scene['side']): Scene | null {
  const { picture, props } = card;
  if (picture === null) return null;
  const setting = {
    body: { massKg, heightM },
    side: card.legs === 'together' ? ('both' as const) : side,
    props,
  };
  if (picture.view !== 'side')
    return { ...setting, view: picture.view, frames: picture.frames.map(frontFrame) };
  return {
    ...setting,
    view: 'side',
    supports: picture.supports,
    supportRiseM: picture.riseM,
    weight: heldBell(card),
    ...(card.hands === null ? {} : { hands: card.hands }),
    frames: picture.frames.map((frame) => sideFrame(frame, { massKg, heightM })),
  };
}

// Of the cards that are only drawn, the swing alone needs a weight; its size says nothing, so the smallest is drawn.
function heldBell({ equipment }: ExerciseCard): SideScene['weight'] {
  return equipment.includes('kettlebell') ? { kind: 'kettlebell', at: 'hands', kg: 0 } : null;
}

function sideFrame(frame: DrawnSideFrame, body: Body): SideFrame {
  return {
    ...signsOf(frame),
    posture: postureOf(frame.pose, body),
    hipFlexionDeg: null,
    ...(frame.arms === null ? {} : { arms: frame.arms }),
  };
}

function frontFrame(frame: DrawnFrontFrame): FrontFrame {
  return { ...signsOf(frame), front: frame.front };
}

function signsOf({ name, caption, arrow, offGroundM }: DrawnSideFrame | DrawnFrontFrame) {
  return {
    name,
    ...(caption === null ? {} : { caption }),
    ...(arrow === null ? {} : { arrow }),
    ...(offGroundM === 0 ? {} : { offGroundM }),
  };
}
