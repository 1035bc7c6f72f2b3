/** Weights in pounds where kilograms are asked: what was tested against what the kit makes, and kettlebells by their sizes. */
import { loadsFromKit } from '../../dosing/kit.ts';
import type { Nameable } from '../library.ts';
import type { ConsultFrontMatter, ConsultKit } from '../schema/consult.ts';
import type { Plausible } from '../schema/plausible.ts';
import type { Doubt } from './doubt.ts';

// Exact by definition (international yard and pound agreement, 1959).
const KG_PER_POUND = 0.45359237;

type TestedSet = ConsultFrontMatter['testedSets'][number];

/** Of tested weights; of the kit see `kettlebellPounds`. */
export function poundDoubts(
  { kit, testedSets }: ConsultFrontMatter,
  limits: Plausible,
  { exercises }: Nameable,
): Doubt[] {
  return testedSets.flatMap((set, index) => {
    const place = exercises.get(set.card)?.movement?.loadAt;
    if (place === undefined) return [];
    const made = loadsFromKit(kit, place, { inPairs: true, bandNewtons: {}, only: null });
    const kitKg = made.map(({ loadKg }) => loadKg);
    return setDoubt(set, index, kitKg, limits);
  });
}

/** A kettlebell of a size that is sold in pounds and hardly in kilograms. */
export function kettlebellPounds({ kettlebellsKg }: ConsultKit, { kettlebellsInPounds }: Plausible): Doubt[] {
  return kettlebellsKg.flatMap((value, index) => {
    if (!kettlebellsInPounds.value.includes(value)) return [];
    const path = ['kit', 'kettlebellsKg', index];
    return [{ rule: 'kettlebellPounds', path, value, inputs: { inKg: inKilograms(value) } } as const];
  });
}

/** What was not done with the kit, but is a weight of the kit when read as pounds. A test with the clinic's weights is near one by chance alone. */
function setDoubt(
  { loadKg }: TestedSet,
  index: number,
  kitKg: readonly number[],
  { poundsApartShare: { value: apart } }: Plausible,
): Doubt[] {
  if (kitKg.includes(loadKg)) return [];
  const readKg = loadKg * KG_PER_POUND;
  const meantKg = kitKg.find((kg) => Math.abs(kg - readKg) <= apart * kg);
  if (meantKg === undefined) return [];
  const path = ['testedSets', index, 'loadKg'];
  return [{ rule: 'setPounds', path, value: loadKg, inputs: { meantKg } }];
}

// As kettlebells are cast.
function inKilograms(pounds: number): number {
  return Math.round(pounds * KG_PER_POUND);
}
