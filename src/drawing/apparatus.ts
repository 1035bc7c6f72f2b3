/** Things that move with the body or hold it: a ball that rolls, a hurdle, a sofa over the heels, a leg curl machine. */
import type { Point } from '../mechanics/pose.ts';
import type { SideScene } from '../mechanics/scene.ts';
import { ball } from './blocks.ts';
import { edged, lined, type Stroke } from './strokes.ts';
import { circle, polyline, rectangle } from './outline.ts';
import { along, between, directionFrom, turned } from './plane.ts';
import { LINE } from './proportions.ts';
import { contactOf, legPartOf, type Stance } from './stance.ts';

const HURDLE_M = 0.4;

/** It rolls: under the heels in every frame, its seam turned by the way it went. */
export function ballUnder(scene: SideScene, stance: Stance, stances: readonly Stance[]): readonly Stroke[] {
  const support = scene.supports.find((name) => legPartOf(name) !== null) ?? 'work.heel';
  const [at, from] = [contactOf(stance, support), contactOf(stances[0] as Stance, support)];
  const radius = at.y / 2;
  const middle = { x: at.x + 0.03, y: radius };
  const turn = (from.x - at.x) / Math.max(radius, 0.05);
  const seamEnd = (side: 1 | -1) =>
    turned({ x: middle.x + side * radius * 0.86, y: middle.y }, middle, turn + 0.5);
  return [
    ...ball({ left: middle.x - radius, right: middle.x + radius, y: at.y }),
    lined(polyline([seamEnd(-1), seamEnd(1)], false), 'prop', 0.014),
    lined(circle(middle, radius * 0.5), 'prop', 0.008),
  ];
}

/** A post with a bar at knee height between the feet: one has gone over, the other has still to. */
export function hurdle({ work, other }: Stance): readonly Stroke[] {
  const { x } = between(work.ankle, other.ankle, 0.5);
  return [
    edged(
      rectangle({ x: x - 0.02, y: HURDLE_M }, { x: x + 0.02, y: 0 }),
      'propFill',
      'prop',
      LINE.prop * 1.75,
    ),
    edged(rectangle({ x: x - 0.13, y: 0.025 }, { x: x + 0.13, y: 0 }), 'propFill', 'prop', LINE.prop * 1.75),
    edged(circle({ x, y: HURDLE_M }, 0.028), 'prop', 'paperWhite', 0.008),
  ];
}

/** Whether the feet are held down, hooked under something heavy. */
export function isHooked({ supports }: SideScene): boolean {
  return supports.some((support) => support.endsWith('.ankle'));
}

/** The heels are hooked under its front edge: a sofa too heavy to tip, with a gap below. */
export function sofaOver(stances: readonly Stance[]): readonly Stroke[] {
  const heel = Math.min(...stances.map(({ work }) => work.heel.x));
  const ankle = Math.min(...stances.map(({ work }) => work.ankle.x));
  const front = ankle - 0.01;
  const under = Math.max(...stances.map(({ work, heightM }) => work.ankle.y + 0.03 * heightM));
  const line = LINE.prop * 1.75;
  const back = Math.min(heel, front) - 0.42;
  return [
    edged(rectangle({ x: back + 0.02, y: under }, { x: back + 0.06, y: 0 }), 'propFill', 'prop', line),
    edged(rectangle({ x: back, y: 0.82 }, { x: back + 0.16, y: under }), 'propFill', 'prop', line),
    edged(rectangle({ x: back + 0.1, y: 0.46 }, { x: front, y: under + 0.13 }), 'propFill', 'prop', line),
    edged(rectangle({ x: back, y: under + 0.13 }, { x: front, y: under }), 'propFill', 'prop', line),
  ];
}

/** The pad above the heels swings about a pivot beside the knees; a post carries it. */
export function lever({ work, heightM }: Stance): readonly Stroke[] {
  const shank = directionFrom(work.knee, work.ankle);
  const calf = { x: shank.y, y: -shank.x };
  const pad = along(along(work.ankle, -0.02 * heightM, shank), 0.05 * heightM, calf);
  return [
    edged(
      rectangle({ x: work.knee.x - 0.025, y: work.knee.y }, { x: work.knee.x + 0.025, y: 0 }),
      'propFill',
      'prop',
      LINE.prop * 1.75,
    ),
    lined(polyline([work.knee, pad], false), 'prop', 0.03),
    edged(circle(work.knee, 0.035), 'propFill', 'prop', 0.012),
    edged(circle(pad, 0.055), 'prop', 'paperWhite', 0.01),
  ];
}

/** Where a hand holds on below the head end of the bench; null without a body. */
export function machineGrip(stances: readonly Stance[]): Point | null {
  const [first] = stances;
  if (first === undefined) return null;
  const { shoulder, hip, heightM, lyingY } = first;
  const headwards = Math.sign(shoulder.x - hip.x) || 1;
  return { x: shoulder.x + headwards * 0.13 * heightM, y: lyingY - 0.16 };
}

/** The grip itself, hanging from the bench. */
export function gripPost(stance: Stance): readonly Stroke[] {
  const grip = machineGrip([stance]);
  if (grip === null) return [];
  const top = { x: grip.x - 0.02, y: stance.lyingY - 0.05 };
  return [lined(polyline([top, { x: grip.x, y: grip.y - 0.06 }], false), 'prop', 0.026)];
}
