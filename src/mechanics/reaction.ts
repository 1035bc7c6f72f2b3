/** What the ground, bench or strap gives back: vertical reactions of one or two supports, and a pair of friction forces. */
import { supportAt } from './closure.ts';
import type { SupportPoint } from './movement.ts';
import type { BodyPoints, Point } from './pose.ts';
import { PLACE } from './support.ts';
import type { Total } from './weight.ts';

/** One support with what it gives, newtons: up and forward positive. */
export interface Reaction {
  readonly support: SupportPoint;
  readonly at: Point;
  readonly upN: number;
  readonly forwardN: number;
}

/**
 * The reactions of the supports under weights of this total, in the supports' order.
 *
 * One support carries everything. Of two, force and moment balance give the vertical parts; `frictionN` pushes the
 * foot of the working leg forward and the other support back by as much, and shifts the vertical parts where the two
 * stand at different heights. None: the floor carries the body along its length and no reaction is known.
 * Negative `upN`: the body would lift off there unless something pulls it down.
 */
export function reactionsOf(
  points: BodyPoints,
  supports: readonly SupportPoint[],
  { downN, momentNm }: Total,
  frictionN: number,
): readonly Reaction[] {
  const [first, second] = supports;
  if (!first) return [];
  const firstAt = supportAt(points, first);
  if (!second) return [{ support: first, at: firstAt, upN: downN, forwardN: 0 }];
  const secondAt = supportAt(points, second);
  const firstForwardN = pushesForward(supports) ? frictionN : -frictionN;
  const pairNm = (secondAt.y - firstAt.y) * firstForwardN;
  const secondUpN = (-(momentNm + pairNm) - firstAt.x * downN) / (secondAt.x - firstAt.x);
  return [
    { support: first, at: firstAt, upN: downN - secondUpN, forwardN: firstForwardN },
    { support: second, at: secondAt, upN: secondUpN, forwardN: -firstForwardN },
  ];
}

/** Whether the first of two supports is the working foot (or knee) that friction acts on; else it is the second. */
function pushesForward([first, second]: readonly SupportPoint[]): boolean {
  return onWorkingLeg(first) || !onWorkingLeg(second);
}

function onWorkingLeg(support: SupportPoint | undefined): boolean {
  if (support === undefined) return false;
  const { owner } = PLACE[support];
  return owner === 'work' || owner === 'both';
}
