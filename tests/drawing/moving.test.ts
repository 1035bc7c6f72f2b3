/** The figures that move: at any moment they show the pose that the model solves there, within a degree. */
import { describe, expect, it } from 'vitest';
import { pictureFor } from '../../src/decisions/candidates/scene.ts';
import { isPosed, modelOf } from '../../src/decisions/person/model.ts';
import { movingFigure } from '../../src/drawing/moving/moving.ts';
import type { MovingFigure } from '../../src/drawing/moving/movingFigure.ts';
import { placeAt } from '../../src/drawing/moving/joints.ts';
import { frontStance } from '../../src/drawing/front/stance.ts';
import { packed } from '../../src/drawing/moving/packed.ts';
import { closePose } from '../../src/mechanics/closure.ts';
import type { Pose } from '../../src/mechanics/pose.ts';
import type { FrontScene, Scene, SideScene } from '../../src/mechanics/scene.ts';
import { poseAt } from '../../src/mechanics/trajectory.ts';
import { readConsults } from '../../src/content/readConsults.ts';
import { filesBelow, programmeOf, shipped } from '../programme/shipped.ts';
import { trackAt } from '../../src/units/track.ts';
import { BODY } from './scenes.ts';

const MOMENTS = Array.from({ length: 21 }, (_, at) => at / 20);
const [TRUNK, THIGH, SHANK, FOOT] = [0, 1, 2, 3];

interface Shown {
  readonly name: string;
  readonly card: string;
  readonly scene: Scene;
  readonly loadKg: number;
}

const consults = filesBelow('content/consults').map((one) => ({ ...one, file: `consults/${one.file}` }));
const demoProgrammes = readConsults(consults, shipped).current.map((consult) => programmeOf(consult));
const demo: Shown[] = demoProgrammes.flatMap((programme) =>
  programme.exercises.flatMap(({ card, figures }) => {
    const loadKg = programme.inUse.exercises.find((one) => one.card === card)?.loadKg ?? 0;
    return figures === null
      ? []
      : [{ name: `${programme.alias}: ${card}`, card, scene: figures.scene, loadKg }];
  }),
);
const model = modelOf(BODY);
const library: Shown[] = [...shipped.exercises.values()].flatMap((card) => {
  const scene = pictureFor(card, null, null, model, 'right')?.scene;
  return scene === undefined ? [] : [{ name: card.id, card: card.id, scene, loadKg: 0 }];
});
const moves = ({ scene }: Shown) => scene.moments !== undefined;
const figureOf = (scene: Scene): MovingFigure => {
  const figure = movingFigure(scene);
  if (figure === null) throw new Error('it does not move');
  return figure;
};

// From the drawing alone: how the parts are turned against one another.
function drawnAngles(figure: MovingFigure, share: number) {
  const deg = (joint: number) => placeAt(figure.joints, joint, share).deg;
  return {
    trunk: -deg(TRUNK),
    hip: deg(THIGH) - deg(TRUNK),
    knee: deg(THIGH) - deg(SHANK),
    pitch: deg(FOOT),
  };
}

function solvedAngles({ trunk, lumbar = 0, work }: Pose) {
  return { trunk, hip: work.hip + lumbar, knee: work.knee, pitch: work.pitch };
}

// The part of the movement that a leaflet prescribes, read off its pictures: what is not solved goes evenly along it.
function partOf({ card, scene }: Shown): readonly [number, number] {
  const { movement } = shipped.exercises.get(card)!;
  const { start, end } = movement!;
  const keys = [
    (pose: Pose) => pose.work.hip,
    (pose: Pose) => pose.work.knee,
    (pose: Pose) => pose.work.pitch ?? 0,
    (pose: Pose) => pose.trunk,
  ];
  const far = (key: (pose: Pose) => number) => Math.abs(key(end!) - key(start));
  const key = keys
    .slice(0, movement!.solve?.unknown === 'trunk' ? 3 : 4)
    .reduce((most, next) => (far(next) > far(most) ? next : most));
  const [from, to] = (scene as SideScene).frames.map(
    ({ posture }) => (key(posture.pose) - key(start)) / (key(end!) - key(start)),
  );
  return [from!, to!];
}

describe.each([...demo, ...library].filter((one) => moves(one) && isPosed(shipped.exercises.get(one.card)!)))(
  '$name, from the side',
  (shown) => {
    const { card, scene, loadKg } = shown;
    const figure = figureOf(scene);
    const { movement } = shipped.exercises.get(card)!;
    const [from, to] = partOf(shown);

    it.each(MOMENTS)('at %f of the way has the angles of the solved pose within 1°', (share) => {
      const pose = poseAt(movement!, from + (to - from) * share);
      const solved = solvedAngles(closePose(movement!, pose, scene.body, loadKg)!.pose);
      const drawn = drawnAngles(figure, share);
      for (const joint of ['trunk', 'hip', 'knee'] as const)
        expect(Math.abs(drawn[joint] - solved[joint]), joint).toBeLessThan(1);
      if (solved.pitch !== undefined) expect(Math.abs(drawn.pitch - solved.pitch), 'foot').toBeLessThan(1);
    });
  },
);

