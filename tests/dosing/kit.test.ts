import { describe, expect, it } from 'vitest';
import { loadsFromKit, roundDownToKit, type Kit, type KitUse, type LoadPlace } from '../../src/dosing/kit.ts';

const EMPTY: Kit = {
  dumbbellsKg: [],
  kettlebellsKg: [],
  platesKg: [],
  bands: [],
  rucksack: false,
  bottlesL: [],
};
const USE: KitUse = { inPairs: true, bandNewtons: {}, only: null };

const kilograms = (kit: Partial<Kit>, place: LoadPlace = 'hands', use: Partial<KitUse> = {}) =>
  loadsFromKit({ ...EMPTY, ...kit }, place, { ...USE, ...use }).map((load) => load.loadKg);

const madeOf = (kit: Partial<Kit>, loadKg: number, place: LoadPlace = 'hands') =>
  loadsFromKit({ ...EMPTY, ...kit }, place, USE).find((load) => load.loadKg === loadKg)?.made;

describe('loadsFromKit', () => {
  it('makes 0 kg of nothing', () => {
    expect(loadsFromKit(EMPTY, 'hands', USE)).toEqual([{ loadKg: 0, made: { thing: 'nothing' } }]);
  });

  it('takes dumbbells one by one, and two only when there are two of a kind', () => {
    expect(kilograms({ dumbbellsKg: [8, 4, 8] })).toEqual([0, 4, 8, 16]);
    expect(kilograms({ dumbbellsKg: [8, 4, 8] }, 'hands', { inPairs: false })).toEqual([0, 4, 8]);
  });

  it('puts plates on the bar in pairs only', () => {
    expect(kilograms({ barKg: 10, platesKg: [2.5, 2.5, 5, 1.25] })).toEqual([0, 10, 15]);
    expect(madeOf({ barKg: 10, platesKg: [2.5, 2.5] }, 15)).toEqual({
      thing: 'bar',
      barKg: 10,
      pairsKg: [2.5],
    });
  });

  it('makes every sum of pairs, each with the fewest plates', () => {
    const kit = { barKg: 10, platesKg: [1.25, 1.25, 1.25, 1.25, 2.5, 2.5] };
    expect(kilograms(kit)).toEqual([0, 10, 12.5, 15, 17.5, 20]);
    expect(madeOf(kit, 15)).toEqual({ thing: 'bar', barKg: 10, pairsKg: [2.5] });
  });

  // A pack of seven bottles is no leaflet's; six are [choice].
  it.each([5, 6, 7, 8])('packs at most six bottles of the %d there are', (count) => {
    const kit = { rucksack: true, bottlesL: Array<number>(count).fill(1) };
    expect(Math.max(...kilograms(kit, 'pelvisFront'))).toBe(Math.min(count, 6));
  });

  it('puts up to six pairs of plates on the bar', () => {
    const kit = { barKg: 10, platesKg: Array<number>(14).fill(1) };
    expect(kilograms(kit)).toEqual([0, 10, 12, 14, 16, 18, 20, 22]);
  });

  it('takes the fewest, though more were found before', () => {
    expect(madeOf({ rucksack: true, bottlesL: [9, 4, 4, 4, 3] }, 12)).toEqual({
      thing: 'rucksack',
      litres: 12,
      bottlesL: [9, 3],
    });
  });

  it('makes nothing of an empty rucksack', () => {
    expect(loadsFromKit({ ...EMPTY, rucksack: true }, 'shoulder', USE)).toEqual([
      { loadKg: 0, made: { thing: 'nothing' } },
    ]);
  });

  // More than 300 kg is no leaflet's [choice].
  it.each([
    [150, [0, 150, 300]],
    [150.5, [0, 150.5]],
  ])('of two dumbbells of %d kg: %j', (kg, loads) => {
    expect(kilograms({ dumbbellsKg: [kg, kg] })).toEqual(loads);
  });

  it('makes nothing of plates without a bar', () => {
    expect(kilograms({ platesKg: [5, 5] })).toEqual([0]);
  });

  it('fills bottles full, in the hand or in a rucksack', () => {
    const kit = { rucksack: true, bottlesL: [1.5, 2, 1.5] };
    expect(kilograms(kit)).toEqual([0, 1.5, 2, 3, 3.5, 5]);
    expect(madeOf(kit, 5)).toEqual({ thing: 'rucksack', litres: 5, bottlesL: [2, 1.5, 1.5] });
    expect(madeOf(kit, 3)).toEqual({ thing: 'bottles', count: 2, eachL: 1.5 });
  });

  it('uses a band only where the clinic measured its newtons, and counts it up', () => {
    const bands = { bands: ['red', 'blue'] };
    expect(kilograms(bands, 'work.ankle')).toEqual([0]);
    // 30 N / 9.81 is 3.058 kg.
    const asked = { only: ['band'], bandNewtons: { red: 30 } } as const;
    expect(kilograms(bands, 'work.ankle', asked)).toEqual([0, 3.1]);
  });

  it('uses a band only for a card that asks for one, and says what it pulls against', () => {
    for (const place of ['hands', 'work.ankle'] as const)
      expect(kilograms({ bands: ['red'] }, place, { bandNewtons: { red: 30 } })).toEqual([0]);
  });

  it('does not take a name of the language for a measured band', () => {
    expect(kilograms({ bands: ['constructor'] }, 'work.ankle')).toEqual([0]);
  });

  it('puts on shoulders, pelvis and ankles only what stays there', () => {
    const kit = { dumbbellsKg: [6, 6], kettlebellsKg: [12], barKg: 10, rucksack: true, bottlesL: [2] };
    expect(kilograms(kit, 'shoulder')).toEqual([0, 2, 10]);
    expect(kilograms(kit, 'pelvisFront')).toEqual([0, 2, 6, 10]);
    expect(kilograms(kit, 'work.ankle')).toEqual([0, 2]);
    expect(kilograms(kit, 'both.ankle')).toEqual([0, 2, 6]);
    expect(kilograms(kit, 'work.knee')).toEqual([0, 2, 6, 12]);
  });

  it('keeps to the thing a card asks for', () => {
    const kit = { dumbbellsKg: [6], kettlebellsKg: [12] };
    expect(kilograms(kit, 'hands', { only: ['kettlebell'] })).toEqual([0, 12]);
  });

  it('prefers the simpler of two ways: one dumbbell to two, a dumbbell to a bar', () => {
    expect(madeOf({ dumbbellsKg: [5, 5, 10], barKg: 10 }, 10)).toEqual({
      thing: 'dumbbell',
      count: 1,
      eachKg: 10,
    });
  });
});

describe('roundDownToKit', () => {
  const loads = loadsFromKit({ ...EMPTY, dumbbellsKg: [4, 8] }, 'hands', USE);

  it.each([
    [7.99, 4],
    [8, 8],
    [0.1 * 80 - 1e-12, 8],
    [3, 0],
    [100, 8],
  ])('%f kg becomes %f kg', (wanted, loadKg) => {
    expect(roundDownToKit(wanted, loads)?.loadKg).toBe(loadKg);
  });

  it('gives null when every load is heavier', () => {
    expect(roundDownToKit(3, loads.slice(1))).toBeNull();
  });
});
