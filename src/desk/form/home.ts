/** Homes as they often are, to start from; every weight can be changed after. Common practice, no source. */

import type { HOME_NAMES } from '../../messages/en/desk/quick.ts';

type Kit = Readonly<Record<string, unknown>>;

const NOTHING: Kit = {
  dumbbellsKg: [],
  kettlebellsKg: [],
  platesKg: [],
  bands: [],
  rucksack: 'no',
  bottlesL: [],
  bench: 'no',
  ball: 'no',
  stepCm: [],
};

export const HOMES: readonly { readonly id: keyof typeof HOME_NAMES; readonly kit: Kit }[] = [
  { id: 'nothing', kit: NOTHING },
  {
    id: 'household',
    kit: { ...NOTHING, rucksack: 'yes', bottlesL: [1.5, 1.5], bench: 'yes', stepCm: [18] },
  },
  {
    id: 'dumbbells',
    kit: {
      ...NOTHING,
      dumbbellsKg: [5, 5],
      rucksack: 'yes',
      bottlesL: [1.5, 1.5],
      bench: 'yes',
      stepCm: [18],
    },
  },
  {
    id: 'bar',
    kit: {
      ...NOTHING,
      dumbbellsKg: [5, 5],
      platesKg: [2.5, 2.5, 5, 5, 10, 10],
      barKg: 10,
      rucksack: 'yes',
      bottlesL: [1.5, 1.5],
      bench: 'yes',
      stepCm: [18],
    },
  },
];
