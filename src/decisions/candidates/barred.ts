/** What the model's refusal of a card means. */
import type { RefusedLoad } from '../../mechanics/rangeAndLoad.ts';
import type { CapReason, CardLimit } from '../terms/cardLimit.ts';
import { decidedByOf, type Bounds } from '../person/person.ts';

/** The cap that stood against a card at a load, with its value. */
export function barredLimit({ barredBy, where }: RefusedLoad, bounds: Bounds): CardLimit {
  if (barredBy === 'step') return { limit: 'kit', value: 'step', why: { reason: 'no-step' } };
  if (barredBy === 'pose') return { limit: 'pose', value: null, why: { reason: 'no-pose' } };
  const { byProvokedAngle } = bounds;
  const most = capOf(barredBy, bounds);
  const why: CapReason = { reason: 'cap', where, cap: barredBy, most, byProvokedAngle };
  return { limit: decidedByOf(barredBy, bounds), value: most, why };
}

function capOf(limit: CapReason['cap'], { caps }: Bounds): number | null {
  switch (limit) {
    case 'hipFlexion':
    case 'kneeFlexion':
    case 'ankleDorsiflexion':
      return caps.angleDeg;
    case 'compression':
      return caps.compressionBw;
    case 'tension':
      return caps.tensionBw;
    case 'demand':
      return caps.demand;
  }
}
