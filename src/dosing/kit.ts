/** The loads that the things in a house can make. */

/** What there is at home; dumbbells, plates and bottles one by one, two of a kind stand twice. */
export interface Kit {
  readonly dumbbellsKg: readonly number[];
  readonly kettlebellsKg: readonly number[];
  readonly platesKg: readonly number[];
  readonly barKg?: number | undefined;
  /** By the clinic's own names. */
  readonly bands: readonly string[];
  readonly rucksack: boolean;
  readonly bottlesL: readonly number[];
}

/** Where a weight sits on the body. */
export type LoadPlace = 'hands' | 'shoulder' | 'pelvisFront' | 'work.ankle' | 'both.ankle' | 'work.knee';

export type Thing = 'dumbbell' | 'kettlebell' | 'bar' | 'bottles' | 'rucksack' | 'band';

/** How a load is made, for the sentence and the picture. */
export type Made =
  | { readonly thing: 'nothing' }
  | { readonly thing: 'dumbbell'; readonly count: 1 | 2; readonly eachKg: number }
  | { readonly thing: 'kettlebell'; readonly eachKg: number }
  /** One number for each pair of plates, heaviest first. */
  | { readonly thing: 'bar'; readonly barKg: number; readonly pairsKg: readonly number[] }
  | { readonly thing: 'bottles'; readonly count: 1 | 2; readonly eachL: number }
  /** The bottles to fill and put in, largest first. The pack's own half kilogram is left out here as in the tested set. */
  | { readonly thing: 'rucksack'; readonly litres: number; readonly bottlesL: readonly number[] }
  | { readonly thing: 'band'; readonly band: string; readonly newtons: number };

export interface KitLoad {
  readonly loadKg: number;
  readonly made: Made;
}

export interface KitUse {
  /** Are two equal dumbbells (or bottles) used together? */
  readonly inPairs: boolean;
  /** Force of a band as the clinic measured it; a band without one makes no load. */
  readonly bandNewtons: Readonly<Record<string, number>>;
  /** Only these, where a card asks for one; null for any but a band. */
  readonly only: readonly Thing[] | null;
}

// What can be held, worn, laid or strapped where; only the hands take two of a kind [common-practice].
const FITS: Readonly<Record<LoadPlace, readonly Thing[]>> = {
  hands: ['dumbbell', 'kettlebell', 'bar', 'bottles', 'rucksack', 'band'],
  shoulder: ['bar', 'rucksack'],
  pelvisFront: ['dumbbell', 'bar', 'rucksack'],
  'work.knee': ['dumbbell', 'kettlebell', 'rucksack'],
  'work.ankle': ['rucksack', 'band'],
  'both.ankle': ['dumbbell', 'rucksack', 'band'],
};

// Water has a kilogram a litre within half a percent; the model's g turns newtons into kilograms.
const KG_PER_LITRE = 1;
const G = 9.81;
const GRAMS = 1000;

// More than a leaflet is for, and what keeps sums of many plates few [choice].
const MOST_KG = 300;
const MOST_PARTS = 6;

/**
 * Every load in kilograms that the kit can make at a place, ascending, each once with the simplest way to make it.
 * The first is always 0 with nothing. Plates go on the bar in pairs; bottles are filled full.
 */
export function loadsFromKit(kit: Kit, place: LoadPlace, use: KitUse): readonly KitLoad[] {
  const pairs = use.inPairs && place === 'hands';
  // In order of preference: of two ways to the same load the first is kept.
  const ways: readonly KitLoad[] = [
    ...singles(kit),
    ...(pairs ? doubles(kit) : []),
    ...barLoads(kit),
    ...(kit.rucksack ? packedLoads(kit) : []),
    ...bandLoads(kit, use.bandNewtons),
  ];
  const loads = new Map<number, KitLoad>([[0, { loadKg: 0, made: { thing: 'nothing' } }]]);
  for (const load of ways) {
    const grams = Math.round(load.loadKg * GRAMS);
    if (fits(load, place, use) && grams <= MOST_KG * GRAMS && !loads.has(grams)) loads.set(grams, load);
  }
  return [...loads].sort(([a], [b]) => a - b).map(([, load]) => load);
}

