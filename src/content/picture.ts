/** A card's drawn-only picture as the other rooms take it: metres, nothing left out. */
import type { DrawnFrontFrame, DrawnPicture, DrawnSideFrame, FrontLegPose } from '../mechanics/drawnPose.ts';
import type { LegPose } from '../mechanics/pose.ts';
import type { PictureFrontMatter } from './schema/picture.ts';

type Frame = PictureFrontMatter['frames'][number];
type Leg = Frame['work'];

/** Which keys stand where was checked by the schema's rule. */
export function drawnPicture(picture: PictureFrontMatter): DrawnPicture {
  if (picture.view !== 'side') return { view: picture.view, frames: picture.frames.map(frontFrame) };
  return {
    view: 'side',
    supports: picture.supports ?? [],
    riseM: (picture.riseCm ?? 0) / 100,
    frames: picture.frames.map(sideFrame),
  };
}

function common({ name, caption, arrow, offGroundCm }: Frame) {
  return {
    name,
    caption: caption ?? null,
    arrow: arrow ?? null,
    offGroundM: (offGroundCm ?? 0) / 100,
  };
}

function sideFrame(frame: Frame): DrawnSideFrame {
  const { trunk = 0, arms, elbow, farArm, work, other } = frame;
  return {
    ...common(frame),
    pose: {
      trunk,
      ...(arms === undefined ? {} : { arms }),
      work: sideLeg(work),
      ...(other === undefined ? {} : { other: sideLeg(other) }),
    },
    arms:
      elbow === undefined && farArm === undefined ? null : { elbowDeg: elbow ?? 0, farDeg: farArm ?? null },
  };
}

function sideLeg({ hip = 0, knee = 0, pitch, ankle }: Leg): LegPose {
  return { hip, knee, ...(ankle === undefined ? { pitch: pitch ?? 0 } : { ankle }) };
}

function frontFrame(frame: Frame): DrawnFrontFrame {
  const { lean = 0, hands = 'sides', work, other = work } = frame;
  return {
    ...common(frame),
    front: { leanDeg: lean, hands, work: frontLeg(work), other: frontLeg(other) },
  };
}

function frontLeg({ hip = 0, knee = 0, out = 0 }: Leg): FrontLegPose {
  return { hip, knee, outDeg: out };
}
