/** From where growth is reckoned for one person: what is small harms nothing, but in a tendon that is easily stirred up. */
import { RESOLUTION, type GrowthFloor } from '../../dosing/growth.ts';
import type { Person } from '../person/person.ts';

/** With high irritability no lower than the model can tell values apart. */
export function growthFloorOf({ consult, protocol }: Pick<Person, 'consult' | 'protocol'>): GrowthFloor {
  const { compressionBw, tensionBw } = RESOLUTION;
  if (consult.irritability === 'high') return { compressionBw, tensionBw };
  const { smallSqueezeBw, smallPullBw } = protocol.limits;
  return {
    compressionBw: Math.max(compressionBw, smallSqueezeBw.value),
    tensionBw: Math.max(tensionBw, smallPullBw.value),
  };
}
