/** Scenes of the specification's cards, closed by the model itself, and the geometry of a drawing read back from its text. */
import type { Drawing, Paint, Shape } from '../../src/drawing/drawing.ts';
import type { Body } from '../../src/mechanics/body.ts';
import { closePose } from '../../src/mechanics/closure.ts';
import type { Movement } from '../../src/mechanics/movement.ts';
import type { Pose, Posture } from '../../src/mechanics/pose.ts';
import type { SideFrame, SideScene } from '../../src/mechanics/scene.ts';
import { cardNamed } from '../published/exercise-cards.ts';

export const BODY: Body = { massKg: 70, heightM: 1.75 };

/** A card's scene; `setting` says what the card itself does not: props, side, weight, body. */
export function sceneOf(name: string, setting: Partial<SideScene> = {}): SideScene {
  const { movement, loadKg } = cardNamed(name);
  return sceneFrom(movement, loadKg, setting);
}

export function sceneFrom(movement: Movement, loadKg: number, setting: Partial<SideScene> = {}): SideScene {
  const body = setting.body ?? BODY;
  const { loadAt, supports, start, end } = movement;
  const close = (pose: Pose): Posture => {
    const posture = closePose(movement, pose, body, loadKg);
    if (posture === null) throw new Error('the pose does not close');
    return posture;
  };
  const frame = (name: SideFrame['name'], pose: Pose): SideFrame => ({
    name,
    posture: close(pose),
    hipFlexionDeg: Math.round(pose.work.hip / 5) * 5,
  });
  return {
    view: 'side',
    body,
    side: 'right',
    supports,
    supportRiseM: movement.solve?.dh ?? 0,
    props: ['floor'],
    weight: loadAt !== undefined && loadKg > 0 ? { kind: 'dumbbell', at: loadAt, kg: loadKg } : null,
    frames: end === undefined ? [frame('hold', start)] : [frame('start', start), frame('end', end)],
    ...setting,
  };
}

export type Xy = readonly [number, number];

/** The path as chains of points, each cubic in `steps` pieces; independent of how the drawing was made. */
export function flattened(d: string, steps = 12): readonly (readonly Xy[])[] {
  const chains: Xy[][] = [];
  for (const [, letter, text] of d.matchAll(/([MLCZ])([^MLCZ]*)/g)) {
    const numbers = (text ?? '').trim().split(/\s+/).filter(Boolean).map(Number);
    const chain = chains[chains.length - 1];
    if (letter === 'M') chains.push([[numbers[0]!, numbers[1]!]]);
    else if (letter === 'Z') chain!.push(chain![0]!);
    else if (letter === 'L')
      for (let i = 0; i < numbers.length; i += 2) chain!.push([numbers[i]!, numbers[i + 1]!]);
    else
      for (let i = 0; i < numbers.length; i += 6)
        chain!.push(...cubic(chain!.at(-1)!, numbers.slice(i, i + 6), steps));
  }
  return chains;
}

function cubic([x0, y0]: Xy, [x1, y1, x2, y2, x3, y3]: number[], steps: number): readonly Xy[] {
  const mix = (t: number, a: number, b: number, c: number, e: number) =>
    (1 - t) ** 3 * a + 3 * (1 - t) ** 2 * t * b + 3 * (1 - t) * t * t * c + t ** 3 * e;
  return Array.from({ length: steps }, (_, index) => {
    const t = (index + 1) / steps;
    return [mix(t, x0, x1!, x2!, x3!), mix(t, y0, y1!, y2!, y3!)] as const;
  });
}

export function shapesOf(drawing: Drawing, ...paints: readonly Paint[]): readonly Shape[] {
  return drawing.shapes.filter(({ fill, stroke }) =>
    paints.some((paint) => fill === paint || stroke === paint),
  );
}

/** Height of the floor line's upper edge. */
export function floorY(drawing: Drawing): number {
  const [floor] = shapesOf(drawing, 'floor');
  return flattened(floor!.d)[0]![0]![1] - floor!.width / 2;
}

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export function boundsOf(shapes: readonly Shape[]): Box {
  const points = shapes.flatMap(({ d }) => flattened(d).flat());
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** Whether a shape's ink touches the box: a line within half its width, or a fill round it. */
export function touches({ d, fill, stroke, width }: Shape, box: Box): boolean {
  const reach = stroke === null ? 0 : width / 2;
  const inside = ([x, y]: Xy) =>
    x > box.left - reach && x < box.right + reach && y > box.top - reach && y < box.bottom + reach;
  const chains = flattened(d, 24);
  if (
    chains.some((chain) =>
      chain.some(
        (point, i) => i > 0 && [0.25, 0.5, 0.75, 1].some((t) => inside(blend(chain[i - 1]!, point, t))),
      ),
    )
  )
    return true;
  const middle: Xy = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  return fill !== null && chains.some((chain) => contains(chain, middle));
}

function blend(a: Xy, b: Xy, t: number): Xy {
  return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
}

function contains(chain: readonly Xy[], [x, y]: Xy): boolean {
  return chain.reduce((inside, [x1, y1], i) => {
    const [x0, y0] = chain[(i + chain.length - 1) % chain.length]!;
    return y0 > y !== y1 > y && x < ((x1 - x0) * (y - y0)) / (y1 - y0) + x0 ? !inside : inside;
  }, false);
}