/** The heaviest of ascending loads not above `loadKg`, or null when all are heavier. Never rounds up. */
export function roundDownToKit(loadKg: number, loads: readonly KitLoad[]): KitLoad | null {
  // A billionth of a kilogram: what binary dust took off is given back.
  return loads.findLast((load) => load.loadKg <= loadKg + 1e-9) ?? null;
}

function fits({ made }: KitLoad, place: LoadPlace, use: KitUse): boolean {
  if (made.thing === 'nothing') return true;
  // A band has to pull against something, and only a card that asks for one says against what.
  const admitted = use.only === null ? made.thing !== 'band' : use.only.includes(made.thing);
  return FITS[place].includes(made.thing) && admitted;
}

function singles(kit: Kit): KitLoad[] {
  return [
    ...kit.dumbbellsKg.map((kg) => ({
      loadKg: kg,
      made: { thing: 'dumbbell', count: 1, eachKg: kg } as const,
    })),
    ...kit.kettlebellsKg.map((kg) => ({ loadKg: kg, made: { thing: 'kettlebell', eachKg: kg } as const })),
    ...kit.bottlesL.map((litres) => ({
      loadKg: litres * KG_PER_LITRE,
      made: { thing: 'bottles', count: 1, eachL: litres } as const,
    })),
  ];
}

function doubles(kit: Kit): KitLoad[] {
  return [
    ...twice(kit.dumbbellsKg).map((kg) => ({
      loadKg: 2 * kg,
      made: { thing: 'dumbbell', count: 2, eachKg: kg } as const,
    })),
    ...twice(kit.bottlesL).map((litres) => ({
      loadKg: 2 * litres * KG_PER_LITRE,
      made: { thing: 'bottles', count: 2, eachL: litres } as const,
    })),
  ];
}

function barLoads(kit: Kit): KitLoad[] {
  const { barKg } = kit;
  if (barKg === undefined) return [];
  return sums(twice(kit.platesKg)).map((pairsKg) => ({
    loadKg: toGram(barKg + 2 * total(pairsKg)),
    made: { thing: 'bar', barKg, pairsKg } as const,
  }));
}

function packedLoads(kit: Kit): KitLoad[] {
  // Without a bottle it is no load, which is there already.
  return sums(kit.bottlesL).map((bottlesL) => {
    const litres = toGram(total(bottlesL));
    return { loadKg: litres * KG_PER_LITRE, made: { thing: 'rucksack', litres, bottlesL } as const };
  });
}

// Counted up to a tenth of a kilogram: the gentle end is to think a band stronger than it is.
function bandLoads(kit: Kit, newtonsOf: KitUse['bandNewtons']): KitLoad[] {
  return kit.bands.flatMap((band) => {
    const newtons = Object.hasOwn(newtonsOf, band) ? newtonsOf[band] : undefined;
    if (newtons === undefined) return [];
    return [{ loadKg: Math.ceil((newtons / G) * 10) / 10, made: { thing: 'band', band, newtons } as const }];
  });
}

/** Each value once for every two of it. */
function twice(values: readonly number[]): number[] {
  const sorted = [...values].sort((a, b) => b - a);
  const pairs: number[] = [];
  for (let i = 0; i + 1 < sorted.length; i++) {
    if (sorted[i] === sorted[i + 1]) pairs.push(sorted[i++] as number);
  }
  return pairs;
}

/** Every sum of the parts once, with the fewest parts that make it, largest first; the empty sum too. */
function sums(parts: readonly number[]): number[][] {
  const best = new Map<number, number[]>([[0, []]]);
  for (const part of [...parts].sort((a, b) => b - a)) {
    for (const chosen of [...best.values()]) {
      const longer = [...chosen, part];
      const grams = Math.round(total(longer) * GRAMS);
      const known = best.get(grams);
      if (longer.length > MOST_PARTS || grams > MOST_KG * GRAMS) continue;
      if (!known || known.length > longer.length) best.set(grams, longer);
    }
  }
  return [...best.values()];
}

function total(parts: readonly number[]): number {
  return parts.reduce((sum, part) => sum + part, 0);
}

function toGram(kg: number): number {
  return Math.round(kg * GRAMS) / GRAMS;
}
