/**
 * Step heights against measured hip flexion: lead hip 66.3° on a step of 20.3 cm and 92.5° on 40.6 cm, trail hip 20.6°
 * and 26.8°, fourteen healthy adults (Physiotherapy 2009, "Hip and knee flexion of lead and trail limbs during ascent of
 * a step of different heights by normal adults"; abstract read). Those are the largest angles of the whole ascent, so
 * the posture that stands with one foot on each level should reach the height with no more.
 */
import { describe, expect, it } from 'vitest';
import { REFERENCE_BODY } from '../../src/mechanics/body.ts';
import type { Caps } from '../../src/mechanics/cap.ts';
import { closePose } from '../../src/mechanics/closure.ts';
import type { Movement } from '../../src/mechanics/movement.ts';
import { largestStep, stepHeightM } from '../../src/mechanics/step.ts';
import { poseAt } from '../../src/mechanics/trajectory.ts';
import { fractionAtAngle } from '../../src/mechanics/jointAngle.ts';

/** A pose whose trail leg follows the published hips and whose standing ankle stays within 40°. */
const stepUp: Movement = {
  supports: ['work.mid'],
  solve: { unknown: 'trunk', kind: 'balance', range: [-30, 120] },
  mode: 'active',
  horizontal: 'minEffort',
  loadAt: 'hands',
  start: {
    trunk: 20,
    arms: 'hang',
    work: { hip: 92.5, knee: 98, pitch: 0 },
    other: { hip: 28, knee: 5, ankle: -30 },
  },
  end: {
    trunk: 0,
    arms: 'hang',
    work: { hip: 5, knee: 5, pitch: 0 },
    other: { hip: 5, knee: 10, ankle: 0 },
  },
  range: 'steps',
};

const NO_CAPS: Caps = {
  angle: 'hipFlexion',
  angleDeg: null,
  compressionBw: null,
  tensionBw: null,
  demand: null,
  supportMargin: 1,
};
const heightAt = (hipDeg: number) => {
  const posture = closePose(
    stepUp,
    poseAt(stepUp, fractionAtAngle(stepUp, 'hipFlexion', hipDeg)!),
    REFERENCE_BODY,
    0,
  )!;
  return { cm: stepHeightM(posture) * 100, trailHip: posture.pose.other!.hip };
};

describe('step height the pose implies at the published hip flexion', () => {
  it.each([
    ['66.3° at 20.3 cm', 66.3, 20.3, 20.6, 1],
    [
      '92.5° at 40.6 cm: the pose stands 4 to 5 cm lower, so it takes the hip for more bent than it is',
      92.5,
      40.6,
      26.8,
      5,
    ],
  ])('%s', (_title, hipDeg, publishedCm, publishedTrailHip, toleranceCm) => {
    const { cm, trailHip } = heightAt(hipDeg);
    expect(Math.abs(cm - publishedCm)).toBeLessThanOrEqual(toleranceCm);
    expect(cm).toBeLessThanOrEqual(publishedCm + 1);
    expect(Math.abs(trailHip - publishedTrailHip)).toBeLessThanOrEqual(1.5);
  });

  it('rises with the hip all the way, so that a height has one hip flexion', () => {
    const heights = [10, 20, 30, 40, 50, 60, 70, 80, 90].map((hip) => heightAt(hip).cm);
    heights.slice(1).forEach((cm, i) => expect(cm).toBeGreaterThan(heights[i]!));
  });
});

describe('the highest step in the house', () => {
  const home = [0.1, 0.15, 0.18, 0.2, 0.3];
  const hip = (deg: number): Caps => ({ ...NO_CAPS, angleDeg: deg });

  it.each([
    [60, 0.15, 'hipFlexion'],
    [70, 0.2, 'hipFlexion'],
    [90, 0.3, 'full'],
  ])('hip cap %d: %d m, decided by %s', (cap, heightM, decidedBy) => {
    const step = largestStep(stepUp, REFERENCE_BODY, 0, hip(cap), home);
    expect(step).toMatchObject({ admitted: true, heightM, decidedBy, gentleEnd: 'end' });
    if (!step.admitted) return;
    expect(step.angleDeg).toBeLessThanOrEqual(cap);
    const posture = closePose(stepUp, poseAt(stepUp, step.interval.from), REFERENCE_BODY, 0)!;
    expect(Math.abs(stepHeightM(posture) - heightM)).toBeLessThanOrEqual(0.0021);
  });

  it('none is admitted: says which cap bars the lowest', () => {
    expect(largestStep(stepUp, REFERENCE_BODY, 0, hip(30), home)).toEqual({
      admitted: false,
      barredBy: 'hipFlexion',
    });
  });

  it('none is there, or none the pose can reach: says so', () => {
    expect(largestStep(stepUp, REFERENCE_BODY, 0, NO_CAPS, [])).toEqual({
      admitted: false,
      barredBy: 'step',
    });
    expect(largestStep(stepUp, REFERENCE_BODY, 0, NO_CAPS, [0.6])).toEqual({
      admitted: false,
      barredBy: 'step',
    });
    expect(largestStep(stepUp, REFERENCE_BODY, 0, { ...NO_CAPS, demand: 0 }, home)).toEqual({
      admitted: false,
      barredBy: 'demand',
    });
  });
});
