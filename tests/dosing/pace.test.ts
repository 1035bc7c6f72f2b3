/** An exercise counted through: nothing is left out of the dose, nothing goes on by itself to the next bout. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boutsOf, isPaced, phaseAt, phasesOf, wayAt, type Paced } from '../../src/dosing/pace.ts';

const curl: Paced = {
  sets: 3, repetitions: 2, holdSeconds: null, tempo: { goSeconds: 3, holdSeconds: 0, backSeconds: 4 },
  restSeconds: 90, legs: 'each', firstSide: 'right',
}; // prettier-ignore
const bridge: Paced = { ...curl, sets: 2, repetitions: null, holdSeconds: 30, legs: 'together' };

describe('bouts', () => {
  it('go set by set, in each leg by leg, with the rest after the second leg and none after the last', () => {
    expect(boutsOf(curl).map(({ set, side, restSeconds }) => `${set} ${side} ${restSeconds}`)).toEqual([
      '1 right 0', '1 left 90', '2 right 0', '2 left 90', '3 right 0', '3 left 0',
    ]); // prettier-ignore
    expect(boutsOf(bridge).map(({ set, side, restSeconds }) => `${set} ${side} ${restSeconds}`)).toEqual([
      '1 null 90',
      '2 null 0',
    ]);
  });
});

it('begin with the leg that is named first', () => {
  expect(boutsOf({ ...curl, sets: 1, firstSide: 'left' }).map(({ side }) => side)).toEqual(['left', 'right']);
});

describe('phases', () => {
  const [right, left] = boutsOf(curl);
  it.each([
    [0, 'ready', 0], [4999, 'ready', 0], [5000, 'go', 1], [7999, 'go', 1], [8000, 'back', 1], [11999, 'back', 1],
    [12000, 'go', 2], [18999, 'back', 2], [19000, 'rest', 0], [108999, 'rest', 0],
  ] as const)('at %i ms: %s %i', (ms, kind, repetition) => {
    expect(phaseAt(phasesOf(curl, left!), ms)).toMatchObject({ kind, repetition });
  }); // prettier-ignore

  it.each([
    [4000, 0], [5000, 0], [6500, 0.5], [7999, 0.9997], [8000, 1], [10000, 0.5], [11000, 0.25], [12000, 0], [30000, 0],
  ] as const)('at %i ms so much of the way is gone: %f', (ms, way) => {
    const phase = phaseAt(phasesOf(curl, left!), ms)!;
    expect(wayAt(phase, ms)).toBeCloseTo(way, 3);
  }); // prettier-ignore

  it('of a hold stand at the far end', () => {
    expect(wayAt(phaseAt(phasesOf(bridge, boutsOf(bridge)[0]!), 6000)!, 6000)).toBe(1);
  });

  it('are over at the end, and without rest before the other leg', () => {
    expect(phaseAt(phasesOf(curl, left!), 109_000)).toBeNull();
    expect(phaseAt(phasesOf(curl, right!), 19_000)).toBeNull();
  });

  it('name what is held in the middle of a repetition', () => {
    const held = { ...curl, repetitions: 1, tempo: { goSeconds: 1, holdSeconds: 2, backSeconds: 3 } };
    expect(phasesOf(held, right!).map(({ kind, toMs }) => [kind, toMs])).toEqual([
      ['ready', 5000],
      ['go', 6000],
      ['hold', 8000],
      ['back', 11_000],
    ]);
  });

  it.each([
    ['no repetitions', { repetitions: null }],
    ['no pace', { tempo: null }],
  ])('hold no work where there are %s to count', (_, change) => {
    expect(phasesOf({ ...curl, ...change }, left!).map(({ kind }) => kind)).toEqual(['ready', 'rest']);
  });

  it('of a hold are the hold', () => {
    expect(phasesOf(bridge, boutsOf(bridge)[1]!).map(({ kind, toMs }) => [kind, toMs])).toEqual([
      ['ready', 5000],
      ['hold', 35_000],
    ]);
  });

  it('law: they follow each other without a gap, and hold the dose: repetitions times tempo', () => {
    const seconds = fc.integer({ min: 0, max: 9 });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), seconds, seconds, seconds, fc.nat(300), (repetitions, goSeconds, holdSeconds, backSeconds, restSeconds) => {
        const one = { ...curl, repetitions, tempo: { goSeconds, holdSeconds, backSeconds }, restSeconds };
        const phases = phasesOf(one, { set: 1, side: null, restSeconds });
        phases.forEach(({ fromMs }, at) => expect(fromMs).toBe(phases[at - 1]?.toMs ?? 0));
        const work = phases.filter(({ kind }) => kind !== 'ready' && kind !== 'rest');
        const workMs = work.reduce((sum, { fromMs, toMs }) => sum + toMs - fromMs, 0);
        expect(workMs).toBe(1000 * repetitions * (goSeconds + holdSeconds + backSeconds));
      }),
    ); // prettier-ignore
  });
});

it.each([
  ['repetitions with a pace', curl, true],
  ['a hold', bridge, true],
  ['a pace that is only held', { ...curl, tempo: { goSeconds: 0, holdSeconds: 2, backSeconds: 0 } }, true],
  ['a pace without repetitions', { ...curl, repetitions: null }, false],
  ['repetitions without a pace', { ...curl, tempo: null }, false],
  ['a pace of no seconds', { ...curl, tempo: { goSeconds: 0, holdSeconds: 0, backSeconds: 0 } }, false],
])('%s: counted %s', (_, paced, counted) => {
  expect(isPaced(paced)).toBe(counted);
});
