/** Homes as they often are, to start from; every weight can be changed after. Common practice, no source. */

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

export const HOMES: readonly { readonly id: string; readonly label: string; readonly kit: Kit }[] = [
  { id: 'nothing', label: 'Nothing at all', kit: NOTHING },
  {
    id: 'household',
    label: 'Rucksack, bottles, sofa, stairs',
    kit: { ...NOTHING, rucksack: 'yes', bottlesL: [1.5, 1.5], bench: 'yes', stepCm: [18] },
  },
  {
    id: 'dumbbells',
    label: 'A pair of dumbbells as well',
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
    label: 'A bar with plates as well',
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
