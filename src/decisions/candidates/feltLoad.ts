/**
 * How heavy a weight that is felt for may be at first: the step's growth over the exercise without one, in squeeze and hip
 * moment, as the kit can make it (house rules 4). What comes after is a step of the ladder.
 */
import { houseRules } from '../terms/houseSources.ts';
import { RESOLUTION } from '../../dosing/growth.ts';
import type { Candidate } from './candidate.ts';
import { growthFloorOf } from './growthFloor.ts';
import { NOTHING } from './load.ts';
import { isPosed, type PosedCard } from '../person/model.ts';
import type { Person } from '../person/person.ts';

/** The same with no more than the greatest first weight; unchanged where nothing is felt for. */
export function withFirstWeight(fit: Candidate, person: Person): Candidate {
  const { card, load, loads } = fit;
  if (!load.byFeel || !isPosed(card)) return fit;
  const most = load.load.loadKg;
  const first =
    loads.findLast(({ loadKg }) => loadKg <= most && isFirstStep(card, fit, loadKg, person)) ?? NOTHING;
  if (first.loadKg === most) return most > 0 ? fit : { ...fit, load: { ...load, byFeel: false } };
  return {
    ...fit,
    load: {
      ...load,
      load: first,
      byFeel: first.loadKg > 0,
      decidedBy: 'step',
      rule: {
        rule: 'felt-first',
        growth: person.protocol.limits.stepGrowth.value,
        isFelt: first.loadKg > 0,
      },
      inputs: { ...load.inputs, atMostKg: first.loadKg },
      source: HOUSE,
    },
  };
}

const HOUSE = houseRules('4 and 11.2');
const DUST = 1e-9;

// A small pull does not excuse the moment here: nobody has shown yet what the back and the hands can take.
function isFirstStep(
  card: PosedCard,
  { rangeDeg, first }: Candidate,
  loadKg: number,
  person: Person,
): boolean {
  const peakWith = (kg: number) => person.model.sweepTo(card, rangeDeg, kg, first.dose.tempo)?.peak;
  const [bare, loaded] = [peakWith(0), peakWith(loadKg)];
  if (bare === undefined || loaded === undefined) return loadKg === 0;
  const growth = person.protocol.limits.stepGrowth.value;
  const grows = (from: number, to: number, floor: number) => to > growth * Math.max(from, floor) + DUST;
  return (
    !grows(Math.abs(bare.hipMomentNm), Math.abs(loaded.hipMomentNm), RESOLUTION.hipMomentNm) &&
    !grows(bare.compressionBw, loaded.compressionBw, growthFloorOf(person).compressionBw)
  );
}
