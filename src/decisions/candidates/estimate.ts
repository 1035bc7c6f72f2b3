/** What the body model says of one exercise as it is prescribed, rounded as an estimate is. */
import type { Protocol } from '../../content/library.ts';
import type { Prescribed } from '../../dosing/rung.ts';
import { marginOf } from '../../mechanics/cap.ts';
import { leavesFriction } from '../../mechanics/loading.ts';
import { roundTo } from '../../units/round.ts';
import type { PosedCard } from '../person/model.ts';
import type { Bounds, Person } from '../person/person.ts';

/** What the model says of one exercise at its prescribed range and load; null where the card has no pose. */
export interface ModelEstimate {
  readonly hipFlexionDeg: number;
  readonly trunkLeanDeg: number;
  readonly tensionBw: number;
  readonly compressionBw: number;
  readonly compressionVerticalOnlyBw: number;
  readonly hipMomentNm: number;
  readonly kneeMomentNm: number;
  readonly demand: number;
  readonly tensionTimeBwS: number;
  readonly compressionTimeBwS: number;
  readonly squeeze: 'low' | 'middle' | 'high';
}

/**
 * Degrees to 1, body weights and shares to 0.01, newton metres to 1. Null under 18, where the body cannot rest, and in
 * a protocol of another tendon: the model knows the hamstring tendon alone.
 */
export function estimateOf(
  card: PosedCard,
  { rangeDeg, loadKg, dose }: Prescribed,
  person: Person,
  { stage }: Bounds,
): ModelEstimate | null {
  if (!isModelled(person)) return null;
  const swept = person.model.sweepTo(card, rangeDeg, loadKg, dose.tempo);
  if (swept === null) return null;
  const { peak } = swept;
  const verticalOnlyBw = leavesFriction(card.movement)
    ? person.model.verticalOnlyTo(card, rangeDeg, loadKg)
    : peak.compressionBw;
  if (verticalOnlyBw === null) return null;
  const margin = marginOf(card.movement, stage);
  return {
    hipFlexionDeg: roundTo(peak.hipFlexionDeg, 1),
    trunkLeanDeg: roundTo(peak.trunkLeanDeg, 1),
    tensionBw: roundTo(peak.tensionBw, 0.01),
    compressionBw: roundTo(peak.compressionBw, 0.01),
    compressionVerticalOnlyBw: roundTo(verticalOnlyBw, 0.01),
    hipMomentNm: roundTo(peak.hipMomentNm, 1),
    kneeMomentNm: roundTo(peak.kneeMomentNm, 1),
    demand: roundTo(peak.demand, 0.01),
    tensionTimeBwS: roundTo(swept.tensionTimeBwS, 0.1),
    compressionTimeBwS: roundTo(swept.compressionTimeBwS, 0.1),
    squeeze: squeezeWord(margin * peak.compressionBw, person),
  };
}

/** Whether the model speaks of this person's tendon, and no growing body stands against it. */
export function isModelled({ effects, protocol }: Person): boolean {
  return !effects.under18 && protocol.angle === MODEL_ANGLE;
}

/** The joint angle that squeezes the tendon of the model. */
export const MODEL_ANGLE = 'hipFlexion';

/**
 * Low up to the first stage's cap, middle up to the second's, high above: the words follow the caps of the
 * protocol, where it has none of the first one in the library that has. Without any all squeeze counts as high.
 */
function squeezeWord(compressionBw: number, { protocol, library }: Person): ModelEstimate['squeeze'] {
  const capsOf = ({ stages }: Protocol) => stages.flatMap(({ caps }) => caps.compressionBw ?? []);
  const [low = 0, middle = 0] =
    [protocol, ...library.protocols.values()].map(capsOf).find((caps) => caps.length > 1) ?? [];
  return compressionBw <= low ? 'low' : compressionBw <= middle ? 'middle' : 'high';
}
