/** The pictures of a scene seen from the front or from above. */
import type { Point } from '../../mechanics/pose.ts';
import type { FrontFrame, FrontScene } from '../../mechanics/scene.ts';
import { type Bar, chain } from '../clearance.ts';
import { lined, type Stroke } from '../strokes.ts';
import { arrow, signArrow, type Mover } from '../motion.ts';
import { circle, polyline } from '../outline.ts';
import type { Picture, Pictures } from '../picture.ts';
import { along, frameAt } from '../plane.ts';
import { frontArms, type FrontArm } from './arms.ts';
import { frontBars, frontBody } from './body.ts';
import { carried, MAT_M, outerThigh, standing, wallX } from './props.ts';
import { HEAD } from './proportions.ts';
import { topViewStrokes } from './topView.ts';
import { frontStance, type FrontLeg, type FrontStance } from './stance.ts';

/** One picture a frame. From above there is no floor line. */
export function frontPictures(scene: FrontScene): Pictures {
  const stances = scene.frames.map(({ front, offGroundM = 0 }) =>
    frontStance(front, scene.body.heightM, offGroundM),
  );
  if (stances.length === 0) return { pictures: [], floorBelowM: null };
  if (scene.view === 'above' && stances.every(({ lies }) => !lies))
    return {
      pictures: scene.frames.map((frame) => ({ ...bare(frame), strokes: topViewStrokes(scene, frame) })),
      floorBelowM: null,
    };
  const behind = standing(scene, stances);
  return {
    pictures: scene.frames.map((frame, index) => ({
      ...bare(frame),
      strokes: strokesOf(scene, frame, index, stances, behind),
    })),
    floorBelowM: scene.view === 'above' ? null : scene.props.includes('mat') ? MAT_M : 0,
  };
}

function bare({ arrow: sign }: FrontFrame): Omit<Picture, 'strokes'> {
  return { captions: [], arrowAt: sign?.at ?? null, arcDeg: null };
}

function strokesOf(
  scene: FrontScene,
  frame: FrontFrame,
  index: number,
  stances: readonly FrontStance[],
  behind: readonly Stroke[],
): readonly Stroke[] {
  const stance = stances[index] as FrontStance;
  const arms = frontArms(stance);
  const before = index === 0 ? null : (stances[index - 1] as FrontStance);
  const body = frontBody(stance, arms, scene.side === 'both');
  return [
    ...behind,
    ...(before === null || frame.name !== 'end' ? [] : ghostOf(before)),
    ...body,
    ...carried(scene, stance),
    ...arrows(scene, frame, stance, before, arms, stances),
  ];
}

function arrows(
  scene: FrontScene,
  { arrow: sign }: FrontFrame,
  stance: FrontStance,
  before: FrontStance | null,
  arms: readonly FrontArm[],
  stances: readonly FrontStance[],
): readonly Stroke[] {
  const { heightM, work, pelvis } = stance;
  if (sign !== undefined) {
    const place = placesOf(scene, stance, arms)[sign.at];
    const { at, to } = sign;
    return to === 'out' || to === 'in'
      ? outward(scene, place, { at, to }, stance)
      : signArrow(place, wayOf(to, stance), RADIUS[at] * heightM, heightM);
  }
  if (before === null) return [];
  const foot: Mover = {
    part: 'foot',
    from: before.work.ankle,
    to: work.ankle,
    about: work.hip,
    radiusM: 0.05 * heightM,
  };
  const hips: Mover = {
    part: 'hip',
    from: before.pelvis,
    to: pelvis,
    about: stance.neck,
    radiusM: 0.1 * heightM,
  };
  const wallBar: readonly Bar[] = scene.props.includes('wall')
    ? chain(
        [
          { x: wallX(stances), y: 0 },
          { x: wallX(stances), y: 2 },
        ],
        0.02,
      )
    : [];
  return arrow([foot, hips], [...frontBars(stance, arms), ...wallBar], heightM).strokes;
}

const RADIUS = { head: 0.07, hands: 0.04, hip: 0.1, knee: 0.055, foot: 0.06 } as const;

// Both legs press outwards when both work; else the working one alone.
function outward(
  scene: FrontScene,
  place: Point,
  sign: { readonly at: keyof typeof RADIUS; readonly to: 'out' | 'in' },
  stance: FrontStance,
): readonly Stroke[] {
  const { heightM, up, other } = stance;
  const out = frameAt({ x: 0, y: 0 }, up)(0, 1);
  const way = sign.to === 'out' ? out : { x: -out.x, y: -out.y };
  const back = { x: -way.x, y: -way.y };
  const radius = RADIUS[sign.at] * heightM;
  const mate = sign.at === 'knee' ? other.knee : sign.at === 'foot' ? other.ankle : null;
  return [
    ...signArrow(place, way, radius, heightM),
    ...(scene.side === 'both' && mate !== null ? signArrow(mate, back, radius, heightM) : []),
  ];
}

function placesOf(
  scene: FrontScene,
  { pelvis, up, heightM, work }: FrontStance,
  [arm]: readonly FrontArm[],
): Record<keyof typeof RADIUS, Point> {
  return {
    head: along(pelvis, HEAD.up * heightM, up),
    hands: arm?.hand ?? pelvis,
    hip: scene.props.includes('wall') ? outerThigh({ work, heightM }) : pelvis,
    knee: work.knee,
    foot: work.ankle,
  };
}

function wayOf(to: 'up' | 'down' | 'forward' | 'back', { up }: FrontStance): Point {
  if (to === 'up') return { x: 0, y: 1 };
  if (to === 'down') return { x: 0, y: -1 };
  // Towards the viewer an arrow on paper points down along the body, away from the viewer up along it.
  return to === 'forward' ? { x: -up.x, y: -up.y } : up;
}

function ghostOf({ pelvis, neck, work, other, heightM }: FrontStance): readonly Stroke[] {
  const line = (width: number, ...points: readonly Point[]) =>
    lined(
      polyline(
        points.map(({ x, y }) => ({ x, y: Math.max(y, (width * heightM) / 2) })),
        false,
      ),
      'ghost',
      width * heightM,
    );
  const leg = ({ hip, knee, ankle }: FrontLeg) => line(0.06, hip, knee, ankle);
  return [
    line(0.15, pelvis, neck),
    leg(work),
    leg(other),
    lined(circle(work.ankle, 0.015 * heightM), 'ghost', 0.03 * heightM),
  ];
}
