/** What the model's refusal of a card means, in words for the clinician. */
import type { RefusedLoad } from '../mechanics/fit.ts';
import { ANGLE_WORDS } from './phrases/angle.ts';
import type { Obstacle } from './obstacle.ts';
import { decidedByOf, type Bounds } from './person.ts';

/** The cap that stood against a card at a load, with its value. */
export function barredText({ barredBy, where }: RefusedLoad, bounds: Bounds): Obstacle {
  if (barredBy === 'step')
    return {
      limit: 'kit',
      value: 'step',
      because: 'there is no step of a height that the card can use and the caps admit',
    };
  if (barredBy === 'pose')
    return { limit: 'pose', value: null, because: 'the pose cannot be held by this body' };
  const { value, text } = capText(barredBy, bounds);
  const what =
    where === 'lift' ? 'lifting the weight into place is not admitted' : 'too little of it is admitted';
  return { limit: decidedByOf(barredBy, bounds), value, because: `${what} (${text})` };
}

function capText(
  limit: Exclude<RefusedLoad['barredBy'], 'step' | 'pose'>,
  { caps, byProvokedAngle }: Bounds,
): { value: number | null; text: string } {
  switch (limit) {
    case 'hipFlexion':
    case 'kneeFlexion':
    case 'ankleDorsiflexion':
      return {
        value: caps.angleDeg,
        text: `${ANGLE_WORDS[limit].bend} at most ${caps.angleDeg}°${byProvokedAngle ? ', below what hurt' : ''}`,
      };
    case 'compression':
      return { value: caps.compressionBw, text: `squeeze at most ${caps.compressionBw} body weights` };
    case 'tension':
      return { value: caps.tensionBw, text: `pull at most ${caps.tensionBw} body weights` };
    case 'demand':
      return { value: caps.demand, text: `strength asked for at most ${caps.demand}` };
  }
}
