/** The pictures of one exercise: solved postures at the ends of what is prescribed. */
import type { ExerciseCard } from '../../content/library.ts';
import type { KitLoad, Thing } from '../../dosing/kit.ts';
import { closePose } from '../../mechanics/closure.ts';
import type { Posture, Pose } from '../../mechanics/pose.ts';
import { fractionFrom } from '../../mechanics/gentle.ts';
import type { Scene, SideFrame, SideScene, WeightKind } from '../../mechanics/scene.ts';
import { poseAt } from '../../mechanics/trajectory.ts';
import { stepHeightM } from '../../mechanics/step.ts';
import type { Direction } from '../../mechanics/direction.ts';
import { drawnScene, EVENLY, goesInSteps } from './drawnScene.ts';
import { roundDown } from '../../units/round.ts';
import { distanceTo, isPosed, type Model, type PosedCard } from '../person/model.ts';
import { painfulSide, type Person } from '../person/person.ts';

export interface Picture {
  readonly scene: Scene;
  readonly way: Direction;
}

const KINDS: Partial<Record<Thing, WeightKind>> = {
  dumbbell: 'dumbbell',
  kettlebell: 'kettlebell',
  bar: 'bar',
  rucksack: 'rucksack',
  bottles: 'bottles',
};

/**
 * Null when this body cannot take the pose, which the choice of cards has then refused before, and for a card nobody
 * has drawn. Its degrees are as round as a patient reads them, down to the gentle end (house rules 3).
 */
export function pictureOf(
  card: ExerciseCard,
  rangeDeg: number | null,
  load: KitLoad | null,
  { model, consult, protocol }: Person,
): Picture | null {
  const picture = pictureFor(card, rangeDeg, load, model, painfulSide(consult));
  if (picture === null || picture.scene.view !== 'side') return picture;
  const frames = picture.scene.frames.map((one) => ({
    ...one,
    hipFlexionDeg: one.hipFlexionDeg && roundDown(one.hipFlexionDeg, protocol.limits.roundAngleDeg.value),
  }));
  return { ...picture, scene: { ...picture.scene, frames } };
}

/** The same for any body, with the working side it is drawn from; cards that use both legs alike are drawn so. */
export function pictureFor(
  card: ExerciseCard,
  rangeDeg: number | null,
  load: KitLoad | null,
  model: Model,
  side: Scene['side'],
): Picture | null {
  if (isPosed(card)) return posedPicture(card, rangeDeg, load, model, side);
  const scene = drawnScene(card, model.body, side);
  return scene === null ? null : { scene, way: drawnWay(scene) };
}

/** Of what is only drawn the trunk tells: a foot that rises may as well be one that swings. */
function drawnWay(scene: Scene): Direction {
  if (scene.view !== 'side') return 'out';
  const [start, end] = scene.frames;
  return start === undefined || end === undefined
    ? 'out'
    : wayBetween(trunkHeightsM(start.posture), trunkHeightsM(end.posture));
}

function posedPicture(
  card: PosedCard,
  rangeDeg: number | null,
  load: KitLoad | null,
  model: Model,
  side: Scene['side'],
): Picture | null {
  const loadKg = load?.loadKg ?? 0;
  const { movement } = card;
  const close = (pose: Pose) => closePose(movement, pose, model.body, loadKg);
  const gentleEnd = model.gentleEnd(card);
  const distance = distanceTo(card, rangeDeg, model);
  const at = (share: number) => close(poseAt(movement, fractionFrom(gentleEnd, share)));
  const [near, far] = [at(0), at(distance)];
  if (near === null || far === null) return null;
  const [start, end] = gentleEnd === 'start' ? [near, far] : [far, near];
  const frames =
    movement.end === undefined
      ? [frame('hold', near, model)]
      : [frame('start', start, model), frame('end', end, model)];
  const shareOf = (way: number) => (gentleEnd === 'start' ? way : 1 - way) * distance;
  const moments =
    movement.end === undefined || goesInSteps(card) ? [] : EVENLY.map((way) => at(shareOf(way)));
  const kind = load === null || load.made.thing === 'nothing' ? undefined : KINDS[load.made.thing];
  return {
    way: wayOf(start, end),
    scene: {
      view: 'side',
      body: { massKg: model.body.massKg, heightM: model.body.heightM },
      side: card.legs === 'together' ? 'both' : side,
      supports: movement.supports,
      supportRiseM: movement.range === 'steps' ? stepHeightM(far) : (movement.solve?.dh ?? 0),
      props: card.props,
      ...(card.hands === null ? {} : { hands: card.hands }),
      weight:
        load !== null && loadKg > 0 && kind !== undefined && movement.loadAt !== undefined
          ? { kind, at: movement.loadAt, kg: loadKg }
          : mustWear(card),
      frames,
      ...(moments.length > 0 && moments.every((posture) => posture !== null)
        ? { moments: moments.map((posture) => ({ posture })) }
        : {}),
    },
  };
}

/** A bag, bell or bar the card cannot be done without is drawn even where its weight is still to be found. */
function mustWear({ movement, equipment }: PosedCard): SideScene['weight'] {
  const at = movement.loadAt;
  const kind = (['rucksack', 'kettlebell', 'bar'] as const).find((thing) => equipment.includes(thing));
  return at === undefined || kind === undefined ? null : { kind, at, kg: 0 };
}

// A leg behind the body is no bend, so no angle is drawn there; nor is the hip's where another joint guards the tendon.
const BEHIND_DEG = -2;

function frame(name: SideFrame['name'], posture: Posture, { guardedBy }: Model): SideFrame {
  const { hip } = posture.pose.work;
  return {
    name,
    posture,
    hipFlexionDeg: guardedBy !== 'hipFlexion' || hip < BEHIND_DEG ? null : shownDeg(Math.max(0, hip)),
  };
}

/** Whole degrees for a picture. */
export function shownDeg(deg: number): number {
  return Math.round(deg) + 0;
}

// Below this the body neither rises nor sinks to the one who watches.
const LEAST_WAY_M = 0.03;

/** Whether what moves most, hip, shoulder or foot, goes up or down in the first half of a repetition. */
function wayOf(start: Posture, end: Posture): Direction {
  return wayBetween(heightsM(start), heightsM(end));
}

function wayBetween(before: readonly number[], after: readonly number[]): Direction {
  const rises = after.map((height, index) => height - (before[index] ?? 0));
  const rise = rises.reduce((most, next) => (Math.abs(next) > Math.abs(most) ? next : most), 0);
  return Math.abs(rise) < LEAST_WAY_M ? 'out' : rise > 0 ? 'up' : 'down';
}

function trunkHeightsM(posture: Posture): number[] {
  return heightsM(posture).slice(0, 2);
}

/** Heights of hip, shoulder and working ankle above the lowest point of the body. */
function heightsM({ shoulder, hands, upperBack, work, other }: Posture): number[] {
  const legs = [work, other].flatMap(({ knee, ankle, heel, fore }) => [knee, ankle, heel, fore]);
  const lowest = Math.min(0, shoulder.y, hands.y, upperBack.y, ...legs.map(({ y }) => y));
  return [0, shoulder.y, work.ankle.y].map((y) => y - lowest);
}