describe.each(
  [...demo, ...library].filter((one) => moves(one) && one.scene.view === 'side' && standsFlat(one.scene)),
)('$name, on a flat foot', ({ scene }) => {
  const { joints } = figureOf(scene);

  // What the eye would see slip: a foot that stays flat under the body.
  it('keeps it where it stands, within 6 mm', () => {
    const first = placeAt(joints, FOOT, 0);
    for (const share of MOMENTS) {
      const { x, y } = placeAt(joints, FOOT, share);
      expect(Math.hypot(x - first.x, y - first.y)).toBeLessThan(6);
    }
  });
});

function standsFlat({ supports, moments }: SideScene): boolean {
  const flat = moments!.every(({ posture }) => posture.pose.work.pitch === 0);
  return flat && ['both.mid', 'work.mid'].includes(supports[0]!);
}

describe.each([...demo, ...library].filter((one) => moves(one) && one.scene.view !== 'side'))(
  '$name, from the front',
  ({ scene }) => {
    const { frames, moments, body } = scene as FrontScene;
    const [start, end] = [frames[0]!.front, frames[1]!.front];
    const figure = figureOf(scene);

    // The leg's outline from hip to ankle, wherever the picture has turned it.
    it.each(MOMENTS)('at %f of the way turns the working leg as far as its pose within 1°', (share) => {
      const mix = (a: number, b: number) => a + (b - a) * share;
      const pose = {
        ...start,
        leanDeg: mix(start.leanDeg, end.leanDeg),
        work: { ...start.work, outDeg: mix(start.work.outDeg, end.work.outDeg) },
        other: { ...start.other, outDeg: mix(start.other.outDeg, end.other.outDeg) },
      };
      const turned = legTurnDeg(figure, share) - legTurnDeg(figure, 0);
      const expected = thighDeg(pose, body.heightM) - thighDeg(start, body.heightM);
      expect(Math.abs(turned - expected)).toBeLessThan(1);
    });

    it('solves its moments from one picture to the other', () => {
      expect(moments![0]).toEqual(start);
      expect(moments!.at(-1)).toEqual(end);
    });
  },
);

function thighDeg(pose: FrontScene['frames'][number]['front'], heightM: number): number {
  const { work } = frontStance(pose, heightM, 0);
  return (Math.atan2(work.knee.x - work.hip.x, work.hip.y - work.knee.y) * 180) / Math.PI;
}

// The working leg is the last leg painted; its curves begin at the top over the hip and come to the knee with the third.
function legTurnDeg({ layers, joints }: MovingFigure, share: number): number {
  const leg = layers.filter(({ fill }) => fill === 'workLeg').at(-1)!;
  if ('letters' in leg.parts) {
    const at = (index: number) =>
      [0, 1].map((of) => {
        const { numbers } = leg.parts as Extract<typeof leg.parts, { letters: string }>;
        return trackAt(numbers[index * 2 + of]!, share);
      });
    // Of each curve its end is told first, then its two handles.
    const end = (curve: number) => at(3 * curve - 2);
    const [hip, knee] = [at(0), middle(end(3), end(12))];
    return (Math.atan2(knee[0]! - hip[0]!, hip[1]! - knee[1]!) * 180) / Math.PI;
  }
  return placeAt(joints, leg.parts[0]!.joint, share).deg;
}

function middle(a: number[], b: number[]): number[] {
  return [(a[0]! + b[0]!) / 2, (a[1]! + b[1]!) / 2];
}

describe('what moves', () => {
  it('is every exercise with a start and an end that is no hop and no drill', () => {
    const still = library.filter((one) => !moves(one)).map(({ card }) => card);
    for (const card of still) {
      const { kind } = shipped.exercises.get(card)!;
      const names = library.find((one) => one.card === card)!.scene.frames.map(({ name }) => name);
      const isSteps = ['energy-storage', 'running-drill'].includes(kind);
      expect(isSteps || names.join() !== 'start,end', card).toBe(true);
    }
    for (const { scene } of library.filter(moves)) expect(movingFigure(scene)).not.toBeNull();
  });

  it('is written once for all figures of a page', () => {
    const squat = figureOf(library.find(({ card }) => card === 'half-squat')!.scene);
    const twice = packed(new Map([['a', squat], ['b', squat]]), { shorter: (d) => d, unitMm: 1 }); // prettier-ignore
    const once = packed(new Map([['a', squat]]), { shorter: (d) => d, unitMm: 1 });
    expect(twice.outlines).toEqual(once.outlines);
    expect(twice.layers).toEqual(once.layers);
    expect(twice.figures['b']).toEqual(once.figures['a']);
  });
});
