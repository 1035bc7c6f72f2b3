import { describe, expect, it } from 'vitest';
import type { Movement } from '../../src/mechanics/movement.ts';
import { poseAt } from '../../src/mechanics/trajectory.ts';
import { fractionAtAngle } from '../../src/mechanics/jointAngle.ts';
import { cardNamed } from '../published/exercise-cards.ts';

const { movement: deadlift } = cardNamed('RDL 20 kg to 70 deg hip');
const { movement: split } = cardNamed('Split squat');
const { movement: hold } = cardNamed('Long-lever bridge hold (hip 5)');

describe('the pose along a movement', () => {
  it('is the start and the end at its ends, exactly', () => {
    for (const movement of [deadlift, split]) {
      expect(poseAt(movement, 0)).toEqual(movement.start);
      expect(poseAt(movement, 1)).toEqual(movement.end);
    }
  });

  it('lies between in every number', () => {
    expect(poseAt(split, 0.5)).toEqual({
      trunk: 7.5,
      work: { hip: 52.5, knee: 51.5, pitch: 0 },
      other: { hip: -7.5, knee: 50, pitch: -45 },
    });
  });

  it('counts a missing lumbar bend as none, and carries arms given in degrees', () => {
    const movement: Movement = {
      ...deadlift,
      start: { ...deadlift.start, arms: 60 },
      end: { ...deadlift.end!, arms: 90, lumbar: 20 },
    };
    expect(poseAt(movement, 0.25)).toMatchObject({ arms: 67.5, lumbar: 5 });
  });

  it('of a hold is its one pose', () => {
    expect(poseAt(hold, 0.7)).toBe(hold.start);
  });
});

describe('the fraction at a hip flexion', () => {
  it.each([
    ['45 on the way from 5 to 70', deadlift, 45, 40 / 65],
    ['the end itself', deadlift, 70, 1],
    ['beyond the end', deadlift, 71, null],
    ['before the start', deadlift, 4, null],
    ['a hold', hold, 5, null],
  ])('%s', (_title, movement, hipDeg, expected) =>
    expect(fractionAtAngle(movement, 'hipFlexion', hipDeg)).toBe(expected),
  );
});
