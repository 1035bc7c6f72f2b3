/** A body seen from the side as it moves: rigid limbs, turned by the solved angles. */
import type { Point } from '../../mechanics/pose.ts';
import type { SideFrame, SideScene } from '../../mechanics/scene.ts';
import { toRadians } from '../../units/angle.ts';
import { wholeMm } from '../../units/round.ts';
import { FAR_LEG, heldIn, type Held } from '../body.ts';
import type { Arm } from '../arm.ts';
import { placed, toeBendOf } from '../foot.ts';
import { furnish } from '../furniture.ts';
import { FOOT_KNOTS, LINE, NECK } from '../proportions.ts';
import { polyline, type Outline } from '../outline.ts';
import { along, directionFrom, distance } from '../plane.ts';
import { pliantStrokes } from '../pliant.ts';
import { headRestX } from '../sidePicture.ts';
import { stancesOf, type Leg, type Stance } from '../stance.ts';
import { lined, pathText, type Stroke } from '../strokes.ts';
import { followed } from './followed.ts';
import { noJoints, type Joints, type Places } from './joints.ts';
import type { Layer, MovingFigure, Piece } from './movingFigure.ts';
import {
  faceShape,
  footShape,
  forearmShape,
  hairShape,
  shankShape,
  thighShape,
  toesShape,
  trunkShape,
  upperArmShape,
} from './shapes.ts';

/** The body at each step of the way, with what is drawn with it. */
interface Steps {
  readonly scene: SideScene;
  readonly heightM: number;
  readonly stances: readonly Stance[];
  readonly figures: readonly Held[];
  readonly joints: Joints;
}

/** Null where nothing moves. The things stand where the scene's pictures have them. */
export function sideFigure(scene: SideScene): Omit<MovingFigure, 'sheet'> | null {
  const { moments, frames } = scene;
  const [start] = frames;
  if (moments === undefined || start === undefined) return null;
  const printed = stancesOf(scene);
  const furniture = furnish(scene, printed);
  const way = {
    ...scene,
    asSolved: true,
    frames: moments.map((moment): SideFrame => ({ ...start, ...moment })),
  };
  const stances = stancesOf(way);
  const restX = headRestX(scene, printed);
  const figures = moments.map(({ arms = null }, at) =>
    heldIn(scene, stances[at] as Stance, furniture, { arms, restX }),
  );
  const joints = noJoints();
  const steps: Steps = { scene, heightM: scene.body.heightM, stances, figures, joints };
  const ends = { first: stances[0] as Stance, last: stances[stances.length - 1] as Stance };
  const drawn = (draw: (stance: Stance, figure: Held) => readonly Stroke[]) =>
    followed(
      stances.map((stance, at) => draw(stance, figures[at] as Held)),
      joints,
    );
  const body = bodyLayers(steps);
  const going = {
    moving: drawn((stance) => furniture.moving.flatMap((draw) => draw(stance))),
    between: drawn((stance) => furniture.between.flatMap((draw) => draw(stance))),
    over: drawn((stance) => furniture.over.flatMap((draw) => draw(stance))),
    weight: drawn((_, { weight }) => weight),
    neck: drawn((_, { head }) => [
      lined(polyline([head.root, head.nape], false), 'body', 2 * NECK.radius * steps.heightM),
    ]),
    pliant: drawn((stance, { arm }) => pliantStrokes(scene, stance, ends, arm.hand)),
  };
  const { moving, between, over, weight, neck, pliant } = going;
  if (!moving || !between || !over || !weight || !neck || !pliant) return null;
  const hidesArm = figures.some(({ armBehind }) => armBehind);
  return {
    still: 1 + furniture.things.flatMap(({ strokes }) => strokes).length,
    joints: joints.list,
    layers: [
      ...moving,
      ...(hidesArm ? body.arm : []),
      ...body.farLeg,
      ...body.farArm,
      ...between,
      ...neck,
      ...body.head,
      ...body.trunk,
      ...body.nearLeg,
      ...over,
      ...weight,
      ...(hidesArm ? [] : body.arm),
      ...pliant,
    ],
  };
}

