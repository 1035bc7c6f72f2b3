/** What stands at home: weights nobody has at home, and steps nobody climbs. */
import type { ConsultFrontMatter, ConsultKit } from '../schema/consult.ts';
import type { Plausible } from '../schema/plausible.ts';
import { outside, type Doubt } from './doubt.ts';
import { kettlebellPounds } from './pounds.ts';

export function kitDoubts({ kit }: ConsultFrontMatter, limits: Plausible): Doubt[] {
  return [
    ...listDoubts(kit, 'dumbbellsKg', [0, limits.dumbbellToKg.value]),
    ...listDoubts(kit, 'kettlebellsKg', [0, limits.kettlebellToKg.value]),
    ...kettlebellPounds(kit, limits),
    ...listDoubts(kit, 'platesKg', [0, limits.plateToKg.value]),
    ...outside(kit.barKg, [0, limits.barToKg.value], {
      rule: 'kitAmount',
      path: ['kit', 'barKg'],
      inputs: { thing: 'barKg' },
    }),
    ...listDoubts(kit, 'bottlesL', [0, limits.bottleToL.value]),
    ...listDoubts(kit, 'stepCm', [limits.stepFromCm.value, limits.stepToCm.value]),
  ];
}

type Amounts = 'dumbbellsKg' | 'kettlebellsKg' | 'platesKg' | 'bottlesL' | 'stepCm';

function listDoubts(kit: ConsultKit, thing: Amounts, bounds: readonly [number, number]): Doubt[] {
  return kit[thing].flatMap((amount, index) =>
    outside(amount, bounds, { rule: 'kitAmount', path: ['kit', thing, index], inputs: { thing } }),
  );
}
