/** What stands under a foot, a back or a seat that the card raises over the floor. */
import type { SupportPoint } from '../mechanics/movement.ts';
import type { Prop, SideScene } from '../mechanics/scene.ts';
import { ball, bench, books, chair, pillows, step } from './blocks.ts';
import type { Stroke } from './strokes.ts';
import { placed } from './foot.ts';
import { contactOf, legPartOf, type Stance } from './stance.ts';

/** Under this a rise is no thing to stand on. */
export const RAISED_FROM_M = 0.06;

const UNDER_FEET: readonly Prop[] = ['step', 'books', 'ball', 'bench', 'chair', 'pillows'];
const UNDER_BACK: readonly Prop[] = ['bench', 'step', 'chair', 'pillows'];
const UNDER_SEAT: readonly Prop[] = ['chair', 'bench', 'ball', 'step', 'pillows'];

/** What a raised support rests on. */
export interface Raised {
  readonly prop: Prop;
  readonly strokes: readonly Stroke[];
}

/** A pedestal for each support that stands over the floor in all stances; hands and shoulders find their own. */
export function raisedSupports(scene: SideScene, stances: readonly Stance[]): readonly Raised[] {
  return scene.supports.flatMap((support) => {
    const y = Math.min(...stances.map((stance) => contactOf(stance, support).y));
    if (y < RAISED_FROM_M || support === 'hands' || support === 'shoulder') return [];
    const prop = firstOf(scene, kindsUnder(support));
    return [{ prop, strokes: pedestal(prop, support, stances, y) }];
  });
}

function kindsUnder(support: SupportPoint): readonly Prop[] {
  if (support === 'seat') return UNDER_SEAT;
  return legPartOf(support) === null ? UNDER_BACK : UNDER_FEET;
}

function firstOf(scene: SideScene, kinds: readonly Prop[]): Prop {
  return kinds.find((kind) => scene.props.includes(kind)) ?? (kinds[0] as Prop);
}

function pedestal(
  prop: Prop,
  support: SupportPoint,
  stances: readonly Stance[],
  y: number,
): readonly Stroke[] {
  const surface = { ...extentUnder(prop, support, stances), y };
  if (prop === 'chair')
    return chair(surface, support === 'seat' || support === 'upperBack' ? 'left' : 'right');
  if (prop === 'ball') return ball(surface);
  if (prop === 'bench') return bench(surface);
  if (prop === 'books') return books(surface);
  return prop === 'pillows' ? pillows(surface) : step(surface);
}

// The other foot still stands before the step: its toes do not reach into it.
function lowerToe(support: SupportPoint, stances: readonly Stance[]): number {
  if (support !== 'work.mid') return -Infinity;
  return Math.max(
    ...stances.map(({ other, work, symmetric, heightM }) =>
      symmetric || other.fore.y > work.groundY - 0.06 * heightM || other.ankle.x > work.ankle.x
        ? -Infinity
        : placed(other, heightM).ankle.x + 0.125 * heightM,
    ),
  );
}

// A foot needs room for heel and toes, a seat for the thighs, a back leans on an edge.
function extentUnder(
  prop: Prop,
  support: SupportPoint,
  stances: readonly Stance[],
): { left: number; right: number } {
  const xs = stances.map((stance) => contactOf(stance, support).x);
  const [low, high] = [Math.min(...xs), Math.max(...xs)];
  if (prop === 'ball') return { left: low - 0.1, right: high + 0.1 };
  if (support === 'upperBack') return { left: low - 0.4, right: high + 0.03 };
  if (support === 'seat') return { left: low - 0.19, right: high + 0.27 };
  const part = legPartOf(support)?.part;
  if (part === 'heel') return { left: low - 0.09, right: high + 0.36 };
  return {
    left: Math.max(low - 0.17, lowerToe(support, stances)),
    right: high + (part === 'fore' ? 0.16 : 0.24),
  };
}
