/** The joint a protocol guards decides which bend the cap is on, which end is the gentle one, and what is printed. */
import { describe, expect, it } from 'vitest';
import { REFERENCE_BODY } from '../../src/mechanics/body.ts';
import { brokenCap, demandsUpTo, type Caps } from '../../src/mechanics/cap.ts';
import { closePose } from '../../src/mechanics/closure.ts';
import { gentleEndOf } from '../../src/mechanics/gentle.ts';
import { angleAtDeg, fractionAtAngle, JOINT_ANGLES } from '../../src/mechanics/jointAngle.ts';
import { loadingAt } from '../../src/mechanics/loading.ts';
import type { Movement } from '../../src/mechanics/movement.ts';
import { largestRange } from '../../src/mechanics/range.ts';
import { poseAt } from '../../src/mechanics/trajectory.ts';

const squat: Movement = {
  supports: ['both.mid'],
  solve: { unknown: 'trunk', kind: 'balance', range: [-30, 120] },
  mode: 'active',
  horizontal: 'none',
  start: { trunk: 0, arms: 60, work: { hip: 5, knee: 5, pitch: 0 } },
  end: { trunk: 20, arms: 90, work: { hip: 60, knee: 65, pitch: 0 } },
  range: 'continuous',
};

/** Sitting, the hip stays at 90: the knee straightens from 90 and bends again. */
const kneeExtension: Movement = {
  supports: [],
  mode: 'passive',
  horizontal: 'none',
  start: { trunk: 0, work: { hip: 90, knee: 90, ankle: 0 } },
  end: { trunk: 0, work: { hip: 90, knee: 10, ankle: 0 } },
  range: 'continuous',
};

const caps = (angle: Caps['angle'], angleDeg: number | null): Caps => ({
  angle,
  angleDeg,
  compressionBw: null,
  tensionBw: null,
  demand: null,
  supportMargin: 1,
});

describe('a cap on the guarded joint', () => {
  it.each([
    ['hipFlexion', 30],
    ['kneeFlexion', 45],
    ['ankleDorsiflexion', 15],
  ] as const)('on %s ends the squat at %d degrees of that joint', (angle, deg) => {
    const range = largestRange(squat, REFERENCE_BODY, 0, caps(angle, deg));
    expect(range).toMatchObject({ admitted: true, decidedBy: angle });
    expect(range.admitted && range.angleDeg).toBeCloseTo(deg, 6);
    const { work } = loadingAt(squat, REFERENCE_BODY, 0, range.admitted ? range.fraction : 0)!;
    expect(work[`${angle}Deg`]).toBeCloseTo(deg, 6);
  });

  it.each(JOINT_ANGLES)('of no height leaves the squat whole, by %s', (angle) => {
    expect(largestRange(squat, REFERENCE_BODY, 0, caps(angle, null))).toMatchObject({ decidedBy: 'full' });
  });

  it.each(JOINT_ANGLES)('looks at no other joint than %s', (angle) => {
    const others = {
      hipFlexionDeg: 200,
      kneeFlexionDeg: 200,
      ankleDorsiflexionDeg: 200,
      [`${angle}Deg`]: 10,
    };
    const demands = { ...others, compressionBw: 0, tensionBw: 0, demand: 0 };
    expect(brokenCap(squat, demands, caps(angle, 10))).toBeNull();
    expect(brokenCap(squat, { ...demands, [`${angle}Deg`]: 10.001 }, caps(angle, 10))).toBe(angle);
  });

  it('counts the leg that bends the joint more', () => {
    const lunge: Movement = {
      ...kneeExtension,
      start: { ...kneeExtension.start, other: { hip: 0, knee: 120, ankle: 25 } },
      end: { ...kneeExtension.end!, other: { hip: 0, knee: 120, ankle: 25 } },
    };
    const at = demandsUpTo(lunge, REFERENCE_BODY, 0, 0)!;
    expect([at.hipFlexionDeg, at.kneeFlexionDeg, at.ankleDorsiflexionDeg]).toEqual([90, 120, 25]);
  });
});

describe('the gentle end', () => {
  it('of a tendon guarded at the knee is the one with the straighter knee', () => {
    expect(gentleEndOf(kneeExtension, REFERENCE_BODY, 0, 'kneeFlexion')).toBe('end');
    expect(gentleEndOf(squat, REFERENCE_BODY, 0, 'kneeFlexion')).toBe('start');
  });

  it('of one guarded at the hip is the one with less squeeze: the stretched hamstring pulls more', () => {
    expect(gentleEndOf(kneeExtension, REFERENCE_BODY, 0, 'hipFlexion')).toBe('start');
  });

  it('where the joint holds still, is told by squeeze again', () => {
    expect(gentleEndOf(kneeExtension, REFERENCE_BODY, 0, 'ankleDorsiflexion')).toBe('start');
  });

  it('is where the range is measured from', () => {
    const range = largestRange(kneeExtension, REFERENCE_BODY, 0, caps('kneeFlexion', 50));
    expect(range).toMatchObject({ gentleEnd: 'end', decidedBy: 'kneeFlexion' });
    expect(range.admitted && range.angleDeg).toBeCloseTo(50, 6);
    expect(range.admitted && range.fraction).toBeCloseTo(0.5, 6);
  });
});

describe('the angle along a movement', () => {
  it.each([
    ['hipFlexion', 5, 60],
    ['kneeFlexion', 5, 65],
  ] as const)('%s goes as the poses say', (angle, start, end) => {
    expect([0, 1].map((t) => angleAtDeg(squat, REFERENCE_BODY, 0, t, angle))).toEqual([start, end]);
    expect(fractionAtAngle(squat, angle, (start + end) / 2)).toBeCloseTo(0.5, 12);
    expect(fractionAtAngle(squat, angle, end + 1)).toBeNull();
  });

  // Foot flat: the shank leans forward by as much as the ankle bends.
  it('dorsiflexion of a flat foot is the lean of the shank in the closed pose', () => {
    for (const t of [0, 0.5, 1]) {
      const { work } = closePose(squat, poseAt(squat, t), REFERENCE_BODY, 0)!;
      const leanDeg = (Math.atan2(work.knee.x - work.ankle.x, work.knee.y - work.ankle.y) * 180) / Math.PI;
      expect(angleAtDeg(squat, REFERENCE_BODY, 0, t, 'ankleDorsiflexion')).toBeCloseTo(leanDeg, 9);
    }
  });

  it('cannot be set by an ankle', () => {
    expect(fractionAtAngle(squat, 'ankleDorsiflexion', 10)).toBeNull();
  });
});
