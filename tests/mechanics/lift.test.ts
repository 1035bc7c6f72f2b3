import { describe, expect, it } from 'vitest';
import { REFERENCE_BODY } from '../../src/mechanics/body.ts';
import type { Caps } from '../../src/mechanics/cap.ts';
import { liftBarredBy, liftFrom } from '../../src/mechanics/lift.ts';
import { bisect } from '../../src/mechanics/range.ts';
import { STAGE_CAPS } from '../published/stage-caps.ts';

const NO_CAPS: Caps = {
  angle: 'hipFlexion',
  angleDeg: null,
  compressionBw: null,
  tensionBw: null,
  demand: null,
  supportMargin: 1,
};

/** The lowest place from which the caps admit the lift; the hands reach to any below 1.2 m. */
const lowestM = (loadKg: number, caps: Caps) =>
  bisect((heightM) => liftBarredBy(heightM, REFERENCE_BODY, loadKg, caps) === null, 1.2, 0);

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

  it.each([
    [45, 5],
    [60, 10],
    [90, 20],
  ])('the lowest place lies on the cap: %d degrees of hip with %d kg', (angleDeg, loadKg) => {
    const lowest = lowestM(loadKg, { ...NO_CAPS, angleDeg });
    expect(liftFrom(lowest, REFERENCE_BODY, loadKg)!.work.hipFlexionDeg).toBeCloseTo(angleDeg, 5);
    expect(liftBarredBy(lowest - 1e-6, REFERENCE_BODY, loadKg, { ...NO_CAPS, angleDeg })).toBe('hipFlexion');
  });

  it('a weight on the floor is no weight for the early stages, a table is for all', () => {
    for (const stage of ['1 hold', '2 slow', '3 more bend'] as const) {
      expect(liftBarredBy(0.1, REFERENCE_BODY, 10, STAGE_CAPS[stage])).toBe('hipFlexion');
      expect(liftBarredBy(0.75, REFERENCE_BODY, 10, STAGE_CAPS[stage])).toBeNull();
    }
    expect(liftBarredBy(0.1, REFERENCE_BODY, 10, NO_CAPS)).toBeNull();
  });

  it.each([0, 0.9, 1.2])(
    'is barred altogether when standing with it breaks a cap, from %d m too',
    (heightM) => {
      expect(liftBarredBy(heightM, REFERENCE_BODY, 10, { ...NO_CAPS, demand: 0 })).toBe('demand');
    },
  );
});
