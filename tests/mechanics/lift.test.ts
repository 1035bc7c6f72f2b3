import { describe, expect, it } from 'vitest';
import { REFERENCE_BODY } from '../../src/mechanics/body.ts';
import type { Caps } from '../../src/mechanics/cap.ts';
import { liftBarredBy, liftFrom, lowestLiftM } from '../../src/mechanics/lift.ts';
import { STAGE_CAPS } from '../published/stage-caps.ts';

const NO_CAPS: Caps = {
  angle: 'hipFlexion',
  angleDeg: null,
  compressionBw: null,
  tensionBw: null,
  demand: null,
  supportMargin: 1,
};

describe('lifting the weight from where it stands', () => {
  it.each([0.3, 0.45, 0.6, 0.7])('from %d m the hands are at that height', (heightM) => {
    const { points } = liftFrom(heightM, REFERENCE_BODY, 10)!;
    expect(Math.abs(points.hands.y - points.work.mid.y - heightM)).toBeLessThanOrEqual(1e-6);
  });

  it('bends the hip more, the lower the weight stands', () => {
    const bends = [0.7, 0.6, 0.5, 0.4, 0.3].map(
      (heightM) => liftFrom(heightM, REFERENCE_BODY, 10)!.work.hipFlexionDeg,
    );
    bends.slice(1).forEach((deg, i) => expect(deg).toBeGreaterThan(bends[i]!));
  });

  // Between a stiff stoop and an upright squat [choice]: two thirds as much of the knees as of the hips, all the way.
  it.each([0.7, 0.6, 0.5, 0.4, 0.3, 0.02])(
    'from %d m the knees bend two thirds as much as the hips',
    (heightM) => {
      const { work } = liftFrom(heightM, REFERENCE_BODY, 10)!;
      expect((work.kneeFlexionDeg - 10) / (work.hipFlexionDeg - 5)).toBeCloseTo(2 / 3, 1);
    },
  );

  it('needs no bend from where the hands hang, and the deepest from below where they reach', () => {
    expect(liftFrom(0.9, REFERENCE_BODY, 10)!.work.hipFlexionDeg).toBe(5);
    expect(liftFrom(0.02, REFERENCE_BODY, 10)!.work.hipFlexionDeg).toBe(130);
  });

  it('the lowest place lies on the cap: 45 degrees of hip in stage 2', () => {
    const lowestM = lowestLiftM(REFERENCE_BODY, 10, STAGE_CAPS['2 slow']);
    if (typeof lowestM !== 'number') throw new Error(`barred by ${lowestM.barredBy}`);
    expect(liftFrom(lowestM, REFERENCE_BODY, 10)!.work.hipFlexionDeg).toBeCloseTo(45, 5);
    expect(liftBarredBy(lowestM + 1e-6, REFERENCE_BODY, 10, STAGE_CAPS['2 slow'])).toBeNull();
    expect(liftBarredBy(lowestM - 1e-6, REFERENCE_BODY, 10, STAGE_CAPS['2 slow'])).toBe('hipFlexion');
  });

  it.each([5, 20, 60])('can be done with %d kg from the lowest place upwards, and not below', (loadKg) => {
    for (const caps of [...Object.values(STAGE_CAPS), NO_CAPS, { ...NO_CAPS, demand: 0 }]) {
      const answer = lowestLiftM(REFERENCE_BODY, loadKg, caps);
      const lowestM = typeof answer === 'number' ? answer : Infinity;
      const can = (heightM: number) => liftBarredBy(heightM, REFERENCE_BODY, loadKg, caps) === null;
      for (const heightM of [0.02, 0.1, 0.2, 0.35, 0.5, 0.65, 0.9, 1.2])
        expect(can(heightM)).toBe(heightM >= lowestM);
      if (lowestM === 0 || lowestM === Infinity) continue;
      expect([can(lowestM - 1e-6), can(lowestM + 1e-6)]).toEqual([false, true]);
    }
  });

  it('a weight on the floor is no weight for the early stages, a table is for all', () => {
    for (const stage of ['1 hold', '2 slow', '3 more bend'] as const) {
      expect(liftBarredBy(0.1, REFERENCE_BODY, 10, STAGE_CAPS[stage])).toBe('hipFlexion');
      expect(liftBarredBy(0.75, REFERENCE_BODY, 10, STAGE_CAPS[stage])).toBeNull();
    }
    expect(liftBarredBy(0.1, REFERENCE_BODY, 10, NO_CAPS)).toBeNull();
    expect(lowestLiftM(REFERENCE_BODY, 10, NO_CAPS)).toBe(0);
  });

  it('is barred altogether when standing with it breaks a cap', () => {
    expect(lowestLiftM(REFERENCE_BODY, 10, { ...NO_CAPS, demand: 0 })).toEqual({
      admitted: false,
      barredBy: 'demand',
    });
  });
});
