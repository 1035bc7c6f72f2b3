/** The pictures of one exercise: solved postures at the ends of what is prescribed. */
import type { KitLoad, Thing } from '../dose/kit.ts';
import { closePose } from '../mechanics/closure.ts';
import type { Posture, Pose } from '../mechanics/pose.ts';
import { fractionFrom } from '../mechanics/gentle.ts';
import type { Scene, SceneFrame, WeightKind } from '../mechanics/scene.ts';
import { poseAt } from '../mechanics/trajectory.ts';
import { stepHeightM } from '../mechanics/step.ts';
import type { Way } from './phrases/dose.ts';
import { distanceTo, type Model, type PosedCard } from './model.ts';
import { painfulSide, type Person } from './person.ts';

export interface Picture {
  readonly scene: Scene;
  readonly way: Way;
}

const KINDS: Partial<Record<Thing, WeightKind>> = {
  dumbbell: 'dumbbell',
  kettlebell: 'kettlebell',
  bar: 'bar',
  rucksack: 'rucksack',
  bottles: 'bottles',
};

/** Null when this body cannot take the pose; the choice of cards has then refused it before. */
export function pictureOf(
  card: PosedCard,
  rangeDeg: number | null,
  load: KitLoad | null,
  { model, consult }: Person,
): Picture | null {
  return pictureFor(card, rangeDeg, load, model, painfulSide(consult));
}

/** The same for any body, with the working side it is drawn from; cards that use both legs alike are drawn so. */
export function pictureFor(
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
  const distance = distanceTo(card, rangeDeg, gentleEnd);
  const at = (share: number) => close(poseAt(movement, fractionFrom(gentleEnd, share)));
  const [near, far] = [at(0), at(distance)];
  if (near === null || far === null) return null;
  const [start, end] = gentleEnd === 'start' ? [near, far] : [far, near];
  const frames =
    movement.end === undefined ? [frame('hold', near)] : [frame('start', start), frame('end', end)];
  const kind = load === null || load.made.thing === 'nothing' ? undefined : KINDS[load.made.thing];
  return {
    way: wayOf(start, end),
    scene: {
      body: { massKg: model.body.massKg, heightM: model.body.heightM },
      side: card.legs === 'together' ? 'both' : side,
      supports: movement.supports,
      supportRiseM: movement.range === 'steps' ? stepHeightM(far) : (movement.solve?.dh ?? 0),
      props: card.props,
      weight:
        load !== null && loadKg > 0 && kind !== undefined && movement.loadAt !== undefined
          ? { kind, at: movement.loadAt, kg: loadKg }
          : null,
      frames,
    },
  };
}

// A leg behind the body is no bend: the picture says 0°, as the number beside it does.
function frame(name: SceneFrame['name'], posture: Posture): SceneFrame {
  return { name, posture, hipFlexionDeg: shownDeg(Math.max(0, posture.pose.work.hip)) };
}

/** Whole degrees for a picture. */
export function shownDeg(deg: number): number {
  return Math.round(deg) + 0;
}

// Below this the body neither rises nor sinks to the one who watches.
const LEAST_WAY_M = 0.03;

/** Whether what moves most, hip, shoulder or foot, goes up or down in the first half of a repetition. */
function wayOf(start: Posture, end: Posture): Way {
  const [before, after] = [heightsM(start), heightsM(end)];
  const rises = after.map((height, index) => height - (before[index] ?? 0));
  const rise = rises.reduce((most, next) => (Math.abs(next) > Math.abs(most) ? next : most), 0);
  return Math.abs(rise) < LEAST_WAY_M ? 'out' : rise > 0 ? 'up' : 'down';
}

/** Heights of hip, shoulder and working ankle above the lowest point of the body. */
function heightsM({ shoulder, hands, upperBack, work, other }: Posture): number[] {
  const legs = [work, other].flatMap(({ knee, ankle, heel, fore }) => [knee, ankle, heel, fore]);
  const lowest = Math.min(0, shoulder.y, hands.y, upperBack.y, ...legs.map(({ y }) => y));
  return [0, shoulder.y, work.ankle.y].map((y) => y - lowest);
}
