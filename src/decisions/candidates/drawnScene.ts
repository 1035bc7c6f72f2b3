/** The picture of a card without a pose of the model: its drawn-only frames in a person's proportions. */
import type { ExerciseCard } from '../../content/library.ts';
import type { Body } from '../../mechanics/body.ts';
import type {
  DrawnArms,
  DrawnFrontFrame,
  DrawnSideFrame,
  FrontLegPose,
  FrontPose,
} from '../../mechanics/drawnPose.ts';
import { postureOf } from '../../mechanics/kinematics.ts';
import type { FrontFrame, FrontScene, Scene, SideFrame, SideScene } from '../../mechanics/scene.ts';
import { mix, poseAt } from '../../mechanics/trajectory.ts';

/** Even shares of the way from start to end at which a moving picture is solved. */
export const EVENLY = Array.from({ length: 9 }, (_, at) => at / 8);

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
    return {
      ...setting,
      view: picture.view,
      frames: picture.frames.map(frontFrame),
      ...(isSmooth(card, picture.frames) ? frontMoments(picture.frames) : {}),
    };
  return {
    ...setting,
    view: 'side',
    supports: picture.supports,
    supportRiseM: picture.riseM,
    weight: heldBell(card),
    ...(card.hands === null ? {} : { hands: card.hands }),
    frames: picture.frames.map((frame) => sideFrame(frame, { massKg, heightM })),
    ...(isSmooth(card, picture.frames) ? sideMoments(picture.frames, { massKg, heightM }) : {}),
  };
}

/** Of a hop or a drill the pictures are steps in time, and nothing is drawn between them. */
export function goesInSteps({ kind }: Pick<ExerciseCard, 'kind'>): boolean {
  return kind === 'energy-storage' || kind === 'running-drill';
}

function isSmooth(
  card: ExerciseCard,
  frames: readonly { readonly name: string; readonly offGroundM: number }[],
): boolean {
  const names = frames.map(({ name }) => name);
  return (
    !goesInSteps(card) && names.join() === 'start,end' && frames.every(({ offGroundM }) => offGroundM === 0)
  );
}

// Nobody has solved these poses: every angle goes evenly from one picture to the other.
function sideMoments(
  [first, last]: readonly DrawnSideFrame[],
  body: Body,
): Pick<SideScene, 'moments'> | Record<never, never> {
  if (first === undefined || last === undefined) return {};
  const ends = { start: first.pose, end: last.pose };
  const moments = EVENLY.map((share) => ({
    posture: postureOf(poseAt(ends, share), body),
    ...armsAt(first.arms, last.arms, share),
  }));
  return { moments };
}

function armsAt(start: DrawnArms | null, end: DrawnArms | null, share: number): Pick<SideFrame, 'arms'> {
  if (start === null || end === null) return {};
  const far = start.farDeg === null || end.farDeg === null ? null : mix(start.farDeg, end.farDeg, share);
  return { arms: { elbowDeg: mix(start.elbowDeg, end.elbowDeg, share), farDeg: far } };
}

function frontMoments([first, last]: readonly DrawnFrontFrame[]): Pick<FrontScene, 'moments'> {
  if (first === undefined || last === undefined || first.front.hands !== last.front.hands) return {};
  return { moments: EVENLY.map((share) => frontAt(first.front, last.front, share)) };
}

function frontAt(start: FrontPose, end: FrontPose, share: number): FrontPose {
  const leg = (from: FrontLegPose, to: FrontLegPose): FrontLegPose => ({
    hip: mix(from.hip, to.hip, share),
    knee: mix(from.knee, to.knee, share),
    outDeg: mix(from.outDeg, to.outDeg, share),
  });
  return {
    leanDeg: mix(start.leanDeg, end.leanDeg, share),
    hands: start.hands,
    work: leg(start.work, end.work),
    other: leg(start.other, end.other),
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
