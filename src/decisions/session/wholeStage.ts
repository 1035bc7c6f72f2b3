/** Whether a stage gives a whole programme: every needed slot filled, and not all of it far below the stage's own bend. */
import type { Bounds, Person } from '../person/person.ts';
import type { Hollow, NoWholeStage } from '../terms/noWholeStage.ts';
import type { Refusal } from '../terms/refusal.ts';
import type { Session } from './session.ts';

/** What a refusal says of the stage; null where it is none of the stage's making and going back would mend nothing. */
export function noWhole(refusals: readonly Refusal[]): NoWholeStage | null {
  const reasons = refusals.map(({ why }) => why);
  const slots = reasons.filter((why) => why.reason === 'empty-slot');
  if (slots.length > 0) return { reason: 'empty-slots', slots };
  return reasons.find((why) => why.reason === 'no-room') ?? null;
}

/**
 * That every exercise whose range is measured by hip bend reaches less than the protocol's share of the stage's cap (where
 * there is none, of the card's own end), for what hurt keeps it there; null otherwise. How gently it enters does not
 * count: that range opens.
 */
export function hollowOf(
  session: Session,
  person: Person,
  { caps, stage, byProvokedAngle }: Bounds,
): Hollow | null {
  const below = person.protocol.limits.hollowBelow.value;
  const stageDeg = stage.caps.angleDeg ?? Infinity;
  const mayReachDeg = caps.angleDeg ?? Infinity;
  const shares = session.exercises.flatMap(({ slot, fits: [{ settingsDeg }] }) => {
    const farDeg = settingsDeg.at(-1);
    if (farDeg === undefined || slot.when !== 'session') return [];
    const reached = settingsDeg.findLast((deg) => deg <= mayReachDeg) ?? 0;
    // A card that by itself bends no further says nothing of what hurts.
    if (stageDeg !== Infinity && farDeg < below * stageDeg) return [];
    return [reached / (stageDeg === Infinity ? farDeg : stageDeg)];
  });
  const share = Math.max(...shares, 0);
  return !byProvokedAngle || shares.length === 0 || share >= below
    ? null
    : { reason: 'hollow', angle: caps.angle, share, below };
}
