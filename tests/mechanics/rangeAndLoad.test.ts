import { describe, expect, it } from 'vitest';
import { REFERENCE_BODY } from '../../src/mechanics/body.ts';
import type { Caps } from '../../src/mechanics/cap.ts';
import { fitRangeAndLoad, type RangeAndLoadRequest } from '../../src/mechanics/rangeAndLoad.ts';
import { largestRange } from '../../src/mechanics/range.ts';
import { cardNamed } from '../published/exercise-cards.ts';

const NO_CAPS: Caps = {
  angle: 'hipFlexion',
  angleDeg: null,
  compressionBw: null,
  tensionBw: null,
  demand: null,
  supportMargin: 1,
};
const { movement } = cardNamed('RDL 20 kg to 90 deg hip');
const asked: RangeAndLoadRequest = {
  movement,
  body: REFERENCE_BODY,
  loadsKgDescending: [40, 20, 10, 4],
  caps: NO_CAPS,
  leastFraction: 0.5,
  stepHeightsM: [],
  pickUpHeightM: null,
};

describe('load first, then range', () => {
  it('takes the first load over the largest range its caps admit', () => {
    const caps = { ...NO_CAPS, compressionBw: 1.4 };
    const range = largestRange(movement, REFERENCE_BODY, 40, caps);
    expect(fitRangeAndLoad({ ...asked, caps })).toEqual({ admitted: true, loadKg: 40, range, refused: [] });
  });

  it('steps down the kit where the range would be too little, and then opens no further than the least range', () => {
    const fit = fitRangeAndLoad({ ...asked, caps: { ...NO_CAPS, compressionBw: 0.9 } });
    expect(fit).toMatchObject({
      admitted: true,
      loadKg: 20,
      refused: [{ loadKg: 40, barredBy: 'compression', where: 'range' }],
    });
    if (!fit.admitted) return;
    expect(fit.range.fraction).toBe(0.5);
    expect(fit.range.angleDeg).toBe(47.5);
    expect(fit.range.interval).toEqual({ from: 0, to: 0.5 });
  });

  it('passes the exercise over when even the lightest is too heavy, with every refusal', () => {
    const fit = fitRangeAndLoad({ ...asked, caps: { ...NO_CAPS, angleDeg: 30 } });
    expect(fit).toEqual({
      admitted: false,
      refused: [40, 20, 10, 4].map((loadKg) => ({ loadKg, barredBy: 'hipFlexion', where: 'range' })),
    });
  });

  it('refuses a load that cannot be lifted from where it stands', () => {
    const caps = { ...NO_CAPS, angleDeg: 60 };
    const floor = fitRangeAndLoad({ ...asked, caps, pickUpHeightM: 0.1 });
    expect(floor).toMatchObject({ admitted: false });
    expect(floor.refused[0]).toEqual({ loadKg: 40, barredBy: 'hipFlexion', where: 'lift' });
    expect(fitRangeAndLoad({ ...asked, caps, pickUpHeightM: 0.75 })).toMatchObject({
      admitted: true,
      loadKg: 40,
    });
  });

  it('an exercise done in full or not at all is never shortened', () => {
    const whole = { ...asked, movement: { ...movement, range: 'fixed' as const } };
    const caps = { ...NO_CAPS, compressionBw: 2.6 };
    expect(fitRangeAndLoad({ ...whole, caps })).toMatchObject({
      admitted: true,
      loadKg: 20,
      range: { fraction: 1 },
    });
  });

  it('an exercise without a weight is fitted at no load', () => {
    const bridge = cardNamed('Single-leg bridge, from the floor').movement;
    const caps = { ...NO_CAPS, compressionBw: 0.8, supportMargin: 1.25 };
    const fit = fitRangeAndLoad({
      ...asked,
      movement: bridge,
      loadsKgDescending: [0],
      caps,
      pickUpHeightM: 0,
    });
    expect(fit).toMatchObject({
      admitted: true,
      loadKg: 0,
      range: { gentleEnd: 'end', decidedBy: 'compression' },
    });
  });
});