/** The joints of trunk and working leg come first, in the order of SIDE_JOINTS. */
function bodyLayers(
  steps: Steps,
): Record<'trunk' | 'nearLeg' | 'farLeg' | 'head' | 'arm' | 'farArm', readonly Layer[]> {
  const { scene, stances, figures, joints, heightM } = steps;
  const edgeMm = wholeMm(LINE.edge * heightM);
  const lyingMm = wholeMm(Math.min(...stances.map(({ lyingY }) => lyingY)));
  const trunk = joints.add({
    at: stances.map(({ hip }) => hip),
    rad: stances.map(({ pose }) => -toRadians(pose.trunk)),
  });
  const lumbarDeg = (stances[0] as Stance).pose.lumbar ?? 0;
  const near = legPieces(steps, trunk, ({ work }) => work, 0);
  const { symmetric } = stances[0] as Stance;
  const far = symmetric
    ? legPieces(steps, trunk, ({ work }) => work, FAR_LEG * heightM)
    : legPieces(steps, trunk, ({ other }) => other, 0);
  const head = joints.add({
    at: figures.map((figure) => figure.head.centre),
    rad: figures.map((figure) => -toRadians(figure.head.deg)),
  });
  const body = (outline: Outline, joint: number, line: Layer['line'] = null, width = 0): Layer => ({
    fill: 'body',
    line,
    widthMm: wholeMm(width),
    floorMm: lyingMm,
    parts: [{ joint, d: text(outline) }],
  });
  const arms = (pieces: readonly Piece[]): Layer => ({
    fill: 'arm',
    line: 'paperWhite',
    widthMm: edgeMm,
    floorMm: lyingMm,
    parts: pieces,
  });
  const farArms = figures.map(({ farArm }) => farArm);
  const grips = figures[0]?.grips ?? false;
  return {
    trunk: [body(trunkShape(lumbarDeg, heightM), trunk)],
    head: [
      body(faceShape(heightM), head, 'paperWhite', LINE.edge * 0.6 * heightM),
      { ...body(hairShape(heightM), head, 'hairLine', LINE.edge * heightM), fill: 'hair' },
    ],
    nearLeg: [{ fill: 'workLeg', line: 'paperWhite', widthMm: edgeMm, floorMm: 0, parts: near }],
    farLeg: [
      symmetric
        ? { fill: 'workLeg', line: 'paperWhite', widthMm: edgeMm, floorMm: 0, parts: far }
        : {
            fill: 'paperWhite',
            line: 'otherLegLine',
            widthMm: wholeMm(LINE.outline * heightM),
            floorMm: 0,
            parts: far,
          },
    ],
    arm: [
      arms(
        armPieces(
          steps,
          trunk,
          figures.map(({ arm }) => arm),
          grips || scene.weight?.at === 'hands',
        ),
      ),
    ],
    farArm: farArms.every((arm) => arm !== null) ? [arms(armPieces(steps, trunk, farArms, false))] : [],
  };
}

function legPieces(
  { stances, joints, heightM }: Steps,
  trunk: number,
  legOf: (stance: Stance) => Leg,
  shiftM: number,
): readonly Piece[] {
  const legs = stances.map(legOf);
  const shifted = ({ x, y }: Point): Point => ({ x: x + shiftM, y });
  const feet = legs.map((leg) => placed(leg, heightM));
  const hips = stances.map(({ hip }) => hip);
  const thigh = joints.add(
    limb(
      hips.map(shifted),
      legs.map(({ knee }) => shifted(knee)),
    ),
    trunk,
  );
  const knees = legs.map(({ knee }) => shifted(knee));
  const shank = joints.add(
    limb(
      knees,
      feet.map(({ ankle }) => shifted(ankle)),
    ),
    thigh,
  );
  const foot = joints.add(
    {
      at: feet.map(({ ankle }) => shifted(ankle)),
      rad: feet.map(({ forward }) => Math.atan2(forward.y, forward.x)),
    },
    shank,
  );
  const { ball } = FOOT_KNOTS;
  const toes = joints.add(
    {
      at: feet.map(({ ankle, forward }) =>
        shifted(
          along(along(ankle, ball.forward * heightM, forward), -ball.down * heightM, {
            x: -forward.y,
            y: forward.x,
          }),
        ),
      ),
      rad: legs.map((leg, at) => {
        const { forward } = feet[at] as (typeof feet)[number];
        return Math.atan2(forward.y, forward.x) + toeBendOf(leg, heightM);
      }),
    },
    foot,
  );
  const [{ knee, ankle } = legs[0] as Leg, hip] = [legs[0], hips[0] as Point];
  return [
    { joint: foot, d: text(footShape(heightM)) },
    { joint: toes, d: text(toesShape(heightM)) },
    { joint: shank, d: text(shankShape(distance(knee, ankle), heightM)) },
    { joint: thigh, d: text(thighShape(distance(hip, knee), heightM)) },
  ];
}

function armPieces(
  { stances, joints, heightM }: Steps,
  trunk: number,
  arms: readonly Arm[],
  grips: boolean,
): readonly Piece[] {
  const shoulders = stances.map(({ shoulder }) => shoulder);
  const upper = joints.add(
    limb(
      shoulders,
      arms.map(({ elbow }) => elbow),
    ),
    trunk,
  );
  const fore = joints.add(
    limb(
      arms.map(({ elbow }) => elbow),
      arms.map(({ hand }) => hand),
    ),
    upper,
  );
  const [shoulder, arm] = [shoulders[0] as Point, arms[0] as Arm];
  const [wristM, handM] = [distance(arm.elbow, arm.wrist), distance(arm.elbow, arm.hand)];
  return [
    { joint: upper, d: text(upperArmShape(distance(shoulder, arm.elbow), heightM)) },
    { joint: fore, d: text(forearmShape(wristM, handM, grips, heightM)) },
  ];
}

// A limb hangs straight down at no turn.
function limb(from: readonly Point[], to: readonly Point[]): Places {
  return {
    at: from,
    rad: from.map((start, step) => {
      const way = directionFrom(start, to[step] as Point);
      return Math.atan2(way.x, -way.y);
    }),
  };
}

function text(outline: Outline): string {
  return pathText(outline, ({ x, y }) => `${wholeMm(x)} ${wholeMm(y)}`);
}
